import { within } from './entry.ts';

/** Of the past only with its year (`fusion 1st mtp 2015`). */
export const DATED_SURGERY = {
  weil: 'weil osteotomy',
  'weil osteotomy': 'weil osteotomy',
  'plate repair': 'plate repair',
  'pip fusion': 'pip fusion',
  fusion: 'fusion',
  arthrodesis: 'fusion',
  neurectomy: 'neurectomy',
  bunionectomy: 'bunionectomy',
  'bunion surgery': 'bunion surgery',
  'hv correction': 'hallux valgus correction',
} as const;

/** What was operated on before, in the words that were used. */
export const EARLIER_SURGERY = {
  'plate repair': ['plantar plate repair'],
  'weil osteotomy': ['weil'],
  'tendon transfer': [],
  'flexor transfer': [],
  'pip fusion': ['pip arthrodesis'],
  'toe fusion': [],
  'neuroma excision': [],
  neurectomy: [],
  'hallux valgus correction': ['hv correction'],
  'bunion surgery': ['bunion', 'bunion operation'],
  bunionectomy: [],
  amputation: [],
  fusion: ['arthrodesis'],
  'scarf osteotomy': [],
  'akin osteotomy': [],
  'chevron osteotomy': [],
  'lapidus fusion': [],
  'hammer toe correction': ['hammertoe correction', 'hammer toe surgery'],
} as const;
/** What each counts as where a rule asks for the other. */
export const WIDER_SURGERY = within({
  'tendon transfer': ['flexor transfer'],
  'pip fusion': ['toe fusion'],
  'neuroma excision': ['neurectomy'],
  'hallux valgus correction': ['bunion surgery', 'bunionectomy'],
});
