import { clearFacts } from './answers.ts';
import type { VisitFacts } from './facts.ts';
import type { Settings } from './settings.ts';

/** Above this, wound infection after elective forefoot surgery rose in patients with diabetes (CANC17, read). */
export const HBA1C_PERCENT = 7.5;

/**
 * Is anything of the patient to be settled before an elective operation: pregnancy, an anticoagulant, smoking now, or
 * diabetes whose HbA1c is missing or above the limit (the clinic's own, or that of CANC17)? A value in mmol/mol is compared
 * with none.
 */
export function patientToSettle({ facts }: VisitFacts, { hba1cPercent = HBA1C_PERCENT }: Settings = {}): boolean {
  const present = (finding: 'pregnancy' | 'anticoagulant' | 'diabetes') =>
    clearFacts(facts, finding).some(({ status }) => status === 'present');
  const smokes = clearFacts(facts, 'smoking').some(
    ({ status, values }) => status === 'present' && values.status?.words.includes('current'),
  );
  const hba1c = clearFacts(facts, 'hba1c').filter(({ status }) => status === 'present');
  const high = hba1c.some(({ values }) => (values.percent?.high ?? 0) > hba1cPercent);
  return (
    present('pregnancy') ||
    present('anticoagulant') ||
    smokes ||
    high ||
    (present('diabetes') && !hba1c.some(({ values }) => values.percent || values.ifcc))
  );
}
