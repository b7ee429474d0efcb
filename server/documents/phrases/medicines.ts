import type { Section } from '../../../grammar/lexicon/entry.ts';
import { ILLNESSES, MEDICINES } from '../../../grammar/lexicon/medicines.ts';
import { dosed } from './drugs-and-risks.ts';
import {
  asNamed,
  commas,
  OFTEN,
  type OwnPhrase,
  type Predicate,
  type Said,
  spaced,
  type TherePhrase,
  was,
} from './phrase.ts';

const forTime = (time: string | undefined): string | undefined => time && `for ${time}`;

/** Planned, tried or taken: the section says which. */
const medicineText = (said: Said<'medicine'>, section: Section, not: boolean): Predicate => {
  const verb = section === 'plan' ? 'planned' : section === 'tried' ? 'tried' : 'taken';
  const rest = commas(spaced(not ? 'not' : undefined, verb, forTime(said.for)), dosed(said), said.when, said.response);
  const subject = said.name ? { subject: said.name } : {};
  return section === 'plan' ? { verb: 'is', rest, ...subject } : { ...was(rest), ...subject };
};
const medicine: OwnPhrase<'medicine'> = {
  shape: 'own',
  name: 'medication',
  by: 'asked about',
  topic: 'drugs',
  wording: {
    name: asNamed(MEDICINES),
    often: OFTEN,
    when: { 'at induction': 'at induction' },
    response: { better: 'with improvement', partial: 'with partial relief', 'no relief': 'without relief' },
  },
  present: (said, section) => medicineText(said, section, false),
  absent: (said, section) => medicineText(said, section, true),
};
const illness: TherePhrase<'illness'> = {
  shape: 'there',
  name: 'another illness',
  by: 'asked about',
  wording: { what: { ...asNamed(ILLNESSES), copd: 'COPD', tia: 'a TIA' } },
  present: ({ what, for: time }) => spaced(what ?? 'another illness', forTime(time)),
  absent: ({ what, for: time }) => spaced(what ?? 'other illness', forTime(time)),
};

const bmi: OwnPhrase<'bmi'> = {
  shape: 'own',
  name: 'the body mass index',
  by: 'taken',
  wording: {},
  present: ({ index }) => was(index ?? 'given as written'),
  absent: ({ index }) => was(commas('recorded as absent', index)),
};

export const MEDICINE_PHRASES = { medicine, illness, bmi };
