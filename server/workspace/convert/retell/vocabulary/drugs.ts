import type { Said } from './index.ts';
import { said } from './said.ts';

/** How often a drug is taken. */
const DOSES: Readonly<Record<string, readonly string[]>> = {
  'once a day': said('once per day, o d, once each day, every day, every morning, every evening'),
  'twice a day': said('b d, b i d, twice per day, 2 times a day, 2 times daily, two times a day, two times daily'),
  'three times a day': said(
    't d s, t i d, three times daily, 3 times daily, 3 times a day, thrice daily, thrice a day',
  ),
  'four times a day': said('q d s, q i d, four times daily, 4 times daily, 4 times a day'),
  weekly: said('every week, once per week'),
  'every two weeks': said('every 2 weeks, every other week, every fortnight'),
  '"micrograms"': said('micrograms, microgram, mcg'),
  '"units"': said('units'),
  'as needed': said('p r n, on demand, as necessary, on an as needed basis'),
};
const WHY: Readonly<Record<string, readonly string[]>> = {
  'atrial fibrillation': said('atrial fib, afib, irregular heartbeat'),
  'a mechanical heart valve': said('metal valve, metal heart valve'),
  'a stent': said('stents, cardiac stent, coronary stent, coronary stents'),
  'a tia': said('mini stroke, mini strokes, tias'),
  'a stroke': said('cva, strokes'),
};

/** Other spellings of a drug, as recognisers print them, and its other generic name. */
const MEDICINES_SAID: Readonly<Record<string, readonly string[]>> = {
  paracetamol: said('acetaminophen, paracetomol, para cetamol, paracetamols'),
  'co-codamol': said('co codamol, cocodamol, codamol'),
  codeine: said('codein, codeine phosphate'),
  tramadol: said('tramidol, tramadole'),
  amitriptyline: said('amitriptylin, amitryptiline, amitriptiline, amitryptyline'),
  gabapentin: said('gabba pentin, gaba pentin, gabapentine'),
  pregabalin: said('pregabaline, pregabalen'),
  duloxetine: said('duloxatine, duloxetin'),
  capsaicin: said('capsaicin cream, capsacin, capsaicin ointment'),
  metformin: said('met formin, metformine'),
  gliclazide: said('glyclazide, gliclazid'),
  amlodipine: said('amlodopine, amlodipin'),
  ramipril: said('rami pril, ramapril'),
  lisinopril: said('lysinopril, lisinipril'),
  losartan: said('losarten'),
  bisoprolol: said('biso prolol, bisoprolole'),
  bendroflumethiazide: said('bendro, bendrofluazide'),
  furosemide: said('frusemide'),
  'a statin': said('statins, statin tablet, statin tablets'),
  atorvastatin: said('atorva statin, atorva'),
  simvastatin: said('simva statin'),
  levothyroxine: said('thyroxine, thyroxin, levo thyroxine'),
  sertraline: said('sertralin, sertroline'),
  allopurinol: said('allopurinal, alopurinol'),
  colchicine: said('colchicin, colchisine'),
  omeprazole: said('omeprazol, omiprazole'),
  lansoprazole: said('lanzoprazole, lansoprazol'),
  'a proton pump inhibitor': said('proton pump inhibitor, p p i, ppis'),
  flucloxacillin: said('flu cloxacillin, flucloxacilin'),
  cefalexin: said('kefalexin, cefalexine'),
  'co-amoxiclav': said('coamoxiclav, amoxiclav'),
  doxycycline: said('doxycyclin, doxy, doxicycline'),
  clindamycin: said('clindamicin'),
  'an antibiotic': said('antibiotic tablets, oral antibiotics, course of antibiotics'),
  'a contraceptive pill': said(
    'oral contraceptive, oral contraceptives, oral contraceptive pill, contraceptive pills, birth control pill, birth control pills',
  ),
  'a combined pill': said(
    'combined oral contraceptive, combined contraceptive, combined oral contraceptive pill, combined contraceptive pill',
  ),
  'hormone replacement': said('hormone replacement therapy, h r t'),
  salbutamol: said('albuterol, salbutamole'),
  'a blue inhaler': said('blue inhalers'),
};

/** Drugs, allergies, illnesses, and what speaks against a drug or an operation. */
export const DRUGS: Said = {
  medicine: {
    finding: MEDICINES_SAID,
    value: {
      ...DOSES,
      better: said('helpful, helps, effective, useful'),
      'no relief': said('useless, ineffective'),
    },
  },
  anticoagulant: {
    finding: {
      anticoagulant: said(
        'anticoagulants, blood thinning tablets, blood thinning tablet, blood thinning medication, blood thinning drugs, blood thinner tablets, oral anticoagulant, oral anticoagulants',
      ),
      'anticoagulant doac': said('noac, noacs, doacs, direct oral anticoagulant'),
      apixaban: said('apixiban, apixaban tablets, apixaban'),
      rivaroxaban: said('rivaroxiban, riveroxaban, rivaroxaban tablets'),
      edoxaban: said('edoxiban, edoxaban tablets'),
      dabigatran: said('dabigatron, dabigatran tablets'),
      warfarin: said('warfarine, warfarin tablets, warferin, coumarin'),
    },
    value: { ...DOSES, ...WHY },
  },
  antiplatelet: {
    finding: {
      antiplatelet: said('antiplatelets, anti platelet, anti platelets, antiplatelet tablets, antiplatelet therapy'),
      aspirin: said('asprin, aspirin tablets'),
      'aspirin "low dose"': said('low dose aspirin, baby aspirin, junior aspirin'),
      clopidogrel: said('clopidigrel, clopidagrel, clopidogrel tablets'),
    },
    value: { ...DOSES, ...WHY },
  },
  'steroid-tablets': {
    finding: {
      'steroid-tablets': said(
        'oral corticosteroids, oral corticosteroid, systemic steroids, systemic steroid, steroid pills, steroids by mouth, maintenance steroids, cortisone tablets, corticosteroid tablets, oral cortisone, maintenance oral steroids',
      ),
      prednisolone: said(
        'prednisilone, oral prednisolone, prednisolone tablets, prednisalone, maintenance prednisolone',
      ),
      prednisone: said('oral prednisone, prednisone tablets'),
    },
    value: DOSES,
  },
  antirheumatic: {
    finding: {
      antirheumatic: said(
        'disease modifying drug, disease modifying drugs, disease modifying agent, disease modifying agents, disease modifying medication, antirheumatics, anti rheumatic',
      ),
      methotrexate: said('metho trexate, methatrexate, methotrexat, methotrexate tablets, methotrexate injections'),
      sulfasalazine: said('sulphasalazine, sulfasalazin, sulpha salazine'),
      leflunomide: said('leflunamide'),
      hydroxychloroquine: said('hydroxy chloroquine, hydroxychloroquin'),
    },
    value: DOSES,
  },
  biologic: {
    finding: {
      biologic: said(
        'biological drug, biologicals, biological therapy, biologic therapy, biologic agent, biologic agents, biologic injections, biologic treatment, biological treatment',
      ),
      'anti tnf': said(
        'anti t n f, anti tnf therapy, anti tnf injections, tnf blocker, tnf blockers, tnf inhibitor, tnf inhibitors',
      ),
      adalimumab: said('adalimumab injections, adalumimab'),
      etanercept: said('etanacept, etanercept injections'),
      rituximab: said('rituximab infusions, ritoximab'),
      tocilizumab: said('tocilizumab infusions, tocilizumab injections'),
    },
    value: DOSES,
  },
  bisphosphonate: {
    finding: {
      bisphosphonate: said(
        'bisphosphonate tablets, bisphosphonate therapy, bisphosphonate treatment, biphosphonate, biphosphonates',
      ),
      alendronate: said('alendronic, alendronic acid tablets, alendronate tablets, alendronate sodium'),
      risedronate: said('risedronic acid, risedronate sodium'),
      zoledronate: said('zoledronic acid, zoledronate infusions'),
    },
  },
  allergy: {
    finding: {
      allergy: said(
        'allergic reaction to, hypersensitive to, hypersensitivity to, allergic reactions to, known allergy, known allergies, drug allergy to',
      ),
      'allergy to any drug': said(
        'drug allergy, drug allergies, medication allergy, medication allergies, medicine allergies, allergic to any medication, allergic to any medicine',
      ),
      'allergy anaphylaxis': said('anaphylaxis to, anaphylactic to, anaphylactic reaction to, anaphylaxis with'),
      'allergy rash': said('rash with, rash to, comes out in a rash with, rash from'),
    },
    value: {
      tape: said('adhesive tape, sticky tape, surgical tape, strapping tape'),
      adhesive: said('adhesives, adhesive dressings, sticky dressings'),
      plaster: said('sticking plasters, adhesive plasters'),
      latex: said('latex gloves, latex rubber'),
      metal: said('metals'),
      nickel: said('nickle, nickel jewellery, nickel jewelry'),
      iodine: said('iodine prep, povidone iodine, povidone'),
      chlorhexidine: said('chlorhexadine, clorhexidine, chlorhexidine prep'),
      penicillin: said('penicillins, penicilin, pencillin, pcn, p c n'),
      'anti-inflammatory': said('anti inflammatories, anti inflammatory drugs, anti inflammatory tablets'),
      'local anaesthetic': said('local anesthetic, local anaesthetics, local anesthetics'),
      lidocaine: said('lignocaine'),
      'any drug': said('medication, medications, medicines, any medicine, any medication, any drugs'),
      rash: said('rashes, skin rash, itchy rash, gets a rash, comes out in a rash'),
      anaphylaxis: said('anaphylactic shock, anaphylactic reaction'),
      'stomach upset': said(
        'upset stomach, tummy upset, upsets her stomach, upsets his stomach, gastric upset, gastrointestinal upset, gi disturbance, upsets the stomach',
      ),
      nausea: said('nauseous, nauseated, feeling sick, feels sick'),
      codeine: said('codein'),
      flucloxacillin: said('flu cloxacillin'),
      'co-amoxiclav': said('coamoxiclav'),
      doxycycline: said('doxycyclin, doxy'),
    },
  },
  'ulcer-or-bleed': {
    finding: {
      'stomach ulcer': said('stomach ulcers, ulcer in the stomach, gastric ulcers, gastric ulceration'),
      'peptic ulcer': said('peptic ulcers, peptic ulcer disease, peptic ulceration'),
      'duodenal ulcer': said('duodenal ulcers, duodenal ulceration'),
      'gi bleed': said(
        'g i bleed, gastrointestinal bleed, gi bleeding, gastrointestinal bleeding, gastrointestinal haemorrhage, gi haemorrhage, g i bleeding',
      ),
      'gastric bleed': said(
        'stomach bleed, stomach bleeding, gastric bleeding, gastric haemorrhage, bleeding from the stomach',
      ),
    },
  },
  'kidney-disease': {
    finding: {
      'kidney-disease': said('kidney problems, renal problems, kidney trouble, kidney condition'),
      ckd: said('chronic kidney disease, chronic renal disease, c k d'),
      'kidney failure': said('chronic renal failure, chronic kidney failure'),
      'renal impairment': said(
        'impaired renal function, impaired kidney function, kidney impairment, poor renal function, poor kidney function, renal insufficiency, kidney insufficiency, renal dysfunction, kidney dysfunction',
      ),
    },
  },
  'heart-failure': {
    finding: {
      'heart-failure': said(
        'congestive heart failure, congestive cardiac failure, chf, c h f, c c f, left ventricular failure, lvf, congestive failure',
      ),
    },
  },
  'heart-disease': {
    finding: {
      'heart-disease': said(
        'heart problems, heart problem, cardiac problems, heart condition, heart trouble, cardiac condition',
      ),
      'ischaemic heart disease': said('coronary artery disease, coronary heart disease, coronary disease, c a d'),
    },
  },
  'clot-history': {
    value: {
      dvt: said('deep vein thrombosis, deep venous thrombosis, d v t, dvts, in the leg, in the calf'),
      pe: said('pulmonary embolism, pulmonary embolus, p e, on the lung, in the lung'),
      vte: said('venous thromboembolism, thromboembolism'),
    },
  },
  thrombophilia: {
    finding: {
      thrombophilia: said(
        'thrombophilic, hypercoagulable, hypercoagulable state, hypercoagulability, clotting tendency, tendency to clot, prothrombotic',
      ),
    },
  },
  'cancer-history': { finding: { 'cancer-history': said('cancer survivor') } },
  diabetes: {
    finding: {
      diabetes: said('sugar diabetes, diabetic patient, diabetes mellitis'),
      'diabetes type 2': said(
        'niddm, n i d d m, mature onset diabetes, maturity onset diabetes, adult onset diabetes, late onset diabetes, type ii diabetes, type ii diabetic, t 2 d m',
      ),
      'diabetes type 1': said('juvenile diabetes, juvenile onset diabetes, type i diabetes, type i diabetic, t 1 d m'),
    },
    value: {
      diet: said(
        'diet control, diet alone, controlled by diet, controlled on diet, controlled with diet, dietary control, managed by diet, managed with diet, dietary management',
      ),
      tablets: said(
        'tablet controlled, oral hypoglycaemics, oral hypoglycemics, oral agents, oral medication, pills, oral antidiabetics, controlled with tablets, tablet treated, oral hypoglycaemic',
      ),
      insulin: said(
        'insulin dependent, insulin treated, insulin requiring, insulin controlled, insulin injections, takes insulin, uses insulin, insulin pump',
      ),
      metformin: said('met formin, takes metformin, metformine'),
      '"well controlled"': said('well controlled, good control, good glycaemic control, good glycemic control'),
      '"poorly controlled"': said(
        'poorly controlled, badly controlled, poor control, poor glycaemic control, poor glycemic control, uncontrolled',
      ),
    },
  },
  smoking: {
    finding: {
      'smoking current': said(
        'smokes cigarettes, smokes tobacco, cigarette smoker, active smoker, daily smoker, regular smoker, tobacco smoker, continues to smoke, carries on smoking, tobacco user',
      ),
      'smoking current "heavy"': said('heavy smoker, chain smoker'),
      'smoking current "light"': said('light smoker'),
      'smoking current "occasional"': said('occasional smoker, social smoker, smokes socially'),
      'smoking current "cigars"': said('smokes cigars, cigar smoker'),
      'smoking current "pipe"': said('smokes a pipe, pipe smoker'),
      'smoking current "roll ups"': said('smokes roll ups, smokes rollies'),
      'smoking ex': said(
        'reformed smoker, gave up cigarettes, gave up tobacco, gave up the cigarettes, quit cigarettes, quit tobacco, packed in smoking, given up smoking, has quit smoking',
      ),
      'smoking non-smoker': said('nonsmoker, non smoking, tobacco free, non tobacco user'),
      'smoking vaping': said(
        'vaper, uses a vape, e cigarettes, e cigarette user, e cigs, uses e cigarettes, uses an e cigarette, electronic cigarettes, vape user, vapes daily',
      ),
    },
    value: {
      '"pack a day"': said('pack a day, packet a day, pack per day, one pack a day, 1 pack a day'),
      '"half a pack a day"': said('half a pack a day, half pack a day, half a packet a day'),
      '"2 packs a day"': said('2 packs a day, two packs a day'),
      ex: said('gave up, given up'),
      current: said('active, ongoing'),
      vaping: said('vape, e cigarettes, e cigs'),
    },
  },
  neuropathy: {
    finding: {
      neuropathy: said('polyneuropathy, peripheral polyneuropathy, neuropathies'),
      'diabetic neuropathy': said('diabetic peripheral neuropathy, diabetic polyneuropathy'),
    },
  },
  'inflammatory-arthritis': {
    finding: {
      'inflammatory-arthritis': said(
        'inflammatory arthropathy, inflammatory joint disease, inflammatory polyarthritis',
      ),
      'rheumatoid arthritis': said('rheumatoid disease, rheumatoid patient, seropositive rheumatoid'),
      'psoriatic arthritis': said('psoriatic arthropathy, psoriatic joint disease'),
      spondyloarthritis: said('spondyloarthropathy, spondylarthritis, spondylo arthritis'),
    },
  },
  gout: {
    finding: {
      gout: said(
        'gouty, gouty arthritis, gouty attacks, attacks of gout, gout sufferer, gouty arthropathy, gout flares',
      ),
    },
  },
  bmi: { finding: { bmi: said('b m i, body mass') } },
  illness: {
    finding: {
      'illness "aches and pains"': said('aches and pains'),
      hypertension: said(
        'hypertensive, raised blood pressure, elevated blood pressure, raised bp, high bp, h t n, hypertensive patient, blood pressure problems',
      ),
      asthma: said('asthmatic'),
      copd: said(
        'c o p d, chronic obstructive pulmonary disease, chronic obstructive airways disease, chronic obstructive lung disease',
      ),
      'atrial fibrillation': said('afib, atrial fib'),
      stroke: said('c v a, cerebrovascular accident, strokes'),
      tia: said('t i a, mini stroke, transient ischaemic attack, transient ischemic attack, tias, mini strokes'),
      'thyroid disease': said(
        'thyroid problems, thyroid trouble, thyroid disorder, thyroid condition, thyroid problem',
      ),
      hypothyroidism: said('hypo thyroid, under active thyroid, hypothyroid disease, low thyroid'),
      epilepsy: said('epileptic'),
      migraine: said('migraines, migraine sufferer'),
      anaemia: said('anaemic, anemia, anemic'),
      psoriasis: said('plaque psoriasis, skin psoriasis'),
      'sleep apnoea': said('sleep apnea, obstructive sleep apnoea, obstructive sleep apnea'),
      'high cholesterol': said('raised cholesterol, elevated cholesterol, hypercholesterolaemia, hypercholesterolemia'),
    },
  },
};
