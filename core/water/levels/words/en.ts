import type { LevelWords } from './words.ts';

export const english: LevelWords = {
  assumptions: {
    swingAsGiven: 'The swing of the year is as somebody there told it, not measured.',
    waveBetweenLows: 'Between the months of low the level is taken to rise and fall as a wave.',
    readAtLow: 'The level was read in a month of low, and is taken as the lowest.',
    readAtHigh:
      'Day or months of low are not known: the level that was read is taken as the highest of the year.',
    yearsAlike: 'Years are taken to be alike; after poor rains the level falls lower.',
  },
  dryBy: { said: 'as said in the record', estimated: 'estimated from the swing of the year' },
  criteria: {
    developmentH: 'hours of development, at least',
    turbidityNtu: 'turbidity at the end, at most',
    sandMgL: 'sand at the end, at most',
  },
  states: { met: 'met', notMet: 'not met', cantSay: 'can’t say' },
  missing: {
    boreDiameter: 'diameter of the hole',
    boreDepth: 'depth of the hole',
    restLevel: 'water level at rest',
    development: 'development',
    times: 'start or end of an event',
    rates: 'rate of an event',
    turbidityOrSand: 'turbidity or sand at the end',
  },
  names: {
    hours: 'hours worked',
    pumped: 'water pumped',
    boreVolume: 'hole under water',
    boreVolumes: 'volumes of it pumped',
    turbidity: 'turbidity',
    sand: 'sand',
    end: 'end of development',
    restLevel: 'water level at rest',
    dryRestLevel: 'water level at rest in the dry season',
    pumpingLevel: 'water level while pumping',
    dryPumpingLevel: 'water level while pumping in the dry season',
    seenSwing: 'swing seen',
    atLeast: 'at least',
  },
};
