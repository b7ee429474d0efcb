import type { Publication } from './source.ts';

/** Treatment, operation and its risks, recovery, and scores. */
export const TREATMENT_SOURCES = {
  ACFAS15: {
    citation:
      "American College of Foot and Ankle Surgeons' clinical consensus statement: risk, prevention and diagnosis of venous thromboembolism in foot and ankle surgery. J Foot Ankle Surg 2015.",
    unidentified: true,
    year: 2015,
    design: 'guideline',
    n: 'not given',
    known: 'read',
  },
  BETT15: {
    citation:
      'Bettin CC et al. Cigarette smoking increases complication rate in forefoot surgery. Foot Ankle Int 2015.',
    unidentified: true,
    year: 2015,
    design: 'cohort',
    n: '602 patients',
    known: 'read',
  },
  BULL16: {
    citation:
      'Incidence of CRPS I following foot and ankle fractures using the Budapest criteria. Pain Med 2016;17(12):2353-2359.',
    pmid: '28025369',
    year: 2016,
    design: 'cohort',
    n: '306 patients',
    known: 'read',
  },
  CANC17: {
    citation:
      'Cancienne JM, Cooper MT, Laroche KA, Verheul DW, Werner BC. HbA1c as a predictor of postoperative infection following elective forefoot surgery. Foot Ankle Int 2017 (journal and year from memory).',
    unidentified: true,
    year: 2017,
    design: 'cohort',
    n: '4630 patients with diabetes',
    known: 'read',
  },
  DOM16: {
    citation: 'Domek N, Dux K, Pinzur M, Weaver F, Rogers T. J Foot Ankle Surg 2016;55(5):939-943.',
    pmid: '27338653',
    year: 2016,
    design: 'cohort',
    n: '21,854 patients',
    known: 'read',
  },
  HIGH11: {
    citation:
      'Highlander P, VonHerbulis E, Gonzalez A, Britt J, Buchman J (authors from memory). Complications of the Weil osteotomy. Foot Ankle Spec 2011;4(3):165-170.',
    doi: '10.1177/1938640011402822',
    pmid: '21490179',
    year: 2011,
    design: 'review',
    n: '17 articles, 1131 osteotomies',
    known: 'read',
  },
  HUMP14: {
    citation: 'Humphers JM, Shibuya N, Fluhman BL, Jupiter D. J Am Podiatr Med Assoc 2014;104(4):320-329.',
    pmid: '24960310',
    year: 2014,
    design: 'cohort',
    n: '322 patients',
    known: 'read',
  },
  HV25: {
    citation:
      'Change that matters and acceptable state of FAAM and VAS after hallux valgus surgery. Foot Ankle Int 2025;46(1):83-91.',
    pmid: '39560209',
    year: 2025,
    design: 'score',
    n: 'not given',
    known: 'read',
  },
  IWGDF23: {
    citation:
      'Schaper NC et al. Practical guidelines (IWGDF 2023 update); Fitridge R et al. IWGDF/ESVS/SVS guideline on peripheral artery disease 2023.',
    doi: '10.1002/dmrr.3657',
    year: 2023,
    design: 'guideline',
    n: 'not given',
    known: 'secondary',
  },
  JUP14: {
    citation: 'Trends in postoperative infection rates and HbA1c. J Foot Ankle Surg 2014;53(3):307-311.',
    pmid: '24246477',
    year: 2014,
    design: 'cohort',
    n: 'not given',
    known: 'read',
  },
  KIT94: {
    citation: 'Kitaoka HB et al. Clinical rating systems. Foot Ankle Int 1994;15(7):349-353.',
    unidentified: true,
    year: 1994,
    design: 'score',
    n: 'not given',
    known: 'from memory, to be verified',
  },
  LEE14: {
    citation: 'Lee PY, Landorf KB, Bonanno DR, Menz HB (authors from memory). J Foot Ankle Res 2014;7:18.',
    unidentified: true,
    year: 2014,
    design: 'measurement',
    n: '37 older adults with forefoot pain',
    known: 'read',
  },
  LILUI24: {
    citation: 'Li CCH, Lui TH. Foot Ankle Clin 2024;29:727-739.',
    pmid: '39448184',
    year: 2024,
    design: 'review',
    n: 'not given',
    known: 'read',
  },
  MART05: {
    citation:
      'Martin RL et al. Evidence of validity for the Foot and Ankle Ability Measure. Foot Ankle Int 2005;26(11):968-983.',
    unidentified: true,
    year: 2005,
    design: 'score',
    n: 'not given',
    known: 'read',
  },
  META: {
    citation:
      'Treatment of lesser MTP joint instability with plantar plate repair: systematic review and meta-analysis (authors not shown).',
    unidentified: true,
    year: 'not given',
    design: 'meta-analysis',
    n: '12 studies, 537 tears',
    known: 'read',
  },
  MYER05: {
    citation:
      'Myerson MS, Jung HG (authors from memory). Role of toe flexor-to-extensor transfer. Foot Ankle Int 2005.',
    unidentified: true,
    year: 2005,
    design: 'case series',
    n: '59 patients, 64 feet',
    known: 'read',
  },
  PAD22: {
    citation: 'Metatarsal pad placement and insole designs. Yonsei Med J 2022.',
    pmid: '36031787',
    year: 2022,
    design: 'measurement',
    n: '16 healthy people',
    known: 'read',
  },
  PLANT196: {
    citation:
      'Second plantar plate repair through a direct plantar approach, 196 repairs of 2013 to 2023 (title and authors not in the copy).',
    unidentified: true,
    year: 'not given',
    design: 'case series',
    n: '196 repairs',
    known: 'read',
  },
  REHAB14: {
    citation: 'Table 2 of PMC4212353, hallux. Sports Health 2014;6:519-526.',
    pmc: 'PMC4212353',
    year: 2014,
    design: 'description',
    n: 'not given',
    known: 'read',
  },
  REHAB15: {
    citation: 'Table 1 of PMC4560019, hallux. J Athl Train 2015;50:553-560.',
    pmc: 'PMC4560019',
    year: 2015,
    design: 'description',
    n: 'not given',
    known: 'read',
  },
  NGSP: {
    citation:
      'NGSP. IFCC standardization of HbA1c: the master equation (ngsp.org/ifcc.asp, read 2026-11), after Hoelzel W et al. Clin Chem 2004;50:166-174 (not read).',
    unidentified: true,
    year: 2004,
    design: 'measurement',
    n: 'not given',
    known: 'read',
  },
  REIS89: {
    citation:
      'Reis ND, Karkabi S, Zinman C. MTP dislocation after local steroid injection. J Bone Joint Surg Br 1989;71-B:864.',
    unidentified: true,
    year: 1989,
    design: 'case report',
    n: 'not given',
    known: 'from memory, to be verified',
  },
  REWH14: {
    citation: 'Rewhorn MJ et al. J Foot Ankle Surg 2014;53(3):256-258.',
    unidentified: true,
    year: 2014,
    design: 'cohort',
    n: '390 patients',
    known: 'read',
  },
  SUTT: {
    citation: 'Sutton R et al. Change that matters for VAS and FAAM-ADL in hallux valgus correction.',
    unidentified: true,
    year: 'not given',
    design: 'score',
    n: '170 patients',
    known: 'read',
  },
  YASS: {
    citation:
      'Yassin M, Garti A, Heller E, Robinson D. Hammertoe correction: K-wire against percutaneous. Foot Ankle Spec.',
    unidentified: true,
    year: 'not given',
    design: 'cohort',
    n: '454 open and 221 percutaneous toes',
    known: 'read',
  },
  ZAMB: {
    citation: 'Zambelli R et al. Prophylaxis of venous thromboembolism in foot and ankle surgery: worldwide survey.',
    unidentified: true,
    year: 'not given',
    design: 'survey',
    n: '693 surgeons',
    known: 'read',
  },
} as const satisfies Readonly<Record<string, Publication>>;
