import { entryOf } from '../../grammar/lexicon/index.ts';
import { readLine } from '../../grammar/read-line.ts';
import type { FindingNode } from '../../grammar/syntax.ts';
import { DRAWER_SCALES, type Value } from '../../grammar/values.ts';
import type { Severity } from './analysis.ts';
import { jsonFault } from './json-place.ts';
import { READING_MESSAGES } from './reading-reports.ts';
import { RULES } from './rules/index.ts';
import type { PanelMember, Settings } from './settings.ts';

/** Settings, or every reason why the file can't be used, one line each: the place in the file, then what is expected there. */
export type SettingsRead = { readonly settings: Settings } | { readonly problems: readonly string[] };

export const SETTING_SEVERITIES: readonly (Severity | 'off')[] = ['danger', 'contradiction', 'missing', 'style', 'off'];
export const WORDINGS = ['canonical', 'as-written'] as const;
/** Findings that say how stable a joint is. A panel takes them only where the clinic says so. */
const STABILITY: ReadonlySet<string> = new Set(['drawer', 'paper', 'dislocated']);

/** Codes whose reports are dangers, or stand for one that could not be read. */
export const DANGERS: ReadonlySet<string> = new Set([
  ...RULES.filter(({ severity }) => severity === 'danger').map(({ code }) => code),
  'unread-red-flag',
]);
/** Every code that a report may have, in the order of the alphabet. */
export const reportCodes = (): string[] => [...RULES.map(({ code }) => code), ...Object.keys(READING_MESSAGES)].sort();

/** Reads a settings file. It is used whole or not at all. */
export function readSettings(text: string): SettingsRead {
  const json = text.replace(/^\ufeff/, '');
  const fault = jsonFault(json);
  if (fault) return { problems: [`not JSON: ${fault}`] };
  const reader = new SettingsReader();
  const settings = reader.read(JSON.parse(json));
  return reader.problems.length > 0 ? { problems: reader.problems } : { settings };
}

class SettingsReader {
  readonly problems: string[] = [];

  read(json: unknown): Settings {
    const { panels, scales, windows, limits, severity, wording } = this.record('', json, [
      '$schema',
      'panels',
      'scales',
      'windows',
      'limits',
      'severity',
      'wording',
    ]);
    const { drawer } = this.record('scales', scales, ['drawer']);
    const { 'course-review': review } = this.record('windows', windows, ['course-review']);
    const { 'hba1c-percent': hba1c } = this.record('limits', limits, ['hba1c-percent']);
    const { words } = this.record('wording', wording, ['words']);
    const drawerScale = this.oneOf('scales.drawer', drawer, DRAWER_SCALES);
    const courseReview = this.window('windows.course-review', review);
    const hba1cPercent = this.between('limits.hba1c-percent', hba1c, 4, 20);
    const wanted = this.oneOf('wording.words', words, WORDINGS);
    return {
      ...this.panels(panels),
      ...(drawerScale ? { drawerScale } : {}),
      ...(courseReview ? { courseReview } : {}),
      ...(hba1cPercent === undefined ? {} : { hba1cPercent }),
      ...(severity === undefined ? {} : { severity: this.severities(severity) }),
      ...(wanted ? { words: wanted } : {}),
    };
  }

  private fail(path: string, expected: string): undefined {
    this.problems.push(path === '' ? expected : `${path}: ${expected}`);
    return undefined;
  }

  /** The members of an object; empty where it is missing, or is none, which is a problem. */
  private record(path: string, value: unknown, keys?: readonly string[]): Readonly<Record<string, unknown>> {
    if (value === undefined) return {};
    if (typeof value !== 'object' || value === null || Array.isArray(value)) {
      this.fail(path, `expected an object { … }, not ${shown(value)}`);
      return {};
    }
    for (const key of Object.keys(value))
      if (keys && !keys.includes(key)) this.fail(joined(path, key), `unknown key; expected ${listed(keys)}`);
    return value as Record<string, unknown>;
  }

  private oneOf<const T extends string>(path: string, value: unknown, choices: readonly T[]): T | undefined {
    if (value === undefined) return undefined;
    const found = choices.find((choice) => choice === value);
    return found ?? this.fail(path, `expected ${listed(choices)}, not ${shown(value)}`);
  }

  private between(path: string, value: unknown, low: number, high: number): number | undefined {
    if (value === undefined || (typeof value === 'number' && value >= low && value <= high)) return value;
    return this.fail(path, `expected a number from ${low} to ${high}, not ${shown(value)}`);
  }

  /** A time as the plan of a note would write it, so that an accepted plan reads as it was meant. */
  private window(path: string, value: unknown): string | undefined {
    if (value === undefined) return undefined;
    const text = typeof value === 'string' ? value.trim() : '';
    if (WINDOW.test(text)) {
      const { statements, problems } = readLine(`plan review in ${text}`);
      const [finding, ...more] = statements.flatMap(({ findings }) => findings);
      const [slot] = Object.values(finding?.slots ?? {});
      if (problems.length === 0 && more.length === 0 && slot?.causes.length === 0 && ordered(slot.value)) return text;
    }
    return this.fail(path, `expected a time with its unit such as "6-8 weeks", not ${shown(value)}`);
  }

  private severities(value: unknown): NonNullable<Settings['severity']> {
    const codes = reportCodes();
    const chosen: Record<string, Severity | 'off'> = {};
    for (const [code, severity] of Object.entries(this.record('severity', value))) {
      const path = joined('severity', code);
      if (!codes.includes(code)) {
        this.fail(path, 'unknown code; expected a code that forefoot check prints in brackets');
        continue;
      }
      const found = this.oneOf(path, severity, SETTING_SEVERITIES);
      if (found && found !== 'danger' && DANGERS.has(code))
        this.fail(path, `a danger is never lowered or turned off; expected "danger", not ${shown(severity)}`);
      else if (found) chosen[code] = found;
    }
    return chosen;
  }

  private panels(value: unknown): Pick<Settings, 'panels'> {
    const {
      ray,
      web,
      'includes-stability': stability,
    } = this.record('panels', value, ['ray', 'web', 'includes-stability']);
    if (stability !== undefined && typeof stability !== 'boolean')
      this.fail('panels.includes-stability', `expected true or false, not ${shown(stability)}`);
    const members = {
      ...(ray === undefined ? {} : { ray: this.members('ray', ray, stability === true) }),
      ...(web === undefined ? {} : { web: this.members('web', web, stability === true) }),
    };
    return Object.keys(members).length > 0 ? { panels: members } : {};
  }

  private members(kind: 'ray' | 'web', value: unknown, stability: boolean): PanelMember[] {
    const path = `panels.${kind}`;
    if (!Array.isArray(value) || value.length === 0) {
      this.fail(path, `expected a list of findings such as ["${EXAMPLES[kind]}"], not ${shown(value)}`);
      return [];
    }
    const members = value.flatMap((each, index) => this.member(`${path}[${index}]`, kind, each, stability) ?? []);
    for (const [index, { finding }] of members.entries())
      if (members.findIndex((other) => other.finding === finding) < index)
        this.fail(`${path}`, `${finding} stands twice; expected each finding once`);
    return members;
  }

  /** A member is written as a note would write it and read by the reader of notes. */
  private member(path: string, kind: 'ray' | 'web', value: unknown, stability: boolean): PanelMember | undefined {
    const wrong = () =>
      this.fail(
        path,
        `expected one finding of a ${kind} with its result such as "${EXAMPLES[kind]}", not ${shown(value)}`,
      );
    if (typeof value !== 'string' || /[\r\n;]/.test(value)) return wrong();
    const { statements, problems } = readLine(`${kind === 'ray' ? '2nd' : 'web 2'} ${value}`);
    const [node, ...more] = statements.flatMap(({ findings }) => findings);
    const unread = problems.length > 0 || more.length > 0 || statements.some(({ verbatim }) => verbatim.length > 0);
    if (!node || unread || node.causes.length > 0 || node.section !== 'exam' || node.quotes.length > 0) return wrong();
    const { id: finding, status } = node;
    const slots = Object.entries(node.slots);
    if (finding === 'panel' || finding === 'stage' || finding === 'unremarkable') return wrong();
    if (node.subject?.at !== (kind === 'ray' ? 'rays' : 'webs') || slots.some(([, slot]) => slot.causes.length > 0))
      return wrong();
    if (status !== 'present' && status !== 'absent') return wrong();
    if (STABILITY.has(finding) && !stability)
      return this.fail(
        path,
        `${shown(value)} says that the joint is stable; expected it only with "includes-stability": true`,
      );
    if (!isNormal(node))
      return this.fail(
        path,
        `${shown(value)} is no normal result; expected what normal may stand for such as "${EXAMPLES[kind]}"`,
      );
    const values = Object.fromEntries(slots.map(([slot, { value: each }]) => [slot, each]));
    return { finding, status, ...(slots.length > 0 ? { values } : {}) };
  }
}

/** Results that say that nothing is wrong, by finding; common practice. */
const NORMAL: Readonly<Record<string, readonly string[]>> = {
  drawer: ['painless'],
  paper: ['holds'],
  pip: ['flexible'],
  mtp: ['flexible', 'stable'],
  perfusion: ['pink'],
  neurovascular: ['intact', 'unremarkable'],
  'mtp-motion': ['full', 'painless'],
  'mtp-dorsiflexion': ['full', 'painless', 'passive', 'active'],
  'mtp-plantarflexion': ['full', 'painless', 'passive', 'active'],
  'pip-motion': ['full', 'painless', 'passive', 'active'],
  sensation: ['normal'],
  'capillary-refill': ['normal'],
  'fat-pad': ['full'],
  skin: ['intact'],
  'toe-strength': ['full', 'flexors', 'extensors'],
  'ray-mobility': ['normal'],
};
/** A sign that is denied, or a test with a normal result. */
function isNormal({ id, status, slots }: FindingNode): boolean {
  if (status === 'absent') return id !== 'panel' && (entryOf(id).kind === 'sign' || entryOf(id).bare === 'present');
  const words = NORMAL[id];
  const results = Object.entries(slots).filter(([slot]) => slot !== 'scale');
  return (
    words !== undefined &&
    results.length > 0 &&
    results.every(([, { value }]) =>
      value.is === 'word'
        ? value.words.every((word) => words.includes(word))
        : value.is === 'drawer grade' && value.high === 0,
    )
  );
}

/** A time as `windows` takes it; that a range rises is asked apart. */
export const WINDOW = /^[1-9]\d?(-[1-9]\d?)? (days?|weeks?|months?)$/;

const EXAMPLES = { ray: 'swelling none', web: 'click none' } as const;
const ordered = (value: Value): boolean => value.is === 'duration' && value.low > 0 && value.low <= value.high;
const joined = (path: string, key: string): string => (path === '' ? key : `${path}.${key}`);
const listed = (choices: readonly string[]): string =>
  choices.length === 1
    ? `"${choices[0]}"`
    : `${choices
        .slice(0, -1)
        .map((each) => `"${each}"`)
        .join(', ')} or "${choices.at(-1)}"`;
/** A value as the file has it, cut so that the message stays one line. */
function shown(value: unknown): string {
  const text = JSON.stringify(value) ?? 'nothing';
  return text.length > 40 ? `${text.slice(0, 37)}…` : text;
}
