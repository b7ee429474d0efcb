import { visits } from './generator.mjs';

/** The same visits as JSON and as YAML, block by block, with the schema that both are checked against. */
export const asJson = (count) => JSON.stringify({ forefoot: 1, patient: 'KM-207', visits: visits(count) }, null, 1);

export const asYaml = (count) =>
  `forefoot: 1\npatient: KM-207\nvisits:\n${visits(count)
    .map((visit) => yamlItem(visit))
    .join('')}`;

function yamlItem(visit) {
  const lines = yamlLines(visit);
  return lines.map((line, index) => `${index === 0 ? '- ' : '  '}${line}\n`).join('');
}
const yamlLines = (record) =>
  Object.entries(record).flatMap(([key, value]) =>
    typeof value === 'object'
      ? [`${key}:`, ...yamlLines(value).map((line) => `  ${line}`)]
      : [`${key}: ${JSON.stringify(value)}`],
  );

/** Types, ranges and words of a visit, as a schema can say them; nothing is computed from them. */
export function schema() {
  const [example] = visits(1);
  return {
    $schema: 'http://json-schema.org/draft-07/schema#',
    type: 'object',
    required: ['forefoot', 'patient', 'visits'],
    properties: {
      forefoot: { const: 1 },
      patient: { type: 'string' },
      visits: { type: 'array', items: shape(example) },
    },
  };
}
function shape(value) {
  if (typeof value === 'number') return { type: 'integer', minimum: 0, maximum: 90 };
  if (typeof value === 'string') return { type: 'string', pattern: '^[\\w .-]+$' };
  const properties = Object.fromEntries(Object.entries(value).map(([key, each]) => [key, shape(each)]));
  return { type: 'object', properties, required: Object.keys(properties), additionalProperties: false };
}

/** Where a digit of the middle visit's drawer grade stands. */
export function digitOffset(text) {
  const middle = text.indexOf('drawer', text.length >> 1);
  return middle + text.slice(middle).search(/\d/);
}
