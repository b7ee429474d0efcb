import { OF, type Phrase, RAYS, THE } from './phrase.ts';

const DX =
  "(?:(?:plantar )?plate (?:tear|rupture|injury|problem|sprain)|torn (?:plantar )?plate|(?:interdigital |mortons? |morton's )?neuroma|stress (?:fracture|injury)|freiberg(?: disease)?|crossover toe|mtp instability|metatarsalgia|transfer metatarsalgia|inflammatory arthritis|bursitis|gout|synovitis|capsulitis|sesamoiditis|hallux rigidus|hammer toe)";
const named = (found: string): string =>
  /plate/.test(found) ? 'plantar plate tear' : found.replace(/^mortons? |^morton's /, '');
const PLACE = `(?:(?: ${OF})? ${THE}((?:(?:right|left) )?(?:${RAYS}|web [1-4])))?(?: (?:metatarsal|mtp|toe|joint|web|shaft))*`;
const SURE =
  "(?:(?:so |and )?(?:i think|i reckon|i'd say|i would say|my impression is|impression is|my diagnosis is|diagnosis is|the diagnosis is|working diagnosis(?: is)?|in keeping with|this is in keeping with|consistent with|this (?:all )?(?:fits|looks like)|it (?:all )?(?:fits|looks like)|looks like|all points to|treat(?:ing)? (?:this |it )?as|treated as|this is|so it's|so this is|this will be)(?: with)?(?: that)?(?: this is| it's| it is| she has| he has| we have| we're dealing with)?)";

/** What the speaker takes it for; what is only possible stays as it was said. */
export const OPINIONS: readonly Phrase[] = [
  [
    `(?:impression|diagnosis)(?: is)?(?: of)? instability of ${THE}(${RAYS})(?: mtp)?(?: joint)?`,
    '| impression $1 mtp instability |',
  ],
  ['consistent with (?:an? )?healing stress fracture', '| impression stress fracture |'],
  [
    "(?:and |so )?(?:she|he)(?: would|'d)? (?:like|likes|wants|is keen)(?: to (?:go ahead|proceed|press on))?(?: with| for| on)? (?:surgery|an operation|the operation|an op)(?= ,| ;|$| and| list| so)",
    '| wants surgery |',
  ],
  [
    "(?:she|he)(?:'s| is)? (?:not keen on|doesn't want|does not want|would rather avoid|would prefer to avoid|wants to avoid) (?:surgery|an operation|any surgery)(?= ,| ;|$| and| so)",
    '| declines surgery |',
  ],
  [
    `${SURE} (?:an? |the |acute |early |classic |typical |mechanical |simple |straightforward )*(?:(right|left) )?(?:(${RAYS}|web [1-4]) )?(?:metatarsal |mtp |toe |web )?(${DX})${PLACE}(?: ,? ?(?:and |but )?(?:not|rather than) (?:an? |the )?(plate|joint|neuroma|${DX})(?: (?:tear|problem|lesion))?)?`,
    (m) => {
      const [, side = '', ray = '', found = '', place = '', other] = m;
      const where = [side, ray || place].filter((each) => each !== '').join(' ');
      const not =
        other === undefined || other === 'joint'
          ? ''
          : ` | impression no ${other === 'plate' ? 'plantar plate tear' : named(other)}`;
      return `| impression ${where} ${named(found)}${not} |`.replace(/ +/g, ' ');
    },
  ],
  [
    `(?:impression|imp) (?:is |of )?(?:an? )?(?=(?:right |left )?(?:${RAYS} )?(?:plantar )?plate|(?:right |left )?(?:web [1-4] )?neuroma|stress)`,
    'impression ',
  ],
];
