/** A published source, or one of the two honest alternatives to it. */
export interface Source {
  readonly citation: string;
  readonly doi?: string;
  readonly pmid?: string;
}

/** The bibliography, data only. Marks (read, secondary, memory) stand where a fact is used, since one paper may be known for one figure only. */
export const SOURCES = {
  'common practice': { citation: 'Common practice of forefoot specialists; the local protocol takes precedence.' },
  'from memory': { citation: 'Recalled, to be verified against the publication before it is relied on.' },
  BETT15: {
    citation:
      'Bettin CC et al. Cigarette smoking increases complication rate in forefoot surgery. Foot Ankle Int 2015.',
  },
  CANC17: {
    citation:
      'Cancienne JM et al. HbA1c as a predictor of infection following elective forefoot surgery. Foot Ankle Int 2017.',
  },
  COUGH11: {
    citation: 'Coughlin MJ, Baumfeld DS, Nery C. Phys Sportsmed 2011;39(3):132-141.',
    doi: '10.3810/psm.2011.09.1929',
    pmid: '22030949',
  },
  FLEI14: {
    citation: 'Fleischer AE et al. Drawer sign and third MTP deviation in plantar plate tear.',
    pmid: '25239377',
  },
  GREGG06: {
    citation: 'Gregg J, Silberstein M, Schneider T, Marks P. Eur Radiol 2006;16:2661-2669.',
    doi: '10.1007/s00330-006-0345-8',
    pmid: '16819605',
  },
  HEALIO15: {
    citation: 'Description of the vertical stress and paper tests, as reported in a specialist page (secondary).',
  },
  HIGH11: { citation: 'Highlander P et al. Complications of the Weil osteotomy, review. Foot Ankle Spec 2011.' },
  KAZ07: { citation: 'Kaz AJ, Coughlin MJ. Foot Ankle Int 2007;28:1223.', doi: '10.3113/FAI.2007.1223' },
  KLEIN13E: {
    citation: 'Klein EE, Weil L Jr, Weil LS Sr, Coughlin MJ, Knight J. Foot Ankle Int 2013;34(6):800-804.',
    pmid: '23696184',
  },
  KIT94: { citation: 'Kitaoka HB et al. Clinical rating systems. Foot Ankle Int 1994;15(7):349-353.' },
  LACH18: { citation: 'Modified Lachman test, cadaver study of 18 second MTP joints.', pmid: '30448184' },
  MAHA15: {
    citation: 'Mahadevan D et al. J Foot Ankle Surg 2015;54(4):549-553.',
    doi: '10.1053/j.jfas.2014.09.021',
    pmid: '25432459',
  },
  MART05: { citation: 'Martin RL et al. Foot and Ankle Ability Measure. Foot Ankle Int 2005.' },
  'NERY-RF': { citation: 'Nery C et al. J Orthop Surg Res 2015;10.', doi: '10.1186/s13018-015-0318-1' },
  NERY11: { citation: 'Nery C, Coughlin MJ, Baumfeld D, Mann TS. Revista ABTPé 2011 (Dec).' },
  NERY15: { citation: 'Nery C et al. Rev Bras Ortop 2015;50(6):720-728.' },
  PECK12: { citation: 'Peck CN, Macleod A, Barrie J. Foot Ankle Int 2012;33:565-570.', doi: '10.3113/FAI.2012.0565' },
  PIQ09: { citation: 'Piqué-Vidal. J Foot Ankle Res 2009;2:15.' },
  PLANT196: { citation: 'Plantar approach to plantar plate repair, 196 repairs of 2013 to 2023.' },
  PROT: { citation: 'Second metatarsal protrusion against plantar plate rupture, 211 feet.' },
  REIS89: { citation: 'Reis ND, Karkabi S, Zinman C. J Bone Joint Surg Br 1989;71-B:864.' },
  THOMP87: { citation: 'Thompson FM, Hamilton WG. Orthopedics 1987;10:83-89.' },
  UMANS14: { citation: 'Umans H et al. Skeletal Radiol 2014.', doi: '10.1007/s00256-014-1920-8' },
  VANDIJK: { citation: 'van Dijk BT et al. Rheumatology 2022;61:4107-4112.', doi: '10.1093/rheumatology/keac019' },
  BOSCH15: { citation: 'van den Bosch WB et al. Squeeze test. Ann Rheum Dis 2015;74:1886.' },
  ZAN97: { citation: 'Zanetti M et al. Radiology 1997;203(2):516-520.' },
} as const satisfies Readonly<Record<string, Source>>;

export type SourceKey = keyof typeof SOURCES;
