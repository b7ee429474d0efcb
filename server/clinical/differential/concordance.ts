import type { Sourced } from '../../../grammar/lexicon/entry.ts';
import type { Ray } from '../../../grammar/values.ts';
import type { RayAnalysis } from '../analysis.ts';
import { CAUTIONS } from '../cautions.ts';
import { isoDayOf, plateImages, rayKey } from '../episode.ts';
import { absent, practice, present } from './condition.ts';
import { newerEvent, takenOn } from './image-age.ts';
import { clear, type FactOf, type View } from './view.ts';

/** Does the newest image of the plate go with the exam, and is it of today's joint? */
export interface Concordance extends Sourced {
  readonly verdict: 'agrees' | 'disagrees' | 'older' | 'open';
  readonly text: string;
}

const NAMES = { us: 'ultrasound', mri: 'MRI' } as const;
const SHOWS = { present: 'a torn plate', absent: 'an intact plate', equivocal: 'a doubtful plate' } as const;

/** Of one ray or web; nothing where no image of its plate or its space is reported. `analysis` is that of the ray. */
export function concordance(view: View, analysis: RayAnalysis | undefined): Concordance[] {
  if (view.site.at === 'web') return ofWeb(view);
  return view.site.at === 'ray' ? ofPlate(view, view.site.ray, analysis) : [];
}

function ofPlate(view: View, ray: Ray, analysis: RayAnalysis | undefined): Concordance[] {
  const { visit, before, side } = view;
  const key = rayKey(side, ray);
  const fresh = plateImages(visit, isoDayOf(visit))[key];
  const image = fresh ?? before.plate[key];
  if (!image) return [];
  const when = fresh ? takenOn(view, fresh.by) : { text: `reported on ${image.day}`, latest: image.day };
  const what = `${NAMES[image.by]} (${when.text}) reports ${SHOWS[image.tear]}`;
  const newer = newerEvent(view, when.latest);
  if (newer) return [told('older', `${what}, and is older than ${newer}: it says nothing of the joint as it is now`)];
  const joint = jointOf(view, analysis);
  if (image.tear === 'equivocal') return [told('open', `${what}: it neither agrees nor disagrees with the exam`)];
  if (joint === 'not known') return [told('open', `${what}; the drawer that it would be compared with is not known`)];
  const agrees = (image.tear === 'present') === (joint === 'unstable');
  const found = `the joint is ${joint} on examination`;
  if (agrees) return [told('agrees', `${what}, and ${found}: they agree`)];
  const caution = CAUTIONS[image.tear === 'present' ? 'image alone' : 'negative image'];
  return [told('disagrees', `${what}, and ${found}: they disagree. ${caution}`)];
}

const SIGNS = ['squeeze', 'click', 'tenderness', 'numbness', 'pain'] as const;

/** Every report of the space in this visit, against the signs of the space itself. */
function ofWeb(view: View): Concordance[] {
  const own = <T extends { subject: { at: string } }>(facts: readonly T[]) =>
    facts.filter(({ subject }) => subject.at === 'web');
  const signs = SIGNS.flatMap((finding) => own(present(finding)(view)));
  const denied = SIGNS.flatMap((finding) => own(absent(finding)(view)));
  const space = signs.length > 0 ? 'has signs' : denied.length > 0 ? 'has no sign' : 'was not examined';
  return clear(view, 'web-lesion').flatMap(({ section, status, values }) => {
    if (status !== 'present' && status !== 'absent') return [];
    const by = section === 'mri' ? 'mri' : 'us';
    const when = takenOn(view, by);
    const shows = `${status === 'absent' ? 'no ' : ''}${(values.what?.said ?? values.what?.words)?.join(' and ') ?? 'lesion'}`;
    const what = `${NAMES[by]} of the space (${when.text}) reports ${shows}`;
    const newer = newerEvent(view, when.latest);
    if (newer) return [told('older', `${what}, and is older than ${newer}: it says nothing of the space as it is now`)];
    if (space === 'was not examined') return [told('open', `${what}; the space ${space}`)];
    const agrees = (status === 'present') === (space === 'has signs');
    return [
      told(agrees ? 'agrees' : 'disagrees', `${what}, and the space ${space}: they ${agrees ? 'agree' : 'disagree'}`),
    ];
  });
}

const told = (verdict: Concordance['verdict'], text: string): Concordance => ({ ...practice, verdict, text });

/** By the stage where there is one, so that no two outputs differ, else by the drawer alone. */
function jointOf(view: View, analysis: RayAnalysis | undefined): 'unstable' | 'stable' | 'not known' {
  const outcome = analysis?.outcome;
  if (outcome?.is === 'staged') return outcome.stage >= 1 ? 'unstable' : 'stable';
  if (outcome?.is === 'span' && outcome.low >= 1) return 'unstable';
  const drawers = clear(view, 'drawer');
  const all = (wanted: (fact: FactOf<'drawer'>) => boolean) => drawers.length > 0 && drawers.every(wanted);
  if (all(({ values }) => (values.grade?.low ?? 0) >= 1 || values.result?.words[0] === 'positive')) return 'unstable';
  if (all(({ status, values }) => status === 'absent' || values.grade?.high === 0)) return 'stable';
  return 'not known';
}
