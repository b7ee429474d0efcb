import type { Argument, Open, Weighed } from '../../server/clinical/differential/argue.ts';
import { balance } from '../../server/clinical/differential/argue.ts';
import { argued, differentialOf, type SiteDifferential } from '../../server/clinical/differential/differential.ts';
import { lastVisit } from './note.ts';

/** `right 2nd`, `right web 2`, `right foot`. */
const nameOf = ({ side, site }: SiteDifferential): string => {
  if (site.at === 'foot' || site.at === 'great toe') return `${side} ${site.at}`;
  return site.at === 'ray' ? `${side} ray ${site.ray}` : `${side} web ${site.web}`;
};

export const sitesOf = (text: string): string[] => differentialOf(lastVisit(text)).sites.map(nameOf);

export function siteOf(text: string, name = 'right ray 2'): SiteDifferential {
  const found = differentialOf(lastVisit(text)).sites.find((site) => nameOf(site) === name);
  if (!found) throw new Error(`nothing opens ${name}; open are ${sitesOf(text).join(', ')}`);
  return found;
}

/** The conditions that something argues for, in order. */
export const leading = (text: string, name?: string): string[] =>
  argued(siteOf(text, name)).map(({ condition }) => condition.id);

export function weighed(text: string, condition: string, name?: string): Weighed {
  const found = siteOf(text, name).conditions.find((each) => each.condition.id === condition);
  if (!found) throw new Error(`${condition} is not weighed at ${name}`);
  return found;
}
export const counts = (text: string, condition: string, name?: string): [number, number] => {
  const { for: supporting, against } = balance(weighed(text, condition, name));
  return [supporting, against];
};
/** The findings that argue in a role. */
export const by = (role: Argument['role'], text: string, condition: string, name?: string): string[] =>
  weighed(text, condition, name)
    .arguments.filter((argument) => argument.role === role)
    .map(({ finding }) => finding);
/** What is open, with its reason: `fever: not mentioned`. */
export const open = (text: string, condition: string, name?: string): string[] =>
  weighed(text, condition, name).open.map(({ finding, because }: Open) => `${finding}: ${because}`);

/** Every argument of a visit as one line, to compare two visits. */
export const everyArgument = (text: string): string[] =>
  differentialOf(lastVisit(text, [])).sites.flatMap((site) =>
    site.conditions.flatMap(({ condition, arguments: all }) =>
      all.map(({ role, finding, why }) => `${nameOf(site)}: ${condition.id}: ${role} ${finding}: ${why}`),
    ),
  );
