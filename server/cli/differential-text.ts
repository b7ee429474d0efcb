import type { ConditionRecord, DifferentialRecord, SiteRecord } from './differential-records.ts';
import { labelled, markText, wrapped } from './layout.ts';

type Argument = ConditionRecord['arguments'][number];
type Words = SiteRecord['opened'][number];

/** What `forefoot differential` shows people of one visit: red flags, then each site with what may explain it. */
export function differentialText(record: DifferentialRecord, width: number): string {
  const { file, date, kind, redFlags, caution, sites } = record;
  const flags = redFlags.map(({ flag, why, step }) =>
    labelled('RED FLAG', `${flag}, before everything below: ${why}. ${step}`, { left: 2, width }),
  );
  if (caution) flags.push(labelled('RED FLAG?', caution, { left: 2, width }));
  const rays = sites.filter(({ site }) => /^\d/.test(site));
  const blocks = alike(sites).map((group) => siteText(group, rays, width));
  const none = sites.length === 0 ? ['  no complaint or sign of a lesser ray, a web or the foot is stated\n'] : [];
  const heading = `  ${[date ?? 'undated', kind].filter(Boolean).join(' ')}`;
  return `${[file, heading, ...flags, ...none, ...blocks].join('\n')}\n`;
}

/** Sites of one foot of which the same is said stand together. */
function siteText([site, ...others]: readonly SiteRecord[], rays: readonly SiteRecord[], width: number): string {
  if (!site) return '';
  const names = [site, ...others].map((each) => each.site).join(', ');
  const opened = `  ${site.side} ${names}: ${quoted(site.opened, site.site)}`;
  return ['', wrapped(opened, width, { first: '', rest: '    ' }), ...siteRows(site, rays, width)].join('\n');
}

function siteRows(each: SiteRecord, rays: readonly SiteRecord[], width: number): string[] {
  const { conditions, images, remarks, unread, site } = each;
  const leading = conditions.filter((condition) => condition.for > 0);
  const others = conditions.filter((condition) => condition.for === 0);
  const named = (neverMiss: boolean) =>
    others.filter((condition) => condition.neverMiss === neverMiss).map((condition) => unargued(condition, site));
  return [
    ...leading.flatMap((condition) => {
      const there = site.startsWith('web') ? toldAt(condition, each.side, rays) : undefined;
      return there ? [`${headline(condition)}, as at the ${there}`] : conditionText(condition, site, width);
    }),
    ...rows('never miss', named(true), 4, width),
    ...rows('not argued', named(false), 4, width),
    ...rows('image', images.map(sourced), 4, width),
    ...rows('remark', remarks.map(sourced), 4, width),
    ...rows('unread', [unread.map((text) => `"${text}"`).join('; ')], 4, width),
  ];
}

function alike(sites: readonly SiteRecord[]): SiteRecord[][] {
  const groups = new Map<string, SiteRecord[]>();
  for (const site of sites) {
    const said = [site.side, quoted(site.opened, site.site), ...siteRows(site, [], Number.POSITIVE_INFINITY)];
    const key = said.join('\n');
    groups.set(key, [...(groups.get(key) ?? []), site]);
  }
  return [...groups.values()];
}

/** Rows of a table; the label stands before the first. */
const rows = (label: string, texts: readonly string[], left: number, width: number): string[] =>
  texts.filter((text) => text !== '').map((text, at) => labelled(at === 0 ? label : '', text, { left, width }));

function conditionText(each: ConditionRecord, site: string, width: number): string[] {
  const by = (role: Argument['role']) =>
    each.arguments.filter((argument) => argument.role === role).map((argument) => argumentText(argument, site));
  return [
    headline(each),
    ...rows('for', by('for'), 6, width),
    ...rows('against', by('against'), 6, width),
    ...rows('no proof', by('no proof'), 6, width),
    ...rows('unexamined', [unexamined(each)], 6, width),
    ...rows('not used', [unusable(each, site)], 6, width),
    ...rows('separate', [`${each.separate.ask} [${markText(each.separate)}]`], 6, width),
  ];
}

const headline = (each: ConditionRecord): string =>
  `    ${each.condition}: argued for by ${each.for}, against by ${each.against}`;

/** The ray of which the same words have been told, so that a web beside it need not tell them again. */
function toldAt(each: ConditionRecord, side: SiteRecord['side'], rays: readonly SiteRecord[]): string | undefined {
  const words = (condition: ConditionRecord) =>
    condition.arguments.filter(({ role }) => role !== 'no proof').map((argument) => JSON.stringify(argument));
  const same = rays.find((ray) => {
    const there = ray.conditions.find(({ condition }) => condition === each.condition);
    const told = there && words(there);
    return ray.side === side && told !== undefined && words(each).every((argument) => told.includes(argument));
  });
  return same?.site;
}

const argumentText = ({ words, why, earlier, ...source }: Argument, site: string): string =>
  `${earlier ? `told ${earlier}` : quoted(words, site)}: ${why} [${markText(source)}]`;
const sourced = ({ text, ...source }: SiteRecord['remarks'][number]): string => `${text} [${markText(source)}]`;

/** The words as typed, those of one line together; a neighbour that they are said of is named. */
function quoted(words: readonly Words[], site: string): string {
  const byLine = new Map<number, Set<string>>();
  for (const { words: text, line, of } of words) {
    const neighbour = of !== site && of !== 'foot' && of !== 'patient' && !text.toLowerCase().includes(of);
    const said = `${neighbour ? `${of} ` : ''}${text.replaceAll(/\s+/g, ' ')}`;
    byLine.set(line, (byLine.get(line) ?? new Set()).add(said));
  }
  return [...byLine].map(([line, texts]) => `${[...texts].join(', ')} (line ${line})`).join('; ');
}

const UNEXAMINED: ReadonlySet<string> = new Set(['not mentioned', 'not done', 'unable']);
/** What was not examined or asked, in the words that ask for it. */
const unexamined = ({ open }: ConditionRecord): string =>
  open
    .filter(({ because }) => UNEXAMINED.has(because))
    .map(({ ask, because }) => (because === 'not mentioned' ? ask : `${ask} (stated as ${because})`))
    .join('; ');
/** What is written and can't be used. */
const unusable = ({ open }: ConditionRecord, site: string): string =>
  open
    .filter(({ because }) => !UNEXAMINED.has(because))
    .map(({ words, because }) => `${quoted(words, site)}: ${because}`)
    .join('; ');

/** A condition that nothing argues for, in one row. */
function unargued(each: ConditionRecord, site: string): string {
  const against = each.arguments.filter(({ role }) => role === 'against');
  const marks = [...new Set(against.map(markText))].join('; ');
  const words = quoted(
    against.flatMap((argument) => argument.words),
    site,
  );
  const [open, unused] = [unexamined(each), unusable(each, site)];
  const parts = [
    words === '' ? 'nothing for it' : `against it ${words} [${marks}]`,
    ...(open === '' ? [] : [`unexamined: ${open}`]),
    ...(unused === '' ? [] : [`not used: ${unused}`]),
  ];
  return `${each.condition}: ${parts.join('; ')}`;
}
