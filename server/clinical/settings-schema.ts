import { DRAWER_SCALES } from '../../grammar/values.ts';
import { DANGERS, reportCodes, SETTING_SEVERITIES, WINDOW, WORDINGS } from './read-settings.ts';

const section = (description: string, properties: object) => ({
  type: 'object',
  description,
  additionalProperties: false,
  properties,
});
const panel = (of: string, example: string) => ({
  type: 'array',
  minItems: 1,
  uniqueItems: true,
  description: `What normal says of a ${of}, each as a note would write it.`,
  items: { type: 'string', examples: [example] },
});

/** The JSON schema of `.forefoot.json`, from the tables that read it. */
export const settingsSchema = () => ({
  $schema: 'http://json-schema.org/draft-07/schema#',
  title: 'Settings of a clinic for its forefoot notes',
  type: 'object',
  additionalProperties: false,
  properties: {
    $schema: { type: 'string' },
    panels: section('What the word normal says. What a panel does not name stays not mentioned.', {
      ray: panel('ray', 'swelling none'),
      web: panel('web', 'click none'),
      'includes-stability': {
        type: 'boolean',
        description: 'Lets a panel say that a joint is stable (drawer, paper, dislocated).',
      },
    }),
    scales: section('Scales for notes that name none.', { drawer: { enum: DRAWER_SCALES } }),
    windows: section('Times of the local protocol.', {
      'course-review': {
        type: 'string',
        pattern: WINDOW.source,
        description: 'When a course without operation is reviewed, such as 6-8 weeks.',
      },
    }),
    limits: section('Limits of the local protocol.', {
      'hba1c-percent': {
        type: 'number',
        minimum: 4,
        maximum: 20,
        description:
          'HbA1c in percent above which diabetes is settled before an elective operation; 7.5 without this key (CANC17).',
      },
    }),
    severity: section(
      'Severity by code. A danger is never lowered or turned off.',
      Object.fromEntries(
        reportCodes().map((code) => [code, { enum: DANGERS.has(code) ? ['danger'] : SETTING_SEVERITIES }]),
      ),
    ),
    wording: section('What the formatter writes.', {
      words: { enum: WORDINGS, description: 'Canonical words, or the abbreviations as written.' },
    }),
  },
});
