import type { Mark } from '../../grammar/lexicon/entry.ts';
import type { FindingId } from '../../grammar/lexicon/index.ts';
import type { SourceKey } from '../../grammar/sources.ts';
import { ordinalOf, type Side } from '../../grammar/values.ts';
import { CAUTIONS } from '../clinical/cautions.ts';
import { type Argument, balance, type Ground, type Open, type Weighed } from '../clinical/differential/argue.ts';
import type { Concordance } from '../clinical/differential/concordance.ts';
import { differentialOf, type SiteDifferential } from '../clinical/differential/differential.ts';
import type { Site } from '../clinical/differential/view.ts';
import type { Subject } from '../clinical/facts.ts';
import type { RedFlag } from '../clinical/red-flags.ts';
import { redFlagRow } from '../clinical/red-flags-first.ts';
import { isoDate, type Visit } from './stage-records.ts';

interface WordsRecord {
  /** As typed. */
  readonly words: string;
  readonly line: number;
  /** Whose: `2nd`, `web 3`, `foot`, `patient`. */
  readonly of: string;
}
interface ArgumentRecord {
  readonly finding: FindingId;
  readonly role: Argument['role'];
  readonly why: string;
  readonly words: readonly WordsRecord[];
  /** The earlier visit that told it, where this one does not. */
  readonly earlier?: string;
  readonly source: SourceKey;
  readonly mark: Mark;
}
interface OpenRecord {
  readonly finding: FindingId;
  readonly ask: string;
  readonly because: Open['because'];
  readonly words: readonly WordsRecord[];
}
export interface ConditionRecord {
  readonly condition: string;
  readonly neverMiss: boolean;
  /** How many findings argue for it, and against it: plain counts, no probability. */
  readonly for: number;
  readonly against: number;
  readonly arguments: readonly ArgumentRecord[];
  readonly open: readonly OpenRecord[];
  readonly separate: { readonly ask: string; readonly source: SourceKey; readonly mark: Mark };
}
export interface SiteRecord {
  readonly side: Side;
  readonly site: string;
  readonly opened: readonly WordsRecord[];
  readonly conditions: readonly ConditionRecord[];
  readonly remarks: readonly { readonly text: string; readonly source: SourceKey; readonly mark: Mark }[];
  readonly images: readonly Concordance[];
  readonly unread: readonly string[];
}
/** What `forefoot differential` says of one visit, as programs get it. */
export interface DifferentialRecord {
  readonly file: string;
  readonly date: string | null;
  readonly kind: string | null;
  /** They outrank everything below. */
  readonly redFlags: readonly { readonly flag: RedFlag; readonly why: string; readonly step: string }[];
  /** What to do about words that may be a red flag and were not understood. */
  readonly caution: string | null;
  readonly sites: readonly SiteRecord[];
}

export function differentialRecord(file: string, visit: Visit): DifferentialRecord {
  const { facts } = visit.analysis;
  const { flags, unreadFlag, sites } = differentialOf(visit.analysis);
  return {
    file,
    date: isoDate(facts.date),
    kind: facts.kind ?? null,
    redFlags: flags.map(({ flag, why }) => ({ flag, why, step: redFlagRow(flag).step })),
    caution: unreadFlag ? CAUTIONS['unread red flag'] : null,
    sites: sites.map((site) => siteRecord(visit, site)),
  };
}

function siteRecord(visit: Visit, each: SiteDifferential): SiteRecord {
  return {
    side: each.side,
    site: nameOf(each.site),
    opened: each.opened.map((ground) => wordsRecord(visit, ground)),
    conditions: each.conditions.map((weighed) => conditionRecord(visit, weighed)),
    remarks: each.remarks,
    images: each.images,
    unread: each.unread,
  };
}

function conditionRecord(visit: Visit, weighed: Weighed): ConditionRecord {
  const { condition } = weighed;
  const words = (grounds: readonly Ground[]) => grounds.map((ground) => wordsRecord(visit, ground));
  return {
    condition: condition.id,
    neverMiss: condition.neverMiss ?? false,
    ...balance(weighed),
    arguments: weighed.arguments.map(({ grounds, ...argument }) => ({ ...argument, words: words(grounds) })),
    open: weighed.open.map(({ grounds, ...open }) => ({ ...open, words: words(grounds) })),
    separate: condition.separate,
  };
}

function wordsRecord({ firstLine, syntax }: Visit, { place, subject }: Ground): WordsRecord {
  const words = syntax[place.line]?.text.slice(place.start, place.end) ?? '';
  return { words, line: firstLine + place.line + 1, of: nameOf(subject) };
}

function nameOf(subject: Subject | Site): string {
  if (subject.at === 'ray') return ordinalOf(subject.ray);
  return subject.at === 'web' ? `web ${subject.web}` : subject.at;
}
