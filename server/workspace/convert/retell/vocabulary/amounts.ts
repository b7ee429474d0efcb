/** How much, in words that say no more and no less than those of the language; what is only big says neither. */
export const AMOUNT: Readonly<Record<string, readonly string[]>> = {
  slight: [
    ...['subtle', 'faint', 'faintly', 'minimally', 'subtly', 'a touch', 'a touch of', 'a hint of', 'a trace of'],
    ...['a slight', 'a small amount of', 'a tiny bit', 'a tiny bit of', 'a wee bit', 'a wee bit of'],
    ...['ever so slight'],
  ],
  mild: ['a mild', 'mild degree of', 'a mild degree of'],
  moderate: ['a moderate', 'moderate degree of', 'a moderate degree of', 'a moderate amount of', 'medium'],
  marked: ['pronounced', 'substantial', 'substantially', 'a marked', 'marked degree of'],
  severe: ['a severe', 'very severe', 'really severe'],
  exquisite: ['extremely', 'extreme', 'intensely', 'intense'],
};
/** Where of a joint or a toe something is. */
export const DORSAL: readonly string[] = [
  ...['dorsum', 'on the dorsum', 'over the dorsum', 'on top', 'over the top', 'on the top', 'up top'],
  ...['dorsal aspect', 'dorsal side', 'dorsal surface', 'the dorsal aspect', 'the dorsal side', 'from above'],
];
export const PLANTAR: readonly string[] = [
  ...['underneath', 'from below', 'on the sole', 'underside', 'the underside', 'under surface', 'under side'],
  ...['plantar aspect', 'plantar side', 'plantar surface', 'the plantar aspect', 'the plantar side', 'plantarly'],
  ...['planter', 'planter aspect', 'planter side', 'under the joint', 'below the joint', 'underneath the joint'],
];
/** The same as painful, beside a test that is. */
export const HURTS: readonly string[] = [
  ...['hurts', 'hurting', 'it hurts', 'with soreness', 'uncomfortable', 'provokes pain', 'elicits pain'],
  ...['causes pain', 'gives pain', 'brings on pain', 'triggers pain', 'provoked pain', 'elicited pain'],
  ...['gave pain', 'with discomfort', 'painfully'],
];
export const PAINLESS: readonly string[] = [
  ...['non painful', 'nonpainful'],
  ...['painfree', 'comfortable', 'comfortably'],
];
