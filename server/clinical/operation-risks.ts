import { ANTICOAGULANTS } from '../../grammar/lexicon/before-operation.ts';
import { clearFacts } from './answers.ts';
import type { VisitFacts } from './facts.ts';
import { hba1cPercent } from './hba1c.ts';
import type { Settings } from './settings.ts';

/** Above this, wound infection after elective forefoot surgery rose in patients with diabetes (CANC17, read). */
export const HBA1C_PERCENT = 7.5;

/** Does the visit say what becomes of an anticoagulant around the operation? */
export const plansAnticoagulant = ({ facts }: Pick<VisitFacts, 'facts'>): boolean =>
  clearFacts(facts, 'drug-plan').some(
    ({ status, values }) => status === 'present' && values.drug?.words.some((drug) => ANTICOAGULANTS.includes(drug)),
  );

/**
 * Is anything of the patient to be settled before an elective operation: pregnancy, an anticoagulant, smoking now, or
 * diabetes whose HbA1c is missing or above the limit (the clinic's own, or that of CANC17)? A value in mmol/mol is compared in
 * percent (NGSP).
 */
export function patientToSettle(
  { facts }: VisitFacts,
  { hba1cPercent: limit = HBA1C_PERCENT }: Settings = {},
): boolean {
  const present = (finding: 'pregnancy' | 'anticoagulant' | 'diabetes') =>
    clearFacts(facts, finding).some(({ status }) => status === 'present');
  const smokes = clearFacts(facts, 'smoking').some(
    ({ status, values }) => status === 'present' && values.status?.words.includes('current'),
  );
  const hba1c = clearFacts(facts, 'hba1c').filter(({ status }) => status === 'present');
  const high = hba1c.some(({ values }) => (hba1cPercent(values) ?? 0) > limit);
  return (
    present('pregnancy') ||
    (present('anticoagulant') && !plansAnticoagulant({ facts })) ||
    smokes ||
    high ||
    (present('diabetes') && !hba1c.some(({ values }) => values.percent || values.ifcc))
  );
}
