import type { FindingId } from '../../../grammar/lexicon/index.ts';
import { commas, type OwnPhrase, type Predicate, type Said, was } from './phrase.ts';

type Score = Extract<FindingId, 'vas' | 'aofas' | 'faam' | 'moxfq' | 'ffi'>;
type Labels = readonly (readonly [slot: string, before: string, after?: string])[];

const parts = (said: Readonly<Record<string, string | undefined>>, labels: Labels): string =>
  commas(...labels.map(([slot, before, after = '']) => said[slot] && `${before}${before && ' '}${said[slot]}${after}`));

/** A score by its name, its total first and its parts after it. */
const score = (name: string, labels: Labels) => {
  const told = (said: Readonly<Record<string, string | undefined>>): Predicate =>
    was(parts(said, labels) || 'given as written');
  return {
    shape: 'own' as const,
    name,
    by: 'filled in',
    wording: {},
    present: told,
    absent: (said: Said<Score>) => was(commas('recorded as absent', parts(said, labels))),
  };
};

const vas: OwnPhrase<'vas'> = score('pain on the visual analogue scale', [
  ['length', '', ' of 100'],
  ['tenth', ''],
]);
const aofas: OwnPhrase<'aofas'> = score('the AOFAS lesser MTP-IP score', [
  ['total', '', ' of 100'],
  ['pain', 'pain', ' of 40'],
  ['activity', 'activity', ' of 10'],
  ['footwear', 'footwear', ' of 10'],
  ['motion', 'MTP motion', ' of 10'],
  ['ip', 'IP motion', ' of 5'],
  ['stability', 'stability', ' of 5'],
  ['callus', 'callus', ' of 5'],
  ['alignment', 'alignment', ' of 15'],
]);
const faam: OwnPhrase<'faam'> = score('the FAAM score', [
  ['adl', 'daily activities'],
  ['sports', 'sports'],
]);
const moxfq: OwnPhrase<'moxfq'> = score('the MOXFQ score', [
  ['total', '', ' of 100 (100 worst), which part is not stated'],
  ['index', 'index', ' of 100 (100 worst)'],
  ['walking', 'walking and standing', ' of 100 (100 worst)'],
  ['pain', 'pain', ' of 100 (100 worst)'],
  ['social', 'social', ' of 100 (100 worst)'],
]);
const ffi: OwnPhrase<'ffi'> = score('the FFI score', [
  ['total', '', ' of 100 (100 worst)'],
  ['pain', 'pain', ' of 100 (100 worst)'],
  ['disability', 'disability', ' of 100 (100 worst)'],
  ['limitation', 'activity limitation', ' of 100 (100 worst)'],
]);

export const SCORE_PHRASES = { vas, aofas, faam, moxfq, ffi };
