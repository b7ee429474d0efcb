import { describe, expect, test } from 'vitest';
import { entryOf } from '../../grammar/lexicon/index.ts';
import { formOf, partsOfForm } from '../../grammar/reader/forms.ts';
import { framesOf } from '../../server/workspace/convert/retell/frame.ts';
import { distances, holds } from '../../server/workspace/convert/retell/turning.ts';
import { VOCABULARY } from '../../server/workspace/convert/retell/vocabulary/index.ts';

const rows = VOCABULARY.flatMap(({ said, ...row }) => said.map((phrase) => ({ ...row, phrase })));

describe('what is said for a finding or a value, and how the language writes it', () => {
  test('each name gives a frame of its finding, as it is written', () => {
    const missed = rows.filter(({ id, as, written, phrase }) => {
      const frames = framesOf(phrase.split(' ')).filter(({ findings }) => findings[0]?.id === id);
      return as === 'finding' && !frames.some(({ text }) => text === written);
    });
    expect(rows.length).toBeGreaterThan(5_000);
    expect(missed).toEqual([]);
  });

  test('no phrase is a form of the lexicon for the same thing, so that each fact stands once', () => {
    const twice = rows.filter(({ id, as, phrase }) => {
      const form = formOf(phrase);
      return as === 'finding' ? form?.findings.some((each) => each.id === id && !each.lead) : form?.values.has(id);
    });
    expect(twice).toEqual([]);
  });

  // In one section a phrase has one meaning; what is torn on an image and in theatre may be said alike.
  test('no phrase stands in two rows of one finding, nor names two findings of one section', () => {
    const seen = new Map<string, string>();
    const clashes = rows.flatMap(({ id, as, written, phrase }) =>
      entryOf(id).sections.flatMap((section) => {
        const key = as === 'finding' ? `${section}: ${phrase}` : `${section} ${id}: ${phrase}`;
        const before = seen.get(key);
        seen.set(key, `${id} ${written}`);
        return before === undefined ? [] : [`${key}: ${before}, ${id} ${written}`];
      }),
    );
    expect(clashes).toEqual([]);
  });

  test('none takes up a word that moves a finding to another time, person or condition', () => {
    expect(rows.filter(({ phrase }) => distances(phrase) || holds(phrase)).map(({ phrase }) => phrase)).toEqual([]);
  });

  test('each is written in lower case, word by word', () => {
    expect(rows.filter(({ phrase }) => phrase !== partsOfForm(phrase).join(' ')).map(({ phrase }) => phrase)).toEqual(
      [],
    );
  });
});
