import { eventsOf, isBefore } from '../after-image.ts';
import { clearFacts } from '../answers.ts';
import { isoOf, range } from '../dates.ts';
import { plateImages, rayKey } from '../episode.ts';
import type { VisitFacts } from '../facts.ts';
import { defineRule } from './define-rule.ts';
import { isUnstable } from './hazards.ts';

const practice = { source: 'common practice', mark: 'common practice' } as const;
export const imageOlder = defineRule({
  ...practice,
  code: 'image-older',
  name: 'Image older than the injury or an injection',
  severity: 'contradiction',
  scope: 'episode',
  reads: ['image-date', 'operation', 'trigger', 'onset', 'steroid', 'tear'],
  needs: ['image-date'],
  what: 'An image was taken before the injury or an injection that the note states, or an operation rests on such an image.',
  why: 'It shows the joint as it was before; a tear since then is not on it.',
  instead: 'Take a new image, or correct the date.',
  examples: {
    invalid: 'history injury 2026-02-10\n2nd tender plate, drawer 2\nmri taken 2025-11-20; 2nd plate intact',
    valid: 'history injury 2026-02-10\n2nd tender plate, drawer 2\nmri taken 2026-02-20; 2nd tear full',
    nearMiss: 'history injury 2025-02-10\n2nd tender plate, drawer 2\nmri taken 2025-11-20; 2nd tear full',
  },
  *check(view) {
    const { visit, before } = view;
    for (const fact of clearFacts(visit.facts, 'image-date')) {
      if (fact.values.on?.is !== 'date') continue;
      const taken = isoOf(range(fact.values.on.date).last);
      const event = eventsOf(view, fact.side).find(({ day }) => isBefore(taken, day));
      if (!event) continue;
      yield {
        place: fact.origin.place,
        message: `This image is older than ${event.name}: it does not show the joint of today. Take a new one, or correct the date.`,
      };
    }
    for (const fact of clearFacts(visit.facts, 'operation')) {
      const { subject, side, status } = fact;
      if (status !== 'present' || subject.at !== 'ray' || !side) continue;
      const key = rayKey(side, subject.ray);
      const image = before.plate[key];
      if (!image || hasNewImage(visit, key)) continue;
      const event = eventsOf(view, side).find(({ name, day }) => name === 'the injury' && isBefore(image.day, day));
      if (!event) continue;
      yield {
        place: fact.origin.word,
        message: `The newest image of this plate (${image.day}) is older than ${event.name}. Take a new one before the operation.`,
      };
    }
  },
});
const hasNewImage = (visit: VisitFacts, key: string): boolean => key in plateImages(visit, 'now');

export const webChangeUnstable = defineRule({
  source: 'UMANS14',
  mark: 'read',
  code: 'web-change-unstable',
  name: 'Neuroma read beside an unstable joint',
  severity: 'contradiction',
  scope: 'ray',
  reads: ['web-lesion', 'diagnosis', 'drawer'],
  needs: ['web-lesion', 'diagnosis'],
  what: 'An image or the working diagnosis names a neuroma in a web beside an unstable joint.',
  why: 'Of 36 second-joint tears 35 had a change in the second space and none a definite neuroma (UMANS14).',
  instead: 'Settle the joint first; anaesthetic blocks of web and joint, apart, tell them from each other.',
  examples: {
    invalid: '2nd tender plate, drawer 2\nmri web 2 neuroma 7 mm',
    valid: '2nd tender plate, drawer 2\nmri web 2 thickening 7 mm',
    nearMiss: '2nd tender none, drawer 0\n3rd tender none, drawer 0\nmri web 2 neuroma 7 mm',
  },
  *check(view) {
    const named = [
      ...clearFacts(view.visit.facts, 'web-lesion').filter(({ values }) => values.what?.words.includes('neuroma')),
      ...clearFacts(view.visit.facts, 'diagnosis').filter(({ values }) =>
        values.what?.words.includes('interdigital neuroma'),
      ),
    ];
    const told = new Set<string>();
    for (const { subject, side, status, origin } of named) {
      if (subject.at !== 'web' || status !== 'present') continue;
      const joint = view.rays.find(
        (each) =>
          each.side === side && (each.ray === subject.web || each.ray === subject.web + 1) && isUnstable(view, each),
      );
      const key = `${side} ${subject.web}`;
      if (!joint || told.has(key)) continue;
      told.add(key);
      yield {
        place: origin.place,
        message: `A neuroma is named beside the unstable ${joint.side} ray ${joint.ray}, where a web change is no proof of one (UMANS14). Settle the joint first; blocks tell them apart.`,
      };
    }
  },
});
