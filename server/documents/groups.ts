import { entryOf } from '../../grammar/lexicon/index.ts';
import type { Side } from '../../grammar/values.ts';
import type { AnyFact, Place as StatedAt } from '../clinical/facts.ts';
import { type Piece, pieceOf } from './pieces.ts';
import { nounOf, type Site } from './places.ts';

/** Facts that one sentence tells: the same shape at the same sites, and word for word the same at each site. */
export interface Group {
  readonly is: 'there' | 'subject' | 'own' | 'status' | 'panel';
  /** The distinct things said; each with every fact that says it, at whichever site. */
  readonly said: readonly { readonly piece: Piece; readonly facts: readonly AnyFact[] }[];
  readonly sites: readonly Site[];
  readonly noun: string;
  /** Where its first fact is stated. */
  readonly place: StatedAt;
}

interface Said {
  readonly piece: Piece;
  readonly facts: AnyFact[];
}
interface Bucket {
  readonly key: string;
  readonly site: Site;
  readonly noun: string;
  readonly is: Group['is'];
  readonly pieces: Piece[];
  readonly place: StatedAt;
}

const siteOf = ({ subject, side }: AnyFact): Site => ({ subject, ...(side ? { side } : {}) });

/** Groups clear facts into sentences. Equal groups of several rays, webs or feet become one. */
export function groupFacts(facts: readonly AnyFact[], visitSide: Side | 'both' | undefined): Group[] {
  const buckets = new Map<string, Bucket>();
  for (const fact of facts) {
    const piece = pieceOf(fact);
    let site = siteOf(fact);
    const is = fact.origin.kind === 'panel' ? 'panel' : piece.shape.is;
    const noun =
      is !== 'panel' && piece.noun && fact.subject.at === 'ray' && fact.subject.part !== 'metatarsal'
        ? piece.noun
        : nounOf(site);
    if (noun === piece.noun && site.subject.at === 'ray')
      site = { ...site, subject: { at: 'ray', ray: site.subject.ray } };
    const named = site.subject.at !== 'foot' || site.side !== visitSide;
    const key = [fact.section, is, noun, kindOf(is, piece, named)].join('|');
    const at = `${key}|${site.side}|${JSON.stringify(site.subject)}`;
    const bucket = buckets.get(at) ?? { key, site, noun, is, pieces: [], place: fact.origin.place };
    bucket.pieces.push(piece);
    buckets.set(at, bucket);
  }
  return mergeEqual([...buckets.values()]);
}

/** What keeps two facts of one site and shape in sentences of their own. */
function kindOf(is: Group['is'], piece: Piece, named: boolean): string {
  if (piece.shape.is === 'there' || piece.shape.is === 'subject') return '';
  if (is === 'panel') return '';
  const { verb, rest } = piece.shape.predicate;
  const preposition = named ? (piece.preposition ?? 'of') : '';
  return [preposition, is === 'own' && piece.topic ? piece.topic : `${verb} ${rest}${piece.quote}`].join('|');
}

function mergeEqual(buckets: readonly Bucket[]): Group[] {
  const groups = new Map<string, { bucket: Bucket; sites: Site[]; said: Map<string, Said> }>();
  for (const bucket of buckets) {
    const signatures = bucket.pieces.map(signatureOf);
    const key = `${bucket.key}|${bucket.site.subject.at}|${[...new Set(signatures)].sort().join('|')}`;
    const group = groups.get(key) ?? { bucket, sites: [] as Site[], said: new Map<string, Said>() };
    groups.set(key, group);
    group.sites.push(bucket.site);
    bucket.pieces.forEach((piece, at) => {
      const signature = signatures[at] ?? '';
      const same = group.said.get(signature) ?? { piece, facts: [] };
      same.facts.push(piece.fact);
      group.said.set(signature, same);
    });
  }
  return [...groups.values()].map(({ bucket: { is, noun, place }, sites, said }) => ({
    is,
    noun,
    place,
    sites,
    said: [...said.values()].sort((a, b) => a.piece.order - b.piece.order),
  }));
}

const signatureOf = ({ shape, quote, fact }: Piece): string =>
  JSON.stringify([shape, quote, entryOf(fact.finding).order]);
