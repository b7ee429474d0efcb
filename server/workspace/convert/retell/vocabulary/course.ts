/** How a course went: it counts only beside its measure. */
export const COURSE = {
  'well kept': [
    ...['religiously', 'faithfully', 'diligently', 'conscientiously', 'consistently', 'good compliance', 'compliant'],
    ...['all the time', 'stuck to it', 'sticking to it', 'fully compliant', 'rigorously'],
  ],
  daily: ['every day', 'each day', 'every single day', 'day in day out', 'everyday', 'on a daily basis'],
  'poorly kept': [
    ...['poor compliance', 'poorly compliant', 'non compliant', 'noncompliant', 'gathering dust'],
    ...['left in the cupboard'],
  ],
  irregular: ['sporadically', 'patchy', 'irregularly', 'hit and miss', 'some days'],
  intermittent: [],
  better: [
    ...['helps', 'helpful', 'has helped', 'beneficial', 'of benefit', 'effective', 'worked'],
    ...['does help', 'helping', 'with relief', 'with benefit', 'eases it', 'eased it', 'eases things', 'useful'],
    ...['is helping', 'did help'],
  ],
  'good relief': [
    ...['very helpful', 'really helped', 'worked well', 'works well', 'working well', 'works a treat'],
    ...['worked a treat', 'helped a lot', 'helps a lot', 'helps lots', 'great relief', 'great help', 'good help'],
    ...['good benefit', 'great benefit', 'excellent relief', 'big help', 'huge help', 'really helpful'],
    ...['really helps', 'great effect', 'good response'],
  ],
  partial: [
    ...['partly helped', 'partially helped', 'partial benefit', 'partial response', 'modest relief'],
    ...['modest benefit', 'helped somewhat', 'helps somewhat', 'helps to a degree', 'some response'],
    ...['partly effective', 'partially effective'],
  ],
  'a little better': [
    ...['helps a bit', 'helps a little', 'helped a little', 'slight relief', 'slight benefit', 'helped slightly'],
    ...['helps slightly'],
  ],
  'no relief': [
    ...['useless', 'ineffective', 'zero relief', 'zero benefit', 'waste of time', 'a waste of time', 'zero help'],
    ...['pointless'],
  ],
  worse: [
    ...['aggravated it', 'aggravates it', 'flared it', 'flared it up', 'irritated it', 'irritates it'],
    ...['made it sorer'],
  ],
  'skin reaction': ['reacted to it', 'skin reacted', 'allergic reaction'],
  blisters: ['blistered', 'blistering', 'gave her blisters', 'gave him blisters'],
} as const;
