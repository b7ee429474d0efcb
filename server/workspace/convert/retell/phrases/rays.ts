import { type Phrase, RAY } from './phrase.ts';

/** Rays and webs that are said as numbers, where a word of the foot says that they are no count (`joints two to five`, `callus under two and three`). */
const NUMBERS = '[1-5](?:(?:-| to | and | or | )[1-5])+';
const NUMBER = '[1-5]';
/** What a number counts or measures is no ray. */
const NO_COUNT =
  '(?! ?(?:/|°|%|mm|cm|ml|mg|days?|weeks?|months?|years?|hours?|minutes?|seconds?|degrees|times?|out|plus|by|or|to|and|\\d(?!st|nd|rd|th)|x|of|point))';
const NOUN =
  '(?:toes|toe|mtp joints|mtps|mtp|joints|metatarsal heads|met heads|heads|metatarsals|mets|rays|ray|plantar plates|plates)';
const QUALITY =
  '(?:(?:are |is |all |both )*(?:not tender|non tender|nontender|not swollen|not painful|pain free|unremarkable|tender|swollen|stable|unstable|straight|quiet|normal|fine|negative|flexible|fixed|rigid|clawed|hammered|ok|okay))';
const NAMES = ['', '1st', '2nd', '3rd', '4th', '5th'];

/** `2 to 5`, `two three and four` as rays; nothing where a range does not go up. */
export function raysIn(said: string): string | undefined {
  const tokens = said.replaceAll('-', ' to ').match(/\d|to/g) ?? [];
  const rays: number[] = [];
  for (const [i, token] of tokens.entries()) {
    const [ray, last] = [Number(token), rays.at(-1)];
    if (token === 'to') continue;
    if (last !== undefined && ray <= last) return undefined;
    for (let each = last !== undefined && tokens[i - 1] === 'to' ? last + 1 : ray; each <= ray; each++) rays.push(each);
  }
  return rays.map((ray) => NAMES[ray]).join(' and ');
}
const websIn = (said: string): string | undefined => {
  const rays = raysIn(said)?.match(/\d/g)?.map(Number) ?? [];
  const [low = 0, high = 0] = [rays[0], rays.at(-1)];
  return high <= 4 && high - low === rays.length - 1 ? `webs ${low}-${high}` : undefined;
};
const withRays = (said: string | undefined, text: (rays: string) => string): string | undefined => {
  const rays = raysIn(said ?? '');
  return rays === undefined ? undefined : text(rays);
};
const bone = (noun = ''): string =>
  /head/.test(noun)
    ? ' head'
    : /met/.test(noun) && !/mtp/.test(noun)
      ? ' metatarsal'
      : /plate/.test(noun)
        ? ' plate'
        : /mtp|joint/.test(noun)
          ? ' mtp'
          : '';

export const NUMBERED: readonly Phrase[] = [
  // `to` is heard twice.
  ['(?<=(?:toes|joints|mtps|heads|rays|webs) )to to (?=[3-5])', '2 to '],
  [`(?<!(?:first|1st) )ray (${NUMBER})${NO_COUNT}`, (m) => `${NAMES[Number(m[1])]} ray`],
  ["(?:tailor's|tailors|tailor) bunion|bunionette", '§tailors​bunion |'],
  // Web spaces.
  [
    `(?:web ?spaces|interspaces|spaces|webs|web) ([1-4](?: (?:and )?[1-4]){2,3}|[1-4] to [1-4]|[1-4] and [1-4])${NO_COUNT}`,
    (m) => websIn(m[1] ?? ''),
  ],
  [
    '(?:cleft|space|web space|webspace|interspace) ([1-4])[ -]([2-5])(?! (?:mm|weeks|days))',
    (m) => betweenOf(m[1], m[2]),
  ],
  ['([1-4])[ -]([2-5]) (?:cleft|space|web space|webspace|interspace|web)', (m) => betweenOf(m[1], m[2])],
  // The finding between: `joints stable two to five`.
  [`${NOUN} (${QUALITY}) (${NUMBERS})${NO_COUNT}`, (m) => withRays(m[2], (rays) => `| ${rays}${bone(m[0])} ${m[1]} |`)],
  [
    `(hammer|claw|mallet) toes? (${NUMBERS})( (?:semi-?rigid|rigid|fixed|flexible|reducible|correctable))?${NO_COUNT}`,
    (m) => withRays(m[2], (rays) => `| ${rays} ${m[1]}${m[3] ?? ''} |`),
  ],
  [
    `(toes|mtp joints|mtps|joints|metatarsal heads|met heads|heads|metatarsals|mets|rays|plantar plates|plates) (${NUMBERS})${NO_COUNT}`,
    (m) => withRays(m[2], (rays) => `${rays}${bone(m[1])}`),
  ],
  // Under the foot.
  [
    `(callus|calluses|callosity|callosities|keratosis|tender|tenderness|sore|soreness|pain|ache) <([1-5]) (and|to|or) ([1-5])( (?:met |metatarsal )?heads?)?${NO_COUNT}`,
    (m) => withRays(`${m[2]} ${m[3]} ${m[4]}`, (rays) => `${m[1]} ${m[5] ? 'head' : 'plantar'} ${rays}`),
  ],
  // Three rays that are said beside a test are no grades.
  [
    `(drawer|lachman)s? ([2-5](?: (?:and )?[3-5]){2,3}|[2-5] to [3-5]) (?:all |are |is )*(negative|positive|stable|normal|not tested|painless)${NO_COUNT}`,
    (m) =>
      withRays(
        m[2],
        (rays) => `| ${rays} ${m[3] === 'stable' ? 'mtp' : 'drawer'} ${m[3] === 'normal' ? 'negative' : m[3]} |`,
      ),
  ],
  [
    `(?<=(?:^|[,;|\\n] ))([2-5](?:(?:-| to | and )[3-5])+) (${QUALITY})(?= ,| ;|$| \\||\\n)`,
    (m) => withRays(m[1], (rays) => `| ${rays}${/stable/.test(m[2] ?? '') ? ' mtp' : ''} ${m[2]} |`),
  ],
  [`(?<=${RAY} )(?:met|metatarsal) (?=mtp)`, ''],
];
function betweenOf(low = '', high = ''): string | undefined {
  return Number(high) === Number(low) + 1 ? `web ${low}` : undefined;
}
