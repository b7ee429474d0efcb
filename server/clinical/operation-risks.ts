import { clearFacts } from './answers.ts';
import type { VisitFacts } from './facts.ts';

/** Above this, wound infection after elective forefoot surgery rose in patients with diabetes (CANC17, read). */
const HBA1C_PERCENT = 7.5;

/**
 * Is anything of the patient to be settled before an elective operation: pregnancy, an anticoagulant, smoking now, or
 * diabetes whose HbA1c is missing or above 7.5 %? A value in mmol/mol is compared with no limit: the clinic sets its own.
 */
export function patientToSettle({ facts }: VisitFacts): boolean {
  const present = (finding: 'pregnancy' | 'anticoagulant' | 'diabetes') =>
    clearFacts(facts, finding).some(({ status }) => status === 'present');
  const smokes = clearFacts(facts, 'smoking').some(
    ({ status, values }) => status === 'present' && values.status?.words.includes('current'),
  );
  const hba1c = clearFacts(facts, 'hba1c').filter(({ status }) => status === 'present');
  const high = hba1c.some(({ values }) => (values.percent?.high ?? 0) > HBA1C_PERCENT);
  return (
    present('pregnancy') ||
    present('anticoagulant') ||
    smokes ||
    high ||
    (present('diabetes') && !hba1c.some(({ values }) => values.percent || values.ifcc))
  );
}
