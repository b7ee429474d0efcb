import * as closed from '../lexicon/closed-words.ts';
import type { Entry, Section, Slot } from '../lexicon/entry.ts';
import { CLOSED_FORMS, type Context, entriesIn, openersOf, sectionWordsIn, valueForms } from './contexts.ts';
import { LETTER, phrases } from './phrases.ts';
import { anyCase, captures, match, type Rule, type Rules, SCOPES } from './textmate-rules.ts';
import { AGO, PAIR, subjects } from './textmate-shapes.ts';

/** The rules of each section: which words are findings there, and which are values after each of them. */
export function contextRules(context: Context): Rules {
  const { section } = context;
  const entries = entriesIn(section);
  const findings = entries.map((entry) => [`${section}-${entry.id}`, findingRule(entry, context)]);
  return {
    [section]: {
      patterns: [
        { include: '#verbatim' },
        { include: `#${section}-subject` },
        { include: `#${section}-before` },
        ...entries.map(({ id }) => ({ include: `#${section}-${id}` })),
        ...(section === 'plan' ? [match(SCOPES.negation, phrases(closed.AVOID, CLOSED_FORMS))] : []),
        { include: '#rest' },
      ],
    },
    [`${section}-subject`]: { patterns: subjects(context) },
    [`${section}-before`]: { patterns: valuesBefore(context) },
    [`${section}-among`]: amongValues(context),
    ...Object.fromEntries(findings),
  };
}

const standsBefore = (slot: Slot): boolean => slot.before === true || slot.locating === true;

/** Phrases that are read in place of a shorter one that they start with. */
export const longerIn = ({ section }: Context): string[] => [
  ...CLOSED_FORMS,
  ...entriesIn(section).flatMap((entry) => openersOf(entry, section)),
];

/** `no plantar tenderness`, `moderate swelling`. */
function valuesBefore(context: Context): Rule[] {
  const pairs = entriesIn(context.section).flatMap((entry) => {
    const forms = valueForms(entry, standsBefore);
    if (forms.length === 0) return [];
    const finding = phrases(openersOf(entry, context.section));
    return [String.raw`${phrases(forms, longerIn(context))}(?=\s+${finding})`];
  });
  return pairs.length === 0 ? [] : [match(SCOPES.value, pairs.join('|'))];
}

const BREAK = String.raw`[,;]|\.(?:\s|$)|//`;
/** The values of a finding end where nothing that may stand among them is next: at a break, a section word, the next finding. */
const VALUES_END = { end: String.raw`$|(?=\S)`, applyEndPatternLast: 1 } as const;

/**
 * One word, number or sign among the values of a finding that opens nothing itself. The long list of what opens something
 * stands here once a section; at every finding it would be most of the grammar.
 */
function amongValues(context: Context): Rule {
  const { section } = context;
  const openers = entriesIn(section).flatMap((each) => openersOf(each, section));
  const next = phrases([...sectionWordsIn(context, true), ...openers], longerIn(context));
  return {
    begin: anyCase(String.raw`(?=\S)(?!${BREAK}|${next})`),
    end: String.raw`(?!\G)`,
    patterns: [{ include: '#rest' }, { match: String.raw`${LETTER}+(?:[-'’/]${LETTER}+)*|\S` }],
  };
}

/** From the finding word on, its own values come before all else. */
function findingRule(entry: Entry, context: Context): Rule {
  return {
    begin: anyCase(`(${phrases(openersOf(entry, context.section), longerIn(context))})`),
    beginCaptures: captures(SCOPES.finding),
    ...VALUES_END,
    patterns: valuesOf(entry, context),
  };
}

function valuesOf(entry: Entry, context: Context): Rule[] {
  const { section } = context;
  const slots = Object.values(entry.slots);
  const forms = valueForms(entry);
  const longer = [...longerIn(context), ...forms];
  return [
    ...(slots.some(({ kind }) => kind === 'pair') ? [PAIR] : []),
    { include: '#verbatim' },
    { include: `#${section}-subject` },
    ...(forms.length > 0 ? [match(SCOPES.value, phrases(forms, longer))] : []),
    ...(slots.some(({ kind }) => kind === 'date') ? [AGO] : []),
    { include: `#${section}-before` },
    { include: `#${section}-among` },
  ];
}

const SIDE_HEADING = String.raw`(${phrases(Object.keys(closed.SIDES))})\s*([:=])\s*`;
const STATEMENT_START = String.raw`(?:^\s*(?:${SIDE_HEADING})?|(?<=;)\s*|(?<=\.)\s+)`;

/** A section reaches from its word to the next section word, at most to the end of the line. */
export function sectionRule(section: Section): Rules {
  const context: Context = { section, named: true };
  const opens = (strong: boolean, start: string, ...scopes: readonly string[]): Rule[] => {
    const words = Object.entries(closed.SECTION_WORDS).filter(([, row]) => row.section === section);
    const forms = words.flatMap(([word, row]) => (row.strong === strong ? [word] : []));
    if (forms.length === 0) return [];
    const begin = anyCase(`${start}(${phrases(forms, longerIn(context))})`);
    const patterns = [...ownFinding(context), { include: `#${section}` }];
    return [{ begin, beginCaptures: captures(...scopes, SCOPES.section), end: sectionEnd(context), patterns }];
  };
  const anywhere = opens(true, '');
  const atStart = opens(false, STATEMENT_START, SCOPES.heading, SCOPES.separator);
  return { [`section-${section}`]: { patterns: [...anywhere, ...atStart] } };
}

/** A strong section word, or any at the start of a statement. */
function sectionEnd(context: Context): string {
  const longer = longerIn(context);
  const any = phrases(sectionWordsIn(context), longer);
  const strong = phrases(sectionWordsIn(context, true), longer);
  return anyCase(String.raw`$|(?=${strong})|(?<=;)(?=\s*${any})|(?<=\.)(?=\s+${any})`);
}

/** `pain 2nd plantar 6/10`: the section word is also its finding, so values may follow at once. */
function ownFinding(context: Context): Rule[] {
  const entry = entriesIn(context.section).find(({ id }) => id === context.section);
  if (!entry) return [];
  const nothing = String.raw`\s*(?:${BREAK}|$|${phrases(sectionWordsIn(context, true), longerIn(context))})`;
  return [{ begin: anyCase(String.raw`\G(?!${nothing})`), ...VALUES_END, patterns: valuesOf(entry, context) }];
}
