/** Who wins a contested form, and lines that show it: each with what is read. */
export interface Resolution {
  readonly claims: string;
  readonly winner: string;
  readonly shown: readonly (readonly [text: string, findings: string])[];
}

export const COURSES = [
  'anti-inflammatory',
  'boot',
  'cast',
  'footwear',
  'insert',
  'pad',
  'physiotherapy',
  'postop-shoe',
  'rest-and-cold',
  'steroid',
  'stretching',
  'tape',
  'toe-splint',
];
export const rayOrJoint = (ray: string, afterOrdinal: string): Resolution => ({
  claims: 'class joint word, class ray word',
  winner: 'before a number it names the ray, after an ordinal it belongs to the subject',
  shown: [
    [ray, '2 tenderness'],
    [afterOrdinal, '2 tenderness'],
  ],
});
export const raysOrJoints = (word: string): Resolution => ({
  claims: 'class joints word, class ray word',
  winner: 'before a number it names the rays, after several ordinals it belongs to the subject',
  shown: [
    [`${word} 2-3 tender`, '2,3 tenderness'],
    [`2nd 3rd ${word} tender`, '2,3 tenderness'],
  ],
});
export const fixedJoint = (word: string, claims: string): Resolution => ({
  claims,
  winner: 'the finding where its value follows, else the subject',
  shown: [
    [`2nd ${word} fixed`, '2 mtp rigidity=fixed'],
    [`2nd ${word} tender`, '2 tenderness'],
  ],
});
export const requested = (word: string, by: string): Resolution => ({
  claims: 'lead image, section word',
  winner: 'in a plan it is requested, at the start of a line it opens its section',
  shown: [
    [`plan ${word} 2nd`, `plan/2 image by=${by}`],
    [`${word} 2nd fracture`, `${by}/2 image-other what=fracture`],
  ],
});
export const requestedValue = (word: string, by: string): Resolution => ({
  claims: 'section word, value image.by, value review.with',
  winner: 'the open slot',
  shown: [
    [`plan request ${word}`, `plan/image by=${by}`],
    [`plan review 6 weeks with ${word}`, `plan/review in=6weeks with=${by === 'xray' ? 'film' : by}`],
  ],
});
export const positiveOf = (word: string, claims: string): Resolution => ({
  claims,
  winner: 'the open slot, else the status; of a test whose result has another name it is unclear',
  shown: [
    [`2nd drawer ${word}`, '2 drawer result=positive'],
    [`web 2 click ${word}`, 'web 2 click'],
    [`2nd paper ${word}`, 'unclear: paper'],
  ],
});
export const placeOrPart = (word: string): Resolution => ({
  claims: 'class foreign part, value foot-swelling.place',
  winner: 'the open slot, else a part away from the joint',
  shown: [
    [`foot swelling ${word}`, `foot-swelling place=${word}`],
    [`2nd ${word} red`, 'unclear: redness'],
  ],
});
export const ofFoot = (word: string): Resolution => ({
  claims: 'finding foot-swelling, finding swelling',
  winner: 'after a foot that is named as such, and without a ray, the foot; else the joint',
  shown: [
    [`right foot ${word}`, 'right foot-swelling'],
    [`right foot 2nd ${word}`, 'right 2 swelling'],
    [`2nd ${word}`, '2 swelling'],
  ],
});
export const declined = (word: string): Resolution => ({
  claims: 'class distancing, value consent.state',
  winner: 'the open slot, else it distances',
  shown: [
    [`consent ${word}`, 'consent state=declined'],
    [`2nd drawer 2 ${word}`, 'unclear: drawer'],
  ],
});
export const beside = (word: string): Resolution => ({
  claims: 'class filler, label review.with',
  winner: 'the same: a label is passed over, too',
  shown: [
    [`plan review 6 weeks ${word} mri`, 'plan/review in=6weeks with=mri'],
    [`2nd swelling ${word} redness`, '2 swelling; 2 redness'],
  ],
});
export const sometimes = (word: string): Resolution => ({
  claims: 'class distancing, value overlap.when',
  winner: 'the open slot, else it distances',
  shown: [
    [`2nd overlap ${word}`, '2 overlap when=sometimes'],
    [`2nd tender ${word}`, 'unclear: tenderness'],
  ],
});
export const pain: Omit<Resolution, 'shown'> = {
  claims: 'finding pain, section word',
  winner: 'it opens its section at the start of a line that has none, and is a finding elsewhere',
};

export const POSITIVE_RESULTS =
  'class positive, value anti-ccp.result, value drawer.result, value hop-test.result, value lab-other.result, value lisfranc.result, value nerve-stretch.result, value percussion.result, value rheumatoid-factor.result, value silfverskiold.result, value tinel.result, value tuning-fork.result';
export const partNow = (word: string, found: string, unread: string): Resolution => ({
  claims: `class foreign part, finding ${word}`,
  winner: 'the finding; a sign beside it is of the part',
  shown: [
    [`${word} ${found.split('=')[1]}`, `${word} ${found}`],
    [`2nd tender, ${word} ${unread}`, `2 tenderness; unclear: ${word}; unclear: pain`],
  ],
});
export const ordered = (word: string): Resolution => ({
  claims: 'finding bloods, section word',
  winner: 'in a plan they are ordered, at the start of a line they open the laboratory',
  shown: [
    [`plan ${word} crp`, 'plan/bloods what=crp'],
    [`${word} crp 4`, 'lab/crp plain=4'],
  ],
});

export const impression = (word: string): Resolution => ({
  claims: 'finding diagnosis, section word',
  winner: 'at the start of a statement it opens the impression, elsewhere it is the finding',
  shown: [
    [`${word} plate tear 2nd`, 'impression/2 diagnosis what=plantar plate tear'],
    [`2nd ${word} plate tear`, '2 diagnosis what=plantar plate tear'],
  ],
});
export const planned = (word: string): Resolution => ({
  ...impression(word),
  winner: 'once a section is open it is the finding',
  shown: [
    [`plan ${word} plate tear 2nd`, 'plan/2 diagnosis what=plantar plate tear'],
    [`imp ${word} plate tear 2nd`, 'impression/2 diagnosis what=plantar plate tear'],
  ],
});
export const ofTheFamily = (who: string, canonical = who): Resolution => ({
  claims: 'class distancing, value family-history.who',
  winner: 'the value of an open family history, else it moves the statement away from the patient',
  shown: [
    [`family history gout ${who}`, `family-history of=gout who=${canonical}`],
    [`${who} gout`, 'unclear: gout'],
  ],
});

/** A word that ends a course: with its date, or at an event that may not come. */
export const untilEvent = (shown: Resolution['shown']): Resolution => ({
  claims: `class distancing, ${[...COURSES.map((id) => `${id}.stop`), 'restriction.until']
    .map((slot) => `label ${slot}`)
    .sort()
    .join(', ')}`,
  winner: 'the label of an open slot where its date follows, else it distances',
  shown,
});

/** Who a patient is sent to, or who has said what follows. */
const whoSays = (who: string, claims: string, shown: Resolution['shown']): Resolution => ({
  claims: `class distancing, ${claims}`,
  winner: 'the open slot, else it says whose finding this is',
  shown: [...shown, [`${who} found 2nd tender`, 'unclear: tenderness']],
});
const wished = (word: string): Resolution => ({
  claims: 'class distancing, finding goal',
  winner: 'the goal in a history, else what follows is only wished for',
  shown: [
    [`history ${word} "run again"`, 'history/goal "run again"'],
    [`${word} no pain, 2nd straight`, 'unclear: pain; unclear: deviation'],
  ],
});
export const WHOSE: Readonly<Record<string, Resolution>> = {
  'any/gp': whoSays('gp', 'value discharge.to, value referral.to, value steroid.by', [
    ['plan referral gp', 'plan/referral to=general practitioner'],
  ]),
  'any/physio': whoSays('physio', 'value discharge.to, value referral.to', [
    ['plan referral physio', 'plan/referral to=physiotherapy'],
  ]),
  'any/podiatrist': whoSays('podiatrist', 'value discharge.to, value referral.to', [
    ['plan referral podiatrist', 'plan/referral to=podiatry'],
  ]),
  'any/radiologist': whoSays('radiologist', 'value image-reader.by', [
    ['mri read by radiologist', 'mri/image-reader by=radiologist'],
  ]),
  'any/surgeon': whoSays('surgeon', 'value image-reader.by', [['mri read by surgeon', 'mri/image-reader by=surgeon']]),
  'history/aim': wished('aim'),
  'history/aims': wished('aims'),
  'history/goal': wished('goal'),
  'plan/physio': {
    claims: 'class distancing, finding physiotherapy',
    winner: 'the treatment in a plan, else it says whose finding this is',
    shown: [['plan physio 6 weeks', 'plan/physiotherapy for=6weeks']],
  },
  'tried/physio': {
    claims: 'class distancing, finding physiotherapy',
    winner: 'the treatment',
    shown: [['tried physio 6 weeks', 'tried/physiotherapy for=6weeks']],
  },
};

const HEEL: Resolution = {
  claims: 'class foreign part, lead weight-bearing',
  winner: 'after another load, with its weeks, the order to walk on the heel; else a part',
  shown: [
    [
      'operation nwb 2/52, heel 4/52',
      'operation/weight-bearing load=non-weight-bearing for=2weeks; operation/weight-bearing load=heel only for=4weeks',
    ],
    ['operation heel 4/52', ''],
  ],
};
export const HEELS: Readonly<Record<string, Resolution>> = {
  'operation/heel': HEEL,
  'plan/heel': {
    ...HEEL,
    shown: [
      [
        'plan nwb 2/52 heel 4/52',
        'plan/weight-bearing load=non-weight-bearing for=2weeks; plan/weight-bearing load=heel only for=4weeks',
      ],
    ],
  },
};
