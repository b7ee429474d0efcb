import type { Flagged, RedFlag } from '../red-flags.ts';
import { defineRule, type RuleView } from './define-rule.ts';
import { acuteDislocationLacks } from './hazards.ts';

const practice = { source: 'common practice', mark: 'common practice' } as const;

/** What to do first. */
const FIRST: Readonly<Record<RedFlag, string>> = {
  'acute dislocation': 'circulation and feeling first, a film, reduce, both again.',
  infection: 'infection until shown otherwise. Assess the same day; no steroid.',
  ischaemia: 'an emergency. Loosen any dressing, straighten the toe, call the surgeon and the vascular team.',
  'open injury': 'circulation and feeling first, a film, then theatre.',
  fracture: 'circulation and feeling first, a film, reduce where displaced, both again.',
  clot: 'Assess for a clot today by the local route; chest signs go to the emergency services.',
  tumour: 'MRI and the tumour route first. No injection, no excision.',
  'neuropathic hot foot':
    'the limb may be at risk. Off-load, and refer to the diabetic foot team within one working day, at once if it is threatened.',
};
/** A dislocation whose time or circulation is missing is reported by the rule that asks for them, and once is enough. */
const isReported = (view: RuleView, { flag, statements }: Flagged): boolean =>
  flag === 'acute dislocation' &&
  view.rays.some((ray) => {
    const found = acuteDislocationLacks(view, ray);
    return found !== undefined && found.lacks.length > 0 && statements.includes(found.fact.statement);
  });

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
    'temperature',
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
    'thrombophilia',
    'dislocated',
    'film-joint',
    'drawer',
    'dp',
    'pt',
    'pulses',
  ],
  what: 'The findings show signs of infection, of a toe without blood, of an open injury, a fresh fracture or dislocation, of a clot, of a tumour, or of a neuropathic foot at risk.',
  why: 'These come before any staging, injection or routine plan, and each is urgent, most within the day.',
  instead: 'Act on it by the local protocol, and record what was done. No "allow" hides it.',
  examples: {
    invalid: '2nd hot, tender plantar\nfever',
    valid: '2nd hot, tender plantar\nno fever',
    nearMiss: '2nd red, tender plantar, colour pink',
  },
  *check(view) {
    const { visit, redFlags } = view;
    for (const flagged of redFlags) {
      if (isReported(view, flagged)) continue;
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
