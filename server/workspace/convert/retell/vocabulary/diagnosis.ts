import type { Said } from './index.ts';
import { listed } from './listed.ts';

/** What a diagnosis is called, by itself and after `diagnosis`. */
const DIAGNOSES: Readonly<Record<string, readonly string[]>> = {
  'plantar plate tear':
    listed(`torn plantar plate, torn plate, tear of the plantar plate, tear of the plate, disrupted plantar plate,
    plantar plate disruption, pp tear, planter plate tear, torn planter plate, plate disruption, tear in the plantar plate, torn pp,
    plantar plate is torn, plantar plate torn, plate torn`),
  'plantar plate rupture':
    listed(`ruptured plantar plate, ruptured plate, rupture of the plantar plate, rupture of the plate,
    plantar plate ruptured, planter plate rupture`),
  'plantar plate injury':
    listed(`plate injury, injury to the plantar plate, injury of the plantar plate, injured plantar plate, plantar plate damage, damaged plantar plate,
    plantar plate lesion, planter plate injury, pp injury`),
  'mtp instability':
    listed(`unstable mtp joint, instability of the mtp, instability of the mtp joint, mtp joint instability, unstable mtps,
    metatarsophalangeal instability, unstable metatarsophalangeal joint, metatarsophalangeal joint instability, instability at the mtp,
    instability at the mtp joint`),
  'mtp instability "predislocation syndrome"': listed('predislocation syndrome, predislocation'),
  'crossover toe':
    listed(`crossover deformity, cross over deformity, crossover toe deformity, crossing toe, crossed over toe, cross over toe deformity,
    crossing over toe, crossover second toe deformity`),
  'plantar plate sprain': listed(
    'sprained plantar plate, sprained plate, plantar plate strain, sprain of the plantar plate, sprain of the plate',
  ),
  sesamoiditis: listed('inflamed sesamoid, inflamed sesamoids, sesamoid inflammation, sesamoid itis, sesame oiditis'),
  'recurrent neuroma': listed(
    "neuroma recurrence, recurrence of neuroma, recurrence of the neuroma, recurrent mortons, recurrent morton's neuroma, recurrent mortons neuroma",
  ),
  'stump neuroma': listed('neuroma of the stump, stump neuromas'),
  metatarsalgia: listed('meta tarsalgia, metatarsal gia, metatarsalgias'),
  'transfer metatarsalgia': listed('transfer overload, metatarsalgia by transfer, transfer meta tarsalgia'),
  'interdigital neuroma':
    listed(`morton's, mortons, morton's metatarsalgia, mortons metatarsalgia, morton's disease, mortons disease, morton's entrapment, intermetatarsal
    neuroma, digital neuroma, inter digital neuroma, plantar digital neuroma, martin's neuroma, martins neuroma, mortens neuroma, morten's
    neuroma, inter metatarsal neuroma, interspace neuroma`),
  'hammer toe': listed(
    'hammer toe deformity, hammertoe deformity, hammered toe, hammer deformity, hammer toes, hammertoes, hammering',
  ),
  'claw toe': listed('claw toe deformity, clawed toe, clawing, claw deformity, claw toes, clawed toes, clawtoe'),
  'mallet toe': listed('mallet toe deformity, mallet deformity, mallet toes, malletoe'),
  'hallux valgus':
    listed(`hallux valgus deformity, valgus hallux, hallux abducto valgus, h a v, hav, halux valgus, hallux abductovalgus, hallux vulgus, hallux valgas,
    hallucis valgus`),
  bunion: listed('bunion deformity, bunions, bunyan, bunnion'),
  'hallux rigidus': listed('hallux rigidous, halux rigidus, rigid hallux, hallux rigid us'),
  freiberg:
    listed(`freiberg's, freibergs, freiberg's infraction, freibergs infraction, freiberg infraction, freibergs disease, frieberg's, friebergs,
    freeberg's, freebergs, freiburg's, freiburgs, freiberg's infarction, freibergs infarction, freiberg infarction, frybergs`),
  'stress fracture': listed('fatigue fracture, stress fractures'),
  'stress injury': listed(
    'bone stress injury, bony stress injury, stress reaction, bone stress reaction, stress response, bone stress response, bone stress',
  ),
  synovitis: listed('synovial inflammation, inflamed synovium, synovitic joint, sinovitis'),
  'mtp synovitis': listed(
    'synovitis of the mtp, synovitis of the mtp joint, mtp joint synovitis, synovitic mtp, synovitic mtp joint',
  ),
  capsulitis: listed(
    'mtp capsulitis, inflamed capsule, capsular inflammation, inflammation of the capsule, capsule itis, mtp joint capsulitis',
  ),
  bursitis: listed('inflamed bursa, bursal inflammation, burse itis'),
  'intermetatarsal bursitis':
    listed(`inter metatarsal bursitis, intermetatarsal bursa, intermet bursitis, web space bursitis, interspace bursitis,
    inter met bursitis, inter metatarsal bursa`),
  'inflammatory arthritis': listed(
    'inflammatory arthropathy, inflammatory joint disease, inflammatory disease of the joint, inflammatory arthropathies',
  ),
  'rheumatoid arthritis': listed(
    'rheumatoid, rheumatoid disease, rheumatoid foot, rheumatoid arthropathy, ra, rheumatoid forefoot',
  ),
  osteoarthritis: listed(
    `oa, osteoarthrosis, arthrosis, degenerative arthritis, wear and tear arthritis, degenerative joint disease, degenerative osteoarthritis`,
  ),
  'mtp osteoarthritis':
    listed(`mtp arthritis, mtp oa, mtp joint osteoarthritis, mtp joint oa, mtp joint arthritis, osteoarthritis of the mtp,
    osteoarthritis of the mtp joint, arthritis of the mtp, arthritis of the mtp joint, arthritic mtp, arthritic mtp joint, oa of the mtp,
    oa of the mtp joint`),
  gout: listed('gouty arthritis, gouty arthropathy, gouty joint, urate arthropathy'),
  'fat pad atrophy':
    listed(`atrophic fat pad, fat pad wasting, thin fat pad, thinned fat pad, thinning of the fat pad, fat pad thinning, atrophy of the fat pad,
    atrophied fat pad, fatpad atrophy, wasted fat pad, fat pad loss`),
};

/** What it is taken for. */
export const DIAGNOSIS: Said = {
  diagnosis: {
    finding: {
      ...DIAGNOSES,
      diagnosis: listed('clinical diagnosis, clinical impression, diagnoses'),
    },
    value: {
      ...Object.fromEntries(Object.entries(DIAGNOSES).filter(([written]) => !written.includes('"'))),
      chronic: listed('longstanding, long standing, established'),
      acute: listed('acutely'),
      recurrent: listed('recurring'),
      early: listed('incipient'),
    },
  },
};
