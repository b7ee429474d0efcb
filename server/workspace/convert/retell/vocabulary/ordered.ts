import { COURSE } from './course.ts';
import type { Said } from './index.ts';
import { orders } from './words-of.ts';

const referTo = (...names: readonly string[]): string[] =>
  names.flatMap((name) => [
    ...[`${name} referral`, `refer ${name}`, `refer on to ${name}`, `refer her to ${name}`, `refer him to ${name}`],
    ...[
      `onward referral to ${name}`,
      `send to ${name}`,
      `send her to ${name}`,
      `send him to ${name}`,
      `refer over to ${name}`,
    ],
    ...[
      `needs ${name} referral`,
      `needs referral to ${name}`,
      `needs ${name} input`,
      `needs ${name} opinion`,
      `refer across to ${name}`,
    ],
    ...[`get ${name} involved`, `${name} to see`, `seek ${name} opinion`, `get ${name} opinion`],
  ]);
const SCANNING = ['needs', 'needs a', 'get', 'get a', 'send for', 'organise', 'organize', 'put in for'] as const;
/** What is asked for before or after its name. */
const scans = (...names: readonly string[]): string[] => orders(SCANNING, ...names);

/** Every other plan and order. Where the words themselves order, the section is written too. */
export const ORDERED: Said = {
  referral: {
    finding: {
      'plan refer rheumatology': referTo(
        ...['rheumatology', 'rheum', 'rheumatologist', 'rheumatologists', 'rheumatology clinic', 'rheumatoid clinic'],
      ),
      'plan refer vascular surgery': referTo(
        ...['vascular', 'vascular surgery', 'vascular team', 'vascular surgeons', 'vascular clinic', 'vasculars'],
      ),
      'plan refer podiatry': referTo('podiatry', 'chiropody', 'podiatrists', 'podiatry clinic'),
      'plan refer orthotics': referTo(
        ...['orthotics', 'orthotist', 'orthotic department', 'surgical appliances', 'orthotic clinic'],
        ...['orthotics clinic'],
      ),
      'plan refer physiotherapy': referTo('physios'),
      'plan refer sports medicine': referTo('sports medicine', 'sports med', 'sports physician', 'sport medicine'),
      'plan refer diabetic foot clinic': referTo('diabetic foot clinic', 'diabetic foot team'),
      'plan refer falls clinic': referTo('falls clinic', 'falls service', 'falls team'),
      'plan refer dressing clinic': referTo('dressing clinic', 'dressings clinic'),
      'plan refer preoperative assessment': [...referTo('preassessment', 'preassessment clinic', 'preassessment team')],
    },
    value: {
      urgent: ['as a matter of urgency', 'asap', 'expedited', 'fast track'],
      routine: ['routinely', 'nonurgent', 'non urgent'],
    },
  },
  discharge: {
    finding: {
      'plan discharge': [
        ...orders(
          ['discharge', 'discharged', 'released'],
          ...['from clinic', 'from the clinic', 'from follow up', 'from my care', 'from our care', 'from care'],
          ...['from the service'],
        ),
        ...['happy to discharge', 'can be discharged', 'discharge today', 'discharged today', 'discharge her'],
        ...['discharge him', 'sign off from clinic', 'signed off from clinic', 'signed off from follow up'],
        ...['discharging her', 'discharging him', 'ready for discharge', 'suitable for discharge'],
      ],
    },
  },
  listing: {
    finding: {
      'plan listed': [
        ...orders(
          ['put', 'put her', 'put him', 'place', 'placed', 'goes', 'go', 'pop her', 'pop him', 'popped'],
          ...['onto the waiting list'],
        ),
        ...orders(['add', 'added', 'add her', 'add him']),
        ...orders([...['booked', 'schedule', 'scheduled', 'booked in', 'list her'], ...['list him']]),
        ...['schedule surgery', 'schedule the operation', 'schedule operation', 'get her listed', 'get him listed'],
        ...['listed for theatre', 'listed for operation', 'listed for an operation', 'list for theatre'],
      ],
    },
    value: {
      'day case': [
        ...['day surgery', 'day stay', 'ambulatory', 'same day discharge', 'as a day case', 'home same day'],
        ...['day patient', 'as day case', 'as a day patient'],
      ],
      'overnight stay': [
        ...['one night stay', 'one night', '1 night', '1 night stay', 'overnight bed', 'stay the night'],
        ...['stay overnight', 'overnight admission'],
      ],
    },
  },
  'wound-care': {
    finding: {
      'wound check': ['wound review', 'wound inspection', 'wound checks'],
      dressings: ['change of dressing', 'dressing changes', 'redressing'],
      'plan keep dry': [
        ...['keep it dry', 'keep the wound dry', 'keep the foot dry', 'keep the dressing dry', 'keep wound dry'],
        ...['keep dressing dry', 'keep foot dry', 'keep everything dry'],
      ],
      'plan wound check': ['check the wound', 'check wound', 'inspect the wound', 'check on the wound'],
      'plan dressings': [
        ...['change the dressing', 'change dressing', 'redress', 'redress the wound', 'change dressings', 're dress'],
      ],
    },
  },
  'clot-prevention': {
    finding: {
      'clot-prevention': [
        ...['blood clot prevention', 'clot prophylaxis', 'v t e prophylaxis', 'dvt prevention', 'd v t prophylaxis'],
        ...['vte prevention', 'd v t prevention', 'clot precautions'],
      ],
      'plan clot-prevention stockings': orders(
        ['wear', 'needs'],
        ...['compression stockings', 'anti embolism stockings', 'ted stockings', 'elastic stockings'],
      ),
      'plan clot-prevention lmwh': orders(
        ['needs'],
        ...['low molecular weight heparin', 'low molecular heparin', 'lmwh'],
      ),
    },
    value: {
      'low molecular weight heparin': ['low molecular heparin', 'low molecular weight', 'low molecular'],
      stockings: [
        ...['compression stockings', 'anti embolism stockings', 't e d stockings', 'ted hose', 'elastic stockings'],
      ],
    },
  },
  review: {
    finding: {
      'plan review': [
        ...orders(
          ['see her', 'see him', 'see you', "i'll see her", "i'll see him", 'seen', 'see them'],
          ...['again', 'back', 'back in clinic', 'again in clinic'],
        ),
        ...['come back', 'comes back', 'come back to clinic', 'back to clinic', 'back in clinic', 'back to see me'],
        ...['return to clinic', 'follow up appointment', 'review appointment', 'clinic review', 'clinic appointment'],
        ...['recall', 'bring her back', 'bring him back', 'bring back', 'recheck', 're check', 'rereview'],
        ...['re review', 'review again', 'reassess', 're assess', 'follow up visit', 'return visit', 'reattend'],
        ...['further review', 'further appointment', 'back to outpatients', 'outpatient review'],
        ...['outpatient appointment', 'back to the clinic', 'review in clinic', 'return appointment'],
      ],
      'plan review sos': [
        ...['open appointment', 'open access', 'open door', 'patient initiated follow up', 'pifu', 'p i f u'],
        ...['open follow up', 'open review', 'patient initiated review'],
      ],
    },
    value: {
      'if needed': [
        ...['as needed', 'as required', 'on request', 'open appointment', 'open access', 'open door'],
        ...['patient initiated'],
      ],
      'with film': [
        ...['with films', 'with xrays', 'with x rays', 'with radiographs', 'with an xray', 'with a film'],
        ...['with new films', 'with fresh films', 'with repeat films', 'with repeat xray', 'with a repeat xray'],
        ...['with standing films', 'with weight bearing films', 'with a new xray', 'xray on arrival'],
        ...['films on arrival'],
      ],
      'with results': ['with the results', 'with her results', 'with his results', 'for results', 'for the results'],
      'with mri': ['with the mri', 'with an mri', 'with mri scan', 'with the mri scan'],
      'with scan': ['with the scan', 'with scans'],
      'with ultrasound': ['with the ultrasound', 'with an ultrasound'],
      'with bloods': ['with blood tests', 'with the bloods', 'with blood results'],
    },
  },
  image: {
    finding: {
      'plan wb xray': scans(
        ...['standing films', 'weight bearing films', 'standing film', 'weight bearing film', 'standing radiographs'],
        ...['weight bearing radiographs', 'weight bearing views', 'standing views', 'loaded films', 'wb films'],
      ),
      'plan xray': scans(
        ...['films', 'plain films', 'radiographs', 'plain film', 'new films', 'fresh films', 'repeat films', 'film'],
        ...['plain radiographs', 'check films'],
      ),
    },
  },
  bloods: {
    finding: {
      'plan bloods': scans(
        ...['blood tests', 'blood test', 'blood work', 'bloodwork', 'lab tests', 'some bloods', 'some blood tests'],
        ...['routine bloods'],
      ).concat(['check bloods', 'check some bloods', 'do bloods', 'send bloods', 'take bloods', 'check blood tests']),
    },
    value: {
      crp: ['c reactive protein'],
      esr: ['sed rate', 'sedimentation rate'],
      'rheumatoid factor': ['rheumatoid', 'r f'],
      'anti-ccp': ['anti c c p', 'ccp antibodies', 'anti ccp antibodies'],
      hba1c: ['haemoglobin a one c', 'long term sugar', 'glycated haemoglobin', 'hb a1c'],
      'vitamin d': ['vitamin d level', 'vitamin d levels', 'vit d level'],
    },
  },
  steroid: {
    finding: {
      steroid: [
        ...['steroid shot', 'cortisone shot', 'steroid shots', 'cortisone shots', 'depot steroid'],
        ...['corticosteroid injection', 'injection of steroid', 'injection of cortisone', 'cortisone jabs'],
        ...['steroid jabs'],
      ],
      'plan steroid': orders(
        [...['inject', 'needs'], ...['needs a', 'trial of']],
        ...['steroid injection', 'cortisone injection', 'steroid', 'cortisone', 'steroid shot', 'cortisone shot'],
        ...['corticosteroid injection'],
      ).filter((each) => !/^(?:give a|book a|needs a) (?:steroid|cortisone)$/.test(each)),
    },
    value: {
      'us-guided': [
        ...['under ultrasound guidance', 'with ultrasound guidance', 'ultrasound guidance', 'ultrasound'],
        ...['with ultrasound', 'under us guidance', 'us guidance'],
      ],
      'x-ray-guided': [
        ...['under fluoroscopy', 'under image intensifier', 'fluoroscopic guidance', 'under xray'],
        ...['under xray guidance', 'xray guided', 'under fluoro', 'fluoroscopic'],
      ],
      landmark: ['by landmark', 'by landmarks', 'blind', 'anatomical landmark'],
      'local anaesthetic': ['local', 'with local', 'with local anaesthetic', 'local anesthetic', 'plus local'],
    },
  },
  'anti-inflammatory': {
    finding: {
      'anti-inflammatory': [
        ...['anti inflammatory tablets', 'anti inflams', 'antiinflammatory', 'antiinflammatories'],
        ...['anti inflammatory tablet', 'anti inflammatory drugs'],
      ],
      'plan anti-inflammatory': orders(
        ['course of', 'short course of', 'trial of'],
        ...['anti inflammatories', 'nsaids', 'nsaid', 'anti inflammatory tablets', 'antiinflammatories'],
      ),
      ...Object.fromEntries(
        ['ibuprofen', 'naproxen', 'diclofenac', 'etoricoxib', 'celecoxib'].map((drug) => [
          `plan ${drug}`,
          orders(['course of', 'short course of', 'trial of'], drug),
        ]),
      ),
    },
    value: {
      ...COURSE,
      'once a day': ['1 a day', 'each morning', 'every morning', 'once every day'],
      'twice a day': ['2 times a day', 'morning and evening', 'twice each day', 'twice per day', 'b d', 'b i d'],
      'three times a day': ['3 times a day', 'thrice daily', '3 times daily', 'three times daily', 't d s', 't i d'],
      'four times a day': ['4 times a day', '4 times daily', 'four times daily', 'q d s', 'q i d'],
      'as needed': [],
    },
  },
  decision: {
    finding: {
      'decision wants operation': [
        ...orders(
          [
            ...['keen to proceed with', 'happy to proceed with', 'happy to go ahead with', 'keen to go ahead with'],
            ...['keen to have', 'happy to have', 'opts for', 'opted for', 'elects for', 'elected for', 'requests'],
            ...['requesting', 'agrees to', 'agreed to', 'ready for', 'keen on', 'chooses', 'asking for'],
          ],
          ...['surgery', 'operation', 'an operation', 'the operation', 'surgical treatment'],
        ),
        ...['keen for an operation', 'keen for the operation', 'keen for surgical treatment', 'up for surgery'],
      ],
      'decision prefers to wait': [
        ...['prefers to hold off', 'happy to hold off', 'keen to hold off', 'prefers to hold fire'],
        ...['holding fire for now', 'prefers to leave it', 'happy to leave it for now'],
        ...['prefers to leave it for now', 'prefers to hold off surgery'],
      ],
      'decision prefers no operation': [
        ...orders(
          ['prefers', 'opts for', 'opted for', 'chooses', 'keen on', 'happy with', 'elects for'],
          ...['conservative treatment', 'conservative management', 'conservative measures', 'nonoperative treatment'],
          ...['nonsurgical treatment'],
        ),
        ...['prefers conservative', 'prefers to stay conservative', 'keen to stay conservative'],
        ...['prefers non surgical', 'prefers nonoperative'],
      ],
      'decision declines operation': [
        ...['turned down surgery', 'turns down surgery', 'set against surgery', 'dead set against surgery'],
        ...['turned down an operation', 'turned down the operation'],
      ],
      'decision second opinion': ['seeking a second opinion', 'requests a second opinion', 'requests second opinion'],
    },
  },
};
