import { COURSE } from './course.ts';
import type { Said } from './index.ts';
import { orders } from './words-of.ts';

/** What orders a thing beside the verbs of the frame. */
const ORDERING = [
  ...['trial of', 'trial of a', 'needs', 'needs a', 'get', 'get a', 'put in', 'put into a', 'change to'],
  ...['continue with', 'carry on with', 'persist with', 'stick with', 'move to'],
] as const;
/** An order of each kind of a measure: what the language writes, then what is said for it, the first as the language has it too. */
function measures(kinds: Readonly<Record<string, readonly string[]>>): Record<string, readonly string[]> {
  return Object.fromEntries(
    Object.entries(kinds).flatMap(([kind, said]) => [
      [kind, said.filter((each) => !NAMES.has(each))],
      [
        `plan ${kind}`,
        [kind.replaceAll('-', ' '), ...said].flatMap((noun) => [...orders(ORDERING, noun), `${noun} please`]),
      ],
    ]),
  );
}
/** Names of a kind that the lexicon has: only their orders are said here. */
const NAMES: ReadonlySet<string> = new Set([
  ...['insoles', 'met pads', 'metatarsal pad', 'metatarsal pads', 'dancers pad', 'gel pads', 'pads', 'taping'],
  ...['strapping', 'rocker', 'splint', 'prop', 'spacer', 'cortisone', 'steroid injection', 'cortisone injection'],
]);
/** Measures that are worn or used: who does so has tried them. */
const worn = (...nouns: readonly string[]): string[] =>
  nouns.flatMap((noun) => [
    `wears ${noun}`,
    `uses ${noun}`,
    `wears her ${noun}`,
    `wears his ${noun}`,
    `uses her ${noun}`,
    `uses his ${noun}`,
  ]);

/** Tape, pads, soles, shoes and exercises: by themselves of the section in force, with an order planned, with who wears them tried. */
export const MEASURES: Said = {
  tape: {
    finding: {
      ...measures({ tape: ['taping', 'strapping', 'toe taping', 'toe strapping', 'taping of the toe', 'taping down'] }),
      'buddy tape': ['buddy tapes', 'tape to its neighbour', 'tape to the next toe', 'neighbour strapping'],
      'sling tape': ['sling taping', 'tape sling', 'sling strapping', 'taping sling'],
      'plan tape plantarflexed': orders(
        ['tape', 'tape it', 'strap', 'strap it', 'tape the toe', 'strap the toe'],
        ...['down', 'plantarflexed'],
      ),
      'tried tape': [
        ...['tapes the toe', 'tapes it', 'tapes her toe', 'tapes his toe', 'straps the toe', 'straps it'],
        ...['straps her toe', 'uses tape'],
      ],
    },
    value: {
      ...COURSE,
      plantarflexed: [
        ...['plantarflexion', 'plantarflex', 'pulling it down', 'to hold it down', 'to hold the toe down'],
        ...['to pull the toe down'],
      ],
      buddy: [],
    },
  },
  pad: {
    finding: {
      ...measures({
        'met-pad': [
          ...['met pads', 'metatarsal pad', 'metatarsal pads', 'metatarsal cushion', 'met cushion'],
          ...['metatarsal cushions', 'metatarsal padding', 'met padding', 'met padded'],
        ],
        dome: [
          ...['met domes', 'metatarsal domes', 'domed pad', 'dome pad', 'metatarsal button', 'met button'],
          ...['metatarsal cookie', 'met cookie'],
        ],
        'gel pad': ['gel cushion', 'gel cushions', 'silicone pad', 'silicone pads', 'gel padding', 'gel cushioning'],
        pad: [
          ...['padding', 'felt pad', 'felt padding', 'foam pad', 'felt pads', 'forefoot pad', 'forefoot pads'],
          ...['forefoot padding'],
        ],
      }),
      'tried met-pad': worn('met pads', 'metatarsal pads', 'met pad', 'metatarsal pad'),
      'tried gel pad': worn('gel pads', 'gel cushions'),
    },
    value: COURSE,
  },
  insert: {
    finding: {
      ...measures({
        insole: [
          ...['insoles', 'orthotic', 'orthoses', 'orthosis', 'foot orthoses', 'foot orthotics', 'foot orthotic'],
          ...['shoe inserts', 'shoe insert', 'innersoles', 'inner soles', 'custom insoles', 'custom orthotics'],
          ...['custom orthotic', 'bespoke insoles', 'custom made insoles', 'orthotic insoles', 'orthotic insole'],
          ...['functional orthotics', 'moulded insoles'],
        ],
        'stiff sole': [
          ...['stiff soles', 'rigid sole', 'rigid soled shoe', 'rigid soled shoes', 'stiff soled shoes'],
          ...['stiffened sole', 'firm sole', 'firm soled shoe'],
        ],
        'stiff shoe': ['stiff shoes', 'rigid shoe', 'rigid shoes', 'stiff footwear'],
        'carbon plate': [
          ...['carbon fibre plate', 'carbon fiber plate', 'carbon fibre insole', 'carbon fiber insole'],
          ...['carbon fibre insert', 'carbon fiber insert', 'carbon plates', 'carbon footplate'],
          ...['carbon fibre footplate', 'carbon insoles', 'carbon inserts', 'carbon fibre foot plate'],
        ],
        'rocker shoe': [
          ...['rocker bottom shoe', 'rocker bottom shoes', 'rocker shoes', 'rocker soled shoes'],
          ...['shoe with a rocker', 'shoes with a rocker', 'rocker bottomed shoe', 'rockered shoe'],
          ...['stiff rocker shoes', 'stiff rocker soled shoe', 'stiff rocker soled shoes'],
        ],
        'rocker sole': [
          ...['rocker', 'rocker bottom', 'rocker soles', 'rocker bottom sole', 'forefoot rocker'],
          ...['rocker bottom soles'],
        ],
        'total contact insole': [
          ...['total contact insoles', 'total contact orthotic', 'total contact orthoses', 't c i'],
          ...['total contact insert'],
        ],
        'metatarsal bar': ['metatarsal bars', 'met bars', 'metatarsal bar on the shoe'],
      }),
      'tried insole': worn('insoles', 'orthotics', 'inserts', 'innersoles', 'shoe inserts', 'orthoses'),
      'tried rocker shoe': worn('rocker shoes', 'rocker bottom shoes', 'rocker soled shoes'),
      'tried stiff shoe': worn('stiff shoes', 'rigid shoes'),
    },
    value: COURSE,
  },
  boot: {
    finding: {
      ...measures({
        boot: [
          ...['moon boot', 'cam boot', 'cam walker', 'c a m boot', 'immobilisation boot', 'immobilization boot'],
          ...['surgical boot', 'fracture boot', 'removable boot', 'pneumatic boot', 'pneumatic walker'],
          ...['orthopaedic boot', 'orthopedic boot'],
        ],
      }),
      'plan no boot': [
        ...['wean out of the boot', 'wean off the boot', 'come out of the boot', 'ditch the boot', 'lose the boot'],
        ...['discard the boot', 'dispense with the boot'],
      ],
    },
    value: COURSE,
  },
  'postop-shoe': {
    finding: measures({
      'postop-shoe': [
        ...['postoperative shoe', 'post operative shoe', 'surgical sandal', 'postop sandal', 'post op sandal'],
        ...['flat postop shoe', 'trauma shoe', 'post surgical shoe', 'postoperative sandal', 'surgical shoes'],
        ...['post op shoes', 'postop shoes', 'flat surgical shoe'],
      ],
      'heel wedge shoe': ['wedged shoe', 'heel wedged shoe', 'reverse camber shoe', 'reverse wedge shoe'],
      'heel wb shoe': ['heel weight bearing shoe', 'heel bearing shoe', 'heel walking shoe'],
      'offloading shoe': [
        ...['off loading shoe', 'offloader', 'off loader', 'forefoot offloading shoe', 'forefoot offloader'],
        ...['forefoot relief shoe', 'offloading shoes'],
      ],
    }),
    value: COURSE,
  },
  'toe-splint': {
    finding: {
      ...measures({
        'toe-splint': ['splint', 'toe straightener', 'toe brace', 'toe orthosis', 'toe splints', 'toe aligner'],
        'budin splint': [
          ...['budin', 'buddin splint', 'boudin splint', 'budin splints', 'buddin', 'budden splint', 'boudin'],
        ],
        'toe prop': ['prop', 'toe crest', 'crest pad', 'toe props', 'toe crest pad'],
        'silicone prop': [
          ...['silicone toe crest', 'silicon prop', 'silicon toe prop', 'gel prop', 'gel toe prop'],
          ...['silicone toe props'],
        ],
        'toe spacer': [
          ...['spacer', 'toe separator', 'toe spacers', 'toe separators', 'interdigital spacer', 'toe spreader'],
          ...['toe wedge'],
        ],
        'silicone spacer': [
          ...['silicone toe spacer', 'silicone separator', 'silicone toe separator', 'silicon spacer', 'gel spacer'],
          ...['gel toe spacer', 'silicon toe spacer', 'silicone spacers', 'gel separator', 'gel toe separator'],
        ],
      }),
      'tried toe-splint': worn('toe straightener'),
    },
    value: COURSE,
  },
  footwear: {
    finding: measures({
      'wide shoes': [
        ...['broad shoes', 'roomy shoes', 'roomier shoes', 'broader shoes', 'wide fit shoes'],
        ...['wide fitting footwear', 'wider footwear', 'wide footwear', 'wide fit footwear', 'wider fit shoes'],
        ...['wider fitting shoes', 'broad fitting shoes'],
      ],
      'wide toe box': [
        ...['wide toebox', 'roomy toe box', 'broad toe box', 'wide toe boxes', 'generous toe box', 'roomy toebox'],
        ...['wide toe box shoes', 'wide toed shoes', 'shoes with a wide toe box', 'room in the toe box'],
        ...['wider toe box', 'wide toe box shoe'],
      ],
      'extra depth shoes': [
        ...['deep shoes', 'deeper shoes', 'extra deep shoes', 'depth shoes', 'deeper footwear', 'extra depth shoe'],
      ],
      'larger shoes': ['one size up', 'next size up', 'larger footwear', 'size bigger'],
      'flat shoes': ['flat footwear', 'flat heeled shoes', 'flat soled shoes', 'flatter shoes'],
      'lower heels': ['low heels', 'low heel', 'lower heel', 'lower heeled shoes', 'low heeled shoes'],
      'cushioned shoes': [
        ...['padded shoes', 'well cushioned shoes', 'well padded shoes', 'cushioned footwear', 'cushioned soles'],
      ],
      'soft shoes': ['soft footwear', 'softer shoes'],
      'shoe advice': [
        ...['shoewear advice', 'shoe wear advice', 'advice on shoes', 'advice about shoes', 'advice on footwear'],
        ...['advice about footwear'],
      ],
    }),
    value: COURSE,
  },
  stretching: {
    finding: {
      ...measures({
        stretching: [
          ...['calf stretch programme', 'calf stretching programme', 'calf stretching exercises'],
          ...['heel cord stretches', 'heel cord stretching', 'calf work'],
        ],
        'gastrocnemius stretches': [
          ...['gastroc stretching', 'gastroc stretch', 'gastrocnemius stretching', 'gastrocnemius stretch'],
          ...['gastrox stretches'],
        ],
        'achilles stretches': [
          ...['achilles stretching', 'achilles stretch', 'tendo achilles stretches', 'achilles tendon stretches'],
        ],
      }),
      'plan stretching "calf"': [
        ...['stretch the calf', 'stretch calf', 'stretch calves', 'stretch the calves', 'stretch her calf'],
        ...['stretch his calf', 'stretch her calves'],
      ],
      'plan achilles stretches': ['stretch the achilles', 'stretch out the achilles'],
    },
    value: COURSE,
  },
  cast: {
    finding: {
      'cast "plaster"': ['plaster cast', 'plaster of paris', 'below knee plaster', 'walking plaster'],
      'total contact cast': ['t c c', 'total contact plaster', 'total contact casting', 'contact cast'],
    },
    value: COURSE,
  },
};
