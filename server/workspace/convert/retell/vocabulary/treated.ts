import type { Said } from './index.ts';
import { said } from './said.ts';

/** How a measure went and how well it was kept. */
const COURSE_SAID: Readonly<Record<string, readonly string[]>> = {
  better: said(
    'helpful, helps, it helped, has helped, effective, beneficial, useful, gave relief, with relief, with benefit, did help, successful, benefit',
  ),
  'good relief':
    said(`good benefit, great relief, great effect, excellent relief, good response, worked well, works well, very helpful,
    helped a lot, really helped, significant relief, marked relief, substantial relief, to good effect, with good effect, with good relief,
    did the trick, very effective, great benefit, helped enormously, good result, lots of relief`),
  partial:
    said(`partly helped, partially helped, helped partially, helped partly, partial benefit, partial response, moderate relief,
    moderately helpful, somewhat helpful, helped somewhat, with partial relief, with some relief, incomplete relief, moderate benefit,
    some effect, helped to some extent, helped some, gave partial relief, gave some relief, some good`),
  'a little better':
    said(`helped slightly, slight relief, slight benefit, slightly helpful, a little relief, a bit of relief,
    bit of relief, helped a little, mild relief, slight help, a bit of help, bit of help, a little help`),
  'no-relief': said(
    'useless, ineffective, unsuccessful, unsuccessfully, zero relief, zero benefit, zero effect, fruitless, waste of time, zero help',
  ),
  worse: said('aggravated it, exacerbated, exacerbated it, flared it, flared it up'),
  'well kept': said(
    'compliant, good compliance, religiously, diligently, faithfully, consistently, adherent, as instructed, good adherence',
  ),
  daily: said('every day, each day, everyday'),
  'poorly kept': said('poor compliance, non compliant, noncompliant, poorly compliant, poor adherence'),
  irregular: said('irregularly, sporadically, sporadic, inconsistently, inconsistent'),
};
const INSERT_KINDS: Readonly<Record<string, readonly string[]>> = {
  insole:
    said(`orthotic, orthotics, orthoses, orthosis, foot orthoses, foot orthosis, foot orthotics, inner sole, inner soles, innersole,
    innersoles, arch supports, arch support, shoe inserts, shoe insert, inserts, footbed, footbeds, foot beds`),
  'insole "custom"': said(
    'custom orthotics, custom orthotic, custom insoles, custom made insoles, bespoke insoles, custom made orthotics, bespoke orthotics, custom orthoses, made to measure insoles',
  ),
  'insole "off the shelf"': said(
    'over the counter insoles, over the counter orthotics, shop bought insoles, prefabricated insoles, prefabricated orthotics',
  ),
  'total contact insole': said(
    'total contact insoles, total contact orthotic, total contact insert, total contact orthosis, full contact insole',
  ),
  'stiff sole': said(
    'stiff soles, stiff soled shoes, rigid sole, rigid soles, rigid soled shoe, rigid soled shoes, stiff soled footwear',
  ),
  'stiff shoe': said('stiff shoes, rigid shoe, rigid shoes, stiff footwear'),
  'carbon plate': said(
    'carbon fibre plate, carbon fiber plate, carbon fibre insole, carbon fiber insole, carbon fibre insert, carbon fiber insert, carbon footplate, carbon fibre footplate, carbon plates, carbon inserts',
  ),
  'rocker shoe': said('rocker shoes, rocker bottom shoe, rocker bottom shoes, rocker soled shoes'),
  'rocker sole': said('rocker soles, rocker bottom sole, rockered sole, rocker bottom, forefoot rocker'),
  'metatarsal bar': said('metatarsal bars, met bars'),
};
const PAD_KINDS: Readonly<Record<string, readonly string[]>> = {
  "dancer's pad": said('dancer pad, dancer pads, dancers pads, dancers padding'),
  'gel pad': said('gel cushion, gel cushions, gel padding, silicone pad, silicone pads, silicon pad, silicon pads'),
  pad: said('padding, cushion, cushions'),
  'pad "felt"': said('felt pad, felt pads, felt padding'),
  'pad "foam"': said('foam pad, foam pads'),
  dome: said('domes, metatarsal domes, met domes, metatarsal button, metatarsal buttons, met button'),
};
const SHOE_KINDS: Readonly<Record<string, readonly string[]>> = {
  'heel wedge shoe': said('heel wedge sandal, heel wedge shoes, wedge shoes, half shoe, reverse camber shoe'),
  'heel wb shoe': said('heel weight bearing shoe, heel weightbearing shoe, heel walking shoe, heel bearing shoe'),
  'offloading shoe': said(
    'off loading shoe, forefoot offloading shoe, forefoot off loading shoe, forefoot offloader, forefoot relief shoe, offloader shoe',
  ),
};

/** What was tried or is planned without operation, scores, and what was operated on before. */
export const TREATED: Said = {
  tape: {
    finding: {
      tape: said(
        'toe strapping, toe taping, taping of the toe, taping the toe, strapping the toe, strapping of the toe, tapes, kinesiology tape',
      ),
      'tape buddy': said(
        'buddy strap, buddy straps, buddy splinting, buddy splint, neighbour strapping, neighbor strapping, body taping, body strapping, buddying',
      ),
      'tape sling': said('sling taping, sling strapping, tape sling'),
      'tape plantarflexed': said(
        'plantarflexion taping, plantarflexion strapping, plantarflexion tape, plantar flexion taping, plantar flexion strapping',
      ),
    },
    value: {
      ...COURSE_SAID,
      plantarflexed: said('down, plantarflexing, plantar flexed'),
      buddy: said('to its neighbour, to the neighbour, to the neighbouring toe'),
    },
  },
  pad: {
    finding: {
      'met-pad': said(
        'met padding, metatarsal padding, metatarsal cushion, metatarsal cushions, met cushion, mt pad, mt pads, m t pad, m t pads, meta tarsal pad, meta tarsal pads',
      ),
      ...PAD_KINDS,
    },
    value: { ...COURSE_SAID, ...PAD_KINDS },
  },
  insert: {
    finding: {
      'stiff-insert': said(
        'rigid insole, rigid insert, rigid insoles, stiff insoles, stiffened insole, stiff inserts, stiff inlay',
      ),
      ...INSERT_KINDS,
    },
    value: { ...COURSE_SAID, ...INSERT_KINDS },
  },
  boot: {
    finding: {
      boot: said(
        'moon boot, moonboot, cam boot, cam walker, c a m boot, walker boots, air walker, pneumatic walker, pneumatic boot, removable boot, removable walking boot, fracture boot, immobilisation boot, orthopaedic boot, orthopedic boot, removable cast walker, controlled ankle motion boot',
      ),
    },
    value: COURSE_SAID,
  },
  'postop-shoe': {
    finding: {
      'postop-shoe': said(
        'post op sandal, surgical sandal, surgical shoes, postoperative shoe, post operative shoe, post op shoes, post surgical shoe, postop sandal, postop shoes, post operative sandal',
      ),
      ...SHOE_KINDS,
    },
    value: { ...COURSE_SAID, ...SHOE_KINDS },
  },
  'anti-inflammatory': {
    finding: {
      'anti-inflammatory': said(
        'anti inflammatory tablets, anti inflammatory medication, anti inflammatory drugs, anti inflams, antiinflammatories, oral anti inflammatories, n saids, ensaids, n s a i d s, n s a i ds',
      ),
      'anti-inflammatory "meloxicam"': said('meloxicam'),
      'anti-inflammatory "indomethacin"': said('indomethacin, indometacin'),
      'anti-inflammatory "ketoprofen"': said('ketoprofen'),
      'anti-inflammatory "nabumetone"': said('nabumetone'),
      ibuprofen: said('ibuprofin, ibruprofen, i b profen, ibuprophen'),
      naproxen: said('naproxin, naprosin, naproxan'),
      diclofenac: said('diclofenic, diclo fenac, dichlofenac'),
      etoricoxib: said('etoricoxcib, etoricoxyb'),
      celecoxib: said('celecoxyb, selecoxib'),
    },
    value: {
      ...COURSE_SAID,
      'twice a day': said('b d, b i d, twice per day, 2 times a day, 2 times daily'),
      'three times a day': said('t d s, t i d, three times daily, 3 times daily, 3 times a day, thrice daily'),
      'as needed': said('p r n, on demand, as necessary'),
    },
  },
  steroid: {
    finding: {
      steroid:
        said(`local steroid injection, local steroid injections, steroid shot, steroid shots, cortisone shot, cortisone shots, cortisone jabs, steroid jabs, corticosteroid injection,
        corticosteroid injections, corticosteroid shot, cortico steroid, cortico steroid injection, cortisone infiltration,
        steroid infiltration, cortisone inj, injection of steroid, injection of cortisone, jab of steroid, shot of cortisone,
        corticosteroid infiltration, steroid injected, cortisone injected`),
    },
    value: {
      ...COURSE_SAID,
      'us-guided': said(
        'u s guided, ultrasound guidance, under ultrasound guidance, sonographically guided, usg guided, under us, by ultrasound, with ultrasound',
      ),
      'x-ray-guided': said(
        'under fluoroscopy, under fluoro, fluoro guided, under image intensifier, under x ray, fluoroscopic',
      ),
      landmark: said(
        'blind, blindly, landmark based, landmark technique, by landmark, by landmarks, freehand, anatomical landmark',
      ),
      triamcinolone: said('triamcinalone, triamcinolon, trimcinolone, triamcinolone acetonide'),
      methylprednisolone: said('methyl prednisolone, methylpred, methyl pred'),
      betamethasone: said('beta methasone, betamethazone'),
      dexamethasone: said('dexamethazone, dexa methasone'),
      hydrocortisone: said('hydro cortisone'),
      'local anaesthetic': said('with local, with local anaesthetic'),
    },
  },
  'earlier-surgery': {
    value: {
      'weil osteotomy': said(
        'weils, wheel osteotomy, while osteotomy, vial osteotomy, wile osteotomy, weil osteotomies, vile osteotomy, veil osteotomy',
      ),
      'plate repair': said(
        'planter plate repair, plantar plate reconstruction, repair of the plantar plate, repair of plantar plate, plantar plate repaired',
      ),
      'flexor transfer': said('flexor to extensor transfer, flexor tendon transfer, fdl transfer, f d l transfer'),
      'tendon transfer': said('tendon transfers'),
      'pip fusion': said(
        'pip joint fusion, pipj fusion, pipj arthrodesis, p i p fusion, fusion of the pip, fusion of the pip joint',
      ),
      'toe fusion': said('toe arthrodesis, fusion of the toe'),
      'neuroma excision': said(
        'excision of neuroma, excision of a neuroma, neuroma removal, removal of neuroma, removal of a neuroma, neuroma resection, neuroma removed, neuroma excised, mortons excision, excision of mortons neuroma',
      ),
      neurectomy: said('interdigital neurectomy, digital neurectomy, nerve excision'),
      'hallux valgus correction': said('hallux valgus surgery, hallux valgus operation, hv surgery'),
      'bunion surgery': said(
        'bunion op, bunion procedure, bunion repair, operation for bunion, surgery for bunion, bunion operations, bunions done',
      ),
      amputation: said('toe amputation, amputation of the toe'),
      'scarf osteotomy': said('scarf, scarf procedure, scarf bunionectomy, scoff osteotomy'),
      'akin osteotomy': said('akin, akin procedure, aiken osteotomy, akins'),
      'chevron osteotomy': said('chevron, chevron procedure, chevron bunionectomy'),
      'lapidus fusion': said('lapidus, lapidus procedure, lapidus arthrodesis'),
      'hammer toe correction': said(
        'hammer toe repair, hammertoe repair, hammer toe operation, hammertoe surgery, hammer toe straightening, hammertoe operation',
      ),
    },
  },
  vas: { finding: { vas: said('v a s') } },
  aofas: {
    finding: { aofas: said('a o f a s, ao fas, a o fas') },
    value: { motion: said('range of motion'), alignment: said('align') },
  },
  faam: {
    finding: { faam: said('f a a m, foot and ankle ability measure') },
    value: { adl: said('a d l, activities of daily living, daily living'), sports: said('sport scale') },
  },
  moxfq: {
    finding: { moxfq: said('m o x f q, mox f q, moxfq score, mox fq, manchester oxford foot questionnaire') },
    value: { walking: said('walking and standing, walking stand'), social: said('social interaction') },
  },
  ffi: { finding: { ffi: said('f f i, foot function index') } },
};
