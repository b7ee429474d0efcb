import { commas, type OwnPhrase, spaced, type TherePhrase, was } from './phrase.ts';

import { AT_MOMENTS } from './what-changes-it.ts';

const AT = { ray: 'at', web: 'in', foot: 'in' } as const;
type Own<F extends 'onset' | 'duration' | 'trigger'> = OwnPhrase<F>;

const onset: Own<'onset'> = {
  shape: 'own',
  name: 'the onset',
  preposition: AT,
  by: 'asked about',
  topic: 'onset',
  wording: { manner: { gradual: 'gradual', sudden: 'sudden' } },
  present: ({ manner, for: time, on }) => {
    const first = manner ?? on ?? (time ? `recorded with a duration of ${time}` : 'recorded');
    return was(commas(first, manner && on, (manner || on) && time && `with a duration of ${time}`));
  },
  absent: ({ manner, for: time, on }) => was(commas('recorded as absent', manner, time, on)),
};

const duration: Own<'duration'> = {
  shape: 'own',
  name: 'the duration of symptoms',
  preposition: AT,
  by: 'asked about',
  topic: 'onset',
  wording: {},
  present: ({ for: time }) => was(time ?? 'given as written'),
  absent: ({ for: time }) => was(commas('recorded as absent', time)),
};

const trigger: Own<'trigger'> = {
  shape: 'own',
  name: 'the trigger',
  preposition: AT,
  placeLast: true,
  by: 'asked about',
  topic: 'trigger',
  wording: {
    what: {
      running: 'running',
      jogging: 'jogging',
      walking: 'walking',
      standing: 'standing',
      'push-off': 'push-off',
      barefoot: 'walking barefoot',
      stairs: 'stairs',
      hills: 'hills',
      heels: 'high heels',
      shoes: 'shoes',
      'narrow shoes': 'narrow shoes',
      'tight shoes': 'tight shoes',
      dancing: 'dancing',
      sport: 'sport',
      cycling: 'cycling',
      jumping: 'jumping',
      injury: 'an injury',
      fall: 'a fall',
      stubbing: 'stubbing the toe',
      twisting: 'a twisting injury',
      hyperextension: 'a hyperextension injury',
      'load-rise': 'a rise in load',
      'more training': 'more training',
      'new training': 'new training',
      mileage: 'mileage',
    },
  },
  present: ({ what, for: time, on }) => {
    const when = commas(on, time && `with a duration of ${time}`);
    if (!what) return was(commas('given as written', when));
    return was(commas(/ and /.test(what) ? 'given as triggers' : 'given as the trigger', when), what, isPlural(what));
  },
  absent: ({ what, for: time, on }) =>
    what ? was(commas('denied as the trigger', on, time), what) : was(commas('no trigger', on, time), 'there'),
};

const isPlural = (what: string): boolean => /\b(and|shoes|heels|stairs|hills)\b/.test(what);

/** `on push-off`, `at night`: said after the pain; `burning` before it. */
const isCircumstance = (text: string): boolean => /^(on|at|in) /.test(text);

const pain: TherePhrase<'pain'> = {
  shape: 'there',
  name: 'pain',
  by: 'asked about',
  wording: {
    place: {
      plantar: 'plantar',
      ball: 'ball of the foot',
      head: 'metatarsal head',
      dorsal: 'dorsal',
      forefoot: 'forefoot',
      joint: 'joint',
      toe: 'toe',
    },
    character: {
      burning: 'burning',
      sharp: 'sharp',
      stabbing: 'stabbing',
      shooting: 'shooting',
      aching: 'aching',
      dull: 'dull',
      throbbing: 'throbbing',
      rest: 'at rest',
      ...AT_MOMENTS,
    },
  },
  present: ({ place, score, earlier, character, for: time }) => {
    const all = character?.split(' and ') ?? [];
    const when = all.filter(isCircumstance);
    const kind = all.filter((each) => !isCircumstance(each));
    const scored = spaced(score && `of ${score}`, earlier && `(${earlier} before)`);
    return spaced(kind.join(', '), place, 'pain', scored, when.join(' and '), time && `for ${time}`);
  },
  absent: ({ place, score, earlier, character, for: time }) => {
    const when = character && isCircumstance(character) && !/ and /.test(character) ? character : undefined;
    const scored = spaced(score && `of ${score}`, earlier && `(${earlier} before)`);
    return commas(spaced(place, 'pain', scored, when), when ? undefined : character, time);
  },
};

const stiffness: TherePhrase<'morning-stiffness'> = {
  shape: 'there',
  name: 'morning stiffness',
  by: 'asked about',
  wording: {},
  present: ({ for: time }) => spaced('morning stiffness', time && `for ${time}`),
  absent: ({ for: time }) => spaced('morning stiffness', time && `for ${time}`),
};

const fever: TherePhrase<'fever'> = {
  shape: 'there',
  name: 'fever',
  wording: {},
  present: ({ temperature }) => (temperature ? `a fever of ${temperature}` : 'fever'),
  absent: ({ temperature }) => spaced('fever', temperature && `(${temperature})`),
};

const temperature: OwnPhrase<'temperature'> = {
  shape: 'own',
  name: 'the temperature',
  by: 'taken',
  wording: {},
  present: ({ value, fahrenheit }) => was(commas(value, fahrenheit) || 'given as written'),
  absent: ({ value, fahrenheit }) => was(commas('recorded as absent', value, fahrenheit)),
};

export const HISTORY_PHRASES = {
  onset,
  duration,
  trigger,
  pain,
  'morning-stiffness': stiffness,
  fever,
  temperature,
};
