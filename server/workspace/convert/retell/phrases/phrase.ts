/**
 * How things are said, and how the language writes them. A row is a pattern over whole words as they would be typed (numbers in digits, breaks as
 * `,` and `;`; `|` parts two clauses), and what stands for it; `undefined` leaves the words. Rows apply in order. None drops a word that denies, doubts, compares,
 * or moves a finding to another time, person or foot: those stay, and the reader refuses what they reach. What follows is only proposed.
 */
export type Phrase = readonly [find: string, to: string | ((match: RegExpMatchArray) => string | undefined)];

export const RAY = '[1-5](?:st|nd|rd|th)';
export const RAYS = `${RAY}(?:(?:-| to | and | )${RAY})*`;
export const OF = '(?:of|on|in|at|for|over|under|to)';
export const THE = '(?:(?:the|her|his|their|that|this) )?';
export const NUM = '[<>~]?\\d+(?:\\.\\d+)?(?:-\\d+)?';
export const TIME = '(?:days?|weeks?|months?|years?)';
export const JOINT = '(?:toe joint|toe|ray|mtp joint|mtp|joint|metatarsal head|metatarsal|met head|met)';
export const IT = '(?:it|this|that|which|he|she)';
/** Where a quality may open what is said: after another finding it may be of that one (`squeeze negative | click`). */
export const OPENS =
  '(?<=(?:^|[,;|\\n] |(?:^| )(?:an?|with|has|have|got|shows?|showed|some|and|toe|right|left|[1-5](?:st|nd|rd|th)) ))';
/** Where a ray may follow its finding: after another ray the finding may be of that one (`second mulder negative | third positive`). */
export const FRESH = `(?<!(?:${RAY}|first|second|third|fourth|fifth)(?: (?:toe|toes|mtp|head|heads|web|space|joint|plate|met))? )(?<!web [1-4] )(?<!webs [1-4]-[1-4] )`;
/** No value follows, which would make the ray before it its own. */
export const UNVALUED =
  '(?! (?:positive|negative|equivocal|absent|present|normal|stable|unstable|lax|loose|intact|fine|reduced|grade|\\d(?!st|nd|rd|th)|torn|clear|good|weak|painful))';
/** Opens a word that stands for a whole statement which the language has no place for. */
export const COMPLETE_MARK = '§';
/** A remark in the marks of a quote, one word for the rows after it. */
export const remark = (text: string): string => `"${text.replaceAll(' ', '\u200b')}"`;

/** Which ray or web: an ordinal that was said alone beside what only a ray can be. */
export const ORD: Readonly<Record<string, string>> = {
  second: '2nd',
  third: '3rd',
  fourth: '4th',
  fifth: '5th',
  first: '1st',
};
export const ordinal = (match: RegExpMatchArray): string | undefined => ORD[match[0]];
/** What lies in a toe is stable for itself (`the wire in the second toe is stable`). */
export const METAL = '(?:k-wire|wire|pin|screw|metalwork|hardware|implant)';
