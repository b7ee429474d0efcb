import type { ScaleTold } from './tell.ts';

/** What a scale says of a ray, after its name: `II (by visible deviation, purchase lost)`. */
export function scaleOutcomeText({ outcome }: Pick<ScaleTold, 'outcome'>): string {
  switch (outcome.is) {
    case 'told':
      return `${outcome.name} (${outcome.by.join(', ')})`;
    case 'cannot be told':
      return `cannot be told (${outcome.possible.join(' or ')} possible): ${outcome.missing.join('; ')}`;
    case 'fits none':
      return `no description fits: ${outcome.against.join('; ')}`;
    case 'not applied':
      return `not applied: ${outcome.why}`;
  }
}
