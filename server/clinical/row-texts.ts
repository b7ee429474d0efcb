import type { Sourced } from '../../grammar/lexicon/entry.ts';
import type { NoStage } from './analysis.ts';
import type { CautionId } from './cautions.ts';
import type { Gate } from './gates.ts';
import type { RedFlag } from './red-flags.ts';
import type { WindowId } from './windows.ts';

/** What a row of the engine's tables says, for a reader, with its source. The engine itself never loads these texts. */
export interface RowText extends Sourced {
  readonly says: string;
}

const practice = { source: 'common practice', mark: 'common practice' } as const;

/** What keeps a joint from being staged. A new gate without its text and source doesn't compile. */
export const GATE_TEXTS: Readonly<Record<Gate['id'] | NoStage, RowText>> = {
  'red flag': { ...practice, says: 'A red flag concerns the ray: it comes first, and no stage is given.' },
  operated: {
    ...practice,
    says: 'The ray has been operated on, in this file or by the history of this or an earlier visit: residual instability is described instead. A floating toe after an osteotomy is no stage 2, a fused PIP joint no fixed hammer toe.',
  },
  wound: { ...practice, says: 'A wound at the ray that is not said to be clean, dry or healed comes first.' },
  infection: {
    ...practice,
    says: 'Closes nothing by itself: where a joint is hot or red and fever is not mentioned, fever is taken as none and the assumption is shown.',
  },
  symptoms: {
    ...practice,
    says: 'Closes nothing by itself: where pain and tenderness are not mentioned, the joint is taken as symptomatic and the assumption is shown.',
  },
  'ray 5': { ...practice, says: 'The stages are not used for the fifth ray (congenital overlap).' },
  growing: { ...practice, says: 'The patient is under 18 years old, or a growth plate is open on an image.' },
  neuropathic: {
    ...practice,
    says: 'Protective sensation is lost, today or at the last examination of feeling, or neuropathy is stated and feeling was not found normal today: pain neither stages the joint nor guards it.',
  },
  'acute injury': {
    ...practice,
    says: 'An injury or a sudden onset under six weeks ago, or a tear or instability that the diagnosis calls acute and nothing dates.',
  },
  systemic: {
    ...practice,
    says: 'Tender or swollen at three or more MTP joints, or compression sore in both feet: inflammatory arthritis first. In one joint: inflammatory arthritis or gout as its diagnosis, an erosion on an image, inflammatory arthritis in the history with swelling or heat, gout in the history with swelling and heat or redness.',
  },
  lax: {
    ...practice,
    says: 'Drawer 1 or more in a joint whose pain and tenderness are both stated absent. Crossover or dislocation is still staged, marked painless.',
  },
  'no symptom': { ...practice, says: 'Pain and tenderness of the joint are both stated absent.' },
  'no instability': {
    ...practice,
    says: 'Drawer 0 in a toe that is not deviated, without the signs of stage 0.',
  },
};

/** Red flags: the pair of signs, or the clinician's word, that raises each. Never one weak word. */
export const RED_FLAG_TEXTS: Readonly<Record<RedFlag, RowText>> = {
  infection: {
    ...practice,
    says: 'Pus or spreading redness of a wound or a pin site; a hot or red joint, a red or discharging pin site, or an open wound, with fever; a discharging pin site or an open wound that is hot or red; or the clinician states an infection.',
  },
  ischaemia: {
    ...practice,
    says: 'A cold, pale, white or blue toe; pain out of proportion; or a delayed refill in an operated or dislocated toe.',
  },
  clot: {
    ...practice,
    says: 'A clot by the word of the clinician; a chest sign; two signs of one calf; or one of them within three months of an operation, a boot or an order to keep off the foot, or in a patient who has had a clot or has a thrombophilia.',
  },
  'acute dislocation': {
    ...practice,
    says: 'A dislocation, on exam or film, that is acute by its time or by the word used, or that nobody states as old and no earlier visit has known for six weeks.',
  },
  'open injury': {
    ...practice,
    says: 'A wound that is not clean, dry or healed with an injury under six weeks old, or over a joint whose dislocation is not old, before any operation.',
  },
  fracture: { ...practice, says: 'A fracture on an image with an injury under six weeks old, before any operation.' },
  'neuropathic hot foot': {
    ...practice,
    says: 'A hot and swollen foot, one warmer than the other, or an open wound, in a foot whose feeling is reduced or lost, today or when it was last examined, or in a patient with neuropathy.',
  },
  tumour: {
    ...practice,
    says: 'A mass; or pain at night beside a loss of weight or a history of cancer, told in this or an earlier visit.',
  },
};

/** The decision list, in words; `STAGING_ROWS` holds the rows themselves, by the same ids and in the same order. */
export const STAGING_TEXTS: Readonly<Record<string, { readonly when: string; readonly gives: string }>> = {
  dislocated: {
    when: 'dislocated at rest, on exam or film, or the top drawer grade',
    gives: '4 where it is stated as old, or known for six weeks; else none: acute until shown otherwise',
  },
  overlap: {
    when: 'the toe overlaps the hallux, or its neighbour on that side',
    gives: '3 at rest; 2-3 where it does so sometimes and the joint does not dislocate',
  },
  'drawer 3': { when: 'drawer 3', gives: '3' },
  'drawer 2': { when: 'drawer 2', gives: '2; 1-2 where the other side is alike and neither toe is out of line' },
  'drawer 1': { when: 'drawer 1', gives: '1; 1-2 where the toe is markedly out of line' },
  'drawer 0, straight': {
    when: 'drawer 0, straight or alignment not stated',
    gives: '0 where tender at the plate or plantar head and swollen or of reduced purchase; else no instability found',
  },
  'drawer 0, deviated': { when: 'drawer 0, deviated', gives: '0-1' },
  'no drawer': {
    when: 'drawer not done, unable or not mentioned',
    gives: '1-3 where deviated, or the space is widened and the toe not stated straight; else it cannot be staged',
  },
};

/** What each caution rests on. A new caution without a source doesn't compile. */
export const CAUTION_SOURCES: Readonly<Record<CautionId, Sourced>> = {
  'unread red flag': practice,
  'no steroid in infection': practice,
  'mass first': practice,
  'watch circulation': practice,
  'no steroid at an unstable joint': { source: 'REIS89', mark: 'from memory, to be verified' },
  tape: practice,
  'anti-inflammatory': practice,
  boot: practice,
  'image alone': { source: 'GREGG06', mark: 'read' },
  'negative image': practice,
  growing: practice,
  'web change': { source: 'UMANS14', mark: 'read' },
  'after operation': practice,
  feeling: practice,
};

export const WINDOW_TEXTS: Readonly<Record<WindowId, string>> = {
  acute: 'An injury or a dislocation is acute under this age, and old from it on.',
  'course judged': 'A course without operation is judged from this time on.',
  'course complete': 'A course without operation is complete at this time.',
  'steroid clear':
    'No elective operation within this time of a steroid injection; the time comes from joint replacement.',
  'ordinary shoes': 'Ordinary shoes are not worn before this time after an operation, unless its note orders them.',
  impact: 'Running, dancing and sport wait for this time after an operation.',
  'step overdue': 'A step with a stated day, such as a pin out, is overdue so long after it.',
  'review late': 'A visit is late so long after the day that was planned for it.',
  'off the foot': 'One calf sign counts within this time of an operation, a boot or an order to keep off the foot.',
};

/** Other limits that the engine decides by. */
export const LIMIT_TEXTS: readonly (RowText & { readonly limit: string })[] = [
  {
    limit: 'HbA1c above 7.5 %',
    source: 'CANC17',
    mark: 'read',
    says: 'An elective operation is to be settled first; the clinic may set its own limit. Another series gives 7.3 % (JUP14), so the figure is no law.',
  },
  { limit: 'under 18 years', ...practice, says: 'No stage; film and paediatric opinion.' },
  { limit: 'three MTP joints', ...practice, says: 'Tender or swollen at so many: inflammatory arthritis first.' },
  {
    limit: 'drawer 2 within six weeks of an injury',
    ...practice,
    says: 'Taken as an acute rupture of the plate until shown otherwise.',
  },
  {
    limit: 'AOFAS items',
    source: 'KIT94',
    mark: 'from memory, to be verified',
    says: 'Pain 40, activity 10, footwear 10, MTP motion 10, IP motion 5, stability 5, callus 5, alignment 15 at most; 77 of the 101 totals can be reached.',
  },
];
