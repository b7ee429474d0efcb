import { COMPLETE_MARK, type Phrase } from './phrase.ts';

const DEG = '[~]?\\d+(?:°| degrees)?';
const KNEE = '(?:with )?(?:the )?knee';
/** Whole statements that the language has no place for: they end where they end, and turn nothing beside them. */
export const COMPLETE: readonly Phrase[] = [
  "(?:(?:she|he)(?:'s| is)? )?(?:an? )?\\d+ years? old(?: (?:retired |young |lovely )?(?:man|woman|lady|gentleman|male|female|chap|boy|girl))?",
  '(?:toe ?)?nails (?:are )?(?:normal|fine|ok|okay|healthy)',
  'no (?:locking|giving way|night sweats)',
  `ankle (?:dorsiflexion|comes up to|gets to|dorsiflexes to)(?: is| of)? (?:minus |plus )?${DEG}(?: ${KNEE} (?:straight|extended))?(?: and (?:minus |plus )?${DEG} ${KNEE} (?:bent|flexed))?(?: (?:on )?both sides)?`,
  'heel (?:is )?in (?:valgus|varus|neutral)',
  'consent (?:taken|obtained|signed)',
  '(?:(?:she|he) )?takes [a-z]+(?: and nothing else| only)',
].map((find): Phrase => [find, (match) => complete(match[0])]);
const complete = (text: string): string => `${COMPLETE_MARK}${text.replaceAll(' ', '\u200b')}`;
