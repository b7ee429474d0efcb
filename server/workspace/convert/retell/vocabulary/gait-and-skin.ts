import { AMOUNT, DORSAL, PLANTAR } from './amounts.ts';
import type { Said } from './index.ts';

const CAN: readonly string[] = [
  ...['can do', 'fine', 'ok', 'managed', 'manages fine', 'normal', 'good', 'easily', 'achieved', 'performed'],
  ...['performs', 'full', 'does', 'completes', 'achieves', 'satisfactory', 'comfortably'],
];

/** How the patient stands and walks, and the skin that carries the load. */
export const GAIT_AND_SKIN: Said = {
  gait: {
    finding: {
      gait: ['walks', 'walking pattern', 'gait pattern', 'gate', 'ambulates', 'walking style', 'gait analysis'],
      'gait limping': ['walks with a limp', 'hobbles', 'hobbling', 'limps'],
      'gait antalgic': ['antalgia', 'analgic gait', 'ant algic gait'],
      'gait lateral loading': [
        ...['walks on the outer border', 'loads the lateral border', 'loads laterally'],
        ...['walks on the lateral side'],
      ],
      'gait short push-off': [
        ...['shortened push off', 'poor push off'],
        ...['diminished push off', 'poor toe off', 'short toe off'],
      ],
      'gait avoids push-off': ['avoiding push off', 'guards push off', 'avoiding toe off'],
    },
    value: {
      ...AMOUNT,
      normal: ['fine', 'ok', 'smooth', 'even', 'symmetrical', 'unremarkable'],
      antalgic: ['antalgia', 'analgic', 'ant algic', 'and talgic', 'antalgically'],
      limping: ['with a limp', 'hobbling', 'limpy'],
      'lateral loading': [
        ...['on the outer border', 'outer border', 'on the lateral side', 'on the outer edge', 'lateral edge'],
        ...['lateral side', 'on the lateral edge', 'loads laterally'],
      ],
      'short push-off': ['poor push off', 'diminished push off', 'poor toe off'],
    },
  },
  'toe-walk': {
    finding: {
      'toe-walk': [
        ...['tip toe walking', 'tip toes', 'tip toe', 'tiptoes', 'tiptoeing', 'walks on tiptoe'],
        ...['walking on tiptoe', 'walks on tiptoes', 'walking on toes', 'tip toeing', 'walk on tiptoes'],
        ...['walk on toes'],
      ],
    },
    value: { able: CAN, painful: ['hurts', 'sore', 'painfully'], weak: ['poor', 'feeble'] },
  },
  'heel-rise': {
    finding: {
      'heel-rise': [
        ...['single heel raise', 'single leg heel raise', 'heel raises', 'heel rises', 'single limb heel rise'],
        ...['heal raise', 'single limb heel raise', 'single stance heel rise', 'single leg calf raise'],
        ...['heal rise', 'single legged heel rise', 'single legged heel raise', 'single leg stance heel raise'],
        ...['single heal raise', 'single heal rise', 'heel raise test', 'heel rise test', 'single leg heel lift'],
        ...['calf raise'],
      ],
    },
    value: {
      able: CAN,
      painful: ['hurts', 'sore', 'painfully', 'uncomfortable'],
      weak: ['poor', 'feeble', 'weakly', 'struggles'],
      'heel inverts': [
        ...['heel turns in', 'heel swings in', 'inverting', 'heel inverting', 'inverts well', 'hindfoot inverts'],
        ...['good inversion', 'heels invert', 'heel goes into varus'],
      ],
      'stays in valgus': [
        ...['heel remains in valgus', 'remains in valgus'],
        ...['fails to invert', 'stays valgus', 'heel stays valgus'],
      ],
    },
  },
  hindfoot: {
    finding: {
      hindfoot: [
        ...['heel', 'heels', 'hind foot', 'hindfoot alignment', 'rear foot', 'rearfoot', 'heel alignment'],
        ...['hindfeet', 'hind feet', 'hindfoot position'],
      ],
    },
    value: {
      neutral: ['in neutral', 'rectus', 'in neutral alignment'],
      valgus: ['in valgus', 'into valgus', 'everted'],
      varus: ['in varus', 'into varus', 'inverted'],
      ...AMOUNT,
    },
  },
  arch: {
    finding: {
      arch: ['arches', 'longitudinal arch', 'foot posture', 'foot type', 'foot shape', 'arch height'],
      flatfoot: [
        ...['flat feet', 'flat footed', 'flatfeet', 'fallen arch', 'fallen arches', 'collapsed arch'],
        ...['collapsed arches', 'dropped arch', 'dropped arches', 'flat arches', 'pes plan us'],
      ],
      planovalgus: [
        ...['pes planovalgus', 'plano valgus'],
        ...['pes plano valgus', 'planovalgus foot', 'planovalgus feet'],
      ],
      'pes cavus': [
        ...['high arches', 'high arched', 'cavus', 'cavus feet', 'cavoid', 'cavoid foot', 'cavoid feet'],
        ...['high arched foot', 'high arched feet'],
      ],
      cavovarus: ['cavo varus', 'pes cavovarus', 'cavovarus foot', 'cavovarus feet'],
      'arch low': ['low arches', 'low arched', 'low arched foot'],
    },
    value: {
      ...AMOUNT,
      flat: ['collapsed', 'fallen', 'flattened', 'dropped'],
      low: ['lowish', 'on the low side', 'lowered'],
      high: ['highish', 'high arched', 'cavoid'],
      normal: ['maintained', 'preserved', 'well preserved', 'good', 'neutral', 'well maintained'],
    },
  },
  callus: {
    finding: {
      callus: [
        ...['hard skin', 'keratosis', 'callused', 'callous', 'calloused', 'calus', 'hyperkeratotic'],
        ...['hyperkeratotic skin', 'keratotic skin', 'keratoses', 'callus build up', 'callus formation'],
        ...['hard skin build up', 'hyper keratosis', 'callous formation', 'callosity formation', 'callused skin'],
        ...['patch of callus', 'patch of hard skin'],
      ],
      ipk: ['intractable plantar keratosis', 'intractable keratosis'],
    },
    value: {
      ...AMOUNT,
      plantar: PLANTAR.filter((each) => !each.includes('joint')),
      head: [
        ...['met', 'mets', 'sub met head', 'metatarsal', 'metatarsals', 'submetatarsal', 'the mets', 'the heads'],
        ...['the met heads'],
      ],
      'pip knuckle': [
        ...['over the knuckle', 'on the knuckle', 'over the pip'],
        ...['on the pip', 'the pip', 'the knuckle'],
      ],
      tip: ['the tip', 'end of the toe', 'tip of the toe', 'distal tip'],
      painful: ['hurts', 'uncomfortable', 'tender to touch', 'sore to press', 'tender to press', 'symptomatic'],
      painless: ['non painful', 'pain free', 'nontender', 'asymptomatic'],
      thick: ['dense'],
      'with haemorrhage': [
        ...['with bleeding', 'bleeding into it', 'blood in it', 'with blood in it', 'with haemorrhage into it'],
        ...['with blood', 'haemorrhaging'],
      ],
    },
  },
  'fat-pad': {
    finding: {
      'fat-pad': ['fatpad', 'forefoot pad', 'forefoot fat pad', 'fat pads', 'forefoot cushion'],
    },
    value: {
      thin: ['thinning', 'attenuated', 'deficient'],
      atrophic: ['atrophy', 'atrophying'],
      wasted: ['wasting'],
      displaced: [
        ...['migrated', 'distally displaced', 'shifted', 'distal migration', 'displaced distally'],
        ...['migrated distally'],
      ],
      normal: ['well preserved', 'preserved', 'healthy', 'intact', 'maintained', 'adequate'],
      full: ['plump', 'thick'],
    },
  },
  corn: {
    finding: {
      corn: ['clavus', 'hellomas', 'helomas', 'korn', 'clavi'],
      'hard corn': ['heloma durum'],
      'soft corn': ['heloma molle'],
    },
    value: {
      'pip knuckle': [
        ...['over the knuckle', 'on the knuckle', 'over the pip', 'on the pip', 'on the dorsal pip'],
        ...['over the dorsal pip', 'the knuckle', 'dorsum of the pip'],
      ],
      tip: ['the tip', 'end of the toe', 'tip of the toe', 'tip of toe', 'distal tip'],
      painful: ['hurts', 'uncomfortable', 'symptomatic'],
      painless: ['non painful', 'pain free', 'asymptomatic', 'nontender'],
      plantar: ['on the sole', 'plantar aspect', 'underneath'],
    },
  },
  skin: {
    finding: {
      skin: [
        ...['skin quality', 'skin integrity', 'skin envelope', 'skin cover', 'skin of the foot'],
        ...['the skin of the foot', 'skin surface'],
      ],
      'skin macerated': ['maceration', 'macerated', 'macerated skin', 'soggy skin', 'wet maceration'],
      'skin tinea': ['tinea', 'tinea pedis', 'athletes foot', 'athlete foot'],
      'skin blistered': ['blister', 'blisters', 'blistering', 'blistered'],
      'skin fissured': ['fissures', 'fissuring', 'skin cracks', 'cracked skin'],
    },
    value: {
      good: [
        ...['in good order', 'in good condition', 'good condition', 'good quality', 'in good shape', 'excellent'],
        ...['great', 'lovely'],
      ],
      healthy: ['healthy looking', 'looks healthy'],
      ok: ['alright', 'satisfactory', 'acceptable'],
      intact: ['whole', 'sound'],
      fragile: ['friable', 'delicate'],
      thin: ['thinned', 'thinning'],
      papery: ['paper thin', 'tissue paper'],
      dry: ['dryish', 'dried out'],
      macerated: ['soggy', 'macerating', 'waterlogged'],
      fissured: ['cracking', 'fissure', 'fissuring'],
      blistered: ['blistering'],
      fungal: ['fungus', 'mycotic'],
      tinea: ['athletes foot', 'tinea pedis'],
    },
  },
  wound: {
    finding: {
      wound: [
        ...['surgical wound', 'operative wound', 'wound site', 'broken skin', 'skin break', 'skin breach'],
        ...['break in the skin', 'skin breakdown', 'breach of the skin', 'skin breaks', 'op wound'],
        ...['operation wound', 'breaks in the skin'],
      ],
      ulcer: ['ulcerated', 'ulcerating', 'skin ulcer', 'foot ulcer', 'skin ulceration', 'ulcerated area'],
      incision: ['incision line', 'incisions', 'surgical incision', 'incision site'],
      'wound open': ['open wound', 'open sore'],
      'wound dehisced': ['wound dehiscence', 'wound breakdown'],
    },
    value: {
      'clean and dry': ['dry clean'],
      dry: ['nice and dry'],
      clean: ['nice and clean', 'tidy'],
      healed: ['sealed', 'epithelialised'],
      unremarkable: ['good', 'satisfactory', 'happy', 'lovely', 'looks good', 'great', 'excellent'],
      open: ['opened', 'opened up', 'broken down', 'open wide'],
      dehisced: ['dehiscing', 'come apart', 'split open', 'fallen apart', 'split'],
      gaping: ['gapes', 'gaped'],
      discharging: ['leaking', 'leaks', 'draining'],
      oozing: ['weeping', 'weepy', 'oozes', 'weeps', 'seeping', 'oozy'],
      pus: ['with pus', 'purulent discharge', 'pussy', 'full of pus', 'pus coming out'],
      'reaches bone': ['down to bone', 'goes to bone', 'to the bone', 'down to the bone', 'bone deep'],
      'probes to bone': ['probing to bone', 'probes to the bone', 'probes down to bone'],
      'bone exposed': ['exposed bone', 'visible bone', 'bone visible', 'bone showing'],
    },
  },
  bruising: {
    finding: { bruising: ['black and blue', 'ecchymoses', 'ecchymotic', 'bruise mark', 'bruised area'] },
    value: { ...AMOUNT, dorsal: DORSAL, plantar: PLANTAR },
  },
};
