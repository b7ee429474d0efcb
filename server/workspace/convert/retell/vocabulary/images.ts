import type { Said } from './index.ts';
import { listed } from './listed.ts';

/** Where a plate is torn, on an image and in theatre. */
export const PLACES_OF_PLATE: Readonly<Record<string, readonly string[]>> = {
  lateral:
    listed(`laterally, lateral side, lateral aspect, lateral part, lateral portion, lateral edge, lateral border, lateral half,
    on the lateral side, at the lateral side, on the lateral aspect, along the lateral edge, along the lateral border, far lateral`),
  medial:
    listed(`medially, medial side, medial aspect, medial part, medial portion, medial edge, medial border, medial half,
    on the medial side, at the medial side, on the medial aspect, along the medial edge, along the medial border`),
  central: listed(`centrally, in the centre, in the center, at the centre, at the center, central part, central portion,
    centre of the plate, center of the plate`),
  distal: listed('distally, distal end, at the distal end, distal part, distal portion, distal aspect'),
  proximal: listed('proximally, proximal end, at the proximal end, proximal part, proximal portion'),
  midsubstance: listed('mid portion, midportion, mid plate, in the midsubstance, in the mid substance, mid body'),
  insertion:
    listed(`insertional, at its insertion, at the distal insertion, at the attachment, at its attachment, distal attachment,
    at the distal attachment, distal insertion, at the enthesis, from its insertion, from the insertion, off its insertion`),
  'phalangeal insertion':
    listed(`at the phalangeal attachment, phalangeal attachment, phalangeal base, at the phalangeal base,
    at the base of the phalanx, base of the phalanx, at the base of the proximal phalanx, base of the proximal phalanx,
    at the phalanx, off the phalanx, from the phalanx, off the base of the phalanx, from the base of the phalanx,
    at the proximal phalanx, off the proximal phalanx, from the proximal phalanx`),
};
/** How far through a plate is torn. */
export const EXTENT_OF_TEAR: Readonly<Record<string, readonly string[]>> = {
  partial: listed('partially, partly, incomplete, incompletely, part thickness'),
  full: listed('completely, fully, total, totally, entirely, through and through, all the way through, right through'),
};
/** Radiograph, ultrasound, MRI and CT. */
export const IMAGES: Said = {
  view: {
    finding: {
      ap: listed('anteroposterior, antero posterior, ap view, dorsoplantar, dorso plantar, ap projection'),
      lat: listed('lateral view, lateral projection, lat view'),
      wb: listed(`weight bearing view, weight bearing views, standing view, standing views, loaded view, loaded views,
        weightbearing views, weightbearing view, wb views`),
      nwb: listed(
        'non weight bearing view, non weight bearing views, unloaded view, unloaded views, non weightbearing views',
      ),
    },
    value: {
      'weight-bearing': listed('standing, loaded, full weight bearing, weightbearing'),
      'not weight-bearing': listed('unloaded, non weightbearing'),
      obl: listed('oblique, oblique view'),
      ap: listed('dorsoplantar, anteroposterior'),
      lat: listed('lateral'),
    },
  },
  hva: {
    finding: {
      hva: listed(`hv angle, h v angle, h v a, hallux angle, hallux abductus angle, hallux valgus angle measures, first mtp angle,
        bunion angle, halux valgus angle, hallux valgus measures, big toe angle`),
    },
  },
  ima: {
    finding: {
      ima: listed(`im angle, inter metatarsal angle, intermet angle, inter met angle, im 1 2 angle, first intermetatarsal angle, im12 angle, intermetatarsal 1
    2 angle, metatarsus primus varus angle`),
    },
  },
  protrusion: {
    finding: {
      long: listed(`long metatarsal, long met, metatarsal long, met long, metatarsal is long, met is long, overlong metatarsal, overlong met, metatarsal
    overlong, elongated metatarsal, elongated met, metatarsal elongated, metatarsal relatively long, relatively long metatarsal, relatively long
    met, met relatively long, metatarsal too long, met too long, metatarsal excessively long`),
      'slightly long': listed(
        'slightly long metatarsal, slightly long met, metatarsal slightly long, met slightly long',
      ),
      longer:
        listed(`metatarsal longer, met longer, metatarsal is longer, longer metatarsal, longer met, metatarsal protrudes, met protrudes,
        metatarsal protrusion, met protrusion, metatarsal head protrudes, metatarsal proud, metatarsal projects, protrudes beyond its neighbours,
        projects beyond its neighbours`),
      shorter:
        listed(`short metatarsal, short met, metatarsal short, met short, metatarsal is short, met is short, metatarsal shorter, met shorter,
        shorter metatarsal, shorter met, metatarsal is shorter, relatively short metatarsal, metatarsal relatively short, met relatively short`),
    },
  },
  'film-joint': {
    finding: {
      congruent: listed(
        `joint congruent, congruous, congruency maintained, congruity maintained, joint congruous, concentric, joint concentric`,
      ),
      subluxed:
        listed(`sublux, subluxing, subluxated joint, subluxed joint, partial dislocation, joint subluxation, mtp subluxation, subluxated mtp, sub luxed, sub
    luxated, subluxed at the mtp joint, subluxed at the mtp, subluxed at the joint, subluxation at the mtp joint, subluxation at the joint`),
      dislocated:
        listed(`dislocated joint, joint dislocation, frankly dislocated, frank dislocation, full dislocation, mtp dislocation, dislocated at the mtp joint,
    dislocated at the mtp, dislocated at the joint, luxated, out of joint, dislocation at the mtp joint, dislocation of the joint`),
    },
    value: {
      dorsal: listed('upwards, upward, dorsalward, superiorly'),
      medial: listed('to the medial side, towards the medial side'),
      lateral: listed('to the lateral side, towards the lateral side'),
      dorsomedial: listed('dorso medial, dorsomedially, dorsal and medial'),
      narrowed: listed('narrow, tight joint space'),
    },
  },
  'mtp-angle': {
    finding: {
      'mtp-angle': listed(
        'joint angle, mtp joint angle, metatarsophalangeal angle, m t p angle, toe angle on the film, m t p a',
      ),
    },
    value: {
      medial: listed('medially, into varus, of varus, medial deviation'),
      lateral: listed('laterally, into valgus, of valgus, lateral deviation'),
      dorsal: listed('dorsally, extended, of extension, dorsiflexed, hyperextended, hyperextension, dorsiflexion'),
    },
  },
  'metatarsal-formula': {
    finding: {
      parabola:
        listed(`met parabola, metatarsal cascade, met cascade, metatarsal arc, metatarsal length pattern, metatarsal curve, metatarsal length parabola, meta
    tarsal parabola`),
      'index minus': listed('minus index'),
    },
    value: {
      harmonious: listed(
        'normal, smooth, regular, balanced, well balanced, maintained, preserved, well maintained, good, fine, even',
      ),
    },
  },
  'growth-plate': {
    finding: {
      'growth-plate': listed(
        'epiphysis, epiphyses, epiphyseal plate, epiphyseal plates, physeal plate, physeal plates, growth centres',
      ),
    },
    value: {
      open: listed('still open, unfused, patent, unclosed'),
      closed: listed('shut, have closed, has closed, have fused, has fused, united'),
    },
  },
  'image-reader': {
    finding: {
      'read by': listed('interpreted by, assessed by, report from'),
      'read by radiologist': listed(`radiology report,    formal report,
        formally reported,  reported formally`),
      'read by me': listed('own reading, read personally'),
    },
    value: { radiologist: listed('radiology department, radiology consultant'), surgeon: listed('me personally') },
  },
  'image-date': { finding: { taken: listed('acquired, carried out') } },
  'ultrasound-method': {
    finding: {
      dynamic: listed(
        `dynamic scan, dynamic study, dynamic examination, dynamic assessment, dynamic imaging, dynamic images, dynamically, dynamic testing`,
      ),
      static: listed(
        'static scan, static study, static images, static imaging,  static examination, static assessment',
      ),
    },
    value: { 'static and dynamic': listed('dynamic and static, both static and dynamic') },
  },
  freiberg: {
    finding: {
      freiberg:
        listed(`freiberg's disease, freibergs disease, freiberg's infraction, freibergs infraction, freiberg's infarction,
        freibergs infarction, freiberg infarction, frieberg, friebergs, frieberg's, freeberg, freebergs, freeberg's, fryberg, frybergs,
        fryberg's, freeburg, freeburgs, freiburg, freiburgs, freiburg's, freiberg change, freiberg changes, freiberg's change, freiberg's changes`),
    },
    value: { smillie: listed('smiley, smilie, smillies, smilies'), gauthier: listed('gautier, gauthiers') },
  },
  tear: {
    finding: {
      tear: listed(`plate defect, plantar plate defect, disrupted plate, disrupted plantar plate, plate disrupted, plantar plate disrupted,
        plate disruption, plantar plate disruption, disruption of the plate, disruption of the plantar plate, tear of the plantar plate,
        tear in the plantar plate, tear to the plantar plate, tear of the plate, tear in the plate, tear to the plate, torn plate,
        torn plantar plate, plantar plate has torn, plantar plate is torn, plate is torn, planter plate tear, planter plate torn,
        torn planter plate, tear of planter plate, discontinuity of the plantar plate, discontinuity of the plate, plate discontinuity,
        plantar plate discontinuity, rent in the plate, rent in the plantar plate, defect in the plate, defect in the plantar plate,
        volar plate tear, torn volar plate, pp torn`),
      'plate rupture':
        listed(`rupture of the plantar plate, rupture of the plate, ruptured plantar plate, ruptured plate, plantar plate rupture,
        plate ruptured, plantar plate ruptured, planter plate rupture, ruptured planter plate, plate has ruptured`),
      'tear "avulsion"':
        listed(`plate avulsion, plantar plate avulsion, avulsion of the plantar plate, avulsion of the plate, avulsed plantar plate,
        avulsed plate, plate avulsed, plantar plate avulsed`),
      'plate intact':
        listed(`plantar plate intact, intact plantar plate, plate normal, plantar plate normal, normal plate, normal plantar plate,
        plate in continuity, plantar plate in continuity, plate continuous, plantar plate continuous, plate looks intact,
        plantar plate looks intact, plate looks normal, plantar plate looks normal, plate sound, plantar plate sound, plate fine,
        plantar plate fine, plate unremarkable, plantar plate unremarkable, healthy plate, healthy plantar plate, untorn plate, plate untorn,
        plantar plate untorn, planter plate intact, planter plate normal, plate appears intact, plantar plate appears intact,
        plate appears normal, plantar plate appears normal, plate healthy, plantar plate healthy, plate preserved, plantar plate preserved`),
    },
    value: {
      // The plate itself adds nothing to its tear.
      '': listed('plate, plantar plate, planter plate, pp'),
      ...PLACES_OF_PLATE,
      ...EXTENT_OF_TEAR,
      'high grade partial': listed('high grade partial thickness, high grade incomplete'),
      'low grade partial': listed('low grade partial thickness, low grade incomplete'),
      rupture: listed('ruptured'),
      transverse: listed('transversely, horizontal, crosswise'),
      longitudinal: listed('longitudinally, lengthways, vertical'),
    },
  },
  'web-lesion': {
    finding: {
      neuroma:
        listed(`morton's, mortons, morton's neuroma, mortons neuroma, morton neuroma, morton's lesion, intermetatarsal neuroma, interdigital neuroma, inter
    digital neuroma, plantar digital neuroma, inter metatarsal neuroma, martin's neuroma, martins neuroma, morten's neuroma, mortens neuroma,
    neuromas, digital nerve neuroma, interspace neuroma`),
      bursitis: listed(
        'inflamed bursa, intermetatarsal bursitis, inter metatarsal bursitis, interdigital bursitis, bursal inflammation',
      ),
      bursa: listed(
        'intermetatarsal bursa, inter metatarsal bursa, bursal fluid, fluid filled bursa, bursal collection, interdigital bursa, birsa',
      ),
      fibrosis: listed('perineural fibrosis, fibrotic change, fibrotic tissue, scar tissue, fibrous tissue'),
      thickening: listed(
        'nerve thickening, thickened nerve, thickened digital nerve, nerve thickened, soft tissue thickening, thickened tissue',
      ),
    },
  },
  'image-other': {
    finding: {
      synovitis:
        listed(`synovial thickening, thickened synovium, synovial hypertrophy, synovial proliferation, inflamed synovium, synovial inflammation,
    inflammation of the synovium, synovitic change, synovitic changes, synovitic, hypertrophic synovium, sinovitis, hypertrophied synovium`),
      effusion:
        listed(`joint effusion, joint fluid, fluid in the joint, intra articular fluid, intraarticular fluid, fluid within the joint, synovial effusion,
    fluid in the mtp joint, effused`),
      fracture: listed('fracture line, broken bone, fractured, bony fracture, fractures, bone fracture'),
      'stress fracture': listed('fatigue fracture, stress fractures, fatigue fractures, stress fracture line'),
      'stress reaction':
        listed(`stress response, bone stress, bony stress, bone stress reaction, bone stress response, stress related change,
        bony stress reaction, stress changes, stress change, bone stress changes`),
      'erosion "marginal"': listed('marginal erosion, marginal erosions'),
      'erosion "periarticular"': listed('periarticular erosion, periarticular erosions, juxta articular erosions'),
      erosion: listed(
        'erosive change, erosive changes, bony erosion, bony erosions, bone erosion, bone erosions, eroded, erosive',
      ),
      osteoarthritis:
        listed(`osteoarthrosis, arthrosis, osteoarthritic change, osteoarthritic changes, osteoarthritic, oa changes, oa change,
        arthritic change, arthritic changes, degenerative joint disease, degenerative arthritis, d j d, djd, arthritic, degenerative osteoarthritis`),
      osteophyte:
        listed(`spur, spurs, bony spur, bony spurs, bone spur, bone spurs, spurring, bony spurring, osteophytosis, lipping, bony lipping,
        osteophytic change, osteophytic lipping, osteophyte formation, osteophytic spur, osteo fights, osteofights`),
      'degenerative change':
        listed(`degeneration, degenerate, degenerative, degenerative wear, wear and tear, degenerative features,
        joint degeneration, wear and tear changes, wear changes, joint wear`),
      'bone oedema':
        listed(`marrow oedema, marrow edema, bone marrow oedema, bone marrow edema, bone edema, bony oedema, bony edema,
        oedema in the bone, edema in the bone, oedema of the bone, edema of the bone, marrow swelling, bone marrow swelling,
        oedematous marrow, edematous marrow, oedema in the marrow, edema in the marrow, intraosseous oedema, intraosseous edema,
        oedema within the bone, edema within the bone`),
      'bone bruise':
        listed(`bone bruising, bony bruising, bony bruise, bruised bone, bone contusion, bony contusion, marrow contusion,
        bone marrow contusion, marrow bruising, bruising of the bone, bruise of the bone, marrow bruise`),
      'loose body': listed('loose bodies, joint mouse, intra articular loose body, intraarticular loose body'),
      'periosteal reaction':
        listed(`periosteal new bone, periosteal response, periosteal change, periosteal changes, periostitis,
        periosteal thickening, periosteal new bone formation, periosteal elevation, periosteal bone formation, periosteal reactions`),
      sclerosis: listed(
        'sclerotic, sclerotic change, sclerotic changes, bony sclerosis, bone sclerosis, sclerosed, sclerotic bone',
      ),
      flattening: listed(
        'flattened, flattened head, head flattened, head is flat, flat head, head flattening, flattened appearance, flattening of the head',
      ),
      cyst: listed(
        'cystic change, cystic changes, geode, geodes, bone cyst, bone cysts, bony cyst, bony cysts, cystic, cystic lesion',
      ),
      callus: listed(
        'callus formation, callous formation, callous, bone callus, healing callus, fracture callus, callus forming',
      ),
      'joint space narrowing':
        listed(`joint space narrowed, narrowed joint space, narrow joint space, joint space is narrowed, joint space loss, narrowing of the joint space,
    joint narrowing, diminished joint space, joint space diminished, decreased joint space, joint space decreased, joint space narrow, joint
    narrowed, narrowing of joint space, narrowed joint, narrowing of the joint, joint space has narrowed`),
      'no joint space narrowing':
        listed(`joint space preserved, joint space maintained, maintained joint space, joint space normal, normal joint space, joint space well maintained,
    joint space well preserved, joint spaces preserved, joint spaces maintained, joint spaces normal, joint space good, joint space fine, joint
    space ok, joint space intact, joint space is preserved, joint space is maintained, joint space is normal, joint space is good, well
    preserved joint space, well maintained joint space, joint spaces well preserved, joint spaces well maintained`),
      'vessel calcification':
        listed(`vascular calcification, calcified vessels, calcified arteries, arterial calcification, calcified vessel,
        vessel wall calcification, vascular calcifications, calcification of the vessels, calcification of the arteries, calcified artery`),
      'soft tissue swelling': listed(
        'swollen soft tissues, soft tissues swollen, soft tissue oedema, soft tissue edema, swelling of the soft tissues',
      ),
    },
    value: {
      slight: listed('faint, subtle, minimal, trace, slightly, a little'),
      mild: listed('mildly, low grade'),
      moderate: listed('moderately, medium'),
      marked: listed('markedly, large, extensive, prominent, florid, sizeable, pronounced'),
      severe: listed('severely, gross'),
      undisplaced: listed('non displaced, nondisplaced'),
      displaced: listed('with displacement'),
      neck: listed('metatarsal neck, at the neck, through the neck, in the neck'),
      shaft: listed(
        'metatarsal shaft, at the shaft, mid shaft, midshaft, diaphysis, through the shaft, in the shaft, diaphyseal',
      ),
      base: listed('metatarsal base, at the base, through the base, in the base'),
      head: listed('metatarsal head, at the head, in the head, of the metatarsal head, in the metatarsal head'),
      spiral: listed('spiralling, spiral pattern'),
      oblique: listed('obliquely, oblique pattern'),
      transverse: listed('transversely, transverse pattern'),
    },
  },
};
