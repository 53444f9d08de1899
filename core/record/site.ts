import { z } from 'zod';
import {
  amount,
  chapter,
  count,
  day,
  degrees,
  flag,
  metres,
  oneOf,
  signedMetres,
  text,
} from './fields.ts';

const surroundingKinds = [
  'latrine',
  'septicTank',
  'soakaway',
  'livestock',
  'graveyard',
  'wasteDump',
  'fuelOrChemicals',
  'openWater',
  'building',
  'well',
  'other',
] as const;

const surrounding = chapter({
  kind: oneOf(surroundingKinds, 'What stands there.'),
  distance: metres('From the well.').optional(),
  direction: degrees(0, 360, 'Degrees clockwise from true north.').optional(),
  slope: oneOf(['uphill', 'level', 'downhill'], 'Where it lies from the well.').optional(),
  pitBase: metres('Depth of the pit’s base below its ground.').optional(),
  remark: text('Anything else.'),
});

/** A caretaker with hand tools, a mechanic of the area with lifting gear, an electrical workshop. */
const repairLevels = ['caretaker', 'areaMechanic', 'workshop'] as const;

const committee = chapter({
  name: text('The village water users committee.'),
  chair: text('Who chairs it.'),
  caretaker: text('Who looks after the pump.'),
  telephone: text('Whom to call.'),
}).describe('Who answers for the well in the village.');

/** Where the well is, what stands round it, who uses it. */
export const site = chapter({
  country: text('Country.'),
  region: text('First division.'),
  district: text('Second division.'),
  commune: text('Third division.'),
  village: text('Village.'),
  spot: text('The spot in the village.'),
  latitude: degrees(-90, 90, 'WGS 84, degrees, north positive.').optional(),
  longitude: degrees(-180, 180, 'WGS 84, degrees, east positive.').optional(),
  positionMethod: text('How the position was fixed.'),
  positionAccuracy: metres('How well the position is known.').optional(),
  elevation: signedMetres('Ground level above the elevation datum.').optional(),
  elevationDatum: text('Datum of the elevation.'),
  agreedOn: day('When the village agreed to the site.'),
  surroundings: z.array(surrounding).describe('What could foul the well.').optional(),
  committee: committee.optional(),
  households: count('Households that will use it.').optional(),
  users: amount('People that will use it.').optional(),
  litresPerPersonDay: amount('Water that each is to have, litres a day.').optional(),
  repair: oneOf(repairLevels, 'The best that can put a pump right there.').optional(),
  mains: flag('Electricity from a grid or a generator stands there.'),
  sunHours: amount('Hours of full sun a day on a panel in the poorest month.').optional(),
}).describe('Where the well is, what stands round it, who uses it.');

export type Site = z.infer<typeof site>;
export type Surrounding = z.infer<typeof surrounding>;
