import type { Sourced } from '../../grammar/lexicon/entry.ts';
import type { Side } from '../../grammar/values.ts';
import type { VisitAnalysis } from '../clinical/analysis.ts';
import { balance, type Weighed } from '../clinical/differential/argue.ts';
import { argued, differentialOf } from '../clinical/differential/differential.ts';
import type { Site } from '../clinical/differential/view.ts';

const SHOWN = 3;

/** The conditions that lead at one site, each with the test that tells it from the others. Empty where none is argued for. Markdown. */
export function leadingConditions(analysis: VisitAnalysis, side: Side, site: Site): string {
  const found = differentialOf(analysis).sites.find((each) => each.side === side && isSame(each.site, site));
  const leading = found ? argued(found) : [];
  if (!found || leading.length === 0) return '';
  const first = leading.slice(0, SHOWN);
  // What must not be missed never hides what most findings argue for.
  const other = leading.find(({ condition }) => !condition.neverMiss);
  const shown = other && !first.includes(other) ? [...first, other] : first;
  const images = found.images.map(({ text }) => `- image: ${text}`);
  const remarks = found.remarks.map((remark) => `- ${remark.text} (${marked(remark)})`);
  const head = '*What may explain it*, computed; findings are counted, not weighed';
  return [head, '', ...shown.map(row), ...images, ...remarks].join('\n');
}

function row(weighed: Weighed): string {
  const { condition } = weighed;
  const { for: supporting, against } = balance(weighed);
  const first = condition.neverMiss ? ', not to be missed' : '';
  const open = weighed.open.filter(({ ask }) => ask !== '').map(({ ask }) => ask);
  const unexamined = open.length > 0 ? ` Not examined: ${open.join('; ')}.` : '';
  const tell = `To tell: ${condition.separate.ask} (${marked(condition.separate)}).`;
  return `- **${condition.id}**${first}: argued for by ${supporting}, against by ${against}.${unexamined} ${tell}`;
}

const marked = ({ source, mark }: Sourced): string =>
  source === mark || source === 'from memory' ? mark : `${source}, ${mark}`;

const isSame = (a: Site, b: Site): boolean =>
  a.at === b.at &&
  (a.at !== 'ray' || (b.at === 'ray' && a.ray === b.ray)) &&
  (a.at !== 'web' || (b.at === 'web' && a.web === b.web));
