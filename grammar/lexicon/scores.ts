import { entry, type NumberSlot, number } from './entry.ts';

const score = {
  kind: 'measure',
  bare: 'incomplete',
  sections: ['exam', 'history'],
  subjects: ['foot', 'patient'],
} as const;
const part = (max: number, labels: readonly string[]): NumberSlot =>
  number('', 0, max, true, { labels, labelled: true });
const percent = (labels: readonly string[]): NumberSlot => number('%', 0, 100, true, { labels, labelled: true });

/** Outcome scores by total or by part. No item of a licensed questionnaire is held here. */
export const SCORES = [
  entry({
    ...score,
    id: 'vas',
    word: 'vas',
    slots: {
      // From 11 up a number can be of 100 mm alone, and none is none on either.
      length: { ...number('mm', 0, 100, true), bareFrom: 11 },
      tenth: { ...number('/10', 0, 10, true), bareTo: 0 },
    },
    order: 150,
    technique: 'Pain on a line of 100 mm, or a number from 0 to 10; say which: 45 mm or 4/10.',
    meaning:
      'The smallest change that matters depends on the method that set it (1.8 to 5.2 after hallux valgus correction, SUTT); none was found for lesser MTP surgery.',
    source: 'SUTT',
    mark: 'read',
  }),
  entry({
    ...score,
    id: 'aofas',
    word: 'aofas',
    forms: ['aofas lesser', 'aofas lesser mtp ip'],
    slots: {
      total: number('', 0, 100, true),
      pain: part(40, ['pain']),
      activity: part(10, ['activity']),
      footwear: part(10, ['footwear']),
      motion: part(10, ['motion', 'mtp motion']),
      ip: part(5, ['ip', 'ip motion']),
      stability: part(5, ['stability']),
      callus: part(5, ['callus']),
      alignment: part(15, ['alignment']),
    },
    order: 151,
    technique:
      'Lesser MTP-IP scale: pain 40, activity 10, footwear 10, MTP motion 10, IP motion 5, stability 5, callus 5, alignment 15.',
    meaning: 'Rated by the clinician; its validity has been questioned. The points of the items are from memory.',
    source: 'KIT94',
    mark: 'from memory, to be verified',
  }),
  entry({
    ...score,
    id: 'faam',
    word: 'faam',
    slots: { adl: percent(['adl']), sports: percent(['sports', 'sport']) },
    order: 152,
    technique: 'Percent of the answered items: daily activities and sports, each 0 to 100, 100 best.',
    meaning: 'Valid with at least 19 of 21 daily and 7 of 8 sports items answered (MART05).',
    source: 'MART05',
    mark: 'read',
  }),
  entry({
    ...score,
    id: 'moxfq',
    word: 'moxfq',
    slots: {
      total: number('', 0, 100, true),
      walking: part(100, ['walking', 'walking standing', 'ws']),
      pain: part(100, ['pain']),
      social: part(100, ['social']),
      index: part(100, ['index']),
    },
    order: 153,
    technique:
      'Domain scores or the index, each 0 to 100, 100 worst; a number alone is kept as such. The questionnaire is licensed: scores only.',
    meaning: 'A higher number is worse.',
    source: 'from memory',
    mark: 'from memory, to be verified',
  }),
  entry({
    ...score,
    id: 'ffi',
    word: 'ffi',
    slots: {
      total: number('', 0, 100, true),
      pain: part(100, ['pain']),
      disability: part(100, ['disability']),
      limitation: part(100, ['limitation', 'activity limitation']),
    },
    order: 154,
    technique: 'Total or subscales, each scaled to 100, 100 worst.',
    meaning: 'Made for rheumatoid feet; a higher number is worse.',
    source: 'from memory',
    mark: 'from memory, to be verified',
  }),
] as const;
