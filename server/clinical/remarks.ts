import type { Section } from '../../grammar/lexicon/entry.ts';
import { quotedFacts } from './fact-index.ts';
import type { VisitFacts } from './facts.ts';

/** What the clinician wrote in words of their own: kept text and quotes of a visit, or of one section of it. Never computed with. */
export const remarks = ({ facts, verbatim }: VisitFacts, section?: Section): string[] => [
  ...verbatim.flatMap((each) => (!section || each.section === section ? [each.text] : [])),
  ...quotedFacts(facts).flatMap((fact) => (!section || fact.section === section ? fact.quotes : [])),
];

/** Does the clinician mention something in words of their own? */
export const mentions = ({ facts, verbatim }: VisitFacts, words: RegExp): boolean =>
  verbatim.some(({ text }) => words.test(text)) ||
  quotedFacts(facts).some(({ quotes }) => quotes.some((text) => words.test(text)));
