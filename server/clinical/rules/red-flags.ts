import type { Flagged, RedFlag } from '../red-flags.ts';
import { defineRule } from './define-rule.ts';

const practice = { source: 'common practice', mark: 'common practice' } as const;

/** What to do first; an acute dislocation has a rule of its own, which asks for time and circulation. */
const FIRST: Readonly<Record<Exclude<RedFlag, 'acute dislocation'>, string>> = {
  infection: 'infection until shown otherwise. Assess the same day; no steroid.',
  ischaemia: 'an emergency. Loosen any dressing, straighten the toe, call the surgeon and the vascular team.',
  'open injury': 'circulation and feeling first, a film, then theatre.',
  fracture: 'circulation and feeling first, a film, reduce where displaced, both again.',
  clot: 'Assess for a clot today by the local route; chest signs go to the emergency services.',
  tumour: 'MRI and the tumour route first. No injection, no excision.',
  'neuropathic hot foot':
    'the limb may be at risk. Off-load, and refer to the diabetic foot team within one working day, at once if it is threatened.',
};
const isOwn = (flagged: Flagged): flagged is Flagged & { flag: keyof typeof FIRST } =>
  flagged.flag !== 'acute dislocation';

export const redFlagFirst = defineRule({
  ...practice,
  code: 'red-flag',
  name: 'Red flag',
  severity: 'danger',
  scope: 'visit',
  reads: [
    'hot',
    'redness',
    'fever',
    'wound',
    'infection-sign',
    'perfusion',
    'sensation',
    'swelling',
    'disproportionate-pain',
    'calf',
    'chest',
    'mass',
    'pain',
    'cancer-history',
    'weight-loss',
    'capillary-refill',
    'pin-site',
    'complication',
    'neuropathy',
    'trigger',
    'image-other',
    'clot-history',
  ],
  what: 'The findings show signs of infection, of a toe without blood, of an open injury or a fresh fracture, of a clot, of a tumour, or of a neuropathic foot at risk.',
  why: 'These come before any staging, injection or routine plan, and each is urgent, most within the day.',
  instead: 'Act on it by the local protocol, and record what was done. No "allow" hides it.',
  examples: {
    invalid: '2nd hot, tender plantar\nfever',
    valid: '2nd hot, tender plantar\nno fever',
    nearMiss: '2nd red, tender plantar, colour pink',
  },
  *check({ visit, redFlags }) {
    for (const flagged of redFlags) {
      if (!isOwn(flagged)) continue;
      const signs = visit.facts.filter(({ statement }) => flagged.statements.includes(statement));
      const [first, ...others] = signs;
      if (!first) continue;
      yield {
        place: first.origin.place,
        message: `Red flag, ${flagged.why}: ${FIRST[flagged.flag]}`,
        related: others.map(({ origin }) => ({ place: origin.place, message: 'the sign beside it' })),
      };
    }
  },
});
