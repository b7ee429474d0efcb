import { said } from './said.ts';

/** When and at what a foot hurts, as it is said. */
export const MOMENTS_SAID: Readonly<Record<string, readonly string[]>> = {
  'push-off': said(`on push off, on pushing off, at push off, at toe off, on toe off, pushoff, late stance,
    terminal stance, propulsion, propulsive phase`),
  night: said(
    'overnight, in bed, during the night, through the night, in the night, nighttime, night time, at night time, nightly',
  ),
  barefoot: said('bare foot, barefooted, bare feet, in bare feet, unshod, shoeless, going barefoot'),
  'barefoot on tiles': said('barefoot on the tiles, barefoot on tiled floors, on tiles barefoot, bare feet on tiles'),
  walking: said('with walking, ambulation, ambulating, on ambulation, walks, walking about'),
  running: said('with running, runs, on runs, on the run'),
  'weight-bearing':
    said(`weightbearing, loading, on loading, bearing weight, weight on it, putting weight on it, putting weight through it,
    weight bear, load bearing, on full weight`),
  'end of day': said(`by the end of the day, late in the day, towards the end of the day, close of day,
    end of the working day, end of a long day`),
  evenings: said('evening, of an evening, during the evening'),
  mornings:
    said(`first thing, first thing in the morning, on waking, on rising, on getting up, on getting out of bed, early morning,
    early mornings, first steps in the morning, of a morning`),
  cycling: said('on the bike, biking, riding a bike, bike riding, with cycling'),
  sport: said('playing sport, playing sports, with sport, during sport, sporting'),
  standing: said('with standing, stood up, standing up'),
  'standing "prolonged"': said(
    'prolonged standing, on prolonged standing, standing for long, standing for long periods',
  ),
  'walking "prolonged"': said(
    'prolonged walking, on prolonged walking, walking far, walking long distances, long walks',
  ),
  stairs: said('steps, on the stairs, climbing stairs, going upstairs, going downstairs, stair climbing, with stairs'),
  '"hard floors"': said(
    'hard floors, on hard floors, hard floor, hard surfaces, on hard surfaces, hard ground, on hard ground',
  ),
  '"concrete"': said('on concrete, concrete floors, concrete'),
  '"uneven ground"': said('uneven ground, on uneven ground, rough ground, on rough ground'),
  hills: said('on hills, uphill, inclines, slopes, walking uphill, gradients, up hills, hilly ground'),
  shoes: said('wearing shoes, in footwear, shod, footwear, shoe wear, shoewear'),
  'shoes "closed"': said('closed shoes, in closed shoes, enclosed shoes, closed in shoes'),
  'tight shoes':
    said(`tight footwear, in tight footwear, tight fitting shoes, snug shoes, constrictive shoes, constricting shoes,
    constrictive footwear, constrictive shoe wear, constrictive shoewear, restrictive footwear`),
  'narrow shoes': said('in narrow shoes, narrow footwear, narrow toed shoes, narrow toe box, narrow fitting shoes'),
  'narrow shoes "pointed"': said('pointed shoes, pointy shoes, in pointed shoes'),
  jumping: said('with jumping, on landing jumps'),
  dancing: said('with dancing, dance'),
};
