import { expect, test } from 'vitest';
import { readLine } from '../../../grammar/read-line.ts';
import { checkRules } from './rules.ts';

// Expected values: the reading rules of the language ("Subjects, parts, sides").
checkRules({
  'a ray is named by ordinal, ray, joint or toe': [
    ['2nd tender', '2 tenderness'],
    ['ray 2 tender', '2 tenderness'],
    ['mtp 2 tender', '2 tenderness'],
    ['toe 2 tender', '2 tenderness'],
    ['2nd MTPJ tender', '2 tenderness'],
    ['2nd mtp joint tender', '2 tenderness'],
    ['2nd toe tender', '2 tenderness'],
    ['second tender', '2 tenderness'],
    ['first tender', 'unclear: tenderness', 'unknown-word'],
    ['mtp2 tender', '2 tenderness'],
  ],
  'the others of what was not read are not those of the next statement': [
    ['present in the others; pip flexible', 'unclear: pip', 'word-out-of-place'],
    ['others paper holds; pip flexible', 'others paper result=holds; others pip rigidity=flexible'],
  ],
  'minutes are no time from which a shoe is worn': [
    ['trainers 20 min', 'unclear: ordinary-shoes', 'number-without-place word-out-of-place'],
    ['trainers from 6 weeks', 'ordinary-shoes kind=trainers from=6weeks'],
  ],
  'a site whose sign is denied is not denied itself': [
    ['2nd no pin tract redness', 'unclear: pin-site; unclear: redness'],
    ['2nd pin-site dry no redness', '2 pin-site state=dry; 2 no redness'],
  ],
  'lists and ranges of rays': [
    ['2nd-4th tender', '2,3,4 tenderness'],
    ['2nd to 4th tender', '2,3,4 tenderness'],
    ['MTPs 2,3,5 tender', '2,3,5 tenderness'],
    ['MTPs 2-4 NT', '2,3,4 no tenderness'],
    ['2nd, 3rd and 5th tender', '2,3,5 tenderness'],
    ['2nd and 3rd tender', '2,3 tenderness'],
    ['rays 2 and 4 tender', '2,4 tenderness'],
    ['2nd/3rd tender', '2,3 tenderness'],
    ['2nd 3rd 4th MTPs drawer 0', '2,3,4 drawer grade=0'],
    ['2nd tender, 3rd 4th swollen', '2 tenderness; 3,4 swelling'],
    ['L 2nd 3rd tender', 'left 2,3 tenderness'],
    ['4th 5th nad', '4,5 unremarkable'],
    ['toes 2, 3, 4 tender', '2,3,4 tenderness'],
    ['MTPs 2 3 4 tender', '2,3,4 tenderness'],
    ['toes 2/3 drawer 1', '2,3 drawer grade=1'],
    ['webs 2 3 tender', 'web 2,3 tenderness'],
    ['2nd 3rd webs tender', 'web 2,3 tenderness'],
  ],
  'side by side they are a list only before their finding, and only of several': [
    ['swelling 2nd 3rd tender', '2 swelling; 3 tenderness'],
    ['tender 2nd 3rd', 'unclear: tenderness'],
    ['2nd drawer 2 3rd 4th drawer 1', 'unclear: drawer; unclear: drawer'],
    ['mtp 2 3 tender', 'unclear: tenderness', 'number-without-place'],
    ['toes 2, 3 weeks tender', 'unclear: tenderness', 'number-without-place unknown-word'],
    ['toes 4, 2 tender', 'unclear: tenderness', 'number-without-place'],
    ['2nd MTPs tender', 'unclear: mtp; unclear: tenderness'],
  ],
  'after a finding several toes with one more number are not read': [
    ['drawer toes 2 3', 'unclear: drawer', 'number-without-place'],
    ['pain toes 2 3', 'unclear: pain', 'number-without-place'],
    ['pain toes 2 6/10', 'pain/2 pain score=6/10'],
    ['drawer mtps 2-3 1', '2,3 drawer grade=1'],
  ],
  'a slash joins rays, and no spaces': [
    ['2nd/3rd web tender', 'unclear: tenderness', 'ambiguous-web'],
    ['2nd 3rd web tender', 'unclear: tenderness', 'ambiguous-web'],
    ['2nd and 3rd web tender', 'web 2,3 tenderness'],
    ['2/3 web tender', 'web 2 tenderness'],
    ['gap 2/3', 'gap between=2-3'],
    ['gap 2nd/3rd', 'gap between=2-3'],
    ['gap 2/4', 'unclear: gap', 'number-without-place'],
    ['toes 4/5 strength', 'unclear: toe-strength', 'word-out-of-place number-without-place'],
    ['toe 2/3 tender', 'unclear: tenderness', 'word-out-of-place number-without-place'],
  ],
  'a list of rays is read whole or not at all': [
    ['MTPs 2,3,7 tender', 'unclear: tenderness', 'number-without-place'],
    ['MTPs 2,3,zzq tender', 'unclear: tenderness', 'unknown-word'],
    ['6th tender', 'unclear: tenderness', 'number-without-place'],
    ['2nd-7th tender', 'unclear: tenderness', 'number-without-place'],
  ],
  'a bare digit is a value, never a subject': [
    ['2 tender', 'unclear: tenderness', 'number-without-place'],
    ['2nd drawer 3', '2 drawer grade=3'],
    ['2nd drawer 2 3 tender', 'unclear: drawer; unclear: tenderness', 'number-without-place'],
  ],
  webs: [
    ['web 2 click', 'web 2 click'],
    ['webs 2-3 click none', 'web 2,3 no click'],
    ['webs 2 and 3 click none', 'web 2,3 no click'],
    ['webs 2,3 squeeze none', 'web 2,3 no squeeze'],
    ['2nd web click', 'web 2 click'],
    ['web space 3 click', 'web 3 click'],
    ['2nd web space squeeze', 'web 2 squeeze'],
    ['web 2-3 click', 'unclear: click', 'ambiguous-web'],
    ['web 2-3 click none, squeeze none', 'unclear: click; unclear: squeeze', 'ambiguous-web'],
    ['web 3-4 squeeze painful', 'unclear: squeeze', 'ambiguous-web'],
    ['web 5 click', 'unclear: click', 'number-without-place'],
    ['webs 2-5 click', 'unclear: click', 'number-without-place'],
  ],
  'R2 and L2 mean right and left second, MT2 the metatarsal': [
    ['R2 drawer 2', 'right 2 drawer grade=2'],
    ['L2 drawer 2', 'left 2 drawer grade=2'],
    ['r2 tender', 'right 2 tenderness'],
    ['L3 tender', 'left 3 tenderness'],
    ['MT2 tender', 'MT 2 tenderness'],
    ['MT2 tender shaft', 'MT 2 tenderness place=shaft'],
    ['R2 drawer 2, L2 drawer 1', 'right 2 drawer grade=2; left 2 drawer grade=1'],
    ['right 2nd drawer 2', 'right 2 drawer grade=2'],
    ['left 2nd tender', 'left 2 tenderness'],
    ['R 2nd tender', 'right 2 tenderness'],
    ['2nd right tender', 'right 2 tenderness'],
    ['right 2nd, 3rd tender', 'right 2,3 tenderness'],
    ['R: 2nd drawer 2; L: 2nd drawer 1', 'right 2 drawer grade=2; left 2 drawer grade=1'],
  ],
  'a side that came with a subject is never inherited': [
    ['R2 drawer 2, 3rd drawer 1', 'right 2 drawer grade=2; 3 drawer grade=1'],
    ['R2 drawer 2; 3rd tender', 'right 2 drawer grade=2; 3 tenderness'],
  ],
  'a part is never the joint': [
    ['2nd shaft tender', '2 tenderness place=shaft'],
    ['2nd head tender', '2 tenderness place=head'],
    ['2nd plate tender', '2 tenderness place=plate'],
    ['shaft tender', 'tenderness place=shaft'],
    ['2nd tender pip', 'unclear: tenderness; unclear: pip'],
    ['2nd tender wound', 'unclear: tenderness; unclear: wound'],
    ['2nd pip flexible mtp fixed', '2 pip rigidity=flexible; 2 mtp rigidity=fixed'],
    ['2nd wound clean, tender', '2 wound state=clean; unclear: tenderness'],
    ['2nd pip flexible, tender', '2 pip rigidity=flexible; 2 tenderness'],
    ['2nd calf tender', 'unclear: calf', 'unread-red-flag'],
    ['2nd heel tender', 'unclear: tenderness', 'word-out-of-place'],
    ['2nd PIP tender', 'unclear: pip; unclear: tenderness'],
    ['2nd pip swollen', 'unclear: pip; unclear: swelling'],
    ['2nd wound tender', 'unclear: wound; unclear: tenderness'],
    ['2nd nail tender', 'unclear: tenderness', 'word-out-of-place'],
  ],
  'a subject after its finding binds that finding only': [
    ['drawer 0 2nd-5th', '2,3,4,5 drawer grade=0'],
    ['tender 2nd, swelling 3rd', '2 tenderness; 3 swelling'],
    ['drawer 2 R2', 'right 2 drawer grade=2'],
    ['plan tape 2nd 8 weeks', 'plan/2 tape for=8weeks'],
    ['drawer 0 2nd-5th, tender', '2,3,4,5 drawer grade=0; tenderness'],
    ['2nd drawer 2, tender 3rd, swelling', '2 drawer grade=2; 3 tenderness; unclear: swelling'],
    ['tender 3rd, 4th', '3,4 tenderness'],
    ['no tenderness 3rd, 4th', 'unclear: tenderness', 'word-out-of-place'],
  ],
  'a subject without a finding makes its neighbours unclear': [
    ['2nd (not 3rd) tender', 'unclear: tenderness', 'word-out-of-place'],
    ['2nd not 3rd tender', 'unclear: tenderness', 'word-out-of-place'],
    ['2nd tender not 3rd', 'unclear: tenderness', 'word-out-of-place'],
    ['2nd tender, 3rd', '2 tenderness', 'word-out-of-place'],
    ['2nd tender, 3rd, 4th swollen', '2 tenderness; unclear: swelling', 'word-out-of-place'],
    ['pain 6/10, 2nd', 'unclear: pain', 'word-out-of-place'],
    ['2nd tender, 3rd, drawer 1', '2 tenderness; 3 drawer grade=1'],
    ['2nd; drawer 2', '2 drawer grade=2'],
    ['2nd drawer 2 3rd', 'unclear: drawer'],
  ],
  'foot and patient findings never take a ray': [
    ['2nd hallux-valgus mild', 'unclear: hallux-valgus'],
    ['2nd fever', 'unclear: fever', 'unread-red-flag'],
    ['2nd compression sore', 'unclear: compression'],
    ['fever', 'fever'],
    ['hallux-valgus mild', 'hallux-valgus degree=mild'],
    ['2nd dp 2', 'unclear: dp'],
    ['2nd click', 'unclear: click'],
    ['web 2 drawer 2', 'unclear: drawer'],
  ],
  'a ray finding without subject gets none on its line: a heading gives it, or the facts refuse it': [
    ['drawer 0 2nd-5th, swelling', '2,3,4,5 drawer grade=0; swelling'],
    ['drawer 2', 'drawer grade=2'],
    ['tender', 'tenderness'],
    ['paper holds', 'paper result=holds'],
    ['straight', 'no deviation'],
  ],
  'section and subject hold within a line, parts never': [
    ['2nd drawer 2, tender, swelling', '2 drawer grade=2; 2 tenderness; 2 swelling'],
    ['us 2nd tear; 3rd tear none', 'us/2 tear; us/3 no tear'],
    ['2nd shaft tender, swelling', '2 tenderness place=shaft; 2 swelling'],
    ['2nd head tender, tender', '2 tenderness place=head; 2 tenderness'],
  ],
  'others means the lesser rays without a statement': [
    ['others tender none', 'others no tenderness'],
    ['others nad', 'others unremarkable'],
    ['others normal', 'others panel'],
    ['2nd drawer 2, others drawer 0', '2 drawer grade=2; others drawer grade=0'],
  ],
  'normal alone is the panel, quiet and nad are unremarkable': [
    ['4th-5th normal', '4,5 panel'],
    ['2nd normal', '2 panel'],
    ['2nd ok', '2 unremarkable'],
    ['2nd NAD', '2 unremarkable'],
    ['webs quiet', 'web 1,2,3,4 unremarkable'],
    ['web 2 quiet', 'web 2 unremarkable'],
    ['2nd normal tender', 'unclear: tenderness', 'word-out-of-place'],
    ['2nd not normal', '', 'word-out-of-place word-out-of-place'],
    ['2nd abnormal', '', 'unknown-word'],
  ],
});

// A heading's side and subject hold down to the next heading or visit; only a line that says nothing else is one.
test.each([
  ['R:', { side: 'right' }],
  ['right', { side: 'right' }],
  ['Left:', { side: 'left' }],
  ['left foot', { side: 'left' }],
  ['L', { side: 'left' }],
  ['2nd:', { rays: [2] }],
  ['2nd: // the worst', { rays: [2] }],
  ['2nd-4th:', { rays: [2, 3, 4] }],
  ['R2:', { rays: [2], side: 'right' }],
])('a side or a subject alone on a line is a heading: %s', (text, expected) => {
  const { heading, statements, problems } = readLine(text);
  const side = heading?.side ?? heading?.subject?.side;
  const rays = heading?.subject?.at === 'rays' ? { rays: heading.subject.rays } : {};
  expect({ ...rays, ...(side ? { side } : {}) }).toEqual(expected);
  expect(statements.flatMap((statement) => statement.findings)).toEqual([]);
  expect(problems).toEqual([]);
});

test.each(['R: 2nd drawer 2', '2nd: drawer 2'])('a heading with a colon may stand before a statement: %s', (text) => {
  expect(readLine(text).heading).toBeDefined();
});

test.each(['2nd tender', 'R2 drawer 2', 'right 2nd tender', 'R worse', 'zzq:', 'tender:', 'right zzq'])(
  'a line that says something else is no heading: %s',
  (text) => {
    expect(readLine(text).heading).toBeUndefined();
  },
);

test('a list that something touches keeps its words when it is formatted', () => {
  const canonical = (text: string) => readLine(text).roles.find(({ kind }) => kind === 'subject')?.canonical;
  expect(canonical('2nd 3rd ?zzq')).toBe('2nd-3rd');
  expect(canonical('2nd 3rd?zzq')).toBeUndefined();
});
