import { entry, words } from './entry.ts';

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
    forms: ['worse', 'worst', 'worse when', 'aggravated by', 'exacerbated by'],
    slots: {
      what: words(
        {
          walking: ['on walking'],
          barefoot: ['walking barefoot', 'barefoot walking', 'barefoot on tile', 'barefoot on tiles'],
          'push-off': ['toe-off', 'pushing off'],
          running: ['on running'],
          standing: ['prolonged standing'],
          'weight-bearing': ['wb', 'weight bearing'],
          stairs: ['hills'],
          heels: ['high heels'],
          shoes: ['tight shoes', 'narrow shoes', 'tight footwear', 'narrow footwear'],
          cycling: [],
          sport: ['sports'],
          dancing: ['demi pointe'],
          jumping: ['jumps'],
          activity: ['exercise'],
          'end of day': ['end of the day', 'by evening', 'evening', 'evenings'],
          mornings: ['the morning', 'morning', 'the mornings'],
          night: ['nights'],
        },
        { many: true, before: true },
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
    forms: [
      'eases',
      'eases with',
      'eased with',
      'relieved by',
      'relieved with',
      'better with',
      'improves with',
      'settles with',
    ],
    slots: {
      what: words(
        {
          rest: ['resting'],
          'shoes off': [
            'shoe off',
            'taking shoes off',
            'taking shoe off',
            'taking the shoe off',
            'removing shoes',
            'removing the shoe',
          ],
          rubbing: ['massage', 'rubbing it'],
          'wide shoes': ['wider shoes', 'soft shoes', 'cushioned shoes'],
          walking: ['movement', 'moving'],
          cold: ['ice'],
          elevation: [],
        },
        { many: true },
      ),
    },
    many: true,
    order: 22,
    technique: 'Ask what eases it.',
    meaning: 'Relief by taking the shoe off and rubbing the foot fits a nerve of the web space.',
  }),
] as const;
