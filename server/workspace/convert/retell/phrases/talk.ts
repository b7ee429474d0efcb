import type { Phrase } from './phrase.ts';

const SUBORDINATE =
  '(?:if|when|that|because|since|while|until|unless|whether|where|as|though|although|than|after|before|once|says|said|thinks|thought|reckons|feels|tells|told|hopes|hoping|wants|which|who|what|how|like|so that|in case|only|not|and|or|but|of|to|for|by|with|from|the|a|an|her|his)';

/** Where a clause begins in speech without breaks: a person who does something, or a word that opens what is said next. */
export const TALK: readonly Phrase[] = [
  [
    `(?<=[^ ,;|\\n]+ )(?<!(?:^| )${SUBORDINATE} )(?=(?:she|he|she's|he's|i've|i'll|i'd|we've|we'll|they|there's|there is|it's)(?: |$))`,
    '| ',
  ],
];
