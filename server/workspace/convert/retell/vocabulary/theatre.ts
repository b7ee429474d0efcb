import { EXTENT_OF_TEAR, PLACES_OF_PLATE } from './images.ts';
import type { Said } from './index.ts';
import { listed } from './listed.ts';
import { STEPS_SAID } from './steps-said.ts';

const SITES = ['thigh', 'calf', 'ankle'] as const;
const cuffs = Object.fromEntries(
  SITES.map((site): [string, readonly string[]] => [
    `${site} tourniquet`,
    listed(
      `${site} cuff, ${site} torniquet, ${site} turniquet, cuff on the ${site}, cuff to the ${site}, cuff around the ${site},
      ${site} tourniquet inflated to, ${site} cuff inflated to, ${site} tourniquet inflated, ${site} cuff inflated, ${site} tourniquet at,
      ${site} tourniquet pressure, ${site} tourniquet time, ${site} tourniquet used, ${site} tourniquet applied, ${site} cuff applied,
      ${site} cuff used, tourniquet ${site}, cuff ${site}, cuff at the ${site}, pneumatic ${site} tourniquet,
      ${site} level tourniquet, ${site} tourniquet set to, ${site} tourniquet set at, ${site} tourniquet up to`,
    ),
  ]),
);
/** The diameter of a wire is a remark of it. */
const WIRES = ['1.1', '1.2', '1.25', '1.4', '1.5', '1.6', '1.8', '2.0'] as const;
const wires = Object.fromEntries(
  WIRES.map((size): [string, readonly string[]] => [
    `k-wire "${size} mm"`,
    listed(
      `${size} mm k wire, ${size} k wire, k wire ${size} mm, ${size} mm wire, ${size} wire, ${size} mm kirschner wire, ${size} mm k wires`,
    ),
  ]),
);
/** How a wire runs is a remark of it too. */
const WAYS = [
  'retrograde',
  'antegrade',
  'intramedullary',
  'axial',
  'longitudinal',
  'transarticular',
  'crossed',
] as const;
const ways = Object.fromEntries(
  WAYS.map((way): [string, readonly string[]] => [
    `k-wire "${way}"`,
    listed(`${way} k wire, ${way} k wires, ${way} kirschner wire`),
  ]),
);
const SCREWS = [
  'headless',
  'cannulated',
  'compression',
  'lag',
  'cortical',
  'locking',
  'mini fragment',
  'buried',
  'titanium',
] as const;
const screws = Object.fromEntries(
  SCREWS.map((kind): [string, readonly string[]] => [`screw "${kind}"`, listed(`${kind} screw, ${kind} screws`)]),
);
const SUTURES = [
  'braided',
  'non absorbable',
  'nonabsorbable',
  'absorbable',
  'strong',
  'heavy',
  'permanent',
  'high strength',
] as const;
const sutures = Object.fromEntries(
  SUTURES.map((kind): [string, readonly string[]] => [`suture "${kind}"`, listed(`${kind} suture, ${kind} sutures`)]),
);

/** `joint release` after a joint would be read as of that joint. */
const steps = Object.fromEntries(
  Object.entries(STEPS_SAID).map(([step, said]) => [step.startsWith('joint') ? `procedure ${step}` : step, said]),
);

/** During an operation. */
export const THEATRE: Said = {
  anaesthesia: {
    finding: {
      general: listed(
        'general anaesthesia, general anesthesia, general anesthetic, g a, full general anaesthetic, full general',
      ),
      spinal:
        listed(`spinal anaesthesia, spinal anaesthetic, spinal anesthesia, spinal anesthetic, spinal block, subarachnoid block, sub arachnoid block, spinal
    anaesthetic given`),
      sedation: listed('sedated, iv sedation, intravenous sedation'),
      'ankle block':
        listed(`ankle blocks, regional ankle block, block at the ankle, ankle nerve block, ankle regional block, ankle block anaesthesia, nerve block at the
    ankle`),
      'popliteal block':
        listed(`popliteal nerve block, pop block, pop fossa block, popliteal fossa block, popliteal sciatic block, sciatic popliteal block, pop liteal
    block, block at the popliteal fossa, popliteal sciatic nerve block, poplitial block, popliteal blocks`),
      'saphenous block': listed(
        'saphenous nerve block, saph block, saphenous nerve blocked, saphenous infiltration, safenous block, sapheno block',
      ),
      local:
        listed(`local anesthetic, local anaesthesia, local anesthesia, local infiltration, local infiltrated, infiltrated with local, local anaesthetic
    infiltration, infiltration of local, local anaesthetic infiltrated, local anesthetic infiltration`),
    },
    value: {
      general: listed('g a, general anaesthesia, general anesthesia, general anesthetic'),
      spinal: listed('spinal anaesthetic, spinal anaesthesia, spinal block, spinal anesthesia'),
      local: listed('local infiltration, local anaesthesia, local anesthesia, local anesthetic'),
      'popliteal block': listed('popliteal nerve block, pop block, popliteal sciatic block'),
      'saphenous block': listed('saphenous nerve block'),
      'ankle block': listed('ankle blocks, regional ankle block'),
      sedation: listed('sedated, iv sedation'),
    },
  },
  tourniquet: {
    finding: {
      tourniquet:
        listed(`torniquet, turniquet, tourniquette, tourniquet used, tourniquet applied, tourniquet inflated, tourniquet inflated to, tourniquet time,
    tourniquet pressure, pneumatic tourniquet, tourniquet set to, tourniquet set at, tourniquet up to, pneumatic cuff, tourniquet cuff,
    tourniquet up at, tourniquet at, cuff inflated to, cuff pressure, tourniquet on, cuff time, turnicate, tourniquet up`),
      ...cuffs,
    },
    value: Object.fromEntries(
      SITES.map((site): [string, readonly string[]] => [
        `at ${site}`,
        listed(
          `${site} level, on the ${site}, at the ${site}, around the ${site}, round the ${site}, to the ${site}, at ${site} level`,
        ),
      ]),
    ),
  },
  'blood-loss': {
    finding: {
      'blood loss': listed(
        `estimated blood loss, e b l, blood loss estimated, intraoperative blood loss, operative blood loss, total blood loss, blood lost`,
      ),
    },
    value: {
      minimal: listed(
        'very little, scant, little, small, insignificant, minimum, trivial, minor, a few drops, tiny, scanty, low, slight',
      ),
    },
  },
  dressing: {
    finding: {
      dressing:
        listed(`dressings applied, dressing applied, dressings on, wound dressed, foot dressed, dressings, dressing put on, wound dressing,
        dressing done, sterile dressings applied`),
      'dressing "dry"': listed('dry dressing, dry dressings, dry dressing applied'),
      'dressing "sterile"': listed(
        'sterile dressing, sterile dressings, sterile dressing applied, dry sterile dressing',
      ),
      'dressing "non adherent"': listed('non adherent dressing, nonadherent dressing, non stick dressing'),
      'bulky dressing': listed(
        'padded dressing, big dressing, bulky padded dressing, bulky dressings, bulky soft dressing, well padded dressing, bulky dressing applied, bulkie dressing',
      ),
      bandage: listed(
        'crepe bandage, crepe bandage applied, crepe applied, crepe bandages, wool and crepe, crepe, crepe bandaging, wool and crepe bandage, gauze and crepe, bandaging, bandaged, bandages, bandage applied, crape bandage, soft bandage',
      ),
      'forefoot dressing': listed(
        'forefoot dressings, dressing to the forefoot, dressing on the forefoot, forefoot dressed, forefoot dressing applied',
      ),
      'forefoot bandage': listed(
        'bandage to the forefoot, bandage to forefoot, forefoot crepe, forefoot bandaged, forefoot bandaging, bandage on the forefoot, forefoot crepe bandage',
      ),
    },
    value: { 'bulky dressing': listed('bulky, padded') },
  },
  closure: {
    finding: {
      'closed with':
        listed(`wounds closed with, wound closed with, closure with, closed using, sutured with, stitched with, wound sutured with, closed by, wound closed
    using, closure using, wound stitched with, wound closed, wounds closed, closure of the wound`),
      skin: listed(`skin closed, skin closed with, skin sutured, skin sutured with, skin stitched, skin stitches, skin with, sutures to skin, closed skin with,
    skin closed using, skin sutures, skin stitched with, skin layer, closure of the skin, skin closure with, closure of skin`),
      subcutaneous:
        listed(`subcutis, sub cut, subcutaneous layer, subcutaneous tissue, subcutaneous tissues, subcutaneous closure, subcutaneous with,
        subcut layer, sub cutaneous, subcut with, subcutaneous closed with, subcut closed with, subcutaneous sutures, subcuts, subcutaneous fat`),
      'closure deep': listed(
        'deep layer, deep layers, deep closure, deep tissues, deep sutures, deep tissue closure, deep layer closed with',
      ),
    },
    value: {
      'to skin': listed('skin, for skin, for the skin, on the skin, to the skin, in the skin'),
      subcutaneous: listed('subcutaneously, to subcutaneous tissue, to subcut, to fat'),
      deep: listed('deep layer, to the deep layer, deep layers, deep tissues'),
      '2-0': listed('2 o, 2 oh, 2 zero, 2.0, 20, 2 0'),
      '3-0': listed('3 o, 3 oh, 3 zero, 3.0, 30, 3 0'),
      '4-0': listed('4 o, 4 oh, 4 zero, 4.0, 40, 4 0'),
      '5-0': listed('5 o, 5 oh, 5 zero, 5.0, 50, 5 0'),
      nylon: listed('nylons, nylon sutures, nylon stitches, nylon suture, nilon'),
      polypropylene: listed('poly propylene, polypropylene sutures, polypropylene suture'),
      silk: listed('silk sutures, silk stitches'),
      absorbable:
        listed(`absorbables, absorbable sutures, absorbable suture, dissolving, dissolvable sutures, dissolving stitches, dissolvable stitches, dissolving
    sutures, resorbable, resorbable sutures, absorbable stitches, absorbing sutures, dissolvables`),
      staples: listed('skin clips, skin staples, stapled, stapler, metal clips, metal staples, staple, skin stapler'),
      strips: listed('adhesive strips, paper strips, skin strips, wound strips, sticky strips, adhesive skin strips'),
    },
  },
  approach: {
    finding: {
      'dorsal approach':
        listed(`dorsally, dorsal route, dorsal exposure, dorsal cut, dorsum incision, dorsal skin incision, incision dorsally, incision on the dorsum,
    incision dorsum, dorsal wound, incision over the dorsum, approached dorsally, dorsal linear incision, longitudinal dorsal incision, dorsal
    web incision, dorsal web space incision, dorsal longitudinal approach, dorsal midline incision, dorsal incision made, approach dorsal,
    incision dorsal, incision dorsal longitudinal, dorsal longitudinal, approach from above, approach from the dorsum, from the dorsum, dorsal
    longitudinal cut, dawsal incision, dorsal interspace incision`),
      'plantar approach':
        listed(`plantar route, plantar exposure, plantar cut, planter incision, planter approach, incision in the sole, sole incision, plantar skin
    incision, incision on the sole, plantar longitudinal incision, longitudinal plantar incision, approached plantarly, approach plantar,
    incision plantar, plantar incision made, approach from below, approach from the sole, plantar longitudinal approach`),
      'medial approach':
        listed(`medial longitudinal incision, medial midline incision, midline medial incision, medial skin incision, medial exposure, medial route, medial
    longitudinal approach, medial cut, approached medially, incision medial`),
    },
    value: { dorsal: listed('dorsally') },
  },
  'plate-found': {
    finding: {
      plate: listed('planter plate, volar plate, flexor plate, plate itself, plantar plate itself, pp'),
      'plate torn':
        listed(`tear of the plate, tear in the plate, torn plate, tear of the plantar plate, tear in the plantar plate, torn plantar plate, plate tear,
        plantar plate tear, plantar plate disrupted, plate disrupted, rent in the plate, rent in the plantar plate, tear of plate, tear in plate,
        tear to the plate, defect in the plate, defect in the plantar plate`),
      'plate ruptured': listed(
        'rupture of the plate, rupture of the plantar plate, ruptured plate, ruptured plantar plate, plate rupture, plantar plate rupture',
      ),
      'plate avulsed': listed(
        'avulsion of the plate, avulsion of the plantar plate, avulsed plate, avulsed plantar plate, plate avulsion, plantar plate avulsion',
      ),
      'plate detached': listed(
        'detached plate, detached plantar plate, detachment of the plate, detachment of the plantar plate',
      ),
      'plate attenuated': listed(
        'attenuated plate, attenuated plantar plate, attenuation of the plate, attenuation of the plantar plate',
      ),
      'plate thinned': listed(
        'thin plate, thin plantar plate, thinned plate, thinned plantar plate, thinning of the plate, thinning of the plantar plate',
      ),
      'plate stretched': listed('stretched plate, stretched plantar plate, stretched out plate, elongated plate'),
      'plate intact': listed(
        'intact plate, intact plantar plate, normal plate, normal plantar plate, healthy plate, healthy plantar plate',
      ),
    },
    value: {
      torn: listed('ripped, disrupted, teared, has a tear, tear seen, tear found, tear noted, tear present'),
      ruptured: listed('rupture, burst, has ruptured'),
      avulsed: listed('avulsion, pulled off, stripped off, pulled away, ripped off'),
      detached: listed(
        'detachment, come off, came off, off the bone, lifted off, peeled off, separated, come away, came away, lifted away',
      ),
      attenuated: listed('attenuation'),
      thinned: listed('thin, thinning, paper thin, thinned out, very thin'),
      stretched: listed('stretched out, elongated, overstretched, redundant, baggy'),
      buttonholed: listed('button hole, button holed, buttonholing, button hole tear, buttonhole tear, button holing'),
      intact:
        listed(`normal, sound, healthy, fine, in continuity, continuous, undamaged, untorn, looks intact, looks fine, looks normal, looks healthy,
        good quality, unremarkable, undisturbed, good, ok, okay`),
      transverse: listed(
        'transversely, across, crosswise, horizontal, horizontally, transverse tear, transverse rent, transverse split',
      ),
      longitudinal: listed(
        'longitudinally, lengthways, vertical, vertically, longitudinal tear, longitudinal split, longitudinal rent, vertical split, split lengthways',
      ),
      flap: listed('flap tear, with a flap, flapped'),
      partial: EXTENT_OF_TEAR.partial ?? [],
      full: [...(EXTENT_OF_TEAR.full ?? []), 'full thickness', 'complete tear', 'full thickness tear'],
      ...PLACES_OF_PLATE,
    },
  },
  'anatomical-grade': {
    finding: {
      'anatomical-grade':
        listed(`plate grade, tear grade, plantar plate grade, grade of the plate, grade of the tear, graded, plate graded, operative grade, surgical grade,
        intraoperative grade, intra operative grade, tear graded, anatomical grading, anatomic grading, grade of tear, plantar plate tear grade`),
    },
  },
  fixation: {
    finding: {
      screw: listed(
        'single screw, screw fixation, screw inserted, screw placed, screw put in, screw in, screws in, screwed',
      ),
      ...screws,
      'snap-off screw':
        listed(`snap off screw, snap off, twist off screw, twist off screws, twist off, snap off fixation, break off screw, break off screws, breakaway screw,
        breakaway screws, snapoff screw, snapoff screws, self snapping screw`),
      suture: listed('suture fixation, suture repair'),
      ...sutures,
      anchor: listed(
        'anchors, bone anchor, bone anchors, soft anchor, mini anchor, mini anchors, anchor fixation, soft anchors',
      ),
      'suture anchor': listed('suture anchors, anchor suture, suture anchor fixation, anchor with suture'),
      'drill holes':
        listed(`drill hole, phalangeal drill holes, drill holes in the phalanx, drill holes through the phalanx, holes drilled, bone drill holes, holes in
    the phalanx, holes drilled in the phalanx, transosseous drill holes, trans osseous drill holes, drill holes in the proximal phalanx, drill
    holes in the base of the phalanx, crossed drill holes, parallel drill holes`),
      'bone tunnels':
        listed(`bone tunnel, tunnels in the phalanx, osseous tunnels, tunnels through the phalanx, phalangeal tunnels, bony tunnels, transosseous tunnels,
    trans osseous tunnels, bone tunnels in the phalanx, tunnels in the bone, tunnels in the proximal phalanx, phalangeal bone tunnels`),
    },
    value: { 'snap-off screw': listed('twist off screw, twist off screws') },
  },
  procedure: { finding: { ...steps, ...wires, ...ways }, value: STEPS_SAID },
  'hallux-procedure': {
    finding: {
      'scarf osteotomy': listed(
        'scarf cut, scarfe, scarfe osteotomy, scarf done, scarf performed, scarf osteotomy done, scarff osteotomy, scalf osteotomy, scarf of the first, scarf bunionectomy',
      ),
      'akin osteotomy':
        listed(`aiken, aiken osteotomy, aikin, aikin osteotomy, akin done, akin cut, akin performed, akin osteotomy done, phalangeal akin, akins, aken
    osteotomy`),
      'chevron osteotomy': listed(
        'distal chevron, distal chevron osteotomy, chevron done, chevron cut, shevron osteotomy, chevron bunionectomy, chevron performed, sheffron osteotomy, chevrons',
      ),
      'lapidus fusion': listed(
        'lapidus procedure, lapidus arthrodesis, lapidus done, 1st tmt fusion, 1st tarsometatarsal fusion, lapidous fusion, lapidus performed, 1st tmt arthrodesis, 1st tarsometatarsal arthrodesis, first tarsometatarsal fusion',
      ),
      'lateral release':
        listed(`lateral soft tissue release, lateral structures released, release laterally, lateral release done, lateral release performed, lateral
    structure release`),
      'hallux fusion':
        listed(`big toe fusion, hallux arthrodesis, 1st mtp fusion, 1st mtp arthrodesis, big toe joint fusion, fusion of the big toe, fusion of the great toe,
        fusion of the hallux, great toe arthrodesis, great toe joint fusion, 1st mtp joint fusion, 1st mtp joint arthrodesis, fusion of the 1st mtp,
        fusion of the 1st mtp joint, arthrodesis of the 1st mtp, arthrodesis of the 1st mtp joint, big toe arthrodesis, hallux mtp arthrodesis,
        big toe fused, great toe fused, hallux fused, first mtp fusion, first mtp arthrodesis`),
    },
  },
};
