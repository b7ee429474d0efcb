import { type Section, wordValue } from '../lexicon/entry.ts';
import { entryOf, type FindingId } from '../lexicon/index.ts';
import { ORDINAL_WORDS } from '../spoken/spoken-words.ts';
import type { SubjectNode } from '../syntax.ts';
import type { Span } from '../values.ts';
import { findingPast } from './adjectives.ts';
import { takeReason, takeUnder } from './asides.ts';
import type { Binder } from './binder.ts';
import { readBothPulses } from './both-pulses.ts';
import { causeOf, type Draft, hasValue, isOfPatient, placesOf } from './draft.ts';
import { beforeClaim, type Match, matchesAt } from './forms.ts';
import { goOn } from './go-on.ts';
import { endsSegment } from './items.ts';
import { lacksCircumstance, OF_IMAGE, ofAnkle, shortFor } from './meant-finding.ts';
import { announcesPair, takePair } from './pairs.ts';
import { fitItem } from './quantities.ts';
import { deniesNext } from './short-answers.ts';
import { readSlashList } from './slash-list.ts';
import { subjectAt } from './subjects.ts';
import { type Taker, takeClass, takePanel } from './take-classes.ts';
import { isElsewhere } from './whether-done.ts';
import { readWholeSection } from './whole-section.ts';

/** Reads the word or phrase at an index; returns the index after it. */
export function readWords(binder: Binder, i: number): number {
  const whole = readWholeSection(binder, i);
  if (whole !== undefined) return whole;
  const matches = matchesAt(binder.items, i);
  goOn(binder, i);
  for (const match of matches) if (take(binder, match, i)) return match.next;
  const next = matches[0]?.next ?? i + 1;
  const at = binder.span(i, next);
  const item = binder.items[i];
  if (item && matches.length === 0 && readSlashList(binder, item)) return i + 1;
  if (item?.is === 'other' && (item.text === '(' || item.text === ')')) binder.role('punctuation', item);
  else if (item?.is === 'other' && /^(->|→)$/.test(item.text)) binder.unread(at, 'comparison', 'word-out-of-place');
  else if (matches.length > 0) binder.unread(at, 'word out of place', 'word-out-of-place');
  else {
    binder.unread(at, 'unknown word', 'unknown-word');
    // `second weil osteotomy` may be of the second ray, or another one.
    if (item?.is === 'word' && ORDINAL_WORDS.has(item.text.toLowerCase())) binder.unreadSubject = at;
  }
  return next;
}

/** A number that the lexicon also has in words (`fifty percent` of a drawer), where such a value fits. */
export function saidValue(binder: Binder, i: number): number | undefined {
  return matchesAt(binder.items, i).find((match) => takeValue(binder, match, i))?.next;
}

/** The order of reading, as a table: the first that takes the phrase wins. */
const take: Taker = (binder, match, index) => {
  for (const taker of takersOf(match.form)) if (taker(binder, match, index)) return true;
  return false;
};

const known = new WeakMap<Match['form'], readonly Taker[]>();
/** Those that may take a form, by what it can mean; found once a form. */
function takersOf(form: Match['form']): readonly Taker[] {
  const before = known.get(form);
  if (before) return before;
  const takers = TAKERS.flatMap(({ may, take: taker }) => (may(form) ? [taker] : []));
  known.set(form, takers);
  return takers;
}

const takeValue: Taker = (binder, { form, next }, index) => {
  const draft = binder.current;
  if (!draft || draft.id === 'panel' || binder.before.length > 0) return false;
  const claims = form.values.get(draft.id);
  if (!claims) return false;
  const claim = claims.find(({ slot }) => binder.isOpen(slot));
  if (!claim || (claim.slot === 'scale' && binder.roles.at(-1)?.slot !== 'scale')) return false;
  const at = binder.span(index, next);
  const goesOn = matchesAt(binder.items, next).some((after) =>
    after.form.values.get(draft.id as FindingId)?.some(({ slot }) => slot !== claim.slot && binder.isOpen(slot)),
  );
  const why = goesOn ? undefined : eitherNeighbour(binder, form, next);
  binder.setValue(claim.slot, wordValue(draft.entry?.slots[claim.slot], claim.value), at, why, claim.value);
  if (draft.entry?.kind !== 'treatment' && denies(form)) draft.deniesPart = true;
  return true;
};
const denies = ({ parts: [first = ''] }: Match['form']): boolean => DENIES.includes(first);
const DENIES: readonly string[] = ['no', 'without', 'avoid', 'stop'];
/** `swollen mild tender`: the adjective could belong to either neighbour. */
function eitherNeighbour(binder: Binder, form: Match['form'], next: number): 'either neighbour' | undefined {
  const after = binder.findingAt(next);
  return after && beforeClaim(form, after.id, entryOf(after.id)) ? 'either neighbour' : undefined;
}

const takeLabel: Taker = (binder, { form, next }, index) => {
  const draft = binder.current;
  if (!draft || draft.id === 'panel') return false;
  const slot = form.labels.get(draft.id);
  if (!slot || !binder.takesLabel(slot, form, next)) return false;
  binder.role('filler', binder.span(index, next), { finding: draft.id, slot });
  return true;
};

/** `3 mm shortening`: the word says again which slot its value has filled. */
const takeTrail: Taker = (binder, { form, next }, index) => {
  const draft = binder.current;
  const slot = draft && draft.id !== 'panel' ? form.trails.get(draft.id) : undefined;
  const last = binder.roles.at(-1);
  if (!slot || last?.kind !== 'value' || last.slot !== slot || last.finding !== draft?.id) return false;
  binder.role('filler', binder.span(index, next), { finding: last.finding, slot });
  return true;
};

const takeStatus: Taker = (binder, { form, next }, index) => {
  const draft = binder.current;
  if (!draft || binder.no || binder.not || binder.before.length > 0) return false;
  const { classes } = form;
  const status = classes.has('absent')
    ? 'absent'
    : classes.has('not done')
      ? 'not done'
      : classes.has('unable')
        ? 'unable'
        : classes.has('equivocal')
          ? 'equivocal'
          : classes.has('positive') || classes.has('present')
            ? 'present'
            : undefined;
  if (!status) return false;
  const at = binder.span(index, next);
  // `us +/- steroid`: with or without what comes next.
  if (form.parts.join(' ') === '+/-' && findingPast(binder, next)) {
    binder.unread(at, 'doubt');
    return true;
  }
  if (form.parts[0] === '+' && saysNothing(form, draft) && takePlus(binder, draft, next, at)) return true;
  if (saysNothing(form, draft)) draft.causes.push(causeOf('named result', at, binder.line));
  binder.giveStatus(status, at);
  if (status === 'absent') draft.deniedBy = at;
  // `tender plantar dorsal none`: of both places, or of the last?
  if (status !== 'present' && placesOf(draft) > 1) draft.causes.push(causeOf('reach of no', at, binder.line));
  if (status !== 'present') draft.open = draft.entry?.bare === 'incomplete' && status === 'equivocal';
  binder.role('modifier', at, draft.id === 'panel' ? {} : { finding: draft.id });
  return true;
};

/** `ga + popliteal block` joins two procedures; `tuning fork +` at the end of its segment is positive. */
function takePlus(binder: Binder, draft: Draft, next: number, at: Span): boolean {
  const kind = draft.entry?.kind;
  const joined = kind === 'procedure' || draft.id === 'anaesthesia';
  if (joined && hasValue(draft) && (findingPast(binder, next) || subjectFollows(binder, next))) {
    binder.role('filler', at);
    return true;
  }
  const ends = endsSegment(binder.items[next]);
  const slot = binder.openSlots().find(([, shape]) => shape.kind === 'words' && 'positive' in shape.values)?.[0];
  if (kind !== 'sign' || !ends || !slot || hasValue(draft) || draft.statusGiven) return false;
  binder.setValue(slot, { is: 'word', words: ['positive'] }, at, undefined, 'positive');
  return true;
}

/** `TTP++`: the sign is there; how much is kept as a remark. */
const takeMuch: Taker = (binder, { form, next }, index) => {
  const draft = binder.current;
  if (!form.classes.has('much') || draft?.entry?.bare !== 'present' || draft.statusGiven || 'degree' in draft.slots)
    return false;
  const last = binder.last();
  const at = binder.span(index, next);
  // Off the word, it could be of the next one (`swelling ++ tender`).
  const touches = binder.roles.at(-1)?.end === at.start;
  const follows = touches || binder.items[next]?.is !== 'word';
  if (!follows || last?.is !== 'finding' || last.draft !== draft || binder.no || binder.not || binder.before.length > 0)
    return false;
  binder.giveStatus('present', at);
  draft.quotes.push({ text: binder.line.slice(at.start, at.end), ...at });
  binder.role('verbatim', at);
  return true;
};

/** `positive`, `yes` or `negative` of a test whose result has a name (`calf yes`): only a grade can be negative. */
function saysNothing({ classes, parts }: Match['form'], draft: Draft): boolean {
  const { entry } = draft;
  if (entry?.bare !== 'incomplete') return false;
  const graded = Object.values(entry.slots).some(({ kind }) => kind === 'grade');
  return (
    classes.has('positive') ||
    (classes.has('present') && !hasValue(draft)) ||
    (entry.kind === 'measure' && !graded && NEGATIVE.includes(parts.join(' ')))
  );
}
const NEGATIVE = ['neg', 'negative', '-ve'];

const takeDenial: Taker = (binder, { form, next }, index) => {
  const at = binder.span(index, next);
  const planned = binder.section === 'plan';
  if (form.classes.has('distancing') && form.parts.join(' ') === 'possible') return deniedPossible(binder, at);
  if (form.classes.has('not')) {
    if (!binder.findingAt(next) || binder.no || binder.not) {
      binder.unread(at, 'misplaced not', 'word-out-of-place');
      return true;
    }
    binder.not = { value: planned ? 'avoid' : 'absent', ...at };
  } else if (form.classes.has('no') || (planned && form.classes.has('avoid')) || deniesNext(binder, form, next)) {
    binder.flush();
    binder.no = { value: planned ? 'avoid' : 'absent', ...at };
  } else return false;
  binder.role('modifier', at);
  return true;
};
/** `no drawer possible`: the test could not be done. */
function deniedPossible(binder: Binder, at: { start: number; end: number }): boolean {
  const draft = binder.current;
  if (!draft?.denied || hasValue(draft)) return false;
  draft.status = 'unable';
  draft.end = at.end;
  draft.denied = false;
  binder.role('modifier', at);
  return true;
}

/** An adjective or a place that belongs to the finding after it. */
const takeBefore: Taker = (binder, { form, next }, index) => {
  const after = findingPast(binder, next);
  const at = binder.span(index, next);
  if (form.classes.has('adjective') && binder.no && !binder.no.adjective && after) {
    binder.no = { ...binder.no, adjective: true };
    binder.role('filler', at);
    return true;
  }
  const claim = after && beforeClaim(form, after.id, entryOf(after.id));
  // `a bit swollen` says how much; `very` before a sign only that it is there.
  if (form.classes.has('emphasis') && claim?.value !== 'slight')
    return emphasises(binder, at, binder.findingAt(next)?.id);
  if (!claim || after.slots.includes(claim.slot)) return false;
  // `tender plantar callus`: a finding of its own, that the place between may be of.
  if (after.slots.length > 0 && binder.findingIn(form)) return false;
  binder.before.push({ form, ...at });
  return true;
};

/** `very tender`, `a bit of swelling`: only before what is present by its name alone. */
function emphasises(binder: Binder, at: Span, id: FindingId | undefined): boolean {
  if (!id || binder.no || binder.not || binder.roles.at(-1)?.kind === 'reported') return false;
  const { kind, bare } = entryOf(id);
  if (bare !== 'present' || (kind !== 'sign' && kind !== 'measure')) return false;
  binder.role('filler', at);
  return true;
}

const takeSectionOrFinding: Taker = (binder, { form, next }, index) => {
  const at = binder.span(index, next);
  const claim = ofAnkle(binder, binder.findingIn(form), next);
  const opens = form.section && (form.section.strong || binder.atStart()) && !(claim && binder.sectionNamed);
  if (form.section && opens && !binder.no && !binder.not) {
    const { section } = form.section;
    if (IMAGES.includes(section) && isNamedAfter(binder, index)) return false;
    if (section === 'operation' && isElsewhere(binder, form.section.strong)) return false;
    binder.openSection(section, at);
    const own = form.findings.find(({ id }) => id === section && binder.canHold(id));
    if (own) {
      binder.roles.pop();
      if (subjectFollows(binder, next)) binder.subject = undefined;
      binder.startFinding(own, at);
    }
    return true;
  }
  if (!claim || describesNext(binder, form, claim.id, next) || lacksCircumstance(binder, claim, next)) return false;
  if (shortFor(form, binder.current?.id)) {
    binder.unread(at, 'either neighbour', 'word-out-of-place');
    return true;
  }
  if (heads(binder, claim.id, next)) {
    binder.role('keyword', at);
    return true;
  }
  binder.startFinding(claim, at);
  if (binder.current && denies(form)) binder.current.deniesPart = true;
  return true;
};
const IMAGES: readonly Section[] = ['xray', 'us', 'mri', 'ct'];
/** `congruent on xray`: it says how that was seen, and opens nothing. */
function isNamedAfter({ items }: Binder, index: number): boolean {
  const before = items[index - 1];
  return before?.is === 'word' && ['on', 'by', 'per'].includes(before.text.toLowerCase());
}
/** `no painful click`: the word is a quality of the finding after it, and no finding of its own. */
const describesNext = (binder: Binder, form: Match['form'], own: FindingId, next: number): boolean => {
  const after = form.values.size > 0 ? binder.findingAt(next) : undefined;
  return after !== undefined && after.id !== own && form.values.has(after.id);
};
const subjectFollows = ({ items }: Binder, start: number): boolean => {
  const read = subjectAt({ items, start, commaJoins: true, adjoins: true, opensFinding: () => false });
  return read !== undefined;
};
/** `pulses dp 2`: a collecting word before its own members is only their heading. */
const HEADS: Readonly<Record<string, readonly string[]>> = { pulses: ['dp', 'pt'] };
function heads(binder: Binder, id: string, next: number): boolean {
  const members = HEADS[id];
  if (!members) return false;
  const side = matchesAt(binder.items, next).find(({ form }) => form.side);
  const after = binder.findingAt(side?.next ?? next);
  return after !== undefined && members.includes(after.id);
}

const takeSide: Taker = (binder, { form, next }, index) => {
  if (!form.side) return false;
  const at = binder.span(index, next);
  if (form.parts.join(' ') === 'both' && readBothPulses(binder, at, awaitsResult(binder, next))) return true;
  const opens = binder.atSegmentStart() && !binder.current;
  binder.segmentSide = undefined;
  if (form.parts.includes('foot')) binder.footNamed = true;
  const announced = form.side === 'both' && announcesPair(binder, next);
  if (!announced) binder.sides.push({ value: form.side, segment: binder.segment, ...at });
  if (announced || (form.side !== 'both' && takePair(binder, { value: form.side, next, ...at }))) {
    binder.role(announced ? 'filler' : 'modifier', at);
    return true;
  }
  const last = binder.last();
  const draft = last?.is === 'finding' ? last.draft : undefined;
  const ends = endsSegment(binder.items[next]) || (draft?.id === 'view' && binder.items[next]?.is === 'keeper');
  if (last?.is === 'subject' && last.subject === binder.subject) {
    const sided: SubjectNode = { ...last.subject, side: form.side, end: at.end };
    binder.statement.elements[binder.statement.elements.length - 1] = { is: 'subject', subject: sided };
    binder.subject = sided;
  } else if (draft && !draft.side && (ends || awaitsResult(binder, next))) {
    // `review L`: nothing that is said of the patient has a side, and the word is kept.
    const kept = isOfPatient(draft);
    if (kept) draft.quotes.push({ text: binder.line.slice(at.start, at.end), ...at });
    else draft.side = form.side;
    draft.end = at.end;
    if (kept) binder.role('verbatim', at);
    if (kept) return true;
  } else if (opensStatement(binder, next)) {
    binder.flush();
    Object.assign(binder, { sectionSide: form.side, sidesOpen: true });
    if (binder.subject) binder.subject = { ...binder.subject, side: form.side };
  } else {
    binder.flush();
    binder.side = { value: form.side, opens, ...at };
  }
  binder.role('modifier', at);
  return true;
};

/** `xray R hva 22; L hva 30`, `L: 2nd tender. R: nt`: a side of all that its statement says. */
function opensStatement(binder: Binder, next: number): boolean {
  const keeper = binder.items[next];
  const { statement, sectionNamed, sidesOpen } = binder;
  if (keeper?.is === 'keeper' && binder.line[keeper.start] === ':' && binder.atSegmentStart()) return true;
  const told = statement.elements.filter(({ is }) => is !== 'break');
  if (told.length > 0 && told.every((each) => each.is === 'finding' && OF_IMAGE.includes(each.draft.id)))
    return binder.atSegmentStart();
  if (told.length > 0) return false;
  return (sectionNamed && binder.roles.at(-1)?.kind === 'keyword') || sidesOpen;
}

/** `pulses both feet palpable`: the side stands between a test and the word that is its result. */
function awaitsResult(binder: Binder, next: number): boolean {
  const draft = binder.current;
  if (draft?.entry?.bare !== 'incomplete' || hasValue(draft) || draft.statusGiven) return false;
  const item = binder.items[next];
  if (item?.is === 'slashed' && fitItem(item, binder.openSlots())) return true;
  return matchesAt(binder.items, next).some(
    ({ form: { values, classes } }) =>
      classes.has('absent') || values.get(draft.id as FindingId)?.some(({ slot }) => binder.isOpen(slot)),
  );
}

type May = (form: Match['form']) => boolean;
const hasClass: May = ({ classes }) => classes.size > 0;
const TAKERS: readonly { readonly may: May; readonly take: Taker }[] = [
  { may: ({ values }) => values.size > 0, take: takeValue },
  { may: hasClass, take: takeStatus },
  { may: hasClass, take: takeMuch },
  { may: ({ labels }) => labels.size > 0, take: takeUnder },
  { may: hasClass, take: takeReason },
  { may: ({ trails }) => trails.size > 0, take: takeTrail },
  { may: ({ labels }) => labels.size > 0, take: takeLabel },
  { may: hasClass, take: takeDenial },
  { may: ({ values, classes }) => values.size + classes.size > 0, take: takeBefore },
  { may: ({ section, findings }) => section !== undefined || findings.length > 0, take: takeSectionOrFinding },
  { may: ({ side }) => side !== undefined, take: takeSide },
  { may: hasClass, take: takePanel },
  { may: hasClass, take: takeClass },
];
