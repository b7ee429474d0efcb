import { AMOUNT, DORSAL, HURTS, PAINLESS, PLANTAR } from './amounts.ts';
import type { Said } from './index.ts';
import { RANGES } from './ranges.ts';

/** Said of a toe that can be brought straight, or of a joint that goes back. */
const CORRECTS: readonly string[] = [
  ...['reducible', 'corrects', 'corrects fully', 'corrects passively', 'corrects manually', 'correctible'],
  ...['fully correctable', 'passively correctable', 'manually correctable', 'easily correctable'],
  ...['correctable passively', 'passively reducible', 'fully reducible', 'straightens', 'straightens out'],
  ...['straightens fully', 'can be straightened'],
];
const HALFWAY: readonly string[] = [
  ...['semirigid', 'semi flexible', 'semi fixed', 'semiflexible', 'partially correctable', 'partly correctable'],
  ...['partially reducible', 'partly reducible', 'part correctable', 'partially flexible', 'partly flexible'],
  ...['partly fixed', 'partially fixed', 'partially rigid', 'incompletely correctable'],
];
const RIGIDLY: readonly string[] = [
  ...['rigidly fixed', 'completely fixed', 'totally fixed'],
  ...['uncorrectable', 'non correctable', 'fixed solid'],
];
const GOES_BACK: readonly string[] = [
  ...['reduces easily', 'reduces passively', 'reduces manually', 'can be put back', 'goes back', 'goes back in'],
  ...['pops back', 'pops back in', 'relocates', 'relocatable', 'reduceable', 'easily reducible'],
  ...['passively reducible', 'manually reducible', 'fully reducible', 'reduces fully'],
];
const STUCK: readonly string[] = ['non reducible', 'unreducible', 'irreduceable', 'locked out'];

/** The joint and the toe of each ray. */
export const JOINT: Said = {
  drawer: {
    finding: {
      drawer: [
        ...['lock man', 'lockman', 'lachmans', 'lackman', 'lackmans', 'lock mans', 'draw test', 'drawers'],
        ...['draws test', 'mtp drawer', 'vertical draw', 'vertical drawer', 'drawer stress', 'drawer manoeuvre'],
        ...['vertical shuck', 'vertical shuck test', 'toe drawer', 'vertical stress testing', 'drawer testing'],
      ],
    },
    value: {
      painful: HURTS,
      painless: PAINLESS,
      positive: ['loose', 'lax', 'sloppy', 'subluxable'],
      guarding: [
        ...['guards', 'she guards', 'he guards', 'guards it'],
        ...['tenses', 'tenses up', 'tensing up', 'with tensing'],
      ],
      'under block': ['with the block in', 'under ring block', 'under digital block'],
      half: ['half subluxable', 'fifty per cent', '50%', '50 percent'],
    },
  },
  lifted: {
    finding: {
      lifted: [
        ...['riding up', 'rides up', 'sits up', 'sits proud', 'sitting proud', 'sits high', 'sitting high'],
        ...['riding high', 'rides high', 'high riding', 'stands proud', 'standing proud'],
        ...['stands up off the floor', 'lifts off', 'lifting off', 'lifts up', 'lifted up', 'lifts off the floor'],
        ...['lifts off the ground', 'raised off the floor', 'raised off the ground', 'raised from the floor'],
        ...['elevated off the floor', 'elevated off the ground', 'elevated from the floor'],
        ...['elevated from the ground', 'sticks up', 'sticking up', 'points up', 'pointing up', 'pokes up'],
        ...['poking up', 'hovers', 'hovering', 'hovers off the floor', 'hovers above the floor'],
        ...['sits off the floor', 'sits off the ground', 'sits above the floor', 'sits above the ground'],
        ...['sits in the air', 'stands off the floor', 'loses ground contact', 'lost ground contact'],
        ...['loss of ground contact', 'loses contact with the floor', 'loss of floor contact'],
        ...['loses floor contact', 'lost contact with the floor', 'lost contact with the ground'],
      ],
      floating: ['floater', 'floats up', 'floats off the floor', 'floating off the floor'],
    },
  },
  deviation: {
    finding: {
      deviation: [
        ...['drifts', 'drifting', 'drifted', 'deviates', 'deviating', 'veers', 'veering', 'angulated'],
        ...['angulation', 'transverse deviation', 'transverse plane deviation', 'sideways drift'],
      ],
      'medial deviation': ['leans in', 'drifts in', 'drifting in', 'medialised'],
    },
    value: {
      ...AMOUNT,
      medial: [
        ...['varus', 'in varus', 'into varus', 'inwards', 'inward', 'to the medial side'],
        ...['towards the medial side', 'towards the hallux', 'toward the hallux', 'towards hallux'],
        ...['to the hallux', 'towards the big toe', 'toward the big toe', 'towards the great toe'],
        ...['toward the great toe', 'to the big toe', 'towards the big', 'toward the big', 'tibially'],
      ],
      lateral: [
        ...['valgus', 'in valgus', 'into valgus', 'outwards', 'outward', 'to the lateral side'],
        ...['towards the lateral side', 'towards the little toe', 'toward the little toe', 'fibularly'],
        ...['towards the fifth toe', 'towards the 5th toe'],
      ],
    },
  },
  extension: {
    finding: {
      hyperextended: ['hyper extended', 'hyper extension', 'hyperextends', 'hyperextending'],
      'cocked up': [
        ...['cock up', 'cock up deformity', 'cocks up'],
        ...['cocking up', 'cock up toe', 'cocked', 'cocked upwards'],
      ],
      extended: [
        ...['extension deformity', 'extension posture', 'dorsiflexed posture', 'held in extension'],
        ...['sits in extension'],
      ],
    },
    value: AMOUNT,
  },
  overlap: {
    finding: {
      overlap: [
        ...['cross over toe', 'cross over deformity', 'crossover deformity'],
        ...['crossing over toe', 'overlapping toe', 'crossover posture'],
      ],
      'overlap hallux': [
        ...['rides over the hallux', 'rides over the big toe', 'rides on the hallux', 'rides on the big toe'],
        ...['sits over the hallux', 'sits over the big toe', 'sits on the hallux', 'sits on the big toe'],
        ...['sits on top of the hallux', 'sits on top of the big toe', 'lies over the hallux'],
        ...['lies over the big toe', 'lies on the hallux', 'lies on top of the hallux', 'lies on the big toe'],
        ...['climbs over the hallux', 'climbs over the big toe', 'climbing over the hallux'],
      ],
    },
    value: {
      sometimes: ['variably'],
      constant: ['all the time', 'constantly', 'permanently', 'permanent', 'continuously'],
    },
  },
  rotation: {
    finding: {
      rotated: ['rotates', 'malrotated', 'malrotation', 'mal rotated', 'rotational deformity'],
      supinated: ['supinates', 'rotated into supination', 'supinating'],
      pronated: ['pronates', 'rotated into pronation', 'pronating'],
    },
    value: AMOUNT,
  },
  dislocated: {
    finding: {
      dislocated: ['frankly dislocated', 'frank dislocation', 'completely dislocated', 'fully dislocated'],
    },
    value: {
      reducible: GOES_BACK,
      irreducible: STUCK,
      dorsal: ['upwards', 'dorsalwards', 'to the dorsum'],
      chronic: ['long standing', 'long term', 'of long standing'],
    },
  },
  subluxed: {
    finding: {
      subluxed: ['sub luxed', 'sub luxation', 'partially dislocated', 'partial dislocation', 'half dislocated'],
    },
    value: {
      ...AMOUNT,
      reducible: [...GOES_BACK],
      irreducible: STUCK,
      dorsal: ['upwards', 'to the dorsum'],
    },
  },
  reducibility: {
    finding: {
      reducible: [
        ...['passively reducible', 'fully reducible', 'manually reducible', 'easily reducible'],
        ...['reduces passively'],
      ],
      irreducible: ['non reducible', 'unreducible', 'irreduceable'],
    },
  },
  paper: {
    finding: {
      paper: [
        ...['paper grip', 'paper grip test', 'paper pull', 'paper pull test', 'toe grip', 'toe grip test'],
        ...['paper pullout', 'paper pullout test', 'paper pull out test', 'paper out test', 'ground purchase'],
        ...['floor purchase', 'strip test', 'digital purchase', 'digit purchase', 'toe purchases', 'purchase test'],
        ...['grip test', 'paper strip', 'paper strip test', 'purchase on the floor', 'purchase on the ground'],
        ...['grip on paper'],
      ],
      'paper pulls out': ['loses the paper', 'drops the paper', 'lets the paper go', 'lets go of the paper'],
      'paper holds': [
        ...['grips the paper', 'keeps the paper'],
        ...['holds the paper', 'holds on to the paper', 'holds paper'],
      ],
    },
    value: {
      lost: [
        ...['drops', 'drops it', 'drops out', 'falls out', 'comes out', 'slides out', 'slips out', 'slipped'],
        ...['slipped out', 'slips away', 'slipping', 'fail', 'failed', 'failing', 'loses', 'loses it'],
        ...['pulls straight out', 'pulls right out', 'pulls away', 'pulls free', 'slides straight out'],
        ...['comes straight out', 'pulled straight out'],
      ],
      weak: [
        ...['poor', 'diminished', 'decreased', 'feeble', 'impaired', 'weakened', 'minimal', 'partial', 'weakness'],
        ...['poorly', 'partially', 'a bit weak'],
      ],
      holds: [
        ...['strong', 'retained', 'preserved', 'maintained', 'firm', 'grips', 'gripped', 'passes', 'passed'],
        ...['pass', 'full', 'secure', 'keeps', 'kept', 'well', 'strongly', 'firmly', 'solid', 'holding'],
        ...['holds well', 'satisfactory'],
      ],
    },
  },
  pip: {
    finding: { pip: ['pip joints', 'pipjs', 'pip j', 'p i p', 'pips', 'pips joint', 'proximal interphalangeal'] },
    value: {
      flexible: ['mobile', 'fully flexible', 'soft', 'nice and supple', 'moves freely'],
      correctable: CORRECTS,
      'semi-rigid': HALFWAY,
      fixed: [...RIGIDLY, 'locked', 'rigidly'],
      stiff: ['stiffened', 'stiffness'],
      fused: ['ankylosed', 'solidly fused'],
    },
  },
  mtp: {
    finding: {
      'mtp stable': [
        ...['solid joint', 'stable joint', 'firm joint'],
        ...['stable mtp', 'stable m t p', 'solid mtp', 'firm mtp'],
      ],
      'mtp unstable': [
        ...['unstable joint', 'lax joint', 'loose joint', 'sloppy joint', 'unstable mtp', 'lax mtp', 'loose mtp'],
        ...['sloppy mtp', 'instability of the joint', 'instability of the mtp', 'sagittal instability'],
      ],
      'mtp stiff': ['stiff joint', 'stiff mtp', 'stiffness of the joint', 'stiffness of the mtp'],
      mtp: ['metatarsophalangeal', 'metatarsophalangeal joint', 'm t p', 'm t p joint', 'm p joint', 'm p j'],
    },
    value: {
      stable: [
        ...['solid', 'firm', 'secure', 'rock solid', 'nice and stable', 'nice and solid', 'stability good'],
        ...['sound'],
      ],
      unstable: ['lax', 'loose', 'sloppy', 'wobbly', 'instability'],
      flexible: ['mobile', 'fully flexible'],
      stiff: ['stiffened', 'stiffness'],
      fixed: [...RIGIDLY],
      'semi-rigid': HALFWAY,
    },
  },
  stage: { finding: { stage: ['clinically stage', 'staged at', 'staged as', 'clinical staging', 'staging'] } },
  swelling: {
    finding: {
      swelling: [
        ...['bogginess', 'puffiness', 'puffed up', 'swollen up', 'fullness', 'soft tissue swelling'],
        ...['joint swelling', 'distension', 'distended', 'synovial swelling', 'tissue swelling'],
      ],
      effusion: ['joint effusion', 'effused', 'effusions', 'fluid in the joint', 'joint fluid'],
      boggy: ['boggy joint'],
    },
    value: { ...AMOUNT, dorsal: DORSAL, plantar: PLANTAR, boggy: ['spongy', 'doughy'] },
  },
  redness: {
    finding: { redness: ['reddened', 'reddening', 'erythematous', 'rubor'] },
    value: AMOUNT,
  },
  hot: {
    finding: {
      hot: ['hot to touch', 'hot to the touch', 'hot to palpation', 'feels hot', 'hotness', 'hot to feel'],
      'warm joint': [
        ...['increased warmth', 'local warmth'],
        ...['joint warmth', 'warmth over the joint', 'warmth of the joint'],
      ],
    },
  },
  tenderness: {
    finding: {
      tender: [
        ...['sore to touch', 'sore to press', 'sore on pressing', 'sore on palpation', 'sore to palpation'],
        ...['sore to feel', 'tender to touch', 'tender to press', 'tender on pressing', 'tender on pressure'],
        ...['tender to pressure', 'painful to touch', 'painful to press', 'painful on palpation'],
        ...['painful to palpation', 'painful on pressure', 'pain on palpation', 'pain to palpation'],
        ...['pain on pressing', 'pain on pressure', 'pain on direct pressure', 'palpation pain', 'pressure pain'],
        ...['palpation tenderness', 'tenderness on palpation', 'tenderness to palpation', 'tenderness to touch'],
        ...['point tender', 'point tenderness', 'focal tenderness', 'focally tender', 'localised tenderness'],
        ...['localized tenderness', 'locally tender', 'tender spot', 'tender point', 'maximal tenderness'],
        ...['maximum tenderness', 'max tenderness', 'maximally tender', 'hurts to press', 'hurts to touch'],
        ...['hurts on palpation', 'hurts on pressing', 'tendor', 'joint line tenderness', 'joint line tender'],
      ],
    },
    value: {
      ...AMOUNT,
      plantar: [
        'plantar base',
        ...PLANTAR.filter((each) => !['underneath', 'on the sole', 'plantarly'].includes(each)),
      ],
      dorsal: DORSAL.filter((each) => !['on top', 'dorsum'].includes(each)),
      plate: [
        ...['the plate', 'the plantar plate', 'over the plate', 'over the plantar plate', 'along the plate'],
        ...['plates'],
      ],
      head: ['the head', 'sub met head', 'submetatarsal head', 'under the head'],
      shaft: ['the shaft', 'shafts', 'mid shaft', 'midshaft', 'diaphysis', 'diaphyseal', 'along the shaft'],
      'phalanx base': [
        ...['phalangeal base', 'base of phalanx'],
        ...['base of the phalanx', 'proximal phalanx base', 'phalanx bases'],
      ],
      sesamoids: ['sesamoid', 'both sesamoids', 'the sesamoids', 'sesamoid complex', 'sesamoid area'],
      'medial sesamoid': ['the tibial sesamoid', 'the medial sesamoid', 'tibial sesamoids'],
      'lateral sesamoid': ['the fibular sesamoid', 'the lateral sesamoid'],
    },
  },
  perfusion: {
    finding: {
      'toe-colour': [
        ...['toe color', 'coloration', 'colouration'],
        ...['toe perfusion', 'perfusion', 'colour of the toe'],
      ],
      'toe-colour pale': ['pallor', 'pallid'],
      'toe-colour blue': ['cyanosed', 'cyanotic', 'cyanosis', 'bluish'],
      'toe-colour dusky': ['duskiness', 'dusky discoloration', 'dusky discolouration'],
    },
    value: {
      pink: ['nice and pink', 'rosy', 'nicely pink', 'healthy pink', 'pinkish', 'pink and healthy'],
      pale: ['pallid', 'pasty'],
      blue: ['bluish', 'cyanosed', 'cyanotic'],
      cold: ['cold to touch', 'cold to the touch', 'icy', 'stone cold', 'icy cold'],
    },
  },
  'toe-shape': {
    finding: {
      hammer: [
        ...['hammering', 'hammer deformity', 'hammer toe deformity', 'hammertoe deformity', 'hammer toes'],
        ...['hammertoes', 'hammer digit', 'hammer digits', 'hammered toe', 'hammered toes', 'hammering deformity'],
        ...['hammer shape', 'hammers'],
      ],
      claw: [
        ...['claw deformity', 'claw toe deformity', 'claw toes', 'clawtoe', 'clawtoes', 'clawed toe'],
        ...['clawed toes', 'claws', 'clawing deformity', 'claw digit', 'claw shape'],
      ],
      mallet: [
        ...['mallet deformity', 'mallet toe deformity', 'mallet toes'],
        ...['malleting', 'malleted', 'mallet digit'],
      ],
      'toe-shape': ['digital deformity', 'lesser toe deformity', 'deformity of the toe', 'toe deformities'],
    },
    value: {
      ...AMOUNT,
      flexible: [...CORRECTS, 'mobile', 'fully flexible', 'passively flexible', 'reduces'],
      'semi-rigid': HALFWAY,
      fixed: [...RIGIDLY, 'irreducible', 'non reducible', 'unreducible'],
    },
  },
  ...RANGES,
};
