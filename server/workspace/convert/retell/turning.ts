import * as closed from '../../../../grammar/lexicon/closed-words.ts';
import type { Section } from '../../../../grammar/lexicon/entry.ts';
import { formIndex } from '../../../../grammar/reader/forms.ts';
import { CONNECTIVES, CORRECTIONS } from '../../../../grammar/spoken/spoken-words.ts';
import { APART } from './series.ts';

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
    APART,
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
  '|mum|dad|wife|husband|daughter|son|aunt|uncle|grandmother|other (?:leg|one|clinic|patient)|risks?|discuss\\w*|offer\\w*|talk\\w*|explain\\w*|consent\\w*|warn\\w*|told|tell|advis\\w*|counsel\\w*|understand\\w*|knows about|aware of|(?<!at )once(?! (?:a|per|each|every|daily|weekly|more)(?: |$))|provided (?=the|that|skin|she|he|it)|assuming|whether|no (?:sign|evidence|suggestion|hint) of|not able|(?:opposite|unaffected|contralateral) (?:foot|leg|side|toes?)(?! s)|(?:good|well) (?:foot|leg|side)|wonder\\w*|think|thought|thinks|expect\\w*|worr\\w*|concern\\w*|rul\\w+ out|suspect\\w*|in case|look(?:ing)? (?:out )?for|watch\\w*|return if|come back if|including|include|such as|e g|for example|asked|asks|outside|not (?:buying|convinced)|disagree\\w*|s[ck]eptical|wants?|hop(?:es?|ing)|option\\w*|consider\\w*|if',
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
  "|doubt\\w*|otherwise|else|alternatively|\\w+n['’]t|(?:did|does|is|was|were|has|have|had|would|could|should|ca|wo|do|are)nt|cannot|unlikely|lacks?|lacking|free of|clear of|neither|nothing|nobody|instead|stop\\w*|ended|went (?:away|down)|disappear\\w*|subsid\\w*|improv\\w*|wors\\w*|better|vanish\\w*|actually|wait|oops|wrong|mistake|previous\\w*|prior|old|past|last|until|till|query|initial|baseline|pre ?op|preoperative|normally|usually|target|aim";
const DISTANCES = pattern(DENIAL, DENIED);
/** A denial, a doubt, a comparison, or another time: it may turn what a comma parts from it. */
export const distances = (text: string): boolean => DISTANCES.test(text);

const TURNING = pattern(
  [...DENIAL, ...closed.RED_FLAG_WORDS, ...closed.OTHERS, ...closed.FOREIGN_PARTS],
  `${DENIED}|both|either|side|right|left|first|second|third|fourth|fifth|toes?|rays?|webs?|\\d\\S*|years? old|next|since|during|while|shoulder|elbow|hip|groin|fingers?|thumb|jaw|spine|eyes?|breast|stomach|abdom\\w+|thigh|shin|hands|scar|dressings?|plaster|bandage`,
);
/** The same, or danger, a part that is not of the toe, a number, a side or a ray: it may turn what stands beside it. */
export const turns = (text: string): boolean => TURNING.test(text);

const BACK =
  /^(?:not|none|never|neg|negative|absent|but|except|only|actually|sorry|wait|correction|scratch|unless|until|when|which|was|were|had|maybe|possibly|probably|perhaps|though|although|apparently|gone|resolved|resolving|better|worse|than|versus|compared|last|ago|previously|before|initially|originally|normally|usually|sometimes|occasionally|rarely|hardly|barely|almost|nearly|then|after|now|i mean|make|rather|or|apart|aside|bar|save|excluding|besides|other than)(?![\p{L}])/iu;
/** `no wait there is one`, `no make that ten weeks` */
const PUTS_RIGHT =
  /^(?:(?:um|uh|er|oh|well) )*(?:no|nope) (?:wait|make (?:that|it)|sorry|hang on|hold on|actually|there is|it is|its|it's)(?![^ ])/;
/** May words that open a segment be of the segment before (`tender, none`; `drawer 2, but that was under block`)? */
export const bindsBack = (words: readonly string[]): boolean =>
  BACK.test(words.join(' ')) ||
  PUTS_RIGHT.test(words.join(' ')) ||
  (words.length === 1 && closed.NO.includes(words[0] ?? ''));

/** Words that say more of what they follow: where, when, under what. What they turn a finding into is not certain. */
const LEANS =
  /^(?:in|at|on|as|under|for|since|during|by|from|around|within|between|against|despite|because|due|according|when|while|if|to|like|or|per|through|via|down|away|up|out)$/;
/** Do words after the end of a clause lean on it, or turn it? */
export function leans(words: readonly string[]): boolean {
  const near = words.slice(0, NEAR).join(' ');
  return (
    LEANS.test(words[0] ?? '') ||
    bindsBack(words) ||
    turns(words.slice(0, 2).join(' ')) ||
    distances(near) ||
    holds(near)
  );
}
/** Nouns and endings that make one thing of a finding before them (`gout tablets`). */
export const joinsNoun = (word: string): boolean =>
  /^(?:clinics?|supports?|insoles?|bottle|tablets?|pills?|cream|inhaler|rash|risks?|maker|file|free|like|type|related|induced|medication|specialist|nurse|team|notes?|letter|leaflet|advice|score|scale|diary|service|class|group|protocol|allergy|history|scar|site|wound|dressing|intact|good|fine|ok|okay|happy|poor|bad|normal|abnormal|equal|secure|satisfactory|reasonable|excellent|improving)$/.test(
    word,
  );
/** Do they make what they stand before a cause, an aim or a part of something else? */
export const governs = (word: string): boolean =>
  /^(?:for|of|to|from|by|about|because|due|remove|removed|discontinue|finish|finished|enough|omit|omitted|withhold|withheld|refuses?|declines?|postpone|gave|received|completed|allergic|rash|reduce\w*|prevent\w*|avoid\w*|caus\w*|treat\w*|help\w*|with|without|than|as|like|called|named|into|against|any|more|less|much|that|which|cause|if|has|have|had|got|gets|alternate|half|some|most|part|partial|partially|remaining|rest|few|every|other|another|residual|old|new|phantom|false)$/.test(
    word,
  );
/** Words that open what stands after them, so that it is a finding of its own. */
export const opensFinding = (word: string): boolean =>
  /^(?:and|also|then|so|now|still|today|is|are|looks|very|known)$/.test(word);

const REFUSES =
  /(?<![^ ])(?:refus\w*|declin\w*|(?:not|isn't|wasn't) (?:keen|sure|happy|interested|certain)|(?:doesn't|does not|didn't|did not) (?:want|wish|like)|unsure|against it|no thank\w*|cancel\w*|postpon\w*|think about it|gone|resolved|settled|wrong|ignore)(?![^ ])/;
/** A short sentence that takes back what was said before it (`she declined`). */
export const refuses = (words: readonly string[]): boolean =>
  (words.length <= 6 && REFUSES.test(words.join(' '))) || PUTS_RIGHT.test(words.join(' '));

const TREATED: readonly Section[] = ['tried', 'plan', 'operation'];
/** After a clause that a turn of phrase closed: do words go back to it? */
export const goesBack = (words: readonly string[]): boolean =>
  bindsBack(words) || LEANS.test(words[0] ?? '') || REFUSES.test(words.slice(0, 4).join(' '));

/** After a comma: do words say of what stands before it that it is not so, not sure, or of another person, place or time? */
export function takesBack(words: readonly string[], section: Section): boolean {
  const near = words.slice(0, NEAR).join(' ');
  if (bindsBack(words) || LEANS.test(words[0] ?? '')) return true;
  if (
    /^no (?:\d|help|joy|good|use|luck|difference|change|better|improvement|effect|benefit|relief|response|avail|thank)/.test(
      near,
    )
  )
    return true;
  if (/^(?:no|not) /.test(near) || ACT.test(near)) return false;
  if (THING.test(near)) return turns(near.replace(THING, ''));
  if (PERSON.test(near)) return REFUSES.test(near) || (TREATED.includes(section) && (distances(near) || holds(near)));
  return distances(near) || holds(near) || /(?<![^ ])at (?:least|most)(?![^ ])/.test(near);
}

/** `no previous anaesthetic problems`: a denial of its own. */
const DENIED_NOUN =
  /^(?:and |but )?no (?!\d|one|sorry|wait|longer|more$|i |it |she |he |actually|make|thank|better|worse|change|help|joy|good|use|luck|difference|improvement|effect|benefit|relief|response|scratch)[a-z]{3,}/;
/** What the speaker did or said is a statement of its own. */
const ACT =
  /^(?:and |so |i |we |i've |i have )*(?:told|explained|advised|discussed|warned|counselled|spoke|called|phoned|rang|talked|reassured|consented|injected|asked to|wean|keep|carry|continue|start|see|review|refer|get|book|list|try|add|give|use|back to|return to|discharge|understands|aware)(?= |$)/;
/** An opinion that opens with what it is of. */
const THINKS =
  /^(?:and |so )*i (?:think|suspect|reckon|believe|feel) (?:that )?(?:this|it is|it's|we|she|he|there)(?= |$)/;
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
  if (ACT.test(text) || THINKS.test(text)) return true;
  if (DENIED_NOUN.test(text)) return !holds(words.slice(0, NEAR).join(' '));
  const own = (pattern: RegExp, rest: string) => !turns(rest.replace(pattern, ''));
  if (THING.test(text)) return own(THING, text) && !holds(text);
  const near = words.slice(0, NEAR).join(' ');
  if (PERSON.test(text)) return own(PERSON, near) && !holds(near);
  const named = /^(?:last|the|her|his|an|a|and|so)$/.test(words[0] ?? '') ? words[1] : words[0];
  if (closed.SECTION_WORDS[named ?? '']?.strong) return !holds(near);
  if (isFinding(words[0] ?? ''))
    return !holds(near) && !/^\S+ (?:before|previously|then|last|earlier|in|was|at|with|on)(?= |$)/.test(near);
  return hasSubject && SUBJECT.test(text) && own(SUBJECT, near) && !holds(near);
}

/** Do words that open with a person tell of another time, or what somebody says? */
export const tellsOf = (words: readonly string[]): boolean =>
  /^(?:and |but )?(?:she|he|they|it|patient) (?:says?|said|thinks?|thought|reckons|tells|told|heard|read|was|were|had|used)(?= )/.test(
    words.join(' '),
  );
/** Does a ray open what follows, which then takes nothing back? */
export const opensRay = (words: readonly string[]): boolean =>
  /^(?:(?:and|so|now|then|the) )*(?:(?:right|left) )?(?:the )?(?:[1-5](?:st|nd|rd|th)\S*|second|third|fourth|fifth)(?= |$)/.test(
    words.join(' '),
  ) &&
  !/(?<![^ ])(?:sorry|wait|i mean|meant|actually|scratch|or|wrong|rather|make that|correction|time|opinion|visit)(?![^ ])/.test(
    words.slice(0, OPENED).join(' '),
  );
const OPENED = 8;
/** After a test with its result: do the next words neither lean on it, nor deny, doubt or move it? */
export const turnsNothing = (words: readonly string[]): boolean =>
  !bindsBack(words) &&
  !LEANS.test(words[0] ?? '') &&
  !distances(words.slice(0, 3).join(' ')) &&
  !holds(words.slice(0, NEAR).join(' ')) &&
  !joinsNoun(words[0] ?? '') &&
  !/^(?:(?:and|the) )*(?:\d|second|third|fourth|fifth|right|left)/.test(words.join(' '));

/** The first word of a finding or a section: what it opens is of its own. */
export const isFinding = (word: string): boolean =>
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
