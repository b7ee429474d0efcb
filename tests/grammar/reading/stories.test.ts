import { expect, test } from 'vitest';
import { readLine } from '../../../grammar/read-line.ts';
import { checkRules } from './rules.ts';

// Expected values: the reading rules of the language (common practice for the words of an impression).
checkRules({
  'an impression is the clinician’s own words; only a diagnosis is read': [
    ["imp Morton's neuroma 3rd web L", 'impression/left web 3 diagnosis what=interdigital neuroma'],
    ['impression: plate tear 2nd', 'impression/2 diagnosis what=plantar plate tear'],
    ['imp 2nd ?plate tear', 'impression/2 diagnosis what=?plantar plate tear'],
    ['imp no gout', 'impression/no diagnosis what=gout'],
    ['imp stress fracture 2nd MT, undisplaced', 'impression/MT 2 diagnosis what=stress fracture'],
    ['2nd swollen. imp gout plan tape', '2 swelling; impression/2 diagnosis what=gout; plan/tape'],
  ],
  'its words are no condition of the plan after it': [
    ['imp zzq plan steroid web 2', 'plan/web 2 steroid'],
    ['imp if worse plan boot', 'unclear: boot'],
  ],
  'what is said beside a diagnosis makes it unclear, unreported': [
    ['imp plate tear 2nd gr2', 'unclear: diagnosis'],
    ['imp likely gout', 'unclear: diagnosis'],
    ['imp gout was excluded', 'unclear: diagnosis'],
    ['imp no gout, neuroma', 'impression/no diagnosis what=gout; unclear: diagnosis'],
    ['imp plate tear vs neuroma 2nd', 'unclear: diagnosis'],
  ],
  'an impression holds no findings of the exam': [
    ['imp 2nd drawer 2, swelling 3rd', ''],
    ['imp not mechanical, unstable 2nd', ''],
    ['2nd imp plate tear', 'impression/2 diagnosis what=plantar plate tear'],
  ],
  'a red-flag word of an impression is reported': [
    ['imp pin tract infection', '', 'unread-red-flag'],
    ['imp ?cellulitis', '', 'unread-red-flag'],
  ],
  'three unknown words in a segment of the history or under pain are a story': [
    [
      'history twisted ankle on the stairs, gradual onset',
      'history/onset manner=gradual',
      'unknown-word word-out-of-place word-out-of-place',
    ],
    ['history twisted ankle badly abroad, gradual onset', 'history/onset manner=gradual', ''],
    ['history gradual onset after zzq yyq xxq', 'unclear: onset', ''],
    ['pain 2nd 6/10, zzq yyq xxq', 'pain/2 pain score=6/10', ''],
    [
      'history fevre since sunday, zzq fever yyq xxq',
      'unclear: fever',
      'unknown-word word-out-of-place unknown-word unread-red-flag',
    ],
  ],
  'elsewhere each unknown word is reported': [
    ['plan zzq yyq xxq', '', 'unknown-word unknown-word unknown-word'],
    ['2nd zzq yyq xxq', '', 'unknown-word unknown-word unknown-word'],
    ['tried zzq yyq xxq', '', 'unknown-word unknown-word unknown-word'],
  ],
});

test('a story looks like kept text', () => {
  const told = (text: string) =>
    readLine(text).roles.flatMap(({ kind, start, end }) => (kind === 'verbatim' ? [text.slice(start, end)] : []));
  expect(told('history zzq was on the yyq xxq, gradual')).toEqual(['zzq', 'was', 'on', 'the', 'yyq', 'xxq']);
  expect(told('history zzq yyq, gradual')).toEqual([]);
});
