import { COMPLETE_MARK, type Phrase } from './phrase.ts';

/** Whole statements that the language has no place for: they end where they end, and turn nothing beside them. */
export const COMPLETE: readonly Phrase[] = [
  "(?:(?:she|he)(?:'s| is)? )?(?:an? )?\\d+ years? old(?: (?:retired |young |lovely )?(?:man|woman|lady|gentleman|male|female|chap|boy|girl))?",
  '(?:toe ?)?nails (?:are )?(?:normal|fine|ok|okay|healthy)',
  'told (?:her|him|them) (?:to )?(?:give it|wait|leave it)(?: another)? \\d+ (?:days|weeks|months)',
  "(?:couldn't|could not|unable to|can't|cannot) (?:weight bear|bear weight|walk on it|put weight on it|put (?:her|his) foot down)",
  '(?:the )?wound (?:has|with|shows) (?:an? )?(?:small )?(?:[<>~]?\\d+(?:\\.\\d)? ?(?:mm|millimet(?:re|er)s?) )?gap(?: at (?:the|its) (?:distal|proximal|near|far) end)?',
  '(?:no|without) displacement',
  "(?:i've|i have|we've|we have) (?:gone|been|talked|run) through (?:the |her |his |all (?:the )?)?(?:options|choices)(?: with (?:her|him))?",
  'no power doppler(?: signal)?(?: in (?:the )?joint(?: itself)?)?',
  'flexor tendons? (?:is |are )?(?:fine|normal|intact|ok|okay)',
  'no (?:locking|giving way|night sweats)',
  'heel (?:is )?in (?:valgus|varus|neutral)',
  'consent (?:taken|obtained|signed)',
  '(?:(?:she|he) )?takes [a-z]+(?: and nothing else| only)',
].map((find): Phrase => [find, (match) => complete(match[0])]);
const complete = (text: string): string =>
  `${COMPLETE_MARK}${text.replace(/options?|choices/, 'spoken').replaceAll(' ', '\u200b')}`;
