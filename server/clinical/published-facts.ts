import type { Mark } from '../../grammar/lexicon/entry.ts';
import type { PublicationKey } from '../../grammar/sources.ts';
import { IMAGE_FACTS } from './published-images.ts';
import { TREATMENT_FACTS } from './published-treatment.ts';

/** A published relation or figure, and what the engine does with it. Each has a check of its own among the tests. */
export interface PublishedFact {
  readonly says: string;
  readonly sources: readonly PublicationKey[];
  readonly mark: Exclude<Mark, 'common practice'>;
  /** `uses`: the engine follows it; `shows`: a text quotes it; `refuses`: it contradicts itself or another, and nothing is computed with it. */
  readonly engine: 'uses' | 'shows' | 'refuses';
  readonly does: string;
}

const EXAM_FACTS = {
  'three drawer scales': {
    says: 'Three drawer scales are in use: 0-4, 0-3, and 1-3 with dislocation counted apart. The same number means different things on them.',
    sources: ['NERY-RF', 'THOMP87', 'PECK12'],
    mark: 'from memory, to be verified',
    engine: 'refuses',
    does: 'A grade keeps its scale and is never taken over from one scale to another; on the 1-3 scale any positive grade is all that is known.',
  },
  'half is unassigned': {
    says: 'Grade 1 is under half; no source that could be read assigns exactly half.',
    sources: ['NERY-RF'],
    mark: 'read',
    engine: 'refuses',
    does: 'Exactly half gives the span of stages 1 to 2 and says why.',
  },
  'no millimetres for a grade': {
    says: 'A cut of 2 mm of the plate gave gross instability in 12 of 18 cadaver joints (66.7 %). Those are millimetres of plate, not of translation; no source gives millimetres for a drawer grade.',
    sources: ['LACH18'],
    mark: 'read',
    engine: 'refuses',
    does: 'A drawer in millimetres is reported and never becomes a grade.',
  },
  'grades of 291 toes': {
    says: 'Of 291 toes 150 had grade 1, 108 grade 2, 21 grade 3, and 12 were dislocated, counted apart (52, 37, 7 and 4 %).',
    sources: ['PECK12'],
    mark: 'read',
    engine: 'uses',
    does: 'No grade of the 1-3 scale is taken as a stable joint or as a dislocation.',
  },
  'stable clinical stage 0 against anatomical grade 0': {
    says: 'Stage 0 has drawer 0 (from memory), yet of 35 joints with anatomical grade 0 or I over 97 % had drawer 1 and none was stable.',
    sources: ['COUGH11', 'NERY-RF'],
    mark: 'from memory, to be verified',
    engine: 'refuses',
    does: 'Clinical stage, drawer grade and anatomical grade are three numbers; an intact plate or a low anatomical grade never makes a joint stable.',
  },
  'stages and grades are two systems': {
    says: 'A staging of the clinical examination and a grading of surgical findings were proposed side by side.',
    sources: ['COUGH11'],
    mark: 'read',
    engine: 'uses',
    does: 'An anatomical grade never becomes a stage.',
  },
  'stage and grade correlate': {
    says: 'In 55 joints clinical stage and anatomical grade correlated (P < 0.001).',
    sources: ['NERY11'],
    mark: 'read',
    engine: 'refuses',
    does: 'A correlation of groups does not turn the one number of a patient into the other.',
  },
  'what tracks the anatomical grade': {
    says: 'Over 100 joints the drawer, ground touch, supination, purchase and widening of the space tracked the anatomical grade; pronation, deviation in one plane, heels, sport, head pain and the click did not.',
    sources: ['NERY15'],
    mark: 'read',
    engine: 'uses',
    does: 'The first support a stage, the others are no evidence; none but the drawer, overlap or dislocation moves the number.',
  },
  'crossover without a positive drawer': {
    says: 'Of 169 patients with a crossover toe 112 had a positive drawer; the abstract does not say how many were tested.',
    sources: ['KAZ07'],
    mark: 'read',
    engine: 'uses',
    does: 'An overlap at rest with a low drawer stays stage 3, with low certainty.',
  },
  'specificity of the drawer': {
    says: 'The drawer had a specificity of 99.8 % for a tear in one series, of 22 % for a high-grade tear in another. 99.8 % cannot come from about nine intact plates, which its own 88.9 % (8 of 9) implies.',
    sources: ['KLEIN13E', 'FLEI14'],
    mark: 'read',
    engine: 'refuses',
    does: 'No text quotes an accuracy of the drawer and no odds are computed from one.',
  },
  'gradual or acute onset': {
    says: 'Onset was gradual in 93 % of tears in one series; in another acute pain at onset tracked severity, and in a third all 28 patients began with acute pain.',
    sources: ['KLEIN13E', 'NERY15', 'NERY12'],
    mark: 'read',
    engine: 'refuses',
    does: 'Onset moves no stage; it only tells an acute injury from an old one.',
  },
  'neuroma and instability together': {
    says: 'Of 121 patients operated on for an interdigital neuroma 24 (20 %) had second MTP instability; another page gives about 5 %.',
    sources: ['COUGH02'],
    mark: 'read',
    engine: 'uses',
    does: 'Web signs beside an unstable joint name both: the instability comes first, and blocks tell them apart. No frequency is quoted.',
  },
  'click of the web': {
    says: 'The click was 61 % sensitive in one series and the most sensitive sign of all in another.',
    sources: ['MAHA15', 'PAST12'],
    mark: 'read',
    engine: 'shows',
    does: 'Its text says that published accuracy disagrees; an absent click closes nothing.',
  },
  'thumb-index squeeze': {
    says: 'Thumb-index squeeze: 51 of 53 neuromas found (96 %). One foot of 54 was negative on ultrasound, so its specificity is one of one.',
    sources: ['MAHA15'],
    mark: 'read',
    engine: 'shows',
    does: 'The sensitivity is quoted, and that there is no specificity.',
  },
  'dorsal percussion': {
    says: 'Dorsal percussion: sensitivity 33 %, accuracy 26 %. With 53 of 54 positive the two cannot both hold.',
    sources: ['MAHA15'],
    mark: 'read',
    engine: 'refuses',
    does: 'Only plantar percussion (37 %) is quoted.',
  },
  'compression of the MTP joints': {
    says: 'Compression of the MTP joints: sensitivity 54 %, specificity 74 %, LR+ 2.1, LR- 0.6 against swelling.',
    sources: ['BOSCH15'],
    mark: 'read',
    engine: 'shows',
    does: 'Both figures stand with the finding.',
  },
  'compression is no web sign': {
    says: 'Of feet with sore compression in early arthritis 79 % had synovitis or intermetatarsal bursitis.',
    sources: ['VANDIJK'],
    mark: 'read',
    engine: 'uses',
    does: 'Compression never counts as a sign of a web.',
  },
  'cutting the plate and the collaterals': {
    says: 'The force to dislocate falls by 30 % with the plate cut, by 46 % with the collaterals cut.',
    sources: ['BHATIA94'],
    mark: 'read',
    engine: 'refuses',
    does: 'An intact plate on an image never stands for a stable joint; no force is computed.',
  },
} as const satisfies Readonly<Record<string, PublishedFact>>;

/** Every published fact that the engine uses, shows or refuses, by area. */
export const PUBLISHED_FACTS = { ...EXAM_FACTS, ...IMAGE_FACTS, ...TREATMENT_FACTS } as const;
export type PublishedFactId = keyof typeof PUBLISHED_FACTS;
