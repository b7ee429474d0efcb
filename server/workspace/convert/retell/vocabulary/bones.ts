import type { Said } from './index.ts';
import { each, WIRES } from './words-of.ts';

/** A cut of bone or a fused joint with its verb: the noun alone says nothing of its healing. */
const bones = (...verbs: readonly string[]): string[] =>
  ['osteotomy', 'osteotomies', 'osteotomy site', 'fusion', 'fusion site', 'arthrodesis', 'arthrodesis site'].flatMap(
    (noun) => verbs.map((verb) => `${noun} ${verb}`),
  );

/** Bone and what holds it on a later film, and what went wrong. */
export const BONES: Said = {
  complication: {
    finding: {
      complication: [
        ...['post op complications', 'postoperative complications', 'surgical complications', 'postop complications'],
      ],
      'wound infection': [
        ...['infected wound', 'wound infected', 'infected incision', 'incision infected', 'wound got infected'],
        ...['wound has got infected', 'surgical site infection', 'ssi', 's s i', 'infected surgical wound'],
        ...['infected scar', 'infection of the wound', 'infection in the wound', 'infection at the incision'],
        ...['wound is infected'],
      ],
      'superficial infection': [
        ...['superficial wound infection', 'superficial ssi', 'superficial surgical site infection'],
      ],
      'deep infection': ['deep wound infection', 'deep seated infection', 'deep surgical site infection', 'deep ssi'],
      'loose screw': [
        ...each(['screw', 'screws'], 'loosened', 'loosening', 'working loose'),
        ...['loosened screw', 'screws loose', 'loose screws', 'loosening of the screw'],
      ],
      'prominent screw': [
        ...each(
          ['screw', 'screw head', 'screw tip'],
          ...['prominent', 'proud', 'sitting proud', 'sits proud', 'standing proud'],
        ),
        ...each(
          ['screw', 'screw head', 'screw tip'],
          ...['sticking out', 'poking out', 'sticks out', 'stands proud', 'protruding'],
        ),
        ...['proud screw', 'prominent screw head', 'proud screw head', 'prominent screw tip', 'protruding screw'],
        ...['prominent screws'],
      ],
      'broken hardware': [
        ...each(['hardware', 'metalwork', 'metal', 'implant'], 'broken', 'broke', 'snapped', 'fractured', 'cracked'),
        ...['broken metalwork', 'broken implant', 'broken metal', 'snapped hardware', 'snapped metalwork'],
        ...['fractured hardware', 'hardware breakage', 'metalwork breakage', 'implant breakage'],
        ...['fractured metalwork', 'metal breakage'],
      ],
      'broken pin': [
        ...each(WIRES.slice(0, 3), 'snapped', 'broken', 'broke', 'breakage', 'fractured', 'snapped off'),
        ...['snapped pin', 'snapped wire', 'broken wire', 'broken k wire', 'snapped k wire', 'fractured wire'],
      ],
      'broken screw': [
        ...each(['screw'], 'snapped', 'broken', 'broke', 'breakage', 'fractured', 'sheared'),
        ...['snapped screw', 'fractured screw', 'sheared screw', 'broken screws', 'screws broken'],
      ],
      'hardware failure': [
        ...['metalwork failure', 'implant failure', 'failure of hardware', 'failure of the hardware'],
        ...['failed hardware', 'hardware failed', 'hardware has failed', 'metalwork failed', 'metalwork has failed'],
        ...['failed metalwork', 'failure of the metalwork', 'failure of metalwork', 'failed implant'],
        ...['implant failed'],
      ],
      nonunion: [
        ...['failure to unite', 'failed to unite', 'ununited', 'pseudarthrosis', 'pseudoarthrosis'],
        ...['failure of union', 'nonunited', 'failed union', 'failed fusion'],
      ],
      'delayed union': [
        ...['slow to unite', 'slow union', 'union slow', 'slow uniting', 'slow bony union', 'uniting slowly'],
      ],
      malunion: [
        'mal union',

        ...['malunited', 'mal united', 'united in a bad position', 'united crooked'],
      ],
      'avascular necrosis': ['osteonecrosis', 'avascular necrosis of the head', 'osteo necrosis', 'avn of the head'],
      crps: [
        ...['c r p s', 'regional pain syndrome', 'complex regional pain', 'sudecks', 'sudeck', "sudeck's"],
        ...['algodystrophy', 'reflex sympathetic dystrophy', 'complex regional syndrome'],
        ...['chronic regional pain syndrome'],
      ],
      'nerve injury': [
        ...['injured nerve', 'damaged nerve', 'nerve damaged', 'nerve injured', 'damage to the nerve'],
        ...['injury to the nerve'],
      ],
      'painful scar': [
        ...['scar painful', 'scar hurts', 'scar sore', 'sore scar', 'pain over the scar', 'pain in the scar'],
        ...['scar is painful', 'pain from the scar', 'sore over the scar', 'hurts over the scar', 'scar aches'],
        ...['painful over the scar', 'scar is sore'],
      ],
      'tender scar': [
        ...['scar tender', 'scar tenderness', 'tender over the scar', 'tenderness over the scar'],
        ...['tender along the scar', 'tenderness along the scar', 'sensitive scar', 'scar sensitive'],
        ...['hypersensitive scar', 'scar hypersensitive', 'scar is tender', 'scar is sensitive'],
        ...['tenderness of the scar', 'touchy scar'],
      ],
      haematoma: [
        ...['wound haematoma', 'wound hematoma', 'haemotoma', 'collection of blood', 'blood collection', 'hematomas'],
      ],
    },
  },
  union: {
    finding: {
      united: [
        ...['bony union', 'bone union', 'osseous union', 'solid union', 'solid bony union', 'sound union'],
        ...['full union', 'complete union', 'bone united', 'bone has united', 'consolidation', 'bony consolidation'],
        ...['solidly united', 'fully united', 'soundly united', 'completely united', 'fully consolidated'],
        ...['consolidated', 'bones united', 'bone solid', 'bone knitted', 'bone has knitted', 'solid fusion'],
        ...['solidly fused', 'well united'],
      ],
      'united "osteotomy"': bones('united', 'solid', 'solidly united', 'fully united').filter((phrase) =>
        phrase.startsWith('osteotom'),
      ),
      'united "fusion"': bones('united', 'solid', 'solidly united', 'fully united').filter(
        (phrase) => !phrase.startsWith('osteotom'),
      ),
      bridging: [
        ...['bony bridging', 'bone bridging', 'bridging bone', 'bridging callus', 'callus bridging'],
        ...['bridging trabeculae', 'trabecular bridging', 'crossing trabeculae', 'trabeculae crossing'],
        ...['osseous bridging', 'bridging seen', 'bridging across', 'bridging trabeculation', 'trabeculation across'],
        ...['bone bridging across', 'bridging new bone'],
      ],
      'union healing': [
        ...['consolidating', 'uniting', 'bone healing', 'bony healing', 'bone knitting', 'knitting together'],
        ...['bone uniting'],
        ...bones('healing', 'healing well', 'uniting', 'consolidating', 'knitting', 'healing nicely'),
      ],
      'union healing "callus"': [
        ...['callus forming', 'callus formation', 'early callus', 'bony callus', 'good callus', 'some callus'],
      ],
    },
    value: {
      united: [
        ...['consolidated', 'solidly united', 'fully united', 'solid', 'well united', 'fused', 'solidly fused'],
        ...['has united'],
      ],
      healing: [
        ...['consolidating', 'uniting', 'healing well', 'healing nicely', 'knitting', 'coming along', 'progressing'],
      ],
      bridging: ['bridged', 'bony bridging', 'bridging bone', 'bridging across'],
      'weil osteotomy': ['while osteotomy', 'vile osteotomy', 'wile osteotomy'],
      'pip fusion': ['pip arthrodesis', 'toe fusion', 'pip joint fusion', 'p i p fusion'],
    },
  },
  'implant-film': {
    finding: {
      hardware: [
        ...['metalwork', 'metal work', 'metalware', 'metal ware', 'hard ware', 'implanted hardware', 'metal'],
        ...['fixation'],
      ],
      screw: ['twist off screw', 'snap off screw', 'metatarsal screw', 'weil screw', 'osteotomy screw'],
      screws: ['twist off screws', 'snap off screws', 'metatarsal screws'],
    },
    value: {
      unremarkable: [
        ...['intact', 'looks intact', 'good', 'looks good', 'looks fine', 'looks ok', 'satisfactory'],
        ...['looks satisfactory', 'all intact', 'all fine', 'happy', 'looks happy', 'all good'],
      ],
      'in place': [
        ...['well placed', 'well positioned', 'well sited', 'well seated', 'in good position', 'good position'],
        ...['in position', 'in a good position', 'in situ', 'seated', 'nicely placed', 'in satisfactory position'],
        ...['satisfactory position'],
      ],
      loose: ['loosened', 'loosening', 'has loosened', 'working loose', 'looks loose'],
      broken: ['snapped', 'fractured', 'sheared', 'has snapped', 'has broken', 'broke', 'looks broken'],
      prominent: [
        ...['sitting proud', 'sits proud', 'standing proud', 'stands proud', 'sticking out', 'sticks out'],
        ...['protruding', 'protrudes', 'pokes out', 'poking out', 'a touch proud', 'slightly proud', 'a bit proud'],
        ...['looks proud'],
      ],
      'moved back': ['backing out', 'has backed out', 'backs out', 'backed off', 'has moved back', 'backing off'],
    },
  },
};
