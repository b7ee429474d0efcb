import { type Phrase, remark, TIME } from './phrase.ts';
import { NTH, NTHS, rays, TOE } from './rays-said.ts';

/** Which toes an operation is of: those that are named with it, the first, or none. */
type Of = 'lesser' | 'first' | 'foot' | 'web';
const NEUROMA =
  '(?:excision|removal)(?: of)?(?: an?| the)? web [1-4] neuroma|(?:web [1-4] )?(?:neuroma (?:excision|removal|surgery)|neurectomy)(?: (?:of |in |from )?(?:the )?web [1-4])?|(?:excision|removal)(?: of)?(?: an?| the)? neuroma(?: (?:of |in |from )?(?:the )?web [1-4])?';
/** Operations as they are called in speech, and what the language calls them. */
const OPERATIONS: readonly (readonly [said: string, is: string, of: Of])[] = [
  ['(?:plantar )?plate (?:repair|reconstruction|reinsertion)', 'plate repair', 'lesser'],
  ['(?<=(?:2nd|3rd|4th) (?:plate )?)repair', 'plate repair', 'lesser'],
  ['weil osteotom(?:y|ies)|weils?', 'weil', 'lesser'],
  ['(?:first|1st) (?:mtp |mtp joint )?(?:joint )?(?:fusion|arthrodesis)', 'fusion', 'first'],
  ['pip (?:joint )?(?:fusion|arthrodesis)|toe fusion', 'pip fusion', 'lesser'],
  ['hammer ?toe fusion', `hammer toe correction ${remark('fusion')}`, 'lesser'],
  ['hammer ?toe (?:correction|repair|surgery|operation)', 'hammer toe correction', 'lesser'],
  ['(?:flexor to extensor|flexor|tendon|fdl) transfer', 'flexor transfer', 'lesser'],
  ['scarf(?: osteotomy)?', 'scarf osteotomy', 'first'],
  ['akin(?: osteotomy)?', 'akin osteotomy', 'first'],
  ['chevron(?: osteotomy)?', 'chevron osteotomy', 'first'],
  ['lapidus(?: fusion)?', 'lapidus fusion', 'first'],
  [
    'bunion (?:surgery|correction|operation)|bunionectomy|hallux valgus (?:correction|surgery)',
    'bunion surgery',
    'foot',
  ],
  [NEUROMA, 'neuroma excision', 'web'],
];
const NAMED = OPERATIONS.map(([said]) => said).join('|');
const BEFORE = `(?:${NTHS}${TOE} )?`;
const AFTER = `(?: (?:of |on |to )?(?:the )?${NTHS}${TOE})?`;
const AND = '(?: ,)?(?: and| with| plus|) (?:an? |the )?';
/** One operation, and several: within the list a ray may stand before or after its operation. */
const LIST = `${BEFORE}(?:${NAMED})(?:${AFTER}${AND}${BEFORE}(?:${NAMED}))*`;
/** The ray after the last one may be the subject of what follows, unless what follows needs none. */
const LAST = `(?: (?:of|on|to) (?:the )?(?:(?:right|left) )?${NTHS}${TOE}| (?:(?:right|left) )?${NTHS}${TOE}(?: (?:right|left))?(?= ,| ;|$| \\||\\n| (?:wounds?|scars?|stitches|sutures|no|calf|dressings?|under|xray|x-ray|pins?|wires?)(?: |$)))?`;
/** What was only meant to be done, or was done to something else. */
const NOT_DONE = `(?! (?:${NTHS}${TOE} )?(?:is |are |was |were |be |being )*(?:the )?(?:other|opposite|contralateral|planned|booked|due|next|offered|discussed|considered|cancelled|declined|abandoned|or|if|failed|elsewhere on)(?: |$)| (?:and )?(?:the )?${NTH}(?: and)? (?:the )?${NTH}(?: |$))`;
const TIMES = `~?\\d+(?:-\\d+)? ${TIME}`;
const BLOCK = '(?: under (?:an? )?(ankle block|general anaesthetic|spinal|local anaesthetic|sedation))?';

interface Operation {
  readonly is: string;
  readonly at: string | undefined;
  readonly of: Of;
}
/** The operations of a list with their rays; nothing where it is not certain which is of which. */
function operationsIn(list: string): readonly Operation[] | undefined {
  const found = [
    ...list.matchAll(
      new RegExp(
        `(?:(?<before>${NTHS})${TOE} )?(?<op>${NAMED})(?:(?: (?:of|on|to))?(?: the)?(?: (?:right|left))? (?<after>${NTHS})${TOE}(?! (?:${NAMED})))?`,
        'g',
      ),
    ),
  ].map((m): Operation => {
    const { before, op = '', after } = m.groups ?? {};
    const [, is = '', of = 'lesser'] = OPERATIONS.find(([said]) => new RegExp(`^(?:${said})$`).test(op)) ?? [
      '',
      'plate repair',
    ];
    const ray = before ?? after;
    if (of === 'web') return { is, of, at: /web [1-4]/.exec(op)?.[0] };
    return { is, of, at: of === 'first' ? '1st' : ray && rays(ray) };
  });
  const lesser = found.filter(({ of }) => of === 'lesser');
  const named = [...new Set(lesser.flatMap(({ at }) => at ?? []))];
  const [only, more] = named;
  if (more !== undefined && lesser.some(({ at }) => at === undefined)) return undefined;
  return found.map((each) => (each.of === 'lesser' ? { ...each, at: each.at ?? only } : each));
}

/** `two weeks after weil second` as what was done before, operation by operation where their rays are not the same. */
function told(list: string, when: string, side = '', more?: string): string | undefined {
  const found = operationsIn(list);
  if (!found || found.length === 0) return undefined;
  const places = [...new Set(found.map(({ at }) => at))];
  const clauses = places.map((at) => {
    const what = found.filter((each) => each.at === at).map(({ is }) => is);
    const place = [side, at ?? ''].filter((each) => each !== '').join(' ');
    const noted = more ? ` ${remark(more)}` : '';
    return at === undefined
      ? `| history ${side} previous surgery ${what.join(' ')} ${when}${noted}`
      : `| history previous surgery ${place} ${what.join(' ')} ${when}${noted}`;
  });
  return `${clauses.join(' ')} |`.replace(/ +/g, ' ');
}
/** `day ten`, `week six`: as a length of time. */
const ago = (when: string): string => {
  const [unit = '', count = ''] = when.replace(/^post ?op(?:erative(?:ly)?)? /, '').split(' ');
  return /^~?\d/.test(unit) ? `${when} ago` : `${count} ${unit}s ago`;
};
/** Is it of what a row before has written? */
const isTold = ({ input = '', index = 0 }: RegExpMatchArray): boolean =>
  /previous surgery [^|;,]*$/.test(input.slice(0, index));
/** A time after an operation may be that of an order (`plan review six weeks after second weil`, `boot until`). */
const isOrdered = ({ input = '', index = 0 }: RegExpMatchArray): boolean =>
  /(?<![^ ])(?:plan [^;\n]*|(?:out|off|until|till|from|start\w*|back|return|by|for|due|book\w*|see|stays?|removed|to|in|at|about) )$/.test(
    input.slice(0, index),
  );
/** A side right after an operation may be its own, unless the operation has named the same. */
function mayBeSided({ input = '', index = 0, 0: { length } }: RegExpMatchArray, side: string): boolean {
  const next = SIDE_NEXT.exec(input.slice(index + length))?.[1];
  return next !== undefined && next !== side;
}
const SIDE_NEXT = new RegExp(`^(?: ${NTHS}${TOE})? (right|left)(?: |$)`);
/** Told of the time since an operation. */
const since = (m: RegExpMatchArray): string | undefined => {
  const side = sideOf(m[2] ?? '');
  if (isOrdered(m) || mayBeSided(m, side)) return undefined;
  return told(sideless(m[2] ?? ''), ago(m[1] ?? ''), side, m[3] && `under ${m[3]}`);
};
const sideOf = (text: string): string => /(?<![^ ])(?:right|left)(?![^ ])/.exec(text)?.[0] ?? '';
const sideless = (text: string): string => text.replace(/(?<![^ ])(?:right|left) /, '');

/** Operations before this visit, with the time since then. */
export const OPERATED: readonly Phrase[] = [
  [
    `(?:(?:rang|rings|called|phoned|seen) )?((?:post ?op(?:erative(?:ly)?)? )?(?:week|day|month) \\d+|${TIMES})(?:(?: (?:post ?op(?:eratively)?|out|on|down the line|check|review|follow up))?(?: ,)? (?:following|after|since|from|post|of|status post)| (?:post ?op(?:erative)? )?(?:check|review|follow up))(?: (?:the |her |his )?(?:surgery|operation|procedure)(?: (?:on|to))?)? (?:an? |her |his |the )?((?:(?:right|left) )?${LIST}${LAST})${BLOCK}${NOT_DONE}`,
    since,
  ],
  // Without a word between, where the note opens with it.
  [
    `(?<=^(?:visit )?)((?:post ?op(?:erative(?:ly)?)? )?(?:week|day|month) \\d+|${TIMES})(?: post ?op(?:eratively)?)?(?: ,)? ((?:(?:right|left) )?${LIST}${LAST})${BLOCK}${NOT_DONE}`,
    since,
  ],
  [
    `(?<!(?:no|not|never|for|declined|refused|offered|before|until) )(?:(?:she|he) )?(?:has )?(?:had )?(?:an? )?((?:(?:right|left) )?${LIST}(?: (?:of |on |to )?(?:the )?(?:(?:right|left) )?${NTHS}${TOE})?) (${TIMES}) ago(?: (elsewhere|privately|abroad|by another surgeon))?${NOT_DONE}(?! on)`,
    (m) => (isTold(m) ? undefined : told(sideless(m[1] ?? ''), `${m[2]} ago`, sideOf(m[1] ?? ''), m[3])),
  ],
];
