import { COMPLETE_MARK, type Phrase, remark } from './phrase.ts';
import { NOT_THEN, NTH, NTHS, rays, TOE } from './rays-said.ts';

const whole = (text: string): string => `${COMPLETE_MARK}${text.replaceAll(' ', '\u200b')}`;
const COUNT: Readonly<Record<string, string>> = { a: '1', an: '1', one: '1', two: '2', three: '3', both: '2' };
const STEP =
  '(?:flexor to extensor transfer|flexor transfer|tendon transfer|pip (?:joint )?fusion|extensor lengthening|flexor tenotomy|(?:plantar )?plate repair|weil(?: osteotomy)?|condylectomy|collateral release|pip arthroplasty)';
const BEFORE_NEXT =
  '(?= \\d+(?:\\.\\d)? mm| day case| in (?:january|february|march|april|may|june|july|august|september|october|november|december|spring|summer|autumn|winter)| next (?:week|month)| tomorrow| ,| ;|$|\\n| \\|| and| with| plus| shorten| via| through| using)';
const FIXED = '(?:(?:held|fixed|secured|stabilised|transfixed) )?(?:with|using|by) (?:an? )?';

/** The last of these that was named is what is sutured. */
const suturesPlate = ({ input = '', index = 0 }: RegExpMatchArray): boolean =>
  /^plate/.test(
    [
      ...input
        .slice(0, index)
        .matchAll(/(?<![^ ])(?:plate|tendon|extensor|flexor|transfer|collateral\w*|capsule|skin|wound|limbs)(?![^ ])/g),
    ].at(-1)?.[0] ?? '',
  );
/** The only web that the note names. */
const onlyWeb = ({ input = '' }: RegExpMatchArray): string | undefined => {
  const [web, more] = new Set(input.match(/(?<![^ ])web [1-4](?![^ ])/g) ?? []);
  return more === undefined ? web : undefined;
};
/** Is it the note of an operation, by what it names? */
const inTheatre = ({ input = '' }: RegExpMatchArray): boolean =>
  /(?<![^ ])(?:approach|incision|tourniquet|divided|released|dissected|closed|operation|procedure|specimen|stump|screws?|sutured|fixed)(?![^ ])/.test(
    input,
  );

/** Steps of an operation, clipped. */
export const STEPS: readonly Phrase[] = [
  ['girdlestone(?: taylor)? (?:transfer|procedure)', 'flexor to extensor transfer'],
  // A ray after its step is a ray.
  [`(${STEP}) (${NTHS})${TOE}${BEFORE_NEXT}`, (m) => `${m[1]} ${rays(m[2] ?? '')}`],
  [
    `weil(?: osteotomy)? (${NTH})${TOE}(?: ,)? (?:shortened|shortening)(?: it)?(?: by)? (\\d+(?:\\.\\d)?) mm`,
    (m) => `| ${rays(m[1] ?? '')} weil osteotomy ${m[2]} mm shortening |`,
  ],
  [
    `weil(?:s| osteotomy| osteotomies)? (${NTH}) and (${NTH})${TOE}(?: ,)? (?:shortened|shortening)(?: by)? (\\d+(?:\\.\\d)?)(?: mm)? and (\\d+(?:\\.\\d)?)(?: mm)?(?! (?:no|sorry|or|wait|degrees))`,
    (m) =>
      `| ${rays(m[1] ?? '')} weil osteotomy ${m[3]} mm shortening | ${rays(m[2] ?? '')} weil osteotomy ${m[4]} mm shortening |`,
  ],
  [
    `(?:fixed |held )?(?:with )?(?<!\\d )(a|one|two|1|2) (?:snap off |headless |cannulated )*screws? (?:in )?each`,
    (m) => `| screw x${COUNT[m[1] ?? ''] ?? m[1]} ${remark('each')} |`,
  ],
  [
    `(?:(?:fixed|held|secured) with (?:an? )?((?:dorsal |medial |locking |low profile )*plate) and (an?|one|two|1|2) (?:lag |crossed |cannulated )*screws?)${NOT_THEN}`,
    (m) => `| screw x${COUNT[m[2] ?? ''] ?? m[2]} ${remark(`${m[1]} and screw`)} |`,
  ],
  // The plate.
  [
    '(torn|detached|avulsed) (?:off|from) (?:the |its )?(?:base of (?:the )?(?:proximal )?phalanx|phalanx|(?:distal |phalangeal )?insertion|bone|phalangeal base)',
    '$1 at the insertion',
  ],
  [
    '(?<=plate (?:was |is |had |has )?(?:an? )?(?:transverse |complete |partial |full )?(?:torn|tear|detached|avulsed)[^;|]*?)(?:, )?(lateral|medial|central) (2 thirds|1 third|third|half)',
    (m) => `${m[1]} ${remark(m[2] ?? '')}`,
  ],
  [
    `plate (?:of (?:the )?)?(${NTH}) (?:inspected|looked at|explored|probed)?(?: ,)?(?: and)? ?intact${NOT_THEN}`,
    (m) => `| ${rays(m[1] ?? '')} plate intact |`,
  ],
  [
    `(?<=(${NTH}) plate intact \\| ?(?:, )?)(?:no repair|not repaired|repair not needed)`,
    (m) => `| no plate repair ${m[1]} |`,
  ],
  [
    '(?:then )?(?:sutured|repaired|reattached|tied down|tied|advanced)(?: down)? (?:through|via|with|to) (?:2 |two |a pair of |a couple of )?(?:drill holes|bone tunnels)(?: in (?:the )?(?:base of (?:the )?)?(?:proximal )?(?:phalanx|base))?',
    (m) => (suturesPlate(m) ? '| plate repair | drill holes |' : undefined),
  ],
  [
    '(?:then )?(?:sutured|repaired|reattached|fixed|advanced)(?: down)? to (?:the )?(?:base of (?:the )?)?(?:proximal )?phalanx (?:with|using) (?:an? |one |two |2 )?(?:suture )?anchors?',
    (m) => (suturesPlate(m) ? '| plate repair | anchor |' : undefined),
  ],
  ['(?:with|using|via|by) (?:an? |one |two |2 )?suture anchors?', '| suture anchor |'],
  ['(?:fixed|held|secured) with (?:an? )?(?:twist off|snap off|headless|cannulated) screw', '| screw |'],
  [
    `(lateral|medial) collateral(?: ligament)? (?:was )?(repaired|reefed|imbricated|released)${NOT_THEN}`,
    (m) => `| collateral ${m[2] === 'released' ? 'release' : 'repair'} ${remark(m[1] ?? '')} |`,
  ],
  // Tendons and capsule.
  [
    `extensors?(?: digitorum)?( longus)?(?: tendons?)?(?: (${NTHS})${TOE})?(?: was| were)?( z)? lengthened(?: with (?:an? )?z)?${NOT_THEN}`,
    (m) => {
      const how = [m[1], m[3]].flatMap((each) => each?.trim() ?? []).join(', ');
      return `| ${m[2] ? `${rays(m[2])} ` : ''}extensor lengthening ${how === '' ? '' : remark(how)} |`;
    },
  ],
  [
    `(?:(?:(${NTH})(?: toe)? )?(?:dorsal (?:mtp )?(?:joint )?capsule|mtp capsule|dorsal capsule(?: of the mtp)?) (?:was )?(?:released|divided|opened up)|(?:(${NTH})(?: toe| mtp)? )?capsule released dorsally)${NOT_THEN}`,
    (m) => `| ${m[1] || m[2] ? `${rays(m[1] ?? m[2] ?? '')} ` : ''}joint release ${remark('dorsal capsule')} |`,
  ],
  [
    `(${NTH})(?: toe)? (percutaneous|open) (flexor tenotomy|fdl tenotomy)${NOT_THEN}`,
    (m) => `| ${rays(m[1] ?? '')} ${m[3]} ${remark(m[2] ?? '')} |`,
  ],
  [
    `(percutaneous|open) (flexor tenotomy|fdl tenotomy)(?: of(?: the)?)? (${NTH})${NOT_THEN}`,
    (m) => `| ${rays(m[3] ?? '')} ${m[2]} ${remark(m[1] ?? '')} |`,
  ],
  // How the toe is held. What is fused with something is a step, and no sign.
  [
    `(?:(${NTH}) )?pip (?:joint )?(?:of (?:the )?(${NTH})(?: toe)? )?(?:was )?fused (?=(?:with|using|over|on) (?:an? )?(?:\\d|k-wire|pin|implant|wire|screw))`,
    (m) => `${m[1] || m[2] ? `${rays(m[1] ?? m[2] ?? '')} ` : ''}pip fusion `,
  ],
  [`${FIXED}(\\d\\.\\d)(?: mm)? k-wires?`, (m) => `| pin ${remark(`${m[1]} mm`)} |`],
  [
    '(?<=pip (?:joint )?fusion(?: [1-5](?:st|nd|rd|th))? )with (?:an? )?((?:intramedullary )?implant)',
    (m) => remark(`with ${m[1]}`),
  ],
  [
    'drawer (?:at the end|at the close|on completion|after repair) (?:was |is )?(stable|negative|firm|0|zero)',
    (m) => `| drawer 0 ${remark(m[0].replace('drawer ', ''))} |`,
  ],
  [
    'dressings? (?:holds?|holding) (?:both|it|the toes?|them|toes?) in (?:slight )?(?:plantarflexion|plantar flexion|neutral|flexion)',
    (m) => `| dressing ${remark(m[0].replace(/^dressings? /, ''))} |`,
  ],
  [
    '(?<=toes? pink )(?:after|on|at|following) (?:the )?(?:tourniquet )?release(?: of (?:the )?tourniquet)?',
    (m) => `${remark(m[0])} |`,
  ],
  ['tourniquet (?:down|off|released)(?: at| after)? (\\d+ minutes)', '| tourniquet $1 |'],
  [`([2-5]) (?:o|oh|0|zero) (?=nylon|silk|polypropylene|absorbable)`, '$1-0 '],
  [
    `(?:skin )?closed (?:with )?([2-5]-0 )?(nylon|silk|polypropylene|absorbable|staples|clips)(?: (?:to|for) (?:the )?skin)?`,
    (m) => `| closure ${m[1] ?? ''}${m[2]}${/skin/.test(m[0]) ? ' to skin' : ''} |`,
  ],
  [
    `(?<!to |the )skin (?:with )?([2-5]-0 )?(nylon|silk|polypropylene|staples|clips)`,
    (m) => `| closure ${m[1] ?? ''}${m[2]} to skin |`,
  ],
  [`([2-5]-0 )?(nylon|silk|staples) to (?:the )?skin`, (m) => `| closure ${m[1] ?? ''}${m[2]} to skin |`],
  // The great toe.
  [
    '(?:first|1st) (?:mtp |mtp joint )(?:joint )?(?:fusion|arthrodesis)(?= (?:,|;|via|through|medial|dorsal|with|cup|fixed)|$)',
    (m) => (inTheatre(m) ? '| hallux fusion |' : undefined),
  ],
  [
    `(${NTH}) mtp stable(?: ,)? no (weil|plate repair) (needed|required|done|necessary)`,
    (m) => `| ${rays(m[1] ?? '')} mtp stable | operation no ${m[2]} ${rays(m[1] ?? '')} ${remark(m[3] ?? '')} |`,
  ],
  // The nerve.
  [
    `(?:revision(?: of)?(?: the)? (web [1-4]) (dorsal|plantar) approach(?: (longitudinal|transverse))?)${NOT_THEN}`,
    (m) => `| ${m[1]} ${m[2]} approach ${remark(`revision${m[3] ? `, ${m[3]}` : ''}`)} |`,
  ],
  [
    `(?:(?:the )?(?:nerve|neuroma) (?:was )?(?:cut|divided|transected|resected|excised|removed|dissected out and excised)(?: (?:proximal to|well proximal to|proximally|behind) ?(?:the )?(?:met(?:atarsal)? heads|heads|bifurcation|intermetatarsal ligament)?)?)${NOT_THEN}`,
    (m) => {
      const web = onlyWeb(m);
      return web && inTheatre(m) ? `| ${web} neuroma excision ${remark(m[0].trim())} |` : undefined;
    },
  ],
  [
    'stump neuroma (\\d+ (?:mm|millimetres))(?: in scar)?(?: ,)?(?: freed)?(?: ,)?(?: and)? (?:cut|trimmed|resected) back (\\d+ (?:cm|centimet(?:re|er)s|mm))',
    (m) => {
      const web = /web [1-4]/.exec((m.input ?? '').slice(0, m.index))?.[0];
      return web ? `| ${web} neuroma excision ${remark(m[0])} |` : undefined;
    },
  ],
  // Steps and views that the language has no place for: each is told to its end, and turns nothing.
  ...[
    '(?:the )?(?:deep )?(?:transverse|intermetatarsal|deep transverse metatarsal) ligament (?:was )?(?:divided|released|cut|incised)',
    '(?:the )?(?:stump|nerve end|nerve) (?:was )?(?:buried|implanted|tucked)(?: (?:in|into)(?: the)? (?:interossei|interosseous|muscle|intrinsics))?',
    'buried in (?:muscle|the interossei|the intrinsics)',
    '(?:specimen|nerve|tissue)(?: was)?(?: sent)? (?:to|for) (?:histology|pathology)|sent (?:to|for) (?:histology|pathology)',
    `(?:${NTH}|other)(?: toe)? (?:was )?left alone|left alone`,
    'no drain',
    '(?:extensor digitorum )?brevis (?:was )?(?:cut|divided|released|tenotomised|tenotomized)|extensor tenotomy',
    'cup and cone(?: reamed| reaming| reamers)?',
    '(?:long flexor|flexor(?: tendon)?) split(?: ,)?(?: both)?(?: limbs(?: (?:over|round|around) (?:the )?(?:dorsum|sides)(?: of (?:the )?proximal phalanx)?)?)?',
    'both limbs over (?:the )?dorsum(?: of (?:the )?(?:proximal )?phalanx)?(?: ,)?(?: sutured (?:in|at) (?:neutral|tension|\\d+° of plantarflexion))?',
    'toe held (?:down )?in (?:\\d+° ?(?:of )?)?(?:plantarflexion|plantar flexion|neutral|slight plantarflexion)',
    'position \\d+°? (?:up from|to|off) the floor(?: (?:and )?\\d+°?(?: of)? valgus)?',
    'web [1-4] (?:was )?(?:looked at|explored|inspected)(?: ,)? nerve (?:looks? )?(?:normal|healthy)(?: ,)?(?: left alone)?',
  ].map(
    (find): Phrase => [
      find,
      (m) => (inTheatre(m) || /pip fusion|plate|transfer|histology/.test(m.input ?? '') ? whole('step') : undefined),
    ],
  ),
];
