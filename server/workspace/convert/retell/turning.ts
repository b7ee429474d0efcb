import * as closed from '../../../../grammar/lexicon/closed-words.ts';
import { formIndex } from '../../../../grammar/reader/forms.ts';
import { CONNECTIVES, CORRECTIONS } from '../../../../grammar/spoken/spoken-words.ts';

/** What words that were not read may do to a proposal beside them. */

const pattern = (phrases: readonly string[], more = ''): RegExp =>
  new RegExp(
    `(?<![\\p{L}\\d])(?:${phrases.map((each) => each.replace(/[+/]/g, '\\$&')).join('|')}${more})(?![\\p{L}\\d])`,
    'iu',
  );

/** They join, and turn nothing. */
const NEUTRAL: ReadonlySet<string> = new Set(
  [
    ...closed.FILLERS,
    ...closed.HARMLESS,
    ...CONNECTIVES,
    'well',
    'right',
    'left',
    'foot',
    'ok',
    'then',
    'just',
  ].flatMap((each) => each.split(' ')),
);
const SIDE_OR_RAY =
  /^(?:right|left|[1-5](?:st|nd|rd|th)(?:-[1-5](?:st|nd|rd|th))?|toe|mtp|ray|joint|web|webs|[1-4]|side)$/;
export const isNeutral = (words: readonly string[]): boolean =>
  words.every((word) => NEUTRAL.has(word) || SIDE_OR_RAY.test(word));

/** Tests of a web that nobody named, and what else has no place: said whole, they turn nothing beside them. */
const COMPLETE =
  /(?<![^ ])(?:(?:no|negative) (?:mulders|click|numbness|tingling)(?: (?:either side|anywhere|in any (?:web|space)))?|(?:mulders|click) (?:is )?negative|\u00a7\S+)(?![^ ])/gu;
export const isComplete = (text: string): boolean => {
  const rest = text.replace(COMPLETE, ' ').trim();
  return rest !== text.trim() && isNeutral(rest.split(/\s+/).filter((word) => word !== ''));
};

/**
 * A condition, another person or foot, and what was only spoken of (risks, offers, advice, doubts): the rest of the sentence may belong to it.
 */
const HOLDING = pattern(
  closed.HOLDING,
  '|mum|dad|wife|husband|daughter|son|aunt|uncle|grandmother|other (?:leg|one|clinic|patient)|risks?|discuss\\w*|offer\\w*|talk\\w*|explain\\w*|consent\\w*|warn\\w*|told|tell|advis\\w*|counsel\\w*|understand\\w*|wonder\\w*|think|thought|thinks|expect\\w*|worr\\w*|concern\\w*|rul\\w+ out|suspect\\w*|in case|look(?:ing)? (?:out )?for|watch\\w*|return if|come back if|including|include|such as|e g|for example|asked|asks|wants?|hop(?:es?|ing)|option\\w*|consider\\w*|if',
);
export const holds = (text: string): boolean => HOLDING.test(text);

const DENIAL: readonly string[] = [
  ...closed.DISTANCING,
  ...closed.NO,
  ...closed.NOT,
  ...closed.AVOID,
  ...closed.ABSENT,
  ...closed.NOT_DONE,
  ...closed.UNABLE,
  ...closed.EQUIVOCAL,
  ...CORRECTIONS,
].filter((each) => !/^[-+]/.test(each));
const DENIED =
  "|otherwise|else|alternatively|\\w+n['’]t|(?:did|does|is|was|were|has|have|had|would|could|should|ca|wo|do|are)nt|cannot|unlikely|lacks?|lacking|free of|clear of|neither|nothing|nobody|instead|stop\\w*|ended|went (?:away|down)|disappear\\w*|subsid\\w*|improv\\w*|wors\\w*|better|vanish\\w*|actually|wait|oops|wrong|mistake|previous\\w*|prior|old|past|last|until|till|query|initial|baseline|pre ?op|preoperative|normally|usually|target|aim";
const DISTANCES = pattern(DENIAL, DENIED);
/** A denial, a doubt, a comparison, or another time: it may turn what a comma parts from it. */
export const distances = (text: string): boolean => DISTANCES.test(text);

const TURNING = pattern(
  [...DENIAL, ...closed.RED_FLAG_WORDS, ...closed.OTHERS, ...closed.FOREIGN_PARTS],
  `${DENIED}|both|either|side|right|left|first|second|third|fourth|fifth|toes?|rays?|webs?|\\d\\S*|years? old|next|since|during|while`,
);
/** The same, or danger, a part that is not of the toe, a number, a side or a ray: it may turn what stands beside it. */
export const turns = (text: string): boolean => TURNING.test(text);

const BACK =
  /^(?:not|none|never|neg|negative|absent|but|except|only|actually|sorry|wait|correction|scratch|unless|until|when|which|was|were|had|maybe|possibly|probably|perhaps|though|although|apparently|gone|resolved|resolving|better|worse|than|versus|compared|last|ago|previously|before|initially|originally|normally|usually|sometimes|occasionally|rarely|hardly|barely|almost|nearly|then|after|now|i mean|make|rather|or)(?![\p{L}])/iu;
/** May words that open a segment be of the segment before (`tender, none`; `drawer 2, but that was under block`)? */
export const bindsBack = (words: readonly string[]): boolean =>
  BACK.test(words.join(' ')) || (words.length === 1 && closed.NO.includes(words[0] ?? ''));

const PERSON =
  /^(?:and )?(?:(?:right|left) )?(?:she|he|i|we|they|you|she's|he's|i've|we've|i'd|i'll|we'll|there|there's)(?= |$)/i;
const THING = /^(?:and )?(?:(?:right|left) )?(?:it|it's|this|that's|so|the|her|his|patient)(?= |$)/i;
const SUBJECT = /^(?:and )?(?:the )?(?:[1-5](?:st|nd|rd|th)|second|third|fourth|fifth|web)(?= |$)/i;
/** So many words may still turn what stands beside them, where it has a place of its own. */
export const NEAR = 5;
/**
 * Do words open a clause of their own, which turns nothing of the one before? A ray opens one only after a clause that has its own; what is said
 * of a thing may go back, so that none of it may turn.
 */
export function opensClause(words: readonly string[], hasSubject: boolean): boolean {
  const text = words.join(' ');
  const own = (pattern: RegExp, rest: string) => !turns(rest.replace(pattern, ''));
  if (THING.test(text)) return own(THING, text) && !holds(text);
  const near = words.slice(0, NEAR).join(' ');
  if (PERSON.test(text)) return own(PERSON, near) && !holds(near);
  const named = /^(?:last|the|her|his|an|a|and|so)$/.test(words[0] ?? '') ? words[1] : words[0];
  if (closed.SECTION_WORDS[named ?? '']?.strong) return !holds(near);
  if (isFinding(words[0] ?? '')) return !distances(near) && !holds(near);
  return hasSubject && SUBJECT.test(text) && own(SUBJECT, near) && !holds(near);
}

/** The first word of a finding or a section: what it opens is of its own. */
const isFinding = (word: string): boolean =>
  (formIndex().get(word) ?? []).some(
    ({ findings, section, values, classes, parts }) =>
      parts.length === 1 && (findings.some(({ lead }) => !lead) || section) && values.size === 0 && classes.size === 0,
  );

let starts: ReadonlySet<string> | undefined;
/** The first words of all that may open a clause: a finding, a section, a side, a denial, a subject, or a word that joins clauses. */
export function clauseStarts(): ReadonlySet<string> {
  if (starts) return starts;
  const found = new Set<string>();
  for (const [first, forms] of formIndex())
    if (
      forms.some(
        ({ findings, section, side, classes }) =>
          findings.length > 0 ||
          section ||
          side ||
          ['no', 'not', 'avoid', 'web word', 'others', 'adjective'].some((name) => classes.has(name as 'no')),
      )
    )
      found.add(first);
  starts = found;
  return found;
}
