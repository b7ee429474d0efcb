import { ADVISED } from './advised.ts';
import { BONES } from './bones.ts';
import type { Said } from './index.ts';
import { LIFE } from './life.ts';
import { MEASURES } from './measures.ts';
import { ORDERED } from './ordered.ts';
import { each, WIRES } from './words-of.ts';

/** Wound, pin and skin of the operated foot. */
const HEALED: Said = {
  wound: {
    finding: {
      wound: [
        ...['surgical wound', 'surgical site', 'operative site', 'operation site', 'incision site', 'incision line'],
        ...['suture line', 'wound site', 'operative wound', 'surgical incision', 'wound edges', 'wound margins'],
      ],
    },
    value: {
      healed: [...[], ...[], ...[]],
      'unremarkable "healing well"': ['healing well', 'healing nicely', 'healing up nicely'],
      unremarkable: [
        ...['looks good', 'looking good', 'looks great', 'looks well', 'looks lovely', 'looks fine', 'looks ok'],
        ...['satisfactory', 'good', 'great', 'excellent', 'lovely', 'looks excellent', 'looks satisfactory'],
        ...['healthy', 'looks healthy', 'looking healthy', 'looks happy', 'all good', 'all fine', 'all ok'],
        ...['looks tidy'],
      ],
      clean: ['looks clean', 'looking clean', 'nice and clean', 'nicely clean', 'all clean'],
      dry: ['bone dry', 'nice and dry', 'looks dry', 'all dry', 'dried up'],
      'clean and dry': ['looks clean and dry', 'nice clean and dry', 'clean and quite dry', 'dry clean'],
      'clean and dry "intact"': [
        ...['clean dry and intact', 'clean dry intact', 'dry clean and intact', 'c d i', 'clean dry and closed'],
      ],
      open: ['opened', 'opened up', 'has opened up', 'lying open'],
      dehisced: [
        ...['broken down', 'has broken down', 'broke down', 'come apart', 'has come apart', 'came apart'],
        ...['split open', 'pulled apart', 'burst open', 'burst', 'has split', 'parted', 'edges parted'],
        ...['edges come apart', 'dehiscing'],
      ],
      gaping: ['gapes', 'gapping', 'gaped open', 'gaping open', 'gapes open'],
      discharging: ['draining', 'drains', 'leaking', 'leaks', 'discharges', 'has a discharge', 'with discharge'],
      oozing: [
        ...['oozy', 'oozes', 'weeping', 'weepy', 'weeps', 'seeping', 'seeps', 'bit of ooze', 'bit oozy'],
        ...['a bit of ooze', 'little ooze', 'a little ooze', 'slight ooze', 'some ooze', 'minor ooze'],
        ...['still a bit of ooze'],
      ],
      pus: [
        ...['pussy', 'frank pus', 'draining pus', 'leaking pus', 'oozing pus', 'full of pus', 'pus coming out'],
        ...['pus draining'],
      ],
      spreading: [
        ...['redness spreading', 'spreading erythema', 'red and spreading', 'erythema spreading'],
        ...['redness is spreading'],
      ],
    },
  },
  'infection-sign': {
    finding: {
      pus: ['frank pus', 'purulence', 'pussy discharge', 'pus coming out', 'pus draining'],
      'spreading redness': ['redness spreading', 'spreading erythema', 'erythema spreading', 'redness is spreading'],
      'tracking redness': [
        ...['redness tracking', 'red streaks', 'red streaking', 'tracking erythema', 'erythema tracking'],
        ...['lymphangitis', 'red line tracking up', 'redness tracking up', 'red tracking'],
      ],
      'wound discharge': [
        ...['wound drainage', 'drainage from the wound', 'discharge from the wound', 'fluid from the wound'],
        ...['wound leak', 'leak from the wound', 'wound leakage', 'drainage from the incision'],
      ],
      ooze: ['ooze from the wound', 'wound ooze', 'oozing from the wound', 'seepage', 'wound oozing fluid'],
    },
  },
  sutures: {
    finding: {
      sutures: ['stitch', 'suture', 'stitches all', 'sutures all', 'stiches'],
    },
    value: {
      removed: [
        ...['taken out', 'came out', 'come out', 'have come out', 'pulled', 'cut out', 'all out', 'whipped out'],
        ...['all removed', 'out today', 'are out', 'now out', 'all came out'],
      ],
      'in place': [
        ...['still in', 'remain in', 'remaining', 'still in place', 'still there', 'remain', 'holding'],
        ...['all in place'],
      ],
      absorbable: ['dissolving', 'self dissolving', 'resorbable', 'absorbing'],
      'alternate removed': ['alternate ones out', 'alternate ones removed', 'alternates out'],
    },
  },
  'pin-site': {
    finding: {
      'pin-site': [
        ...['k wire sites', 'wire sites', 'pin tracks', 'pin tracts', 'pin entry', 'pin entry site'],
        ...['wire entry site', 'wire entry', 'k wire entry', 'k wire entry site', 'pin exit site', 'wire exit site'],
        ...['wire track', 'wire tract', 'k wire track', 'k wire tract', 'pin hole', 'pin holes'],
        ...['pin insertion site', 'pin sight', 'pin sights'],
      ],
      'pin-site loose': [
        ...each(WIRES, 'loose', 'wobbly', 'loosened', 'working loose'),
        ...['loose pin', 'loose wire', 'loose k wire', 'wobbly pin', 'wobbly wire', 'wobbly k wire'],
      ],
      'pin-site migrated': [
        ...each(WIRES, 'migrated', 'backing out', 'backed out', 'slipped'),
        ...each(WIRES, 'working its way out', 'sliding out', 'slid out', 'migrating', 'creeping out'),
        ...['pin migration', 'wire migration', 'k wire migration', 'migrated pin', 'migrated wire', 'migrated k wire'],
      ],
    },
    value: {
      clean: [
        ...['looks clean', 'looks fine', 'looks good', 'fine', 'good', 'quiet', 'healthy', 'immaculate'],
        ...['looks healthy', 'look clean', 'look fine', 'look good', 'look healthy', 'look quiet', 'looks quiet'],
        ...['satisfactory', 'looks ok', 'unremarkable', 'all clean', 'all good', 'all quiet', 'nice and clean'],
        ...['looking clean', 'look ok', 'happy'],
      ],
      dry: ['bone dry', 'nice and dry', 'looks dry', 'look dry', 'all dry'],
      red: ['erythematous', 'reddened', 'looks red', 'look red'],
      inflamed: ['angry', 'looks angry', 'looks inflamed', 'look angry', 'irritated', 'looks irritated'],
      discharging: ['draining', 'leaking', 'drains', 'leaks'],
      weeping: ['weepy', 'weeps'],
      oozing: ['oozy', 'oozes', 'bit of ooze', 'a bit of ooze', 'slight ooze', 'seeping'],
      pus: ['pussy', 'frank pus', 'purulence', 'draining pus', 'pus coming out'],
      spreading: ['redness spreading', 'spreading erythema', 'erythema spreading'],
      loose: ['loosened', 'wobbly', 'working loose'],
      migrated: ['backing out', 'slipped', 'working its way out', 'sliding out', 'slid out'],
    },
  },
  'pin-out': {
    finding: {
      'pin-out': [
        ...each(WIRES, 'taken out', 'came out', 'come out', 'extracted', 'drawn out'),
        ...each(WIRES, 'whipped out', 'slid out easily', 'came out easily', 'comes out easily'),
        ...each(['pulled', 'took out'], 'the wire', 'the pin', 'the k wire', 'the wires', 'the pins'),
        ...each(['pulled', 'took out'], 'wire', 'pin', 'k wire', 'pins'),
        ...['took the wire out', 'took the pin out', 'took the k wire out', 'took the wires out'],
        ...['took the pins out', 'pulled the wire out', 'pulled the pin out', 'pins removed', 'wires removed'],
        ...['k wires removed', 'k wires out'],
      ],
    },
  },
  'pin-in-place': {
    finding: {
      'pin in place': [
        ...each(
          WIRES,
          ...['remains', 'remain', 'remains in', 'remain in', 'still there', 'still in place', 'still in situ'],
        ),
        ...each(['pins', 'wires', 'k wires'], 'still in'),
        ...['wire in place', 'k wire in place', 'k wire still in', 'pin remains in place', 'wire remains in place'],
        ...['wire remains in situ', 'pin remains in situ', 'pin intact', 'wire intact', 'k wire intact'],
      ],
    },
  },
  perfusion: {
    finding: {
      pink: [
        ...['pinked up', 'pinks up', 'pinking up', 'pinkish', 'nice and pink', 'nicely pink', 'looks pink'],
        ...['stays pink', 'pinks up nicely', 'pinked up nicely', 'lovely and pink'],
      ],
      'pink "well perfused"': [
        ...['well perfused', 'perfused well', 'nicely perfused', 'perfusing well', 'good perfusion', 'perfused'],
      ],
      'pink "good colour"': [
        ...['good colour', 'good color', 'healthy colour', 'healthy color', 'nice colour', 'normal colour'],
      ],
      'warm and pink': [
        ...['looks warm and pink', 'nice and warm and pink', 'pink and nice and warm', 'warm and nicely pink'],
      ],
      'warm and pink "well perfused"': [
        ...['warm and well perfused', 'warm well perfused', 'well perfused and warm', 'warm and perfused'],
      ],
      dusky: ['dusky looking', 'looks dusky', 'bit dusky', 'slightly dusky', 'duskiness'],
      'dusky "purple"': ['purple', 'purplish', 'looks purple', 'violet'],
      pale: ['pallor', 'pallid', 'looks pale', 'bit pale'],
      white: ['blanched', 'looks white', 'whitish', 'stays white', 'white as a sheet'],
      blue: ['bluish', 'cyanosed', 'cyanotic', 'looks blue', 'bit blue'],
      cold: ['cold to touch', 'cold to the touch', 'stone cold', 'ice cold', 'icy', 'feels cold', 'icy cold'],
    },
  },
  neurovascular: {
    finding: {
      'neurovascular intact': [
        ...['distally neurovascularly intact', 'neurovascularly intact distally', 'neurovascular status intact'],
        ...['neuro vascularly intact', 'neuro vascular intact', 'n v intact', 'circulation and sensation intact'],
        ...['sensation and circulation intact', 'neurovascularly all intact', 'distal neurovascular status intact'],
      ],
      'neurovascular ok': [
        ...['neurovascular status normal', 'neurovascular status fine', 'neurovascularly fine', 'neurovascularly ok'],
      ],
    },
  },
  calf: {
    finding: { calf: ['calf muscle', 'calf muscles'] },
    value: {
      soft: ['nice and soft', 'feels soft', 'soft and supple', 'all soft'],
      'not painful': ['painless', 'pain free', 'painfree'],
      tender: ['tender to squeeze', 'hurts to squeeze', 'sore to squeeze'],
      swollen: ['puffy', 'swelled up', 'tense and swollen'],
    },
  },
};

/** After an operation, and what is planned. */
export const AFTER: Said = { ...HEALED, ...BONES, ...LIFE, ...ADVISED, ...MEASURES, ...ORDERED };
