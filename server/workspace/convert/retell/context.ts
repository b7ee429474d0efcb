import type { Section } from '../../../../grammar/lexicon/entry.ts';
import type { FindingId } from '../../../../grammar/lexicon/index.ts';
import type { LineReader } from '../../../../grammar/remembering-reader.ts';
import type { Side } from '../../../../grammar/values.ts';

/** What is known where a clause is said, from what was said before it in the same line. */
export interface Context {
  /** Reads a line; the same words are read again and again. */
  readonly read: LineReader;
  /** The side of the visit; missing in a visit of both feet. */
  readonly home: Side | undefined;
  section: Section;
  /** The section of a line that opens none: that of the operation in a note of one. */
  readonly base: Section;
  /** `home` where nobody named one; `undefined` where two were named, or one that may not hold any more. */
  side: Side | undefined;
  /** The foot of the visit was headed (`on the right`): who heads one foot heads the other. */
  homeHeaded: boolean;
  /** The ray or web that was named last, as the language writes it; `undefined` where that is not certain. */
  subject:
    | {
        readonly text: string;
        readonly kind: 'ray' | 'web';
        readonly sentence: number /** Only of what needs a ray. */;
        readonly weak?: true;
      }
    | undefined;
  /** A subject was named, if one that is not certain any more. */
  named: boolean;
  /** The rays or webs that were named since the last new line. */
  readonly lineRays: Set<string>;
  /** The finding that was said last, for a value that is said alone. */
  finding: { readonly id: FindingId; readonly word: string; readonly sentence: number } | undefined;
  sentence: number;
  /** Ordinals of this sentence that are said alone and may be rays (`third` in `drawer second two, third`). */
  ordinals: number;
  /** The one ray that the whole line names, if it names no other: it holds over a spoken new line too. */
  readonly only: string | undefined;
  /** Some word names an image: what is normal may have been normal on it. */
  readonly imaged: boolean;
  /** Breaks are said: within a sentence several rays may go on to what follows. */
  readonly broken: boolean;
  /** The speaker says qualities before what they are of (`mild swelling`). */
  readonly qualitiesLead: boolean;
}

/** In a visit of one foot, what follows a word of the other one needs a side of its own. */
export const sideAfter = ({ home }: Context, named: Side): Side | undefined =>
  home === undefined || named === home ? named : undefined;
