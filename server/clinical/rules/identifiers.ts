import type { LineSyntax } from '../../../grammar/syntax.ts';
import { identifierMessage, identifiersOf, placeOf } from '../identifiers.ts';
import { defineRule, replace } from './define-rule.ts';

export const identifier = defineRule({
  source: 'common practice',
  mark: 'common practice',
  code: 'identifier',
  name: 'Identifier in the text',
  severity: 'contradiction',
  scope: 'statement',
  reads: [],
  what: 'Text that looks like a name with its title, a telephone or record number, an address, a day of birth, an age over 89.',
  why: 'The note is kept under a pseudonym so that it can be shared for teaching and audit without naming anybody.',
  instead: 'Take it out; write the pseudonym, the year of birth, or the part of the person.',
  examples: {
    invalid: 'history "call her on 01632 960123"',
    valid: 'history "call her at work"',
    nearMiss: 'history onset 2025-11-20\nsense monofilament 10/10\nxray wb hva 22°',
  },
  *check({ lines }) {
    for (let at = 0; at < lines.length; at++)
      for (const found of identifiersOf(lines[at] as LineSyntax)) {
        const place = placeOf(at, found);
        const fix = { title: 'Take it out', safety: 'needs review', edits: [replace(place, '')] } as const;
        yield { place, message: identifierMessage(found.what), fixes: [fix] };
      }
  },
});
