import { AMOUNT, DORSAL, HURTS, PAINLESS, PLANTAR } from './amounts.ts';
import { GAIT_AND_SKIN } from './gait-and-skin.ts';
import type { Said } from './index.ts';

const REPRODUCES: readonly string[] = [
  ...['reproduces the pain', 'reproduces her pain', 'reproduces his pain', 'reproducing pain'],
  ...['reproduces symptoms', 'reproduces her symptoms', 'reproduces his symptoms', 'reproduces the symptoms'],
  ...['reproduces it', 'recreates the pain', 'recreates pain', 'sets off the pain', 'sets it off'],
  ...['brings on the pain', 'provokes the pain', 'brings on her pain'],
];
const STRONG: readonly string[] = [
  ...['strong', 'easily felt', 'easily palpable', 'bounding', 'full', 'readily palpable', 'readily felt'],
  ...['clearly palpable', 'clearly felt', 'well felt', 'intact', 'fine', 'strongly palpable', 'easy to feel'],
  ...['good volume', 'normal volume', 'both palpable', 'both felt', 'brisk', 'easily palpated', 'palpated'],
  ...['both present', 'both good', 'preserved', 'there'],
];
const FAINT: readonly string[] = [
  ...['faint', 'thready', 'feeble', 'poor', 'diminished', 'just palpable', 'just felt', 'faintly palpable'],
  ...['weakly palpable', 'difficult to feel', 'hard to feel', 'faintly felt', 'weakly felt', 'decreased'],
];

/** Web spaces, nerve and vessel, and the rest of the foot. */
export const WEBS: Said = {
  click: {
    finding: {
      click: [
        ...['clicks', 'clicking', 'web space click', 'webspace click', 'mulder test', 'mulders test'],
        ...['mulder clicks', 'molder', 'moulder', 'molders', 'moulders', 'mortons click', 'morton click'],
        ...['mortons sign', 'palpable click', 'audible click', 'palpable mulders', 'neuroma click'],
        ...['interspace click'],
      ],
    },
    value: { painful: HURTS, 'reproduces pain': REPRODUCES, painless: PAINLESS },
  },
  squeeze: {
    finding: {
      squeeze: [
        ...['squeezing', 'squeezed', 'web compression', 'web space squeeze', 'webspace squeeze'],
        ...['web space compression', 'interspace squeeze', 'interspace compression', 'pinch test', 'web pinch'],
        ...['interdigital squeeze', 'web squeeze test', 'squeeze of the web', 'squeezing of the web'],
        ...['thumb and finger squeeze', 'web squeezing', 'intermetatarsal squeeze'],
      ],
      'squeeze painful': [
        ...['squeeze pain', 'pain on squeezing', 'pain on squeeze', 'painful to squeeze', 'sore to squeeze'],
        ...['tender to squeeze', 'hurts to squeeze'],
      ],
    },
    value: { painful: [...HURTS, 'with pain', 'positive for pain', ...REPRODUCES], painless: PAINLESS },
  },
  numbness: {
    finding: {
      numb: ['numb feeling', 'numb area', 'numbed', 'area of numbness', 'patch of numbness', 'numb spot'],
    },
    value: {
      ...AMOUNT,
      dorsal: DORSAL,
      plantar: PLANTAR,
      tip: ['the tip', 'tip of the toe', 'toe tips', 'end of the toe', 'tip of toe', 'tips'],
      'facing sides': [
        ...['opposing sides', 'opposite sides'],
        ...['adjoining sides', 'contiguous sides', 'touching sides'],
      ],
    },
  },
  compression: {
    finding: {
      compression: [
        ...['metatarsal squeeze', 'forefoot squeeze', 'mtp squeeze', 'transverse squeeze', 'side to side squeeze'],
        ...['gaenslen', 'gaenslens', 'gaenslen test', 'transverse compression', 'metatarsal compression'],
        ...['side to side compression', 'mediolateral compression', 'squeeze across the forefoot'],
        ...['forefoot squeeze test'],
      ],
    },
    value: {
      sore: [...HURTS, 'with pain'],
      painless: PAINLESS.filter((each) => each !== 'comfortable'),
    },
  },
  sensation: {
    finding: {
      sense: [
        ...['light touch', 'soft touch', 'fine touch', 'sensibility', 'protective sensation'],
        ...['light touch sensation', 'sensation to light touch', 'sensory examination', 'sensory exam'],
        ...['touch sensation', 'sensory function'],
      ],
      monofilament: [
        ...['mono filament', 'monofilament test', 'monofilament testing', '10 gram monofilament'],
        ...['10 g monofilament', '10 gram filament', '10 g filament', '10 gram', 'filament', 'filament test'],
        ...['semmes weinstein', 'ten gram filament', 'monofilaments', 'microfilament', 'ten gram monofilament'],
        ...['ten gram'],
      ],
      'sense normal': ['sensate', 'fully sensate'],
      'sense reduced': ['hypoaesthesia', 'hypoesthesia', 'hypoaesthetic'],
    },
    value: {
      normal: [
        ...['full', 'good', 'preserved', 'felt', 'felt everywhere', 'felt throughout', 'felt at all sites'],
        ...['perceived', 'felt all over', 'throughout', 'grossly intact', 'grossly normal', 'intact throughout'],
        ...['normal throughout', 'intact everywhere', 'normal everywhere', 'undisturbed', 'unimpaired'],
        ...['felt at every site', 'all sites felt'],
      ],
      reduced: [
        ...['dull', 'dulled', 'blunted', 'blunt', 'decreased'],
        ...['impaired', 'poor', 'patchy', 'down', 'dampened'],
      ],
      lost: ['dead'],
    },
  },
  dp: {
    finding: {
      dp: ['dorsalis', 'd p', 'dp pulse', 'dorsalis pedis pulse', 'd p pulse', 'dorsalis pulse'],
    },
    value: { palpable: STRONG, weak: FAINT },
  },
  pt: {
    finding: {
      pt: [
        ...['p t pulse', 'pt pulse', 'posterior tibial pulse', 'posterior tib pulse', 'tib post pulse'],
        ...['post tib pulse', 'tibialis posterior pulse', 'tibial pulse'],
      ],
    },
    value: { palpable: STRONG, weak: FAINT },
  },
  pulses: {
    finding: {
      pulses: [
        ...['peripheral pulses', 'pedal pulse', 'foot pulse', 'distal pulses', 'pulses in the foot', 'pt and dp'],
        ...['pt dp', 'd p and p t', 'p t and d p', 'dp and pt pulses', 'dp pt pulses', 'pulses distally'],
        ...['arterial pulses', 'dorsalis pedis and posterior tibial', 'posterior tibial and dorsalis pedis'],
        ...['pulses at the foot', 'pulse in the foot'],
      ],
    },
    value: { palpable: STRONG, weak: FAINT },
  },
  'capillary-refill': {
    finding: {
      'capillary-refill': [
        ...['capillary return', 'cap return', 'capillary refilling', 'cap refil', 'refill time'],
        ...['capillary refill time', 'cap refill time', 'c r t', 'toe refill', 'capillary refills', 'cap refills'],
        ...['capillary filling'],
      ],
    },
    value: {
      normal: [
        ...['good', 'prompt', 'immediate', 'quick', 'fast', 'instant', 'rapid', 'intact', 'satisfactory'],
        ...['adequate', 'nice and brisk'],
      ],
      delayed: ['prolonged', 'poor', 'lazy', 'sluggishly', 'slowed'],
    },
  },
  neurovascular: {
    finding: {
      neurovascular: [
        ...['neuro vascular', 'neurovascular status', 'n v', 'neuro vascularly', 'neurovascularly distally'],
        ...['distal neurovascular status', 'n v status', 'neurovascular exam'],
      ],
      nvi: ['n v i'],
    },
    value: { intact: ['preserved', 'normal', 'good', 'all intact', 'intact distally', 'grossly intact'] },
  },
  'tuning-fork': {
    finding: { 'tuning-fork': ['tuning folk', 'tuning fork sign', 'turning fork', 'vibrating fork'] },
    value: { painful: HURTS },
  },
  'hop-test': {
    finding: { 'hop-test': ['single hop', 'hopping test', 'single leg hop test'] },
    value: { painful: HURTS },
  },
  lisfranc: {
    finding: {
      lisfranc: [
        ...['lis franc', 'lisfrank', 'liz frank', 'liz franc', 'lisfranc joint', 'tarsometatarsal joints'],
        ...['tarso metatarsal joints', 'tmtjs', 'tmtj', 'tmts', 'tmt joint', 'tarsometatarsals'],
      ],
    },
    value: { tender: HURTS, 'not tender': ['nontender', ...PAINLESS] },
  },
  tinel: {
    finding: {
      tinel: [
        ...['tinnels', 'tinel sign', 'tinels sign', 'tinnel', 'tinel test', 'tinels test', 'tinnell', 'tinnells'],
        ...['tinells', 'tarsal tunnel percussion'],
      ],
    },
    value: {
      'behind malleolus': [
        ...['behind the medial malleolus', 'over the tarsal tunnel', 'at the tarsal tunnel'],
        ...['posterior tibial nerve'],
      ],
    },
  },
  percussion: {
    finding: {
      percussion: [
        ...['tapping', 'tap test', 'web tapping'],
        ...['tapping the web', 'percussion test', 'percussing', 'web tap'],
      ],
    },
    value: {
      painful: HURTS,
      plantar: ['from the sole', 'from below', 'from the plantar side'],
      dorsal: ['from the top', 'from above', 'from the dorsum'],
    },
  },
  'nerve-stretch': {
    finding: {
      'nerve-stretch': [
        ...['stretch sign', 'digital stretch', 'digital nerve stretch test', 'nerve stretching'],
        ...['toe stretch test', 'web stretch test'],
      ],
    },
    value: { painful: HURTS },
  },
  abi: {
    finding: {
      abi: ['ankle brachial', 'ankle brachial pressure', 'abpis', 'ankle brachial ratio'],
    },
  },
  'toe-pressure': {
    finding: {
      'toe-pressure': [
        ...['toe pressures', 'toe systolic pressure', 'toe systolic', 'digital pressure'],
        ...['toe systolic blood pressure'],
      ],
    },
  },
  doppler: {
    finding: {
      doppler: [
        ...['dopplers', 'doppler trace', 'hand held doppler', 'handheld doppler', 'doppler waveform'],
        ...['doppler signals', 'doppler waveforms', 'waveforms', 'doppler flow', 'doppler sound'],
      ],
    },
    value: {
      triphasic: ['tri phasic', 'triphasic flow'],
      biphasic: ['bi phasic', 'biphasic flow'],
      monophasic: ['mono phasic', 'monophasic flow'],
    },
  },
  'calf-tightness': {
    finding: {
      'calf-tightness': [
        ...['short calf', 'calf contracture', 'tight calf muscles', 'tight calf muscle', 'tightness of the calf'],
        ...['tightness in the calf', 'tightness of the calves', 'calf muscle tightness', 'calves tight'],
        ...['calf muscles tight', 'tight heel cord', 'tight heel cords'],
      ],
      'tight gastrocnemius': [
        ...['gastrocnemius tight', 'gastrocnemius contracture', 'short gastrocnemius', 'gastrocnemius shortening'],
        ...['gastrocnemius equinus', 'gastroc tightness', 'gastroc contracture', 'tight gastroc', 'tight gastrocs'],
        ...['gastroc tight', 'contracted gastrocnemius'],
      ],
      'calf-tightness achilles': [
        ...['tight achilles', 'short achilles', 'achilles tightness', 'achilles contracture'],
        ...['tight achilles tendon', 'achilles tight', 'tight tendo achilles'],
      ],
    },
    value: AMOUNT,
  },
  silfverskiold: {
    finding: {
      silfverskiold: [
        ...['silverskold', 'silver skold', 'silver skiold', 'silverscold', 'silfverskold', 'silver scold'],
        ...['silverskjold', 'silverskiolds', 'silfverskiolds', 'silver school test', 'silverskiold test'],
        ...['silfverskiold test', 'silver shield test', 'silversheild', 'silver skjold'],
      ],
    },
  },
  laxity: {
    finding: {
      laxity: [
        ...['generalised joint laxity', 'generalized joint laxity', 'generalized laxity', 'generally lax'],
        ...['globally lax', 'double jointed', 'generalised ligament laxity', 'global laxity', 'systemic laxity'],
      ],
      hypermobility: [
        ...['generally hypermobile', 'globally hypermobile', 'hypermobile generally', 'hyper mobility'],
        ...['hypermobile joints', 'joint hypermobility'],
      ],
      'ligamentous laxity': ['ligament laxity', 'lax ligaments', 'ligaments lax'],
    },
  },
  beighton: {
    finding: {
      beighton: [
        ...['beaton', 'beaton score', 'beightons', 'beighton scale', 'bayton', 'bayton score', 'baton score'],
        ...['bighton', 'beton score'],
      ],
    },
  },
  'ankle-dorsiflexion': {
    finding: {
      'ankle-dorsiflexion': [
        ...['ankle dorsiflexes', 'ankle dorsi flexion', 'passive ankle dorsiflexion', 'dorsiflexion of the ankle'],
        ...['dorsiflexion at the ankle', 'ankle comes up', 'ankle goes up', 'ankle dorsiflexion range'],
      ],
    },
    value: {
      extended: [
        ...['with the knee straight', 'with knee straight', 'with the knee extended', 'with knee extended'],
        ...['knees extended', 'knee out straight', 'straight knee', 'with a straight knee', 'knee in extension'],
      ],
      flexed: [
        ...['with the knee bent', 'with knee bent', 'with the knee flexed', 'with knee flexed', 'knees bent'],
        ...['knees flexed', 'bent knee', 'with a bent knee', 'knee in flexion'],
      ],
      '0°': ['neutral', 'to neutral', 'plantigrade', 'to plantigrade', 'to the neutral position'],
    },
  },
  'toe-strength': {
    finding: {
      'toe-strength': [
        ...['muscle strength', 'muscle power', 'motor power', 'toe flexion strength', 'strength of the toes'],
        ...['power of the toes', 'toe muscle strength'],
      ],
    },
    value: {
      full: ['intact', 'strong', 'preserved', 'excellent'],
      weak: ['poor', 'diminished', 'decreased', 'down', 'feeble', 'weakened', 'impaired'],
      fdl: ['flexor digitorum longus', 'f d l', 'long flexor', 'long flexors'],
      edl: ['extensor digitorum longus', 'e d l', 'long extensor', 'long extensors'],
    },
  },
  calf: {
    finding: { calf: ['calf muscle', 'calf muscles'] },
    value: {
      soft: ['soft and supple', 'squashy'],
      'not tender': ['pain free', 'painless'],
    },
  },
  mass: {
    finding: { mass: ['lumps', 'soft tissue lump', 'palpable mass', 'palpable lump'] },
    value: {
      growing: ['increasing in size', 'growing in size', 'enlarging in size'],
      soft: ['squashy', 'softish'],
    },
  },
  'disproportionate-pain': {
    finding: {
      'pain-out-of-proportion': [
        ...['disproportionate pain', 'pain disproportionate', 'pain all out of proportion'],
        ...['disproportionately painful', 'disproportionately sore'],
      ],
    },
  },
  ...GAIT_AND_SKIN,
};
