import { entry, within, words } from './entry.ts';

/** The head of a metatarsal as a place, in every form. */
export const HEADS = ['met', 'mt', 'metatarsal'].flatMap((bone) => [`${bone} head`, `${bone} heads`]).concat('mth');

/** When and at what a foot hurts. */
export const MOMENTS = {
  'push-off': ['toe-off', 'pushing off'],
  night: ['at night', 'nocturnal', 'nights'],
  barefoot: ['walking barefoot', 'barefoot walking'],
  'barefoot on tiles': ['barefoot on tile', 'walking barefoot on tiles'],
  walking: ['on walking'],
  running: ['on running'],
  'weight-bearing': ['wb', 'weight bearing', 'on weight bearing'],
  'end of day': ['end of the day'],
  evenings: ['by evening', 'in the evening'],
  mornings: ['in the morning', 'in the mornings', 'morning'],
  cycling: ['on cycling'],
  sport: ['sports', 'at sport', 'on sport'],
  standing: ['on standing'],
  stairs: ['on stairs'],
  hills: [],
  shoes: ['in shoes'],
  'tight shoes': ['in tight shoes'],
  'narrow shoes': [],
  jumping: ['on jumping', 'jumps'],
  dancing: ['on dancing'],
  'demi pointe': [],
} as const;
export const WIDER_MOMENTS = within({
  barefoot: ['barefoot on tiles'],
  'end of day': ['evenings'],
  shoes: ['tight shoes', 'narrow shoes'],
  dancing: ['demi pointe'],
});

const asked = {
  source: 'common practice',
  mark: 'common practice',
  kind: 'event',
  bare: 'incomplete',
  sections: ['history', 'pain'],
  subjects: ['ray', 'web', 'foot'],
} as const;

/** What makes the complaint worse, and what eases it; each word says so only with its circumstance beside it. */
export const WHAT_CHANGES_IT = [
  entry({
    ...asked,
    id: 'worse-with',
    word: 'worse-with',
    forms: ['worse', 'worst', 'worse when', 'aggravated by'],
    slots: {
      what: words(
        {
          ...MOMENTS,
          heels: ['high heels'],
          activity: ['exercise'],
        },
        { many: true, before: true, wider: WIDER_MOMENTS },
      ),
    },
    many: true,
    order: 21,
    technique: 'Ask what makes it worse.',
    meaning: 'Worse barefoot and at push-off points to the joint, worse in narrow shoes to the nerve of the space.',
  }),
  entry({
    ...asked,
    id: 'eased-by',
    word: 'eased-by',
    forms: ['eases', 'relieved by', 'better with', 'better in'],
    slots: {
      what: words(
        {
          rest: ['resting'],
          'shoes off': ['shoe off', 'taking shoes off', 'taking shoe off'],
          rubbing: [],
          massage: [],
          'wide shoes': ['wider shoes'],
          'soft shoes': [],
          trainers: [],
          'running shoes': [],
          walking: [],
          movement: [],
          cold: [],
          ice: [],
          elevation: [],
        },
        { many: true, wider: within({ rubbing: ['massage'], trainers: ['running shoes'], cold: ['ice'] }) },
      ),
    },
    many: true,
    order: 22,
    technique: 'Ask what eases it.',
    meaning: 'Relief by taking the shoe off and rubbing the foot fits a nerve of the web space.',
  }),
] as const;
