import type { LineSyntax, StatementNode, TurningNode } from '../syntax.ts';

const MONTHS = 'jan\\w*|feb\\w*|mar(?:ch)?|apr\\w*|may|june?|july?|aug\\w*|sep\\w*|oct\\w*|nov\\w*|dec\\w*';
const RELATIVES = 'mum|mom|mother|dad|father|sister|brother|son|daughter|husband|wife';
/** A line that ends with a colon speaks of what is below it: another side, time or person, what was only said, or not done. */
const HEADS = new RegExp(
  `\\b(?:left|right|l|r|other|opposite|contralateral|unaffected|last|previous|prior|earlier|old|pre|pre-?op\\w*|before|under ga|eua|letter|copied|gp|doctor|physio\\w*|podiatr\\w*|clinic|hospital|per|${RELATIVES}|family|fhx?|options?|alternatives?|plan [b-d]|if|unless|when|in case|discussed|advised|consider\\w*|declin\\w+|refus\\w+|cancel\\w*|postponed|abandoned|stopped|not|never|denies|excluded|risks?|worries|concerns|wants|hopes|${MONTHS})\\b|\\b(?:19|20)\\d\\d\\b`,
  'i',
);
/** The same without a colon, where the line is nothing else. */
const HEADS_ALONE = new RegExp(
  [
    '(?:and |now |then |on |the )*(?:left|right|l|r)(?: (?:side|foot|forefoot|one))?(?: for comparison)?',
    '(?:on |the )*(?:other|opposite|contralateral|unaffected)(?: (?:foot|side|one))?',
    '(?:at |the |from |on )*(?:last|previous|prior) (?:visit|time|clinic|review|exam|appointment)',
    'pre-? ?op(?:erative(?:ly)?)?(?: findings| exam| status)?',
    'before (?:the )?(?:injury|surgery|operation|op|accident)',
    'copied from .*',
    '(?:options|alternatives)(?: discussed)?',
  ]
    .map((each) => `^${each}$`)
    .join('|'),
  'i',
);
/** A line that takes back, moves or conditions what was just said. */
const TAILS = new RegExp(
  `^(?:(?:but|and|now|then|was|were|has|have|had|been|all|both|it|this|that) )*(?:declin\\w+|refus\\w+|cancel\\w*|postponed|abandoned|resolved|settled|gone|stopped|not (?:today|given|done|now|yet|tolerated|taken|confirmed)|never (?:given|done|taken|started)|until|if|unless|in (?:his |her |their )?(?:${RELATIVES})|planned|on (?:the )?(?:left|right|l|r)(?: (?:side|foot))?$)(?:\\b|$)`,
  'i',
);

/**
 * What a line that says nothing of its own does to its neighbours: `last visit:` to those below it, `declined` to the one before it. A heading
 * of the language is none, nor is a line of which anything is read.
 */
export function turningOf(
  line: string,
  { heading, statements }: Pick<LineSyntax, 'heading' | 'statements'>,
): TurningNode | undefined {
  if (heading || statements.length === 0 || !statements.every(saysNothing)) return undefined;
  const bare = line
    .replace(/\/\/.*/, '')
    .trim()
    .replace(/\s+/g, ' ');
  const text = bare.replace(/^[=([\s-]+|[=:)\]\s-]+$/g, '');
  if (text.split(' ').length > LONGEST) return undefined;
  const marked = /[:=]$|^\(.*\)$/.test(bare) || (/\s-$/.test(bare) && HEADS_ALONE.test(text));
  if (marked) return HEADS.test(text) || TAILS.test(text) ? { text: bare, reaches: 'below' } : undefined;
  if (HEADS_ALONE.test(text)) return { text: bare, reaches: 'both' };
  return TAILS.test(text) ? { text: bare, reaches: 'above' } : undefined;
}

/** Words of such a line; a longer one is a sentence of its own. */
const LONGEST = 6;
const saysNothing = ({ findings, verbatim }: StatementNode): boolean =>
  findings.every(({ causes }) => causes.length > 0) && !verbatim.some(({ quote }) => quote);
