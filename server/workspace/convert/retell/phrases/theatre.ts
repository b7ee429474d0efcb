import { NUM, type Phrase, RAY, RAYS, remark, THE, TIME } from './phrase.ts';

const COUNT: Readonly<Record<string, string>> = {
  single: '1',
  'a single': '1',
  a: '1',
  an: '1',
  one: '1',
  two: '2',
  both: '2',
};
const MM = '(?:mm|millimet(?:re|er)s?)';
const SCREW = '(?:snap off |twist off |headless |cannulated |compression )*screws?';

/** What was done in theatre. */
export const THEATRE: readonly Phrase[] = [
  [
    `(?:operation|operative|operating|op|procedure|theatre|surgery) note(?: for| on| of)?(?: (?:the )?(right|left)(?: foot)?)?(?: (${RAYS})(?: toes?| mtps?)?)?`,
    (m) => `${m[1] || m[2] ? `| ${m[1] ?? ''} ${m[2] ?? ''} ` : ''}| operation`.replace(/ +/g, ' '),
  ],
  [
    `weil(?: osteotomy)?(?: was)? cut (parallel to the sole|at the neck|obliquely)(?: \\d+ ${MM} pull back)?`,
    (m) => `weil osteotomy ${remark(m[1] ?? '')} |`,
  ],
  ['(?:then )?(?:the )?plate (?:was |is )?(?:visualised|visualized|inspected|exposed|identified|examined)', '| plate'],
  ['(?:under )?(?:a )?general anaesthe(?:tic|sia)', 'general anaesthetic'],
  [
    `(?:the )?(?:tourniquet|cuff)(?: on| at| to| around)?(?: the)? (thigh|calf|ankle)(?: at| to)? (\\d{3})(?: mmhg| millimetres of mercury)?(?: for)?( \\d+ minutes)?`,
    '$1 tourniquet $2$3',
  ],
  [
    `(thigh|calf|ankle) (?:tourniquet|cuff)(?: time)?(?: at| to| inflated to)? (\\d{3})(?: mmhg)?(?: ,)?(?: for)? (\\d+ minutes)`,
    '$1 tourniquet $2 $3',
  ],
  [
    `weil osteotomies (?:of|on|to) ${THE}(${RAY}) and ${THE}(${RAY})(?: metatarsals?)? ,? ?(?:with )?(${NUM})(?: ${MM})? and (${NUM}) ${MM}(?: (?:of )?shortening)?`,
    '| $1 weil osteotomy $3 mm shortening | $2 weil osteotomy $4 mm shortening',
  ],
  [
    `(?:the )?(?:(${RAY}) )?(?:plantar )?plate (?:had|showed|has) (?:an? )?(complete|full|partial)?(?:[- ]thickness)? ?(transverse|longitudinal)? ?tear(?: off the phalanx)?`,
    '| $1 plate torn $2 $3',
  ],
  ['(?<=plate attenuated )(?:, )?(?:but |and )?not repaired', () => ` ${remark('not repaired')}`],
  ['each (?:held|fixed|secured) (?=with)', ''],
  ['surgeon(?: was| is)? (?:myself|me|self)', '§surgeon'],
  [
    '(?:mtp )?joint (?:was )?(?:opened|exposed|entered)|closed in layers|wounds? closed(?: in layers)?|haemostasis(?: secured)?',
    '§closed',
  ],
  ['(spinal|general|local) anaesthe(?:tic|sia)', '| $1 anaesthetic |'],
  ['(spinal) anaesthetic', '$1'],
  ['under (?:a )?(spinal|general|local)(?: anaesthetic| anaesthesia)?', '| $1 |'],
  ['(?:with |and )?(?:an? )?(thigh|calf|ankle) tourniquet(?= |$)', '| $1 tourniquet'],
  ['dorsal (?:approach|incision)(?= (?:extensor|joint|weil|the|plate))', '| dorsal approach |'],
  [
    'plate (?:was |is )?(degenerate|frayed|worn|poor quality)(?: and| with)?(?: an?)?',
    (m) => `plate ${remark(m[1] ?? '')}`,
  ],
  ['(?<=plate (?:"[^"]*" )?)(full|partial|complete)[- ]thickness tear', 'torn $1'],
  [
    '(?<=(?:torn|plate) [^;]*)(?:and )?(?:was |it was )?(?:repaired|reattached|sutured) (?=with|through|using|to)',
    '| plate repair ',
  ],
  [
    'collaterals?(?: ligaments?)?(?: was| were)? (?:repaired|reefed|imbricated)(?: (laterally|medially))?',
    (m) => `| collateral repair${m[1] ? ` ${remark(m[1])}` : ''} |`,
  ],
  ['collaterals?(?: ligaments?)?(?: was| were)? released', '| collateral release |'],
  [
    'drawer (?:was |is )?(?:negative|stable|0) (?:at|by) (?:the )?(?:end|completion|close)(?: of (?:the )?(?:procedure|operation|case))?',
    () => `| drawer 0 ${remark('at the end')} |`,
  ],
  ['(?:with|using) (?:two|2|3|4) sutures', '| suture |'],
  ['osteotomy (?=(?:was )?(?:fixed|held|secured))', '| '],
  [
    '(?:antibiotics?|prophylaxis|cefazolin|cefuroxime|teicoplanin)(?: were| was)? given(?: at induction)?',
    '§antibiotics',
  ],
  ['(?:supine|prone)(?: position)?(?= ,| ;|$| general| ankle| thigh| calf| under)', '§position'],
  [
    `(?:a )?dorsal (?:longitudinal )?(?:incision|approach)(?: was made)? (?:between|over|to|centred over|through) (?:the )?`,
    'dorsal incision ',
  ],
  // The plate.
  ['(?<=plate )(?:was |is )?(?:found|seen|noted) to be', ''],
  ['(?:was |is )?(?:torn|detached|avulsed|ripped) off(?= |$)', 'torn'],
  ['(?:completely|fully) (torn|detached|avulsed|ruptured)', '$1 full'],
  ['(?:partially|partly) (torn|detached|avulsed)', '$1 partial'],
  ['torn (?:transversely|across)', 'torn transverse'],
  ['(?:an? )?transverse tear', 'torn transverse'],
  ['(?:and |with )?(?:an? )?longitudinal (?:split|tear|component)', 'longitudinal'],
  ['(?<=plate [^;]*)(complete|full|partial) tear', 'torn $1'],
  [
    '(?<=torn (?:transverse |longitudinal |full |partial )*)(?:with )?(?:more than|over|>) ?(?:half|50%)(?: (?:of )?(?:its|the|of the))?(?: width)?',
    '>50%',
  ],
  [
    '(?<=torn (?:transverse |longitudinal |lateral |medial |laterally |medially |full |partial )*)(?:with )?(?:less than|under|<) ?(?:half|50%)(?: (?:of )?(?:its|the))?(?: width)?',
    '<50%',
  ],
  [
    '(?<=torn (?:transverse |longitudinal |lateral |medial |laterally |medially |full |partial |, )*)(?:about |through |over |for )*half (?:of )?(?:its|the) width',
    '~50%',
  ],
  ['(?<=torn [^;|]*?)(\\d+%|~\\d+%|[<>]\\d+%) (?:of )?(?:its|the) width', '$1'],
  ['(?<=torn [^;|]*?)(lateral|medial)ly', '$1'],
  [
    '(?<=torn [^;|]*?)(?:from|off|at) (?:the |its )?(?:phalangeal )?(?:insertion|attachment|base of the phalanx|proximal phalanx)',
    'at the insertion',
  ],
  ['no buttonhole', '§buttonhole'],
  ['collaterals? (?:ligaments? )?(?:is |are |were )?intact', '§collaterals'],
  // What was done.
  [
    '(?:(?:we|i) )?(?:did|performed|carried out|made|cut|fashioned|proceeded (?:to|with))(?: an?| the)? (?=(?:weil|osteotomy|plate|plantar plate|pip fusion|extensor|capsul|flexor|release|tendon|arthrodesis))',
    '| operation ',
  ],
  [
    `(?:(?:we|i) )?(?:repaired|reattached|sutured|reinserted)(?: the)? (?:(${RAY}) )?(?:plantar )?plate`,
    '| operation $1 plate repair',
  ],
  [
    `(?:the )?(?:(${RAY}) )?(?:plantar )?plate(?: was| is)? (?:then )?(?:repaired|reattached|reinserted|sutured|advanced)(?: down| back)?(?: to the (?:base of the )?(?:proximal )?phalanx)?`,
    '| operation $1 plate repair |',
  ],
  [
    '(?<=torn [^;]*)repaired (side to side)?(?: and then)?(?: back to the phalanx)?',
    (m) => `| plate repair${m[1] ? ` ${remark('side to side')}` : ''} |`,
  ],
  [
    `(?:the )?(?:(${RAYS}) )?weil(?: osteotom(?:y|ies))?(?: was| were)?(?: cut| done| performed| made| carried out)?(?: with an? (?:oscillating )?saw)?(?: (?:on|of|at|to) (?:the |both )?(${RAYS}))?(?: metatarsals?| mets?| heads?| toes?| rays?)?(?: cut)?(?: ,)? (?:with |and )?(?:it (?:was )?)?(?:(?:shortened|shortening)(?: it)?(?: by| of)? (${NUM}) ${MM}|(${NUM}) ${MM}(?: of)? shortening)`,
    (m) => `${m[1] ?? m[2] ?? ''} weil osteotomy ${m[3] ?? m[4]} mm shortening`,
  ],
  ['weil (?:cut|done|performed)', 'weil osteotomy'],
  [
    `(?:and )?(?:it was |then )?(?:shortened|shortening)(?: it)?(?: by| of)? (${NUM}) ${MM}(?= ,| ;|$| \\d| fixed| with| and| two)`,
    (m) => `${remark(`shortened ${m[1]} mm`)}`,
  ],
  [
    `(?:and )?(?:it was |was |were )?(?:held|fixed|secured|fixated|stabilised)? ?(?:with |by )?(a single|a|an|one|two|single|1|2|3|4) (?:(\\d(?:\\.\\d)?|\\d point (?:oh|o|zero)) ?(?:${MM} )?)?${SCREW}(?: each)?`,
    (m) => {
      const size = (m[2] ?? '').replace(/ point (?:oh|o|zero)/, '.0');
      return `| screw${size ? ` ${size} mm` : ''} x${COUNT[m[1] ?? ''] ?? m[1]} |`;
    },
  ],
  [`(?:and )?(?:fixed|held|secured) with (?:an? )?(${NUM}) ${MM} ${SCREW}`, '| screw $1 mm |'],
  [
    '(?:with |through |via )?(?:two|2|a pair of|3|4)? ?(?:drill holes|bone tunnels)(?: in the (?:base of the )?(?:proximal )?phalanx)?',
    '| drill holes |',
  ],
  [
    `(?<!(?:skin|subcut\\w*|wounds?|closed|closure|layers?|deep|fat) )(?:with |using )(?:(non absorbable|absorbable|\\d (?:o|0|oh)|braided|strong|\\d (?:o|0|oh) (?:braided|non absorbable)) )?(?:braided )?sutures?(?! anchors?)`,
    (m) => `| suture${m[1] ? ` ${remark(m[1])}` : ''} |`,
  ],
  [
    '(?<=operation[^;]*)(?:an? )?(?:k-wire|pin)(?: was)?(?: placed| passed| put)? (?:across|through) (?:the )?(?:mtp |mtp joint|joint)(?: joint)?',
    '| pin |',
  ],
  [
    'extensor(?: tendons?)? (?:was |were )?(?:lengthened|z lengthened)(?: (?:with |by )?(?:an? )?z (?:plasty|lengthening))?',
    '| extensor lengthening |',
  ],
  [
    '(?:capillary[- ]refill|cap refill|capillary refill) (?:was |is )?(?:good|brisk|normal)?(?: (?:at|after|on) (?:tourniquet )?release)',
    '| capillary-refill normal |',
  ],
  [
    'toe (?:was |is )?(?:pink|well perfused|pink and warm)(?: (?:at the end|on release|at release|after release))?',
    '| toe pink |',
  ],
  ['(?:there were )?no (?:intra ?operative |immediate )?complications', '| no complications |'],
  [`(?<=operation [^\\n]*)sutures out(?: at| in| after)? (${NUM} ${TIME})`, '| plan sutures out at $1 |'],
];
