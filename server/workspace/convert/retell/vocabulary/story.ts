import { DAILY } from './daily.ts';
import { DRUGS } from './drugs.ts';
import type { Said } from './index.ts';
import { MOMENTS_SAID } from './moments.ts';
import { said } from './said.ts';
import { TREATED } from './treated.ts';

/** Onset and course, pain, what was tried, work and sport, drugs and illnesses. */
export const STORY: Said = {
  ...DAILY,
  ...DRUGS,
  ...TREATED,
  onset: {
    finding: {
      'onset gradual': said(
        'crept up, crept up slowly, crept up gradually, crept on, crept on slowly, crept up on her, crept up on him, slow onset, slow start, gradual start',
      ),
      'onset sudden': said(
        'acute onset, abrupt onset, sudden start, came out of the blue, came out of nowhere, came from nowhere',
      ),
    },
    value: {
      gradual: said('gradually, slowly, insidiously'),
      sudden: said('suddenly, abruptly, acutely, all at once, overnight'),
    },
  },
  duration: {
    finding: {
      'symptoms for': said(`symptomatic for, suffering for, suffered for, troubled for,
        bothered for, struggling for`),
      duration: said('symptom duration, duration of symptoms, length of history, duration of complaint'),
    },
  },
  course: {
    finding: {
      'history course worse': said('going downhill'),
      'history course fluctuating': said('waxes and wanes, waxing and waning'),
    },
    value: {
      worse: said('downhill, progressive, progressively deteriorating'),
      steady: said('plateaued, stationary, flat'),
      fluctuating: said('up and down, waxing and waning'),
    },
  },
  trigger: {
    finding: {
      trigger: said(`precipitated by, triggered by, set off by, brought on with, comes on with, came on with,
        precipitating factor, precipitating event`),
      'trigger injury': said(
        'sustained an injury, injured it, injured the foot, injured the toe, injured her foot, injured his foot',
      ),
      'trigger fall': said('fell over, fell down, slipped and fell, tripped and fell'),
      'trigger stubbing': said('stubbed it, stubbed her toe, stubbed his toe, stubbed toe'),
      'trigger twisting': said('twisted it, twisted the foot, twisted her foot, twisted his foot'),
      'trigger hyperextension':
        said(`hyperextended it, hyperextended the toe, hyperextended her toe, hyperextended his toe,
        bent the toe back, bent the toe backwards, bent her toe back, bent his toe back`),
    },
    value: {
      'load-rise': said(
        'increase in activity, increased activity, load increase, increase in load, stepping up training',
      ),
      heels: said('high heel, heeled shoes, high heeled shoes'),
      'tight shoes': said('tight footwear, tight shoe'),
      'narrow shoes': said('narrow footwear, narrow shoe'),
      barefoot: said('bare feet, bare foot'),
      stairs: said('steps, climbing stairs'),
      hills: said('inclines, slopes, walking uphill'),
      fall: said('falling'),
      cycling: said('riding a bike, biking'),
    },
  },
  pain: {
    finding: {
      pain: said('hurts, hurting, soreness'),
      'pain night "wakes from sleep"': said('wakes from sleep with it, wakes with it at night'),
      'pain aching': said(
        'aches at, aches in, aches on, aches with, aches during, foot aches, toe aches, forefoot aches, aching, achy, achey, achiness',
      ),
      'pain throbbing': said('throbs, throbbing'),
      'pain score':
        said(`nrs, n r s, numeric rating scale, numerical rating scale, pain rating, pain level, pain intensity, pain scale,
        visual analogue score, visual analogue scale, visual analog scale, visual analog score`),
    },
    value: {
      plantar:
        said(`sole, on the sole, sole of the foot, sole of foot, bottom of the foot, bottom of foot, underside, undersurface,
        beneath, plantarly, plantar aspect, plantar surface, plantar side, planter`),
      ball: said(
        'ball of her foot, ball of his foot, ball of my foot, under the ball, balls of her feet, forefoot ball',
      ),
      dorsal: said(`dorsum, on top, over the top, dorsal aspect, dorsal surface, dorsally, dorsal side, top of her foot,
        top of his foot`),
      head: said(
        'under the met head, under the met heads, under the metatarsal heads, under the metatarsal head, metatarsal head region',
      ),
      forefoot: said('fore foot, front of her foot, front of his foot, forefoot region'),
      joint: said('in the joint, at the joint, mtpj, m t p joint'),
      toe: said('in the toe'),
      score: said('nrs, rated, rates it, scored, scoring, severity'),
      stabbing: said('stabbing in nature, stabbing in character, stabby, stabs, jabbing'),
      aching: said('aching in nature, aching in character, achy, achey, aches'),
      throbbing: said('throbbing in nature, throbbing in character, throbs, pulsating, pounding'),
      shooting: said('shooting in nature, shooting in character, shoots'),
      burning: said('burning in nature, burning in character, burns, burny'),
      sharp: said('sharp in nature, sharp in character, sharply'),
      dull: said('dull in nature, dull in character, dully'),
      rest: said('resting in a chair'),
      '"start up"': said('start up, startup, first step, first steps, post static'),
      'night "wakes from sleep"':
        said(`wakes her up, wakes him up, wakes her at night, wakes him at night, wakes her from sleep,
        wakes him from sleep, wakes from sleep, disturbs sleep, disturbs her sleep, disturbs his sleep, keeps her awake,
        keeps him awake, wakes her, wakes him, wakes her up at night, wakes him up at night`),
      ...MOMENTS_SAID,
    },
  },
  'worse-with': {
    finding: {
      'worse-with':
        said(`exacerbated by, exacerbated on, aggravated on, increases on, increases with, exacerbated with, aggravated with, aggravating factor, aggravating factors, exacerbating factor,
        exacerbating factors, flares with, flared by, hurts most, most painful, hurts most with`),
    },
    value: {
      ...MOMENTS_SAID,
      heels: said('high heel, heeled shoes, high heeled shoes, heeled footwear, wearing heels'),
      'heels "stilettos"': said('stilettos'),
      activity: said('exercising, exertion, being active, physical activity, activities, activity levels'),
    },
  },
  'eased-by': {
    finding: {
      'eased-by':
        said(`relieved with, relieved on, relieved on taking, relieved by taking, relieving factor, relieving factors, eased with, eases with, eases on, alleviated by,
        alleviated with, alleviating factor, alleviating factors, soothed by, soothed with, settles with`),
    },
    value: {
      rest: said(`taking rest, taking a rest, sitting, sitting down, getting off it, getting off the foot, getting off her feet, getting off his feet,
        being off her feet, being off his feet, rests`),
      'shoes off':
        said(`removing shoes, removing the shoe, removing the shoes, removing her shoes, removing his shoes, removal of shoes,
        removing footwear, shoe removal, taking her shoes off, taking his shoes off, taking the shoe off, taking the shoes off,
        taking footwear off, kicking her shoes off, slipping the shoe off, out of shoes`),
      'shoes off "barefoot"': said('barefoot, bare feet, going barefoot'),
      rubbing: said('rubbing it, rubbing the foot, rubbing the toe, a rub'),
      massage: said('massaging, massaging it, massaging the foot, massaging the toe, foot massage'),
      'wide shoes':
        said(`roomy shoes, roomier shoes, wide fitting shoes, wide fit shoes, wide fit, wider fitting shoes, broad shoes,
        broader shoes, wide footwear, wider footwear, extra wide shoes`),
      'soft shoes': said('soft soled shoes, soft soles, soft footwear, softer shoes'),
      trainers: said(
        'sneakers, tennis shoes, gym shoes, sports shoes, sport shoes, athletic shoes, in trainers, trainer',
      ),
      walking: said('walking it off, walking about, walking around'),
      movement: said('moving, moving about, moving around, keeping moving, mobilising, mobilizing, moving it'),
      ice: said('icing, icing it, ice pack, ice packs, ice packing'),
      cold: said('cold pack, cold packs, cold compress, cold water, cooling'),
      elevation: said(
        'elevating, elevating it, elevating the foot, raising the foot, raising it, foot up, leg up, elevated',
      ),
    },
  },
  'morning-stiffness': {
    finding: {
      'morning-stiffness':
        said(`stiff on waking, stiff on rising, stiff on getting up, stiff first thing, morning stiff,
        stiffness in the morning, stiffness in the mornings, stiffness on waking, stiffness on rising, stiffness first thing,
        stiff mornings, wakes stiff, wakes up stiff, gets up stiff, stiff of a morning, stiffness of a morning`),
    },
  },
  fever: {
    finding: {
      fever:
        said(`feverish, raised temperature, high temperature, elevated temperature, running a temperature, running a fever,
        spiking temperatures, spiking a temperature, pyrexic`),
    },
  },
  temperature: { finding: { temperature: said('body temperature, tympanic temperature, oral temperature, temps') } },
  'walking-distance': {
    finding: {
      'walking-distance':
        said(`can walk, walking range, walking limit, walking capacity, walking limited to, walks about,
        walks up to, walks around, walks for, walks roughly, ambulates, exercise tolerance, manages to walk, can manage`),
    },
    value: {
      km: said('k, kms, kilometers'),
      m: said('meters, metre'),
      miles: said('mile'),
      yards: said('yard'),
    },
  },
};
