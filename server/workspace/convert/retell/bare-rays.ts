import type { SaidWord } from './said-words.ts';

/*
 * An ordinal that is said alone (`drawer second grade two`, `third stable`, `callus second and third`) is a ray beside what only a ray has. Elsewhere it
 * may be a time (`second injection`), a share (`lateral third`) or a turn (`second opinion`), and stays as said.
 */

const NTH: Readonly<Record<string, string>> = {
  first: '1st',
  second: '2nd',
  third: '3rd',
  fourth: '4th',
  fifth: '5th',
};

/** A ray that was written as one already. */
const NAMED = /^[1-5](?:st|nd|rd|th)$/;

/** They name a part of a ray: the ordinal before them is its number, whatever stands before it. */
const PARTS =
  /^(?:toes?|rays?|mtps?|pips?|dips?|mets?|metatarsals?|metatarsophalangeal|heads?|shafts?|necks?|plates?|webs?|webspace|interspace|hammertoe)$/;
/** What is said of a ray after it. */
const SAID_AFTER =
  /^(?:grade|stable|unstable|loose|lax|firm|straight|swollen|puffy|boggy|tender|painful|painless|sore|numb|stiff|fixed|rigid|flexible|supple|reducible|correctable|subluxed|dislocated|hammer|hammered|claw|clawed|clawing|mallet|crossover|crosses|crossing|overlaps|overlapping|overrides|overriding|floating|floats|lifted|deviated|deviates|drifted|drifting|drifts|absent|negative|positive|normal|unremarkable|fine|quiet|free|clear|ok|okay|holds|hold|pulls|fails|reduced|weak|good|lost|gone|dull|blunt|intact|torn|drawer|paper|callus|corn|non|not|mild|moderate|marked|warm|red|swelling|tenderness|sensation|light|purchase|grip|synovitis|effusion|oedema|edema|marrow|numbness|dorsiflexion|motion|extension|deviation|tear)$/;
/** What is said of a ray before it. */
const SAID_BEFORE =
  /^(?:drawer|lachman|stress|purchase|grip|paper|sensation|touch|feeling|tip|pulp|negative|positive|silent|doubtful|equivocal|strong|absent|stable|unstable|tender|tenderness|swollen|swelling|numb|numbness|tingling|callus|callosity|keratosis|corn|hammer|claw|mallet|crossover|plate|tear|synovitis|effusion|oedema|edema|motion|rom|dorsiflexion|plantarflexion|mulders?|click|squeeze|neuroma|mtps?|pip|fracture|reaction|pain|ache|soreness|weil|weils|repair|fusion|transfer|tenotomy|lengthening|arthroplasty)$/;
/** No ray: a time, a turn, a share. */
const NO_RAY =
  /^(?:times?|opinion|injections?|injected|operations?|operated|surgery|surgeries|steroids?|cortisone|jabs?|shots?|visits?|reviews?|appointments?|weeks?|months?|days?|nights?|years?|one|of|to|half|course|attempts?|go|try|trial|lines?|persons?|degrees?|dose|look|hand|stage|procedure|scan|film|mri|ultrasound|xray|set|pair|reading|phase|part|episode|flare|fall|finger|thumb|test|measure|choice|option|thing|point|question|consent|child|pregnancy|floor|generation)$/;
/** Words that make a share, a turn or a count of it. */
const COUNTS =
  /^(?:an?|every|each|per|for|tried|last|this|next|another|in|by|until|since|on|from|lateral|medial|central|middle|distal|proximal|outer|inner)$/;
const SHARES = /^(?:lateral|medial|central|middle|distal|proximal|outer|inner|about|only|least|over|under)$/;
const JOINS = /^(?:and|or|to)$/;

/** The words with every ordinal that can only be a ray written as one. */
export function bareRays(words: readonly SaidWord[]): readonly SaidWord[] {
  let list: SaidWord[] | undefined;
  for (let at = 0; at < words.length; at++) {
    if (!NTH[textAt(words, at)]) continue;
    const end = endOfRun(words, at);
    if (isOfRays(words, at, end)) {
      list ??= [...words];
      for (let i = at; i < end; i++) {
        const word = words[i];
        const nth = NTH[word?.text ?? ''];
        if (word && nth) list[i] = { ...word, text: nth };
      }
    }
    at = end - 1;
  }
  return list ?? words;
}
const isNth = (text: string): boolean => NTH[text] !== undefined || NAMED.test(text);
const textAt = (words: readonly SaidWord[], at: number): string => words[at]?.text ?? '';

/** Ordinals side by side, or joined, are all of them rays or none. */
function endOfRun(words: readonly SaidWord[], from: number): number {
  let end = from + 1;
  for (;;) {
    const joined = JOINS.test(textAt(words, end)) ? end + 1 : end;
    if (!isNth(textAt(words, joined))) return end;
    end = joined + 1;
  }
}

/** So many words on, another ordinal may be of the same list. */
const LIST = 7;
/** Where the next ordinal of a sentence can't be told, the two may pair in more than one way (`drawer second two third one sided`). */
function isOfRays(words: readonly SaidWord[], from: number, end: number): boolean {
  if (NO_RAY.test(textAt(words, end)) || !isBesideRay(words, from, end)) return false;
  if (PARTS.test(textAt(words, end))) return true;
  for (let next = end; next < end + LIST && !/^[;\n]$/.test(textAt(words, next)); next++)
    if (isNth(textAt(words, next))) {
      const until = endOfRun(words, next);
      if (dangles(words, until) && /^\d$/.test(textAt(words, next - 1))) return false;
      const told = NAMED.test(textAt(words, next)) || NO_RAY.test(textAt(words, until));
      return told || isBesideRay(words, next, until);
    }
  return true;
}
/** Does a sentence end with a ray of which nothing is said? The value before it may be its own. */
function dangles(words: readonly SaidWord[], from: number): boolean {
  let at = from;
  while (PARTS.test(textAt(words, at))) at++;
  return /^[,;\n]?$/.test(textAt(words, at));
}
function isBesideRay(words: readonly SaidWord[], from: number, end: number): boolean {
  const [before, after] = [textAt(words, from - 1), textAt(words, end)];
  if (PARTS.test(after)) return true;
  // `first` alone is a time more often than a ray.
  if (textAt(words, from) === 'first' && end === from + 1) return false;
  if (COUNTS.test(before) || (/^[12]$/.test(before) && SHARES.test(textAt(words, from - 2)))) return false;
  return SAID_AFTER.test(after) || SAID_BEFORE.test(before);
}
