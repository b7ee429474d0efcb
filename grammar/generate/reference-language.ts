import * as closed from '../lexicon/closed-words.ts';
import { formsOf, SEX_WORDS, VISIT_SIDES, VISIT_WORDS } from '../lexicon/header-words.ts';
import { EVENT_WORDS, SIGNER_ROLES } from '../lexicon/lifecycle-words.ts';
import { CONVERTED, TIME_UNITS, UNIT_WORDS } from '../lexicon/unit-words.ts';
import { DRAWER_SCALES } from '../values.ts';
import { SECTIONS } from './contexts.ts';
import { DRAWER_SCALE_TEXTS } from './drawer-scales.ts';
import { code, codes, list, paragraphs, table } from './markdown.ts';
import { readingText } from './reading-text.ts';
import { sourceText } from './reference-findings.ts';
import { WORD_CLASSES } from './word-classes.ts';

/** How a note is built and read: all of the reference that is not about single findings. */
export const languageReference = (): string =>
  paragraphs(
    noteReference(),
    lifecycleReference(),
    orderReference(),
    gradeReference(),
    valueReference(),
    wordReference(),
  );

const SAMPLE = `\`\`\`forefoot
forefoot 1
patient KM-207  born 1971  female
scales drawer 0-4

visit 2026-03-09 first right
history  onset gradual 5 months; trigger running
pain     2nd plantar 6/10 push-off "worst barefoot on tile"
2nd      swelling moderate, tender plantar, drawer 2 painful, medial 12°
3rd      tender none, drawer 1, straight
plan     tape 2nd 8 weeks; no steroid; review in 8 weeks  // counts from the visit
\`\`\``;

const headingsOf = (of: string): string[] =>
  Object.entries(closed.HEADING_WORDS).flatMap(([word, opens]) => (opens === of ? [word] : []));

function noteReference(): string {
  const kinds = codes(formsOf(VISIT_WORDS));
  return paragraphs(
    '## A note',
    'One text file per patient, `*.forefoot`. It starts with header lines; each `visit` line opens a visit, which reaches to the next one. Every other line is read by itself.',
    SAMPLE,
    table(
      ['Header line', 'Holds'],
      [
        ['`forefoot 1`', 'the version of the language; without it, version 1'],
        ['`patient`', `a pseudonym, \`born\` and a year, ${codes(formsOf(SEX_WORDS))}; never a name`],
        ['`scales drawer`', `the drawer scale of the file: ${codes(DRAWER_SCALES)}`],
        ['`visit`', `a full date; kind: ${kinds}; side: ${codes(formsOf(VISIT_SIDES))}`],
        ['`allow`', 'the code of a report that is not to be shown again, and the reason'],
      ],
    ),
    list([
      'A line belongs to the exam unless a section word opens another section. A section, like a subject, holds to the end of its line.',
      'Under `operation` stands what was done in a visit of that kind; in any other it may be planned or past, and is unclear: write `operation done`, or `plan`.',
      'Statements end at `;`, at a full stop, or at a section word. A comma ends a segment and closes the values of the finding before it.',
      'A side or a subject alone on a line, or a side before a colon, is a heading: it holds down to the next heading or visit. A ray before a colon and words of its line is of that line alone; no heading gives its ray to a treatment.',
      `A section word and a colon alone on a line are a section heading: every line below it that opens no section of its own stands in it, down to the next blank line, section heading, header line, or a line of capitals or with a colon at its end that is not of the language. So do ${codes(Object.keys(closed.HEADING_WORDS))}; below ${codes(headingsOf('images'))} each line names its image. Under a heading a line may start with the mark of a list (\`-\`, \`*\`, \`1.\`, \`2)\`), which says nothing.`,
      `After ${codes(['imp', 'impression', 'dx'])} stands what the clinician thinks it is: the names of the diagnoses are read, every other word is kept as typed. In the history and under pain a segment with three or more unknown words is a story and is kept as typed. What stands beside such words stays unclear, and a red-flag word is reported wherever it stands.`,
      'Text in quotes is kept as typed, with the finding before it. A quote ends with its line at the latest. `//` starts a comment.',
      'Case does not matter, and within a phrase a hyphen is a space.',
    ]),
    table(['Section', 'Opened anywhere by', 'Opened at the start of a statement by'], SECTIONS.map(sectionRow)),
  );
}

const LIFECYCLE_SAMPLE = `\`\`\`forefoot
visit 2026-07-11 emergency right
2nd      dislocated acute 2 hours, toe-colour pale, sensation normal
event    reduction 14:30
2nd      no dislocation, toe-colour pink, sensation normal
signed   2026-07-11 AB
addendum 2026-07-12 CD
xray     2nd congruent

visit 2026-07-16 review right
carried  2026-07-11 2nd drawer 2
examiner AB: 2nd drawer 1
\`\`\``;

/** How a visit is divided, signed, added to, and what it may bring along. */
function lifecycleReference(): string {
  const events = Object.entries(EVENT_WORDS).map(
    ([kind, others]) => `${code(kind)}${others.length > 0 ? ` (${codes(others)})` : ''}`,
  );
  return paragraphs(
    '## The life of a visit',
    LIFECYCLE_SAMPLE,
    table(
      ['Line', 'Does'],
      [
        [
          '`signed DATE BY`',
          `closes the visit, or the addendum, above it. BY is up to four capital letters, or a role: ${codes(SIGNER_ROLES)}; never a name`,
        ],
        [
          '`signed DATE BY seal SEAL`',
          'the same, with a short checksum of the words above it, written by the action *Seal the signed words*',
        ],
        [
          '`addendum DATE BY`',
          'opens what is added after a signature, on a line of its own; it reaches to the next one',
        ],
        [
          '`event KIND TIME RAY`',
          `divides the visit into before and after; time and ray may be left out. Kinds: ${events.join(', ')}`,
        ],
        [
          '`carried DATE …`',
          'marks the words after it as copied from the visit of that date; alone on a line, it marks the lines below down to the next blank one',
        ],
        [
          '`proposed …`',
          'marks the words after it as proposed by a conversion of dictation; a comment behind them keeps what was said, and a `// dictated:` comment above the whole line',
        ],
        ['`examiner BY …`', 'says who examined what the line says; alone on a line, what the lines below say'],
      ],
    ),
    list([
      'A statement below a signature and in no addendum is reported. It is still read, and printed apart.',
      'A seal covers the lines from the `visit` or `addendum` line to the signature, without comments, blank lines, `allow` lines and the width of white space. Without a seal nothing is claimed. It shows that words were changed, not by whom; signed lines are never formatted.',
      'After an event, a finding of the same subject that is stated again is the one that holds; what is not stated again holds on. A dislocation before a `reduction` has passed once the joint is described after it. Under a `block`, pain, tenderness and feeling say what the block did and are not computed with. Around a reduction, circulation and feeling are asked for on both sides.',
      'Carried words count for nothing until they are confirmed, one by one; the note lists them as not confirmed.',
      'Proposed words count for nothing either; until they are confirmed, the note tells the words that were said.',
    ]),
  );
}

function sectionRow(section: (typeof SECTIONS)[number]): string[] {
  const words = Object.entries(closed.SECTION_WORDS).filter(([, row]) => row.section === section);
  const of = (strong: boolean) => codes(words.filter(([, row]) => row.strong === strong).map(([word]) => word));
  return [section, of(true), of(false)];
}

const shown = (line: string): string[] => [code(line), readingText(line)];

function orderReference(): string {
  return paragraphs(
    '## How a line is read',
    'From left to right. At each place the first of these that fits is taken:',
    [
      '1. the longest phrase of several words,',
      '2. a value of the finding just read, as long as no comma has closed it,',
      '3. a word that opens a finding in this section, by its name or by one of its values,',
      '4. a known word that has no place here: reported,',
      '5. an unknown word: kept as typed and reported.',
    ].join('\n'),
    'A finding that touches a word which was not understood is *unclear*: it is reported and kept as typed, and nothing is computed from it. The rest of the line counts. What is not mentioned is neither normal nor absent.',
    table(
      ['Line', 'Reads as'],
      [
        '2nd drawer 2 painful, medial 12°',
        '2nd drawer 2 zzq tender, swelling',
        'drawer 0 2nd-5th',
        '2nd drawer 2, 3rd drawer 1',
        '2nd drawer 9, tender',
        '2nd shaft tender',
        'tried tape 2nd 6/52 no relief; steroid web 2 3 months ago',
      ].map(shown),
    ),
    'A subject holds until the next one on its line. After its finding (`drawer 0 2nd-5th`) it belongs to that finding only. A finding of the foot or the patient never takes a ray.',
  );
}

function gradeReference(): string {
  const grades = [0, 1, 2, 3, 4];
  const rows = DRAWER_SCALES.map((scale) => {
    const { grades: texts, source, mark, note } = DRAWER_SCALE_TEXTS[scale];
    return [
      code(scale),
      ...grades.map((grade) => texts[grade] ?? 'no such grade'),
      `${sourceText(source, mark)}. ${note}`.trim(),
    ];
  });
  return paragraphs(
    '## Drawer grade, clinical stage, anatomical grade',
    'These are three different things. Each is written with small numbers, and none stands for another:',
    list([
      'the **drawer grade** says how far one joint gives in one test (`drawer 2`),',
      'the **clinical stage** sums up the exam of a ray, from plantar pain without deformity to fixed crossover toe (`stage 2nd 2`),',
      'the **anatomical grade** describes the tear of the plate, as seen at operation or on an image.',
    ]),
    'Stage and anatomical grade were proposed side by side as two systems ([COUGH11](#sources), read there). They can differ: of 35 joints with anatomical grade 0 or I, more than 97 % had drawer grade 1 and none was stable ([NERY-RF](#sources), read there).',
    'For the drawer grade itself three scales are in use, and **the same number means different things on them**:',
    table(['Scale', ...grades.map(String), 'Source'], rows),
    'No source that could be read says where exactly half belongs, or gives millimetres for a grade. Write the scale once in the header (`scales drawer 0-4`) or with the finding (`drawer 2 scale 0-3`). A grade without a scale is kept as *scale not stated*; a stage computed from it takes 0-4 and shows that assumption.',
  );
}

function valueReference(): string {
  const units = new Map<string, string[]>();
  for (const [word, unit] of Object.entries(UNIT_WORDS)) units.set(unit, [...(units.get(unit) ?? []), word]);
  const converted = Object.entries(CONVERTED).map(([word, { to, factor }]) => `${code(word)} (${factor} ${to})`);
  return paragraphs(
    '## Values',
    list([
      `Numbers take a unit: ${[...units.values()].map(codes).join('; ')}. Converted: ${converted.join(', ')}. Times are ${codes(TIME_UNITS)}.`,
      '`~` is about, `<` under, `>` over; `10-15°` is a range. A range of grades joins two neighbours only.',
      '`3/52` is three weeks, `2/12` two months, `5/7` five days.',
      'Dates are `2026-03-09`, or `2026-03` where the day is not known. `3 weeks ago` counts from the visit. `04/05/26` could be two days and is reported, not read.',
      'A number out of range, or in a unit that does not fit, makes its value unclear.',
    ]),
  );
}

function wordReference(): string {
  const classes = WORD_CLASSES.map((each) =>
    paragraphs(
      `### ${each.name}`,
      codes([...new Set(each.words)]),
      each.rule,
      table(['Line', 'Reads as'], each.examples.map(shown)),
    ),
  );
  return paragraphs('## Words with a rule of their own', ...classes);
}
