import { listed } from './listed.ts';

/** What the steps of an operation are called. A routine washing of the wound is no `washout`. */
export const STEPS_SAID: Readonly<Record<string, readonly string[]>> = {
  'plate repair':
    listed(`repair of the plantar plate, repair of the plate, plate repaired, plantar plate repaired, plate sutured, plantar plate sutured, plate
    stitched, plantar plate stitched, repaired the plate, repaired the plantar plate, sutured the plate, sutured the plantar plate, stitched the
    plate, planter plate repair, planter plate repaired, plate suture, plantar plate suture, suturing of the plate, plantar plate repair done,
    plate repair done, plate repair performed, plate mended`),
  'plate reinsertion':
    listed(`plate reattachment, plate reattached, plate reinserted, plantar plate reattached, plantar plate reattachment, plantar plate reinsertion,
    plantar plate reinserted, reattachment of the plate, reattachment of the plantar plate, reinsertion of the plate, reinsertion of the plantar plate,
    reattached the plate, reattached the plantar plate, reinserted the plate, plate advanced, plate advancement, plantar plate advanced, plantar plate advancement,
    advancement of the plate, advancement of the plantar plate, plate refixed, plate refixation, reattach the plate`),
  'weil osteotomy':
    listed(`weils, weil cut, weil done, weil performed, weil osteotomies, weil shortening, weil shortening osteotomy, whale osteotomy, wheel osteotomy,
    vile osteotomy, wile osteotomy, veil osteotomy, weyl osteotomy, weill osteotomy, weil's osteotomy, weils osteotomy, weil osteotomy done,
    weil osteotomy performed, weil procedure, weil type osteotomy, osteotomy weil, weil osteotomy cut, weil made`),
  'shortening osteotomy':
    listed(`metatarsal shortening osteotomy, metatarsal shortening, shortening of the metatarsal, met shortening, osteotomy to shorten, metatarsal
    shortened, shortening osteotomy done, shortened the metatarsal, shortening of the met, met shortened`),
  'tendon transfer': listed('tendon transferred, transfer of the tendon, tendon transfer done, transfer of tendon'),
  'flexor transfer': listed(
    `flexor tendon transfer, flexor transferred, transfer of the flexor, flexor tendon transferred, flexor transfer done, transfer of flexor`,
  ),
  'flexor to extensor transfer':
    listed(`girdlestone, girdlestone taylor, girdlestone transfer, taylor girdlestone, flexor extensor transfer, flexor to extensor tendon transfer,
    transfer of flexor to extensor, girdlestone done, girdlestone taylor done, flexor to extensor, girdle stone transfer, girdlestone procedure, girdle stone,
    girdlestone taylor transfer, flexor tendon to extensor transfer, flexor to extensor transfer done, girdlestone tailor, f to e transfer, flexor extensor tendon transfer`),
  'fdl transfer':
    listed(`fdl transferred to the extensor, fdl transferred to the extensor hood, fdl transferred to the dorsum, fdl to extensor transfer,
    flexor digitorum longus transfer, long flexor transfer, transfer of fdl, transfer of the fdl, fdl transferred, long flexor transferred,
    transfer of the long flexor, fdl tendon transfer, f d l transfer, flexor digitorum longus transferred, fdl tendon transferred`),
  'brevis transfer':
    listed(`extensor digitorum brevis transfer, edb tendon transfer, e d b transfer, transfer of edb, transfer of the edb, edb transferred, brevis tendon transfer,
    brevis transferred, short extensor transfer, extensor digitorum brevis transferred, extensor brevis tendon transfer, transfer of the brevis, e d b tendon transfer`),
  'pip fusion':
    listed(`fusion of the pip, fusion of the pip joint, pip joint fusion, pip joint arthrodesis, pip joint fused, pip fused, arthrodesis of the pip,
    arthrodesis of the pip joint, proximal interphalangeal fusion, proximal interphalangeal joint fusion, proximal interphalangeal arthrodesis, fused the pip,
    proximal interphalangeal joint arthrodesis, fused the pip joint, p i p fusion, p i p j fusion, p i p joint fusion, pip fusion done, fusion pip, fusion pip joint`),
  'pip resection': listed(
    'pip joint resection, resection of the pip, resection of the pip joint, pip resected, pip joint resected, p i p resection, resected the pip joint, p i p joint resection',
  ),
  'pip arthroplasty':
    listed(`pip joint arthroplasty, arthroplasty of the pip, arthroplasty of the pip joint, pip joint excision arthroplasty, pip excisional arthroplasty,
    excision arthroplasty of the pip, excision arthroplasty of the pip joint, excision arthroplasty pip, pip joint excisional arthroplasty, p i p arthroplasty, pip excision,
    p i p joint arthroplasty, proximal interphalangeal arthroplasty, proximal interphalangeal joint arthroplasty, pip joint excision, excision arthroplasty pip joint`),
  'extensor lengthening':
    listed(`lengthening of the extensor, lengthening of the extensors, extensors lengthened, extensor lengthened, extensor tendon lengthening, extensor tendon lengthened,
    extensor tendons lengthened, lengthened the extensor, lengthened the extensors, lengthening of the extensor tendon, lengthening of extensors, extensor lengthening done,
    lengthening of the extensor tendons, extensor tendons lengthening`),
  'z lengthening':
    listed(`z lengthened, z plasty lengthening, z plasty of the extensor, z plasty of the extensors, extensor z plasty, zed lengthening, zed plasty of the extensor,
    extensor tendon z lengthening, extensors z lengthened, extensor z lengthened, z lengthening of the extensor, z lengthening of the extensors, zee lengthening,
    zed lengthened, z plasty of the extensor tendon, extensor zed plasty, z lengthening of the extensor tendon`),
  'edl lengthening':
    listed(`edl lengthened, edl z lengthening, edl z lengthened, lengthening of edl, lengthening of the edl, lengthened edl, extensor digitorum longus lengthening,
    extensor digitorum longus lengthened, long extensor lengthening, long extensor lengthened, e d l lengthening, e d l lengthened, edl zed lengthening, edl z plasty,
    z lengthening of edl, z lengthening of the edl, long extensor z lengthening, lengthening of the long extensor`),
  'collateral release':
    listed(`collaterals released, release of the collaterals, release of collaterals, collateral released, release of the collateral, release of the
    collateral ligaments, collateral ligaments released, collateral ligament released, collaterals divided, collaterals cut, collaterals freed,
    collateral ligaments divided, collateral division, collateral releases, release of the collateral ligament, release of collateral ligaments,
    release of collateral ligament`),
  'collateral repair':
    listed(`collaterals repaired, collateral repaired, collateral reefed, collateral reefing, reefing of the collateral, reefing of the collaterals, collateral imbrication,
    collateral plication, collateral tightened, collateral plicated, collateral ligament reefed, collateral ligament repaired, collateral ligaments repaired, repair of the collateral,
    repair of the collaterals, repaired the collateral, repaired the collaterals, repair of the collateral ligament, tightening of the collateral, collaterals tightened,
    collaterals reefed, collateral imbricated`),
  'joint release':
    listed(`mtp release, mtp joint release, release of the mtp, release of the mtp joint, mtp joint released, mtp released, joint released, release of
    the joint, arthrolysis, mtp arthrolysis, metatarsophalangeal release, joint arthrolysis`),
  capsulotomy: listed(
    'capsule divided, capsule cut, capsule incised, mtp capsulotomy, capsulotomised, capsulotomy done, mtp joint capsulotomy, capsulotomy of the mtp, capsulotomy of the joint',
  ),
  'dorsal capsulotomy':
    listed(`dorsal mtp capsulotomy, dorsal capsulotomy of the mtp, dorsal capsule incised, dorsal capsule cut, dorsal capsulotomy done, dorsal capsulotomised,
    capsulotomy dorsally, dorsal capsulotomy of the joint`),
  'capsular release': listed(
    `capsule released, release of the capsule, capsule release, capsular released, mtp capsule release, joint capsule released`,
  ),
  'flexor tenotomy':
    listed(`flexor tendon tenotomy, flexor divided, flexors divided, flexor cut, tenotomy of the flexor, tenotomy of the flexors, flexor tendon divided, flexor tendons divided,
    flexor tendon cut, flexor tendon release, flexor release, flexor tenotomised, flexor tenotomized, flexor released, divided the flexor, flexor tenotomies, flexor tenotomy done,
    flexor tendon released, tenotomy flexor, tenotomy of flexor`),
  'fdl tenotomy':
    listed(`fdl divided, fdl cut, f d l tenotomy, long flexor tenotomy, long flexor divided, long flexor cut, flexor digitorum longus tenotomy, fdl release, fdl released,
    flexor digitorum longus divided, tenotomy of fdl, tenotomy of the fdl, tenotomy of the long flexor, long flexor release, long flexor released, fdl tenotomised`),
  'plate shrinkage': listed(
    'shrinkage of the plate, shrinkage of the plantar plate, plate shrunk, plantar plate shrinkage, plantar plate shrunk',
  ),
  'thermal shrinkage': listed(
    'heat shrinkage, thermal shrinkage of the plate, thermal shrinkage of the plantar plate, thermal plate shrinkage, thermal capsular shrinkage of the plate',
  ),
  'radiofrequency shrinkage':
    listed(`radio frequency shrinkage, rf shrinkage, radiofrequency shrinkage of the plate, radiofrequency shrinkage of the plantar plate,
    radiofrequency plate shrinkage`),
  condylectomy: listed(
    'condyle trimmed, condyles trimmed, condyle removed, condyles removed, condyle resected, condyles resected, condyle excised, condyle shaved, metatarsal condylectomy, condylectomies, condyle resection',
  ),
  'plantar condylectomy':
    listed(`plantar condyle trimmed, plantar condyles trimmed, plantar condyle removed, plantar condyles removed, plantar condyle resected, plantar condyles resected,
    plantar condyle shaved, plantar condyles shaved, plantar condyle excised, plantar condyles excised, planter condylectomy, plantar condyle resection, trimming of the plantar condyles,
    trimming of the plantar condyle, resection of the plantar condyle, resection of the plantar condyles`),
  'hallux valgus correction':
    listed(`bunion surgery, bunionectomy, bunion corrected, hallux valgus corrected, hallux valgus surgery, bunion operation, bunion repair, bunion
    procedure, hallux valgus operation, corrected the hallux valgus, corrected the bunion`),
  'neuroma excision':
    listed(`neuroma excised, neuroma removed, neuroma resected, neuroma resection, neuroma removal, removal of neuroma, removal of the neuroma, excision
    of the neuroma, excised the neuroma, resected the neuroma, neuroma taken out, neuroma cut out, nerve excised, nerve excision, nerve
    resected, nerve resection, mortons excision, morton's excision, mortons neuroma excision, morton's neuroma excision, digital neurectomy,
    interdigital neurectomy, neurectomy of the digital nerve, excision of mortons neuroma, excision of morton's neuroma, mortons neuroma
    excised, morton's neuroma excised, resection of the neuroma, excision of the nerve, neurectomy done`),
  debridement: listed(
    'debrided, debridement done, joint debridement, joint debrided, debridement of the joint, debride, debridement performed, debreedment',
  ),
  washout: listed(
    `joint washout, washout of the joint, joint lavage, lavage of the joint, joint washed out, wash out of the joint`,
  ),
  'toe amputation': listed(
    'amputation of the toe, toe amputated, toe ablation, ablation of the toe, amputated the toe',
  ),
  amputation: listed('amputated'),
  pin: listed(`pinned, pinning, pin passed, pin placed, pin inserted, pin driven, pin across the mtp, pin across the mtp joint, pin across the joint, pin
    through the toe, pins, pin put in`),
  'k-wire':
    listed(`k wires, kirschner wire, kirschner wires, kirschner, wire across the joint, wire across the mtp, wire across the mtp joint, wire through the
    toe, k wire across the mtp, k wire across the mtp joint, k wire across the joint, k wired, k wire fixation, k wire inserted, k wire passed,
    k wire placed, k wire through the toe, k wire down the toe, k wire stabilisation, k wire stabilization, k wire driven, kirshner wire, k wire
    through the joint, k wire through the mtp joint, k wire put in, stabilised with a k wire`),
  'collateral release "lateral"': listed(
    'lateral collateral released, lateral collateral release, lateral collateral ligament release, lateral collateral divided, lateral collateral ligament released',
  ),
  'collateral release "medial"': listed(
    'medial collateral released, medial collateral release, medial collateral ligament release, medial collateral divided, medial collateral ligament released',
  ),
  'collateral repair "lateral"': listed(
    'lateral collateral repair, lateral collateral ligament repair, lateral collateral reefing, lateral collateral reefed, lateral collateral tightened, lateral collateral imbrication, lateral collateral plication, repair of the lateral collateral, repair of the lateral collateral ligament',
  ),
  'collateral repair "medial"': listed(
    'medial collateral repair, medial collateral ligament repair, medial collateral reefing, medial collateral reefed, medial collateral tightened, medial collateral imbrication, medial collateral plication, repair of the medial collateral, repair of the medial collateral ligament',
  ),
  'joint release "medial"': listed(
    'medial release, medial joint release, medial soft tissue release, medial mtp release, medial capsular release',
  ),
  'joint release "dorsal"': listed(
    'dorsal release, dorsal joint release, dorsal soft tissue release, dorsal mtp release, dorsal mtp joint release',
  ),
};
