import type { Said } from './index.ts';
import { each } from './words-of.ts';

/** How much, of a sign after an operation. */
const AMOUNTS = {
  slight: ['bit', 'a touch', 'touch', 'touch of', 'a touch of', 'a tad', 'tad', 'somewhat', 'a shade', 'slight bit'],
  marked: ['extremely', 'terribly', 'badly', 'awfully', 'really very', 'a lot of', 'lots of'],
} as const;

/** The operated toe, how it goes, and what the patient is back at. */
export const LIFE: Said = {
  course: {
    finding: {
      'history course better': ['getting there', 'turned the corner'],
      'history course worse': [...['going downhill', 'going backwards', 'things going downhill', 'heading downhill']],
      'history course steady': [
        ...each(['things', 'symptoms', 'everything', 'foot', 'overall', 'things are', 'symptoms are'], 'much the same'),
        ...each(
          ['things', 'symptoms', 'everything', 'foot', 'overall', 'things are', 'symptoms are'],
          'about the same',
        ),
        ...each(
          ['things', 'symptoms', 'overall', 'things are', 'symptoms are'],
          ...['just the same', 'unchanged', 'static'],
        ),
        ...['status quo', 'things have plateaued', 'symptoms plateaued', 'plateaued', 'symptoms have plateaued'],
      ],
    },
  },
  activity: {
    finding: {
      ...Object.fromEntries(
        ['running', 'jogging', 'walking', 'hiking', 'dancing', 'cycling', 'swimming'].map((sport) => [
          `activity ${sport} "back"`,
          [
            ...[`${sport} again`, `started ${sport} again`, `has started ${sport} again`],
            ...[`resumed ${sport}`, `has resumed ${sport}`, `returned to ${sport}`, `has returned to ${sport}`],
          ],
        ]),
      ),
      'activity football "back"': [
        ...['playing football again', 'back at football', 'resumed football', 'returned to football'],
        ...[],
      ],
      'activity sport "back"': [
        ...['playing sport again', 'back at sport', 'resumed sport', 'returned to sport', 'returned to sports'],
        ...['playing sports again'],
      ],
    },
  },
  work: {
    finding: {
      'work back at work': [
        ...['returned to work', 'back in work', 'back on the job', 'back at the office'],
        ...['back at her job', 'back at his job', 'back to her job', 'back to his job', 'back at her desk'],
        ...['back at his desk', 'working again', 'resumed work', 'back on duty', 'back in the office'],
        ...['went back to work', 'started work again'],
      ],
      'work back at work "part time"': [
        ...['back at work part time', 'back part time', 'working part time again', 'back to work part time'],
      ],
      'work back at work "full time"': ['back at work full time', 'back full time', 'back to work full time'],
      'work back at work "full duties"': ['back on full duties', 'back to full duties', 'back at full duties'],
      'work back at work "light duties"': [
        ...['back on light duties', 'back at work on light duties', 'back to light duties'],
        ...['back to work on light duties'],
      ],
      'work back at work "phased return"': ['on a phased return'],
      'work off work': [
        ...['signed off', 'signed off work', 'off sick', 'off on the sick', 'still off sick', 'off from work'],
      ],
      'work sick leave': [],
      'work desk': ['desk based', 'desk based job', 'desk based work', 'desk work', 'works at a desk'],
      'work sitting': ['sitting job', 'seated job', 'sit down job', 'sedentary job', 'sedentary work', 'sitting work'],
      'work office': [
        ...['works in an office', 'office job', 'office work', 'office worker', 'office based', 'office based job'],
      ],
      'work standing all day': ['stands all day', 'stands all day at work', 'stood up all day at work'],
    },
    value: {
      sitting: ['seated', 'sit down', 'sitting down', 'sedentary', 'mostly sitting', 'mainly sitting'],
      desk: ['desk based', 'desk bound', 'at a desk'],
      'on feet': ['on her feet', 'on his feet', 'on their feet'],
    },
  },
  driving: {
    finding: {
      'driving drives': ['driving again', 'back driving', 'back behind the wheel', 'drives again', 'back to driving'],
      'driving may drive': [
        ...['ok to drive', 'okay to drive', 'fine to drive', 'safe to drive', 'allowed to drive', 'free to drive'],
        ...['can start driving', 'can return to driving', 'can resume driving'],
        ...['can get back to driving', 'happy for her to drive', 'happy for him to drive'],
      ],
    },
  },
  'ordinary-shoes': {
    finding: {
      'ordinary-shoes': [
        ...each(
          ['wearing', 'back in', 'back into', 'transitioned to', 'transitioned into'],
          ...['normal shoes', 'regular shoes', 'her own shoes', 'his own shoes', 'own shoes', 'usual shoes'],
        ),
        ...each(
          ['wearing', 'back in', 'back into'],
          ...['ordinary footwear', 'normal footwear', 'regular footwear', 'own footwear'],
        ),
        ...['back in shoes', 'back into shoes', 'regular shoewear', 'normal shoewear', 'regular shoe wear'],
        ...['normal shoe wear', 'everyday shoes', 'street shoes'],
      ],
      trainers: each(
        ['wearing', 'back in', 'back into', 'walking in', 'transitioned to', 'transitioned into'],
        ...['sneakers', 'tennis shoes', 'gym shoes'],
      ).concat(each(['wearing', 'back in', 'back into', 'transitioned to'], 'trainers')),
    },
  },
  'walking-aid': {
    finding: {
      'walking-aid crutches': [
        ...['uses crutches', 'using crutches', 'elbow crutches', 'walking with crutches', 'walks with crutches'],
        ...['mobilising with crutches', 'mobilising on crutches', 'mobilises on crutches', 'gets about on crutches'],
        ...['pair of crutches', 'walking on crutches', 'walks on crutches', 'still on crutches'],
        ...['mobilizing on crutches'],
      ],
      'walking-aid a stick': [
        ...['uses a stick', 'walks with a stick', 'walking with a stick', 'uses a cane', 'walks with a cane'],
        ...['using a stick', 'walking with a cane', 'walking cane', 'uses one stick', 'mobilises with a stick'],
        ...['using a cane'],
      ],
      'walking-aid a frame': [
        ...['uses a frame', 'walks with a frame', 'walking with a frame', 'mobilises with a frame', 'using a frame'],
      ],
    },
  },
  lifted: {
    finding: {
      'touches the ground': [
        ...each(
          ['sits', 'sitting', 'rests', 'resting', 'lies', 'lying', 'sits nicely', 'sitting nicely', 'rests nicely'],
          ...['on the ground', 'on the floor'],
        ),
        ...each(['meets', 'reaches', 'contacts', 'makes contact with', 'gets down to'], 'the ground', 'the floor'),
        ...['makes ground contact', 'makes floor contact', 'good ground contact', 'full ground contact'],
        ...['touching ground', 'touching floor', 'touching the floor', 'down on the ground', 'down on the floor'],
        ...['back down on the ground', 'back on the ground', 'back on the floor', 'back down on the floor'],
        ...['sits flat', 'lies flat', 'sitting flat', 'comes down to the floor', 'comes down to the ground'],
        ...['flat on the floor', 'flat on the ground'],
      ],
    },
  },
  stiffness: {
    finding: {
      stiffness: [
        ...['stiffened', 'stiffened up', 'stiffish', 'stiffens', 'stiffening', 'stiffening up', 'stiffens up'],
        ...['joint stiff', 'tightness of the joint', 'stiff joint'],
      ],
    },
    value: AMOUNTS,
  },
  recurrence: {
    finding: {
      recurrence: [
        ...['recurrence of deformity', 'recurrence of the deformity', 'deformity has recurred', 'deformity is back'],
        ...['deformity back', 'deformity returned', 'deformity has returned', 'deformity coming back'],
        ...['deformity recurring', 'deformity has come back', 'deformity came back', 'recurring deformity'],
        ...['relapse of deformity', 'deformity relapsed', 'relapsed deformity', 'return of deformity'],
        ...['return of the deformity', 'deformity creeping back', 'deformity has crept back'],
        ...['drifted back to where it started'],
      ],
    },
    value: AMOUNTS,
  },
  'transfer-pain': {
    finding: {
      'transfer-pain': [
        ...['transferred pain', 'transfer pains', 'transfer met pain', 'transfer metatarsal pain'],
        ...['pain transferred', 'transfer symptoms', 'transfer ache', 'transfer type pain', 'transfer overload pain'],
        ...['transfer met algia', 'transfer metatarsalgias', 'transferred metatarsalgia', 'pain has transferred'],
        ...['transfer tarsalgia'],
      ],
      'transfer lesion': ['transfer lesions', 'transfer keratosis', 'transfer callosity', 'transfer callus'],
    },
    value: AMOUNTS,
  },
};
