import type { Section } from '../../grammar/lexicon/entry.ts';
import type { Side } from '../../grammar/values.ts';
import type { AnyFact } from '../clinical/facts.ts';
import type { Group } from './groups.ts';
import { conjugate, spaced } from './phrases/phrase.ts';
import type { Piece } from './pieces.ts';
import { type Place, placeOf } from './places.ts';
import { list, type Part, plain, type Run, type Sentence, sentence, told } from './sentence.ts';

type Said = Group['said'][number];

/** Opens a sentence of a section whose findings need to say how they were found. */
export const LEADS: Readonly<Partial<Record<Section, string>>> = {
  stand: 'on standing, ',
  xray: 'on the radiograph, ',
  us: 'on ultrasound, ',
  mri: 'on MRI, ',
};

/** Writes one group as one sentence. */
export function groupSentence(group: Group, visitSide: Side | 'both' | undefined, paragraph: string): Sentence {
  const section = group.said[0]?.piece.fact.section;
  const lead = (section && LEADS[section]) ?? '';
  return sentence('stated', paragraph, lead, ...body(group, placeOf(group.sites, group.noun, visitSide), lead !== ''));
}

function body(group: Group, place: Place, led: boolean): Part[] {
  switch (group.is) {
    case 'there':
      return there(group, place, led);
    case 'subject':
      return [subjectOf(group, place), predicates(group.said, place.plural)];
    case 'panel':
      return [subjectOf(group, place), conjugate('was', place.plural), ' recorded as normal (', panel(group.said), ')'];
    default:
      return own(group, place);
  }
}

const allFacts = (group: Group) => group.said.flatMap(({ facts }) => facts);
const subjectOf = (group: Group, place: Place): Part => [told(place.text || 'the foot', allFacts(group)), ' '];

/** Where: `at the second ray`, `in the second web space`, `in the right foot`. */
function where(group: Group, place: Place): Part {
  const [site] = group.sites;
  if (!site || site.subject.at === 'patient') return '';
  const general = group.said.some(({ piece }) => SAYS_FOOT.has(piece.fact.finding));
  const text = place.text || (general ? 'the foot' : '');
  return text && told(`${site.subject.at === 'ray' ? 'at' : 'in'} ${text}`, allFacts(group));
}
/** Signs that may also stand at a ray: of the foot they name it. */
const SAYS_FOOT: ReadonlySet<string> = new Set(['redness', 'hot', 'wound', 'pain', 'image-other']);

function there(group: Group, place: Place, led: boolean): Part[] {
  const run = ({ piece, facts }: Said): Run => told(rest(piece), facts);
  const is = (absent: boolean) => (each: Said) => each.piece.shape.is === 'there' && each.piece.shape.absent === absent;
  const present = group.said.filter(is(false)).map(run);
  const absent = group.said.filter(is(true)).map(run);
  // `no hallux valgus or widening of the gap between the toes`, and not the other way round.
  absent.sort((a, b) => Number(a.text.includes(' between ')) - Number(b.text.includes(' between ')));
  const none: Part = absent.length > 0 ? ['no ', list(absent, ' or ')] : '';
  const at = where(group, place);
  const after: Part = plain(at) ? [' ', at] : '';
  const both = place.text === 'both feet';
  if (present.length === 0) return ['there was ', none, both ? [' ', told('in either foot', allFacts(group))] : after];
  const what: Part = absent.length > 0 ? [list(present), ', and ', none] : list(present);
  const opens = !led && group.sites[0]?.subject.at !== 'foot' && plain(at) !== '';
  return opens ? [at, ' there was ', what] : ['there was ', what, after];
}

/** `was deviated medially by 12° and extended, and held the paper`: predicates of one verb stand together. */
function predicates(said: readonly Said[], plural: boolean): Part {
  const byVerb = new Map<string, Said[]>();
  for (const each of said) {
    const { shape } = each.piece;
    if (shape.is === 'subject') byVerb.set(shape.predicate.verb, [...(byVerb.get(shape.predicate.verb) ?? []), each]);
  }
  const groups = [...byVerb].map(([verb, each]): Part => {
    const rests = each.map(({ piece, facts }) => told(rest(piece), facts));
    if (each.length === 1 && each[0] && rest(each[0].piece) === '') return told(conjugate(verb, plural), each[0].facts);
    return [conjugate(verb, plural), ' ', list(rests)];
  });
  return list(groups, groups.map(plain).some(isLong) ? ', and ' : ' and ');
}

/** Long enough to need a comma before the next predicate. */
const isLong = (text: string): boolean => text.includes(',') || text.includes(' and ') || text.split(' ').length > 6;

/** What a piece says, with the words that were quoted beside it in brackets. */
function rest({ shape, quote }: Piece): string {
  const text = shape.is === 'there' ? shape.text : shape.predicate.rest;
  if (quote === '') return text;
  return text.endsWith(')') ? `${text.slice(0, -1)}; ${quote})` : spaced(text, `(${quote})`);
}

/** `no swelling, no tenderness, straight`: what the word `normal` said, and what was quoted beside it. */
function panel(said: readonly Said[]): Part {
  const members = new Map<string, AnyFact[]>();
  for (const { piece, facts } of said) {
    const no = piece.shape.is === 'there' && piece.shape.absent ? 'no ' : '';
    const text = no + rest({ ...piece, quote: '' });
    members.set(text, [...(members.get(text) ?? []), ...facts]);
  }
  const runs = [...members].map(([text, facts]) => told(text, facts));
  const quotes = [...new Set(said.map(({ piece }) => piece.quote))].filter((quote) => quote !== '');
  const quoted = quotes.map((quote) =>
    told(
      `; ${quote}`,
      said.filter(({ piece }) => piece.quote === quote).flatMap(({ facts }) => facts),
    ),
  );
  return [list(runs, ', '), ...quoted];
}

/** Findings that are their own subject; those with an equal predicate share it. */
function own(group: Group, place: Place): Part[] {
  const clauses = new Map<string, Said[]>();
  for (const each of group.said) {
    const { shape, quote } = each.piece;
    if (shape.is !== 'own' && shape.is !== 'status') continue;
    const key = `${shape.predicate.verb}|${shape.predicate.rest}|${quote}`;
    clauses.set(key, [...(clauses.get(key) ?? []), each]);
  }
  const parts = [...clauses.values()].map((each, at) => clause(group, each, at === 0 ? place.text : ''));
  return [list(parts, parts.length > 1 && parts.some((part) => plain(part).includes(',')) ? ', and ' : ' and ')];
}

function clause(group: Group, said: readonly Said[], place: string): Part {
  const [first] = said;
  if (!first || first.piece.shape.is === 'there' || first.piece.shape.is === 'subject') return '';
  const facts = said.flatMap((each) => each.facts);
  const { verb, plural } = first.piece.shape.predicate;
  const subjects = said.map(({ piece, facts: own }) =>
    told(piece.shape.is === 'own' || piece.shape.is === 'status' ? piece.shape.predicate.subject : '', own),
  );
  const at = place ? told(` ${prepositionOf(group, first.piece)} ${place}`, facts) : '';
  const { placeLast } = first.piece;
  const be = conjugate(verb, said.length > 1 || plural === true);
  return [list(subjects), placeLast ? '' : at, ` ${be} `, told(rest(first.piece), facts), placeLast ? at : ''];
}

function prepositionOf(group: Group, piece: Piece): string {
  if (piece.preposition || group.is === 'own') return piece.preposition ?? 'of';
  const at = group.sites[0]?.subject.at;
  return at === 'ray' ? 'at' : at === 'web' ? 'in' : 'of';
}
