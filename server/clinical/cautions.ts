/** Each caution stands here once; every document prints it once. */
export const CAUTIONS = {
  'unread red flag': 'Words that may be a red flag were not understood in this visit: read and settle them first.',
  'no steroid in infection':
    'No steroid into a joint that may be infected; aspirate before antibiotics if the patient is stable.',
  'mass first': 'No injection into a mass, and no excision, before MRI and the tumour route.',
  'watch circulation': 'Record circulation and feeling of the toe before and after any reduction or correction.',
  'no steroid at an unstable joint':
    'No steroid into an unstable joint or the web beside it: dislocation after repeated steroid has been reported (REIS89, from memory).',
  tape: 'No tape over numb, ischaemic or fragile skin, or with a tape allergy.',
  'anti-inflammatory':
    'An anti-inflammatory only after every risk has been asked: ulcer or bleeding, kidney, heart, anticoagulant, pregnancy, allergy.',
  boot: 'Before a boot, think of falls and of a clot.',
  'image alone':
    'An image alone does not diagnose: 75 of 160 plates without symptoms looked torn on ultrasound (GREGG06).',
  'negative image': 'A negative image does not clear a painful, drifting toe with a positive drawer.',
  growing: 'An open growth plate changes every operation: take a paediatric opinion.',
  'web change':
    'A web change beside an unstable joint is not proof of a neuroma: none of 36 second-MTP tears had a definite second-space neuroma (UMANS14).',
  'after operation':
    "The operation note's own orders take precedence; pale toe, pin site, infection and clot signs lead every visit.",
  feeling: 'Without protective feeling, pain is no guide: inspect the skin at every visit.',
} as const;
export type CautionId = keyof typeof CAUTIONS;
