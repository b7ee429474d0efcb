import type { Said } from './index.ts';
import { listed } from './listed.ts';

const LEVELS: Readonly<Record<string, readonly string[]>> = {
  normal:
    listed(`fine, within normal limits, within normal range, within the normal range, in normal range, in the normal range,
    within range, in range, unremarkable, ok, okay, perfect, satisfactory`),
  raised: listed('increased, above normal, above range, above the normal range, on the high side, out of range high'),
  low: listed(' below normal, below range, below the normal range, on the low side, decreased'),
};
const STATES: Readonly<Record<string, readonly string[]>> = {
  ordered: listed('on order'),
  pending: listed(
    'outstanding, awaiting, results awaited, results pending, result outstanding, still awaited, still pending',
  ),
};
const POSITIVE: Readonly<Record<string, readonly string[]>> = { positive: listed('reactive, strongly positive') };
const level = { value: { ...LEVELS, ...STATES } };
const result = { value: { ...POSITIVE, ...STATES } };

/** What the laboratory found. */
export const LABORATORY: Said = {
  hba1c: {
    finding: {
      hba1c:
        listed(`glycosylated haemoglobin, glycosylated hemoglobin, glycated hemoglobin, haemoglobin a1c, hemoglobin a1c, hb a1c, glycohaemoglobin,
    glycohemoglobin, long term sugar`),
    },
    value: STATES,
  },
  crp: {
    finding: { crp: listed('crp level, c reactive, serum crp, crp count, see rp, crp value, c r p level') },
    ...level,
  },
  esr: {
    finding: {
      esr: listed(
        'sed rate, sedimentation rate, erythrocyte sedimentation rate, erythrocyte sed rate, esr level, e s r level',
      ),
    },
    ...level,
  },
  urate: {
    finding: {
      urate: listed(
        'serum urate, serum uric acid, uric acid level, urate level, uric, urates, plasma urate, uric acid levels, blood urate',
      ),
    },
    ...level,
  },
  'rheumatoid-factor': {
    finding: {
      'rheumatoid factor': listed(
        'ra factor, rheum factor, rheumatoid factors, serum rheumatoid factor, rheumatoid fact',
      ),
    },
    ...result,
  },
  'anti-ccp': {
    finding: {
      'anti-ccp':
        listed(`anti ccp antibodies, anti ccp antibody, ccp antibody, anti cyclic citrullinated peptide, anti citrullinated peptide,
        citrullinated peptide antibodies, anti c c p antibodies, anti citrullinated antibodies, anti c c p`),
    },
    ...result,
  },
  'vitamin-d': {
    finding: {
      'vitamin d': listed(
        `vitamin d level, vit d level, vitamin d levels, serum vitamin d, vitamin dee, vitamin d3 level, vitamin d three level`,
      ),
    },
    value: {
      ...LEVELS,
      ...STATES,
      normal: listed('fine, within normal limits, within range, in range, replete, sufficient, adequate, ok, okay'),
      deficient: listed('deficiency, in deficiency'),
      insufficient: listed('insufficiency, suboptimal, inadequate'),
    },
  },
  'white-cells': {
    finding: {
      'white cells':
        listed(`white count, white blood cells, white blood count, white blood cell count, wbcs, leucocyte count, leukocyte count,
        total leucocyte count, total leukocyte count, tlc, t l c, w b c, w c c, white cell, whites, white blood cell`),
    },
    ...level,
  },
  'lab-other': {
    finding: {
      haemoglobin: listed('hemoglobin, hgb, h b, haemoglobin level, hemoglobin level, hb level'),
      creatinine: listed('serum creatinine, creatinine level, creatinin'),
      egfr: listed(' gfr, estimated gfr, glomerular filtration rate, g f r'),
      albumin: listed('serum albumin, albumin level'),
      glucose: listed(
        'blood glucose, blood sugar, sugar, sugars, blood sugars, glucose level, sugar level, plasma glucose',
      ),
      lactate: listed('serum lactate, lactate level'),
      calcium: listed('serum calcium, calcium level'),
      'parathyroid hormone': listed('p t h, parathyroid, parathyroid level, parathormone, parathyroid hormone level'),
      'thyroid function': listed(
        'tfts, t f t, thyroid function tests, thyroid function test, thyroid tests, thyroids, thyroid profile',
      ),
      tsh: listed('t s h, thyroid stimulating hormone'),
      'antinuclear antibodies': listed(
        'antinuclear antibody, anti nuclear antibodies, anti nuclear antibody, antinuclear factor',
      ),
      mrsa: listed('m r s a, mrsa swab, mrsa swabs, mrsa screen, mrsa screening'),
      sodium: listed('serum sodium, sodium level'),
      potassium: listed('serum potassium, potassium level'),
      platelets: listed('platelet count, platelet, plt, platelet level'),
    },
    value: { ...LEVELS, ...STATES, ...POSITIVE },
  },
};
