import { LIFECYCLE_WORDS } from '../../grammar/lexicon/lifecycle-words.ts';
import { NONE, orNone } from '../../grammar/none.ts';
import type { LineSyntax } from '../../grammar/syntax.ts';
import type { Ray, Side } from '../../grammar/values.ts';
import type { Context, RayAnalysis, Report, VisitAnalysis } from './analysis.ts';
import { type RaySeen, seenOf } from './change.ts';
import { decidingFindings } from './deciding.ts';
import { type EpisodeState, foldVisit, isoDayOf } from './episode.ts';
import type { Allowance, HeaderFacts, VisitFacts } from './facts.ts';
import { isStatedPainless, statedRays } from './gates.ts';
import { identifierMessage, identifiersOf, placeOf } from './identifiers.ts';
import { settled, shown, weighed } from './local-severity.ts';
import { readHeaderFacts, readVisitFacts } from './read-facts.ts';
import { READING_MESSAGES, readingReport, readingReports, unreadRedFlags } from './reading-reports.ts';
import { isConcerned, type Rule, type RuleView } from './rules/define-rule.ts';
import { identifier } from './rules/identifiers.ts';
import { RULES } from './rules/index.ts';
import { NO_SETTINGS, type Settings } from './settings.ts';
import { stageRay } from './stage.ts';
import { type WholeVisit, wholeVisit } from './whole-visit.ts';

/** The lines before the first visit: who, which scales, what is allowed. */
export function analyseHeader(
  lines: readonly LineSyntax[],
  settings: Settings = NO_SETTINGS,
): { header: HeaderFacts; reports: Report[] } {
  const header = readHeaderFacts(lines);
  const reports = [
    ...readingReports(lines),
    ...strayReports(lines),
    ...identifierReports(lines),
    ...allowanceReports(header.allowances),
  ];
  return { header, reports: settled(reports, settings) };
}

const OF_A_VISIT: readonly string[] = LIFECYCLE_WORDS;
/** What belongs to a visit, where none has begun: it signs nothing. */
const strayReports = (lines: readonly LineSyntax[]): Report[] =>
  lines.flatMap(({ header, text }, at) => {
    if (!header || !OF_A_VISIT.includes(header.is)) return [];
    const start = text.search(/\S/);
    return [readingReport('word-out-of-place', header.is, { line: at, start, end: start + header.is.length })];
  });

/** The rules see visits only; a name may stand above them. */
const identifierReports = (lines: readonly LineSyntax[]): Report[] =>
  lines.flatMap((line, at) =>
    identifiersOf(line).map((found) => ({
      code: identifier.code,
      severity: identifier.severity,
      place: placeOf(at, found),
      message: identifierMessage(found.what),
      related: [],
      fixes: [],
    })),
  );

/** All that is known of one visit: facts, what is computed for each lesser ray that it names, reports. Pure. */
export function analyseVisit(
  lines: readonly LineSyntax[],
  before: EpisodeState,
  context: Context,
  rules: readonly Rule[] = RULES,
): VisitAnalysis {
  const { settings = NO_SETTINGS } = context;
  const facts = readVisitFacts(lines, context.header, settings);
  const whole = wholeVisit(facts, before, context.header);
  const seen: Seen[] = [];
  const rays = analyseRays({ visit: facts, before, context, whole, seen });
  const redFlags = whole.flags.all;
  const view = { visit: facts, rays, redFlags, before, context, lines };
  const reports = [...readingReports(lines, facts), ...ruleReports(view, rules), ...allowanceReports(facts.allowances)];
  const all = weighed([...unreadRedFlags(facts, lines), ...reports], settings).sort(
    (a, b) => a.place.line - b.place.line || a.place.start - b.place.start,
  );
  const { kept, hidden } = suppress(all, [...context.header.allowances, ...facts.allowances]);
  const unused = facts.allowances
    .filter(({ code, reason }) => reason && isKnown(code) && !hidden.has(code))
    .map(({ code, place }) => readingReport('unused-allow', code, place));
  return {
    facts,
    rays,
    redFlags,
    reports: orNone([...shown(kept, settings), ...settled(unused, settings)]),
    hidden: orNone([...hidden]),
    before,
    after: foldVisit(before, facts, seen),
  };
}

type Seen = RaySeen & { readonly side: Side; readonly ray: Ray };
interface RaysInput {
  readonly visit: VisitFacts;
  readonly before: EpisodeState;
  readonly context: Context;
  readonly whole: WholeVisit;
  /** Takes what the visit leaves of each ray, for later visits. */
  readonly seen: Seen[];
}

function analyseRays({ visit, before, context, whole, seen }: RaysInput): RayAnalysis[] {
  const { header, settings = NO_SETTINGS } = context;
  const on = isoDayOf(visit);
  const rays: RayAnalysis[] = statedRays(visit).map(({ side, ray }) => {
    const painless = isStatedPainless(visit, side, ray);
    const view = { visit, before, header, side, ray, settings, whole, painless, rays: () => rays };
    const deciding = decidingFindings(visit, before.known, side, ray);
    const stage = stageRay(view, deciding);
    const now = seenOf(stage.outcome, deciding, on);
    seen.push({ side, ray, ...now });
    return stage;
  });
  return rays;
}

function ruleReports(view: RuleView, rules: readonly Rule[]): Report[] {
  const reports: Report[] = [];
  for (const rule of rules) {
    if (!isConcerned(rule, view.visit)) continue;
    const { code, severity: usual, check } = rule;
    for (const { place, message, severity = usual, related = [], fixes = [] } of check(view))
      reports.push({ code, severity, place, message, related, fixes });
  }
  return reports;
}

const CODES: ReadonlySet<string> = new Set([...RULES.map(({ code }) => code), ...Object.keys(READING_MESSAGES)]);
const isKnown = (code: string): boolean => CODES.has(code);

function allowanceReports(allowances: readonly Allowance[]): Report[] {
  return allowances.flatMap(({ code, reason, place }) => {
    if (!isKnown(code)) return [readingReport('unknown-code', code, place)];
    return reason ? [] : [readingReport('allow-without-reason', code, place)];
  });
}

const NOTHING = { kept: NONE, hidden: new Set<string>() };
const NEVER_HIDDEN: ReadonlySet<string> = new Set(['unread-red-flag', 'signed-words-changed']);
/** An allowance with a reason hides its code, but never danger, an unread red flag, or that signed words were changed. */
function suppress(
  reports: readonly Report[],
  allowances: readonly Allowance[],
): { readonly kept: readonly Report[]; readonly hidden: ReadonlySet<string> } {
  if (reports.length === 0) return NOTHING;
  const allowed = new Set(allowances.filter(({ reason }) => reason).map(({ code }) => code));
  const hides = ({ code, severity }: Report) => allowed.has(code) && severity !== 'danger' && !NEVER_HIDDEN.has(code);
  return {
    kept: reports.filter((report) => !hides(report)),
    hidden: new Set(reports.filter(hides).map(({ code }) => code)),
  };
}

/** Allowances of the header that hid nothing in any visit. `hidden` are the codes that the visits hid. */
export function unusedAllowances(
  header: HeaderFacts,
  hidden: ReadonlySet<string>,
  settings: Settings = NO_SETTINGS,
): Report[] {
  const unused = header.allowances
    .filter(({ code, reason }) => reason && isKnown(code) && !hidden.has(code))
    .map(({ code, place }) => readingReport('unused-allow', code, place));
  return settled(unused, settings);
}
