import type { Sourced } from '../../grammar/lexicon/entry.ts';
import type { Course } from './episode.ts';
import type { RedFlag } from './red-flags.ts';

/** What the path looks at: each a small closed set, so that every combination can be enumerated. */
export interface PathInputs {
  readonly flag: RedFlag | 'none';
  readonly growing: boolean;
  /** Tender shaft after a rise in load, or a fracture on an image. */
  readonly bone: boolean;
  readonly systemic: boolean;
  readonly operated: 'no' | 'on track' | 'off track';
  /** Sudden or injured under six weeks ago, drawer 2 or more. */
  readonly acuteRupture: boolean;
  readonly web: boolean;
  readonly joint: 'stable' | 'unstable' | 'unknown';
  /** `quiet`: no drawer, but stated straight, neither tender nor swollen. Else the lower stage of a span, unless overlap or dislocation is in it. */
  readonly stage: 'lax' | 'none found' | 'not used' | 'acute injury' | 'quiet' | 'cannot' | 0 | 1 | 2 | 3 | 4;
  readonly course: Course['length'];
  readonly response: Course['response'];
  readonly kept: Course['kept'];
  readonly imaging: 'concordant' | 'discordant' | 'absent';
  readonly progressing: boolean;
  readonly operation: 'not planned' | 'safety clear' | 'safety not clear';
  /** Few symptoms, or the circulation is poor. */
  readonly accommodate: boolean;
}

export interface PathRow extends Sourced {
  readonly id: string;
  readonly when: (inputs: PathInputs) => boolean;
  readonly step: string;
  readonly why: string;
  readonly wouldChange: string;
  readonly cautions: readonly CautionId[];
  readonly review: string;
  readonly urgent?: true;
  /** The step as a plan in the shorthand, offered for acceptance; `{ray}` is the ray. Missing where the step is no plan. */
  readonly plan?: string;
}

/** Each caution stands here once; every document prints it once. */
export const CAUTIONS = {
  'no steroid in infection':
    'No steroid into a joint that may be infected; aspirate before antibiotics if the patient is stable.',
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

const practice = { source: 'common practice', mark: 'common practice' } as const;
const early = ({ stage }: PathInputs): boolean => stage === 0 || stage === 1 || stage === 2;
const atSixWeeks = ({ course }: PathInputs): boolean =>
  course === 'six to twelve weeks' || course === 'twelve weeks or more';

/** The next step: the first row that applies. Red flags first; rows 15 to 20 are for stages 0 to 2. */
export const PATH_ROWS: readonly PathRow[] = [
  {
    ...practice,
    id: 'infection',
    when: ({ flag }) => flag === 'infection',
    urgent: true,
    step: 'Same-day assessment for infection; aspirate before antibiotics if stable.',
    why: 'A pair of signs, or the word of the clinician, points to infection.',
    wouldChange: 'Another proven cause of the heat.',
    cautions: ['no steroid in infection'],
    review: 'today',
  },
  {
    ...practice,
    id: 'ischaemia',
    when: ({ flag }) => flag === 'ischaemia',
    urgent: true,
    step: 'Emergency: loosen any dressing, straighten the toe or remove a pin, call the surgeon and the vascular team.',
    why: 'The toe is cold, pale, white or blue.',
    wouldChange: 'Colour and refill back to those of the neighbouring toes.',
    cautions: ['watch circulation'],
    review: 'now',
  },
  {
    ...practice,
    id: 'acute dislocation',
    when: ({ flag }) => flag === 'acute dislocation',
    urgent: true,
    step: 'Check circulation and feeling, take a film, reduce, check both again, take a film; an open injury goes to theatre.',
    why: 'The joint is dislocated and is acute, or nobody says that it is old.',
    wouldChange: 'A stated old onset makes it a chronic dislocation.',
    cautions: ['watch circulation'],
    review: 'today; MRI within days after reduction',
  },
  {
    ...practice,
    id: 'neuropathic hot foot',
    when: ({ flag }) => flag === 'neuropathic hot foot',
    urgent: true,
    step: 'Off-load the foot and refer to the diabetic foot team within one working day, at once if the limb is threatened.',
    why: 'A hot, swollen foot with poor feeling is an acute neuropathic foot or an infection until shown otherwise; an open wound there may threaten the limb.',
    wouldChange: 'Normal feeling, or another proven cause.',
    cautions: ['feeling'],
    review: 'within one working day',
  },
  {
    ...practice,
    id: 'growing',
    when: ({ growing }) => growing,
    step: 'Take a film, think of osteochondrosis or stress injury, and ask for a paediatric opinion.',
    why: 'The patient is under 18 years old.',
    wouldChange: 'A closed growth plate on the film.',
    cautions: ['growing'],
    review: 'with the film',
  },
  {
    ...practice,
    id: 'bone',
    when: ({ bone }) => bone,
    step: 'Off-load; take a film, then MRI or a repeat film in two to three weeks; ask about bone health.',
    why: 'A tender shaft after a rise in load, or a fracture on an image: bone before the plate.',
    wouldChange: 'A normal MRI, or tenderness at the plate only.',
    cautions: ['boot'],
    review: 'in two to three weeks',
    plan: 'boot; xray; review in 2-3 weeks',
  },
  {
    ...practice,
    id: 'systemic',
    when: ({ systemic }) => systemic,
    step: 'Blood tests and a rheumatology opinion; no operation yet.',
    why: 'Several MTP joints are involved, or compression is sore in both feet.',
    wouldChange: 'Normal blood tests and an opinion against inflammatory arthritis.',
    cautions: [],
    review: 'with the results',
  },
  {
    ...practice,
    id: 'operated, off track',
    when: ({ operated }) => operated === 'off track',
    step: 'Examine, take a film, and involve the operating surgeon.',
    why: 'The operated joint is not as expected.',
    wouldChange: 'An explanation in the operation note.',
    cautions: ['after operation'],
    review: 'as the operating surgeon orders, within days',
  },
  {
    ...practice,
    id: 'operated, on track',
    when: ({ operated }) => operated === 'on track',
    step: "Follow the next dated step of the operation note's own orders.",
    why: 'The ray has been operated on and nothing recorded is off track.',
    wouldChange: 'A pale toe, a wound that is not clean, heat, or a joint that is unstable again.',
    cautions: ['after operation'],
    review: 'as the operation note orders',
  },
  {
    ...practice,
    id: 'acute rupture',
    when: ({ acuteRupture }) => acuteRupture,
    step: 'Hold the toe down, MRI within two weeks, and discuss early repair.',
    why: 'Drawer 2 or more under six weeks after the injury suggests an acute rupture of the plate.',
    wouldChange: 'An intact plate on MRI with a stable joint.',
    cautions: ['tape', 'no steroid at an unstable joint'],
    review: 'with the MRI, within two weeks',
    plan: 'tape {ray}; mri {ray}; review in 2 weeks',
  },
  {
    ...practice,
    id: 'acute injury',
    when: ({ stage }) => stage === 'acute injury',
    step: 'Take a film, hold the toe down and off-load, and examine again within two weeks.',
    why: 'An injury under six weeks old is too fresh to stage, and the drawer may change.',
    wouldChange: 'A drawer of 2 or more: MRI within two weeks and a discussion of early repair.',
    cautions: ['tape', 'no steroid at an unstable joint'],
    review: 'within two weeks',
  },
  {
    ...practice,
    id: 'web, joint stable',
    when: ({ web, joint }) => web && joint === 'stable',
    step: 'Wide shoe and a pad for three months; ultrasound before any web injection.',
    why: 'The web has signs and the joint beside it is stable.',
    wouldChange: 'A positive drawer, or tenderness at the plate rather than in the space.',
    cautions: ['image alone'],
    review: 'at three months',
    plan: 'met-pad; review in 3 months',
  },
  {
    ...practice,
    id: 'web, joint unstable',
    when: ({ web, joint }) => web && joint === 'unstable',
    step: 'Treat the instability first; anaesthetic blocks of the web and of the joint, apart, tell them from each other.',
    why: 'The web has signs and the joint beside it is unstable.',
    wouldChange: 'Relief from the block of the web alone.',
    cautions: ['no steroid at an unstable joint', 'web change', 'tape'],
    review: 'at six to eight weeks',
  },
  {
    ...practice,
    id: 'lax',
    when: ({ stage }) => stage === 'lax',
    step: 'Explain; no course of treatment.',
    why: 'Pain and tenderness at this joint are stated absent.',
    wouldChange: 'Pain or tenderness at the joint.',
    cautions: [],
    review: 'if symptoms come',
  },
  {
    ...practice,
    id: 'quiet ray',
    when: ({ stage }) => stage === 'quiet',
    step: 'Nothing to treat at this ray as far as it was examined; add the drawer if the pain is near it.',
    why: 'The ray is stated straight and neither tender nor swollen; its drawer is not recorded.',
    wouldChange: 'A positive drawer, tenderness, swelling, or drift of the toe.',
    cautions: [],
    review: 'at the next visit, as the neighbour of the painful ray',
  },
  {
    ...practice,
    id: 'cannot stage',
    when: ({ stage }) => stage === 'cannot',
    step: 'Do the missing step of the exam that is named beside the stage; off-load meanwhile if it is painful.',
    why: 'The findings so far do not allow a stage.',
    wouldChange: 'The missing step.',
    cautions: [],
    review: 'when the step is done',
  },
  {
    ...practice,
    id: 'no instability',
    when: ({ stage }) => stage === 'none found',
    step: 'Look for another cause of the pain: bone, nerve, skin, joint disease.',
    why: 'No instability of this joint was found.',
    wouldChange: 'A positive drawer, or tenderness at the plate with swelling or reduced purchase.',
    cautions: [],
    review: 'if the pain lasts or a sign appears',
  },
  {
    ...practice,
    id: 'not staged',
    when: ({ stage }) => stage === 'not used',
    step: 'Describe the deformity and the drawer, and treat the cause that is named.',
    why: 'Staging does not apply to this joint.',
    wouldChange: 'The reason that is named beside the stage.',
    cautions: ['feeling'],
    review: 'by the cause',
  },
  {
    ...practice,
    id: 'first course',
    when: (inputs) => early(inputs) && inputs.course === 'none',
    step: 'Weight-bearing film; tape, stiff sole and pad, worn daily; calf stretch.',
    why: 'Stage 0 to 2 and no course that protects the plate yet.',
    wouldChange: 'An adequate course already done.',
    cautions: ['tape', 'anti-inflammatory', 'no steroid at an unstable joint'],
    review: 'at six to eight weeks',
    plan: 'tape {ray}; stiff-insert; met-pad; xray; review in 6-8 weeks',
  },
  {
    ...practice,
    id: 'course of unknown length',
    when: (inputs) => early(inputs) && inputs.course === 'unknown',
    step: 'Write since when the course has run, how it was kept and whether it helped.',
    why: 'A protecting measure was tried, without a time.',
    wouldChange: 'Length and response of the course.',
    cautions: ['tape'],
    review: 'today',
  },
  {
    ...practice,
    id: 'course running',
    when: (inputs) => early(inputs) && inputs.course === 'under six weeks',
    step: 'Continue the course and check its technique.',
    why: 'The course has run for less than six weeks.',
    wouldChange: 'Drift of the toe, or more pain: sooner.',
    cautions: ['tape', 'no steroid at an unstable joint'],
    review: 'at six to eight weeks of the course',
  },
  {
    ...practice,
    id: 'better',
    when: (inputs) => early(inputs) && atSixWeeks(inputs) && inputs.response === 'better' && !inputs.progressing,
    step: 'Continue to twelve weeks, then wean, and prevent: shoes, stretch, load.',
    why: 'Six weeks or more, and clearly better.',
    wouldChange: 'A relapse: a new course, with imaging.',
    cautions: ['tape'],
    review: 'at twelve weeks of the course',
  },
  {
    ...practice,
    id: 'response not stated',
    when: (inputs) => early(inputs) && atSixWeeks(inputs) && inputs.response === 'not stated' && !inputs.progressing,
    step: 'Write how the course was kept and whether it helped.',
    why: 'The course has run for six weeks or more and its response is not stated.',
    wouldChange: 'Better, or not better.',
    cautions: [],
    review: 'today',
  },
  {
    ...practice,
    id: 'poorly kept',
    when: (inputs) => early(inputs) && inputs.kept === 'poorly',
    step: 'Correct how the course is worn and restart its clock.',
    why: 'The course was poorly kept, so it has not failed.',
    wouldChange: 'A course worn daily and taped rightly.',
    cautions: ['tape', 'no steroid at an unstable joint'],
    review: 'at six to eight weeks of the new course',
  },
  {
    ...practice,
    id: 'failed, stage 0',
    when: ({ stage }) => stage === 0,
    step: 'MRI or ultrasound, an anaesthetic block of the joint, blood tests; rethink the diagnosis.',
    why: 'An adequate course did not help and the joint is stable.',
    wouldChange: 'Relief from the block, or an image that fits the exam.',
    cautions: ['image alone'],
    review: 'with the results',
    plan: 'mri {ray}',
  },
  {
    ...practice,
    id: 'failed, image first',
    when: (inputs) => early(inputs) && inputs.imaging !== 'concordant',
    step: 'MRI or dynamic ultrasound, and a weight-bearing film; then decide.',
    why: 'An adequate course did not help, and no image agrees with the exam yet.',
    wouldChange: 'An image that agrees with the exam.',
    cautions: ['image alone', 'negative image', 'no steroid at an unstable joint'],
    review: 'with the images',
    plan: 'mri {ray}; xray',
  },
  {
    ...practice,
    id: 'settle safety first',
    when: ({ operation, stage }) => operation === 'safety not clear' && typeof stage === 'number',
    step: 'Settle what makes an operation unsafe first, and date a recheck; this is no refusal.',
    why: 'An operation is planned, and the note leaves open or finds wanting the pulses, the skin, the feeling, or the time since a steroid.',
    wouldChange:
      'Pulses felt (or toe pressure measured), skin closed, three months since a steroid; smoking, diabetes, anticoagulant and pregnancy asked.',
    cautions: ['watch circulation'],
    review: 'dated recheck',
  },
  {
    ...practice,
    id: 'escalate',
    when: (inputs) => early(inputs) && inputs.course === 'six to twelve weeks' && !inputs.progressing,
    step: 'Escalate to a boot and complete twelve weeks.',
    why: 'Six to twelve weeks, not better, steady, and the image agrees.',
    wouldChange: 'Progress of the deformity.',
    cautions: ['boot', 'no steroid at an unstable joint'],
    review: 'at twelve weeks of the course',
    plan: 'boot',
  },
  {
    ...practice,
    id: 'discuss operation',
    when: early,
    step: 'Discuss an operation, none among the choices; the approach follows what needs correction.',
    why: 'Twelve weeks of an adequate course did not help, or the deformity progresses, and the image agrees with the exam.',
    wouldChange: 'A wish to wait, or new risks.',
    cautions: ['watch circulation', 'no steroid at an unstable joint'],
    review: 'by the decision',
  },
  {
    ...practice,
    id: 'accommodate',
    when: ({ accommodate }) => accommodate,
    step: 'Accommodate: roomy shoe, prop, podiatry, skin care.',
    why: 'Stage 3 or 4 with few symptoms, or poor circulation.',
    wouldChange: 'Pain, an ulcer, or a restored circulation.',
    cautions: ['watch circulation', 'feeling'],
    review: 'at three months',
  },
  {
    ...practice,
    id: 'stage 3',
    when: ({ stage }) => stage === 3,
    step: 'Weight-bearing film and MRI; splint; discuss an operation early, hallux valgus with it.',
    why: 'Stage 3 with symptoms.',
    wouldChange: 'Few symptoms, or risks that make an operation unsafe.',
    cautions: ['image alone', 'watch circulation', 'no steroid at an unstable joint'],
    review: 'with the images',
    plan: 'xray; mri {ray}',
  },
  {
    ...practice,
    id: 'stage 4',
    when: () => true,
    step: 'Weight-bearing film; if fit, discuss an operation, none among the choices: shortening with repair or transfer, PIP joint and hallux valgus as needed.',
    why: 'A chronic dislocation with symptoms.',
    wouldChange: 'Few symptoms, frailty, or poor circulation.',
    cautions: ['watch circulation', 'no steroid at an unstable joint'],
    review: 'with the film',
  },
];

/** The one row that applies to the inputs. */
export function pathRow(inputs: PathInputs): PathRow {
  const row = PATH_ROWS.find(({ when }) => when(inputs));
  if (!row) throw new RangeError('the last path row takes every input');
  return row;
}
