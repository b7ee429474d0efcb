import { ORD } from './phrase.ts';

/** A ray by its ordinal, as a word or in figures, and several of them. */
export const NTH = '(?:[1-5](?:st|nd|rd|th)|first|second|third|fourth|fifth)';
export const NTHS = `${NTH}(?:(?:-| and (?:the )?| to | )${NTH})*`;
/** What a ray may be called after its ordinal. */
export const TOE = '(?: (?:toes?|mtp joints?|mtps?|metatarsals?|mets?|rays?|heads?|joints?))?';
/** What would take back, condition or judge what was just said. */
export const NOT_THEN =
  '(?! (?:if|unless|when|or|only|was|were|did|has|had|hurts?|rubs?|caused|makes?|made|depending|but|until|once|though|maybe|expected|hoped|planned|considered|discussed|offered|attempted|abandoned|not|available|failed|declined|refused|removed|last|left|right|her|his|the other|this year|since)(?: |$))';
/** What is said ends here, by a spoken break or another clause. */
export const ENDS = '(?= ,| ;|$| \\|| \\n)';

/** Ordinals as the language writes them; two that stand side by side are joined. */
export const rays = (said: string): string =>
  said
    .replaceAll('the ', '')
    .replace(/first|second|third|fourth|fifth/g, (each) => ORD[each] ?? each)
    .replace(/(\d(?:st|nd|rd|th)) (?=\d)/g, '$1 and ');
