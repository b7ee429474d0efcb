import * as closed from '../lexicon/closed-words.ts';
import { SPOKEN_CLASSES } from './spoken-classes.ts';

/** One class of words that are not findings: what a reader of the reference must know, and lines that show it. */
export interface WordClass {
  readonly name: string;
  readonly words: readonly string[];
  readonly rule: string;
  readonly examples: readonly string[];
}

/** The rules of reading, class by class. What each example reads as is added by the reader itself. */
export const WORD_CLASSES: readonly WordClass[] = [
  {
    name: 'No',
    words: closed.NO,
    rule: 'Denies the one finding after it; a place or one adjective may stand between. Directly after a bare finding it makes both unclear, since it could belong to either. It is never a value where a word follows. A bare finding after the denied one is unclear until a `;` or `.`, another subject, or a value of its own. At the end, after a bare finding, it denies that finding.',
    examples: ['2nd no plantar tenderness', '2nd tender no swelling', '2nd no redness, swelling', 'fever no'],
  },
  {
    name: 'Or, nor',
    words: closed.LIST_ENDERS,
    rule: 'Carry a `no` through a list: all of its findings are denied.',
    examples: ['web 2 no click, squeeze or numbness'],
  },
  {
    name: 'Adjectives after no',
    words: closed.HARMLESS_ADJECTIVES,
    rule: 'One of them may stand between `no` and its finding and changes nothing.',
    examples: ['2nd no obvious swelling'],
  },
  {
    name: 'Not',
    words: closed.NOT,
    rule: 'Denies a finding that it touches. Before a value, or anywhere else, it makes the finding unclear.',
    examples: ['2nd not tender', '2nd drawer not 2', '2nd drawer 1 not sore'],
  },
  {
    name: 'Absent',
    words: closed.ABSENT,
    rule: 'Deny the finding before them and never look ahead. An absent finding that also has a value is unclear. Of a test whose results are words, `negative` says nothing and is reported.',
    examples: ['web 2 click none, squeeze neg', '2nd no swelling moderate', '2nd paper neg'],
  },
  {
    name: 'Present and positive',
    words: [...closed.PRESENT, ...closed.POSITIVE],
    rule: 'Assert the finding before them. Of a test whose result has a name or a grade, `positive` alone says nothing and is reported, unless it is one of the results.',
    examples: ['web 2 click positive', '2nd paper positive'],
  },
  {
    name: 'How much, in signs',
    words: closed.MUCH,
    rule: 'Touching a sign, or at the end of its segment, they assert it and are kept as typed beside it: no published cut turns them into mild, moderate or severe.',
    examples: ['2nd TTP++', '2nd swelling+++, drawer 1', '2nd no swelling ++'],
  },
  {
    name: 'Not done',
    words: closed.NOT_DONE,
    rule: 'The test before them was not done. That is a statement; a test that is not mentioned is none.',
    examples: ['2nd drawer not done'],
  },
  {
    name: 'Unable',
    words: closed.UNABLE,
    rule: 'The test before them could not be done; the reason may follow in quotes. `no … possible` says the same.',
    examples: ['2nd drawer unable "too sore"', '2nd no drawer possible'],
  },
  {
    name: 'Why not',
    words: closed.REASONS,
    rule: 'Directly after a test that was not done or not possible: kept as a remark beside it. Anywhere else they are reported.',
    examples: ['2nd drawer not done too sore', '2nd drawer 2 too sore'],
  },
  {
    name: 'Equivocal',
    words: closed.EQUIVOCAL,
    rule: 'The finding before them is neither present nor absent. A question mark that touches a sign says the same; at a value it makes that value unclear; free-standing it makes its neighbours unclear.',
    examples: ['web 2 click equivocal', '2nd ?tender', '2nd drawer ?2', '2nd tender ? swelling'],
  },
  {
    name: 'Distancing words',
    words: [...closed.DISTANCING, ...closed.DENYING, ...closed.HOLDING],
    rule: 'Move a finding away from this patient, this foot, today, or fact. The findings between the commas around them are unclear; before its finding such a word also reaches the bare findings that follow; alone between commas or in a sentence it makes the finding before it unclear. A condition, another person or another foot holds for the rest of the statement.',
    examples: [
      '2nd drawer 2 previously',
      '2nd tender, resolved',
      '2nd was red, swollen',
      'other side 2nd drawer 1, medial 5°',
    ],
  },
  {
    name: 'Words that assert',
    words: closed.HARMLESS,
    rule: 'Change nothing.',
    examples: ['2nd still tender'],
  },
  {
    name: 'Small words',
    words: closed.FILLERS,
    rule: 'Are passed over.',
    examples: ['the 2nd is tender'],
  },
  {
    name: 'Avoid',
    words: closed.AVOID,
    rule: 'In a plan, like `no`: the treatment after it is to be avoided.',
    examples: ['plan no steroid', 'plan avoid steroid'],
  },
  {
    name: 'Normal',
    words: closed.PANEL,
    rule: 'Alone after a ray or a web it stands for the named list of findings that the clinic has set; what that list does not name stays not mentioned. Beside other findings it is reported.',
    examples: ['4th-5th normal', '2nd normal tender'],
  },
  {
    name: 'Other rays',
    words: closed.OTHERS,
    rule: 'The lesser rays without a statement in the visit.',
    examples: ['others tender none'],
  },
  {
    name: 'Sides',
    words: Object.keys(closed.SIDES),
    rule: 'Before a finding or a subject, after a section word, or at the end of a segment. Two sides, each beside its value, say a finding of both feet. Alone on a line they are a heading. `R2` and `L2` are the right and the left second ray.',
    examples: ['right 2nd tender', 'R2 tender', 'abi right 0.9 left 1.0', 'monofilament 4/10 R 6/10 L', 'right'],
  },
  {
    name: 'Ray words',
    words: [...closed.RAY_WORDS, ...closed.JOINT_WORDS, ...closed.JOINTS_WORDS],
    rule: 'Name rays together with their numbers, which are read all or not at all. After an ordinal a joint word belongs to the subject, unless it is a finding whose result follows. Several ordinals, or several numbers after a plural, may stand side by side before their finding. `MT2` is the metatarsal.',
    examples: ['MTPs 2,3,5 tender', '2nd 3rd 4th MTPs drawer 0', 'toes 3/4 tender', '2nd mtp tender', '2nd mtp rigid'],
  },
  {
    name: 'Web words',
    words: closed.WEB_WORDS,
    rule: '`web 2` is the second space, `webs 2-3` the second and the third. `web 2-3` could be one space or two and is reported.',
    examples: ['webs 2-3 click none', 'web 2-3 click'],
  },
  {
    name: 'Other parts of the body',
    words: closed.FOREIGN_PARTS,
    rule: 'No finding takes them as a place, so the findings beside them are unclear.',
    examples: ['2nd heel tender'],
  },
  {
    name: 'Red-flag words',
    words: closed.RED_FLAG_WORDS,
    rule: 'Text with one of these is reported wherever it could not be read with certainty. It reports; it never computes.',
    examples: ['calf sore'],
  },
  ...SPOKEN_CLASSES,
];
