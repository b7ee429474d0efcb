import { AMOUNT, HURTS, PAINLESS } from './amounts.ts';
import type { Said } from './index.ts';

const FULL: readonly string[] = [
  ...['preserved', 'well preserved', 'excellent', 'free'],
  ...['unrestricted', 'maintained', 'complete', 'intact'],
];
const SHORT: readonly string[] = ['decreased', 'poor', 'diminished', 'curtailed'];

/** How far and how freely the joints of a toe and its ray move, and where the great toe leans. */
export const RANGES: Said = {
  'mtp-motion': {
    finding: {
      'rom good': [
        ...['mtp moves well', 'mtp moves freely'],
        ...['mtpj moves well', 'mtpj moves freely', 'toe moves well'],
      ],
      rom: [
        ...['range of movement', 'mtp motion', 'mtp range', 'mtp movement', 'mtp movements', 'toe motion'],
        ...['toe range', 'toe movement', 'toe movements', 'r o m', 'range of motions', 'mtpj range', 'mtpj motion'],
        ...['mtpj movement'],
      ],
    },
    value: { full: FULL, limited: SHORT, painful: HURTS, painless: PAINLESS },
  },
  'mtp-dorsiflexion': {
    finding: {
      'mtp-dorsiflexion': [
        ...['dorsi flexion', 'dorsiflexion range'],
        ...['range of dorsiflexion', 'dorsiflection', 'mtp dorsiflexes'],
      ],
    },
    value: { full: [...FULL, 'good', 'normal'], limited: SHORT, painful: HURTS, painless: PAINLESS },
  },
  'mtp-plantarflexion': {
    finding: {
      'mtp-plantarflexion': [
        ...['planter flexion', 'plantarflexion range', 'range of plantarflexion', 'plantarflection'],
        ...['plantar flection'],
      ],
    },
    value: { full: [...FULL, 'good', 'normal'], limited: SHORT, painful: HURTS, painless: PAINLESS },
  },
  'pip-motion': {
    finding: {
      'pip-motion': [
        ...['pip movement', 'pip range of motion', 'pip flexes'],
        ...['pip bends', 'pip movements', 'pip flexion range'],
      ],
    },
    value: { full: [...FULL, 'good', 'normal'], limited: SHORT, painful: HURTS, painless: PAINLESS },
  },
  'pip-contracture': {
    finding: {
      'pip-contracture': [
        ...['pip flexion contracture', 'pip ffd', 'pip fixed flexion', 'pip fixed flexion deformity'],
        ...['flexion contracture of the pip'],
      ],
    },
  },
  grind: {
    finding: {
      grind: [
        ...['grinds', 'axial grind', 'compression grind'],
        ...['axial grind test', 'grinding test', 'axial grinding'],
      ],
    },
    value: { painful: HURTS, painless: PAINLESS },
  },
  'ray-mobility': {
    finding: {
      mobility: ['ray motion', 'ray movement', 'mobility of the ray', 'ray excursion'],
      hypermobile: ['hyper mobile', 'excessively mobile', 'overly mobile', 'hypermobile ray'],
    },
    value: {
      hypermobile: ['increased', 'excessive', 'hyper mobile', 'too much', 'exaggerated'],
      normal: ['physiological'],
      stiff: ['rigid', 'restricted', 'limited'],
    },
  },
  'hallux-valgus': {
    finding: {
      'hallux-valgus': [
        ...['halux valgus', 'hallus valgus', 'hallux valgus deformity', 'hallux abducto valgus', 'hav'],
        ...['hallux abductovalgus', 'h a v', 'h v', 'valgus hallux', 'valgus big toe', 'valgus great toe'],
        ...['hallux in valgus', 'hallux is in valgus', 'big toe in valgus', 'great toe in valgus'],
      ],
      bunion: ['bunion deformity', 'bunions', 'bunion bump', 'bunion prominence', 'bunyan', 'bunyon'],
    },
    value: AMOUNT,
  },
};
