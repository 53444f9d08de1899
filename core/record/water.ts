import { z } from 'zod';
import { amount, chapter, count, depth, moment, oneOf, signedMetres, text } from './fields.ts';

export const levelDatums = ['ground', 'casingTop'] as const;
export const levelStates = ['static', 'pumping', 'recovering'] as const;

const level = chapter({
  at: moment('When it was read.'),
  reading: signedMetres('Depth of the water below the datum, as read.'),
  datum: oneOf(levelDatums, 'What the tape was read against.'),
  state: oneOf(levelStates, 'What the well was doing.').optional(),
  rate: amount('Pumping rate, cubic metres an hour.').optional(),
  minutesPumped: amount('Minutes since pumping began or stopped.').optional(),
  remark: text('Anything else.'),
});

/** Water levels, as read. */
export const levels = z.array(level).describe('Water levels, as read with their datum.');

const strike = chapter({
  depth: depth('Where water came in.'),
  at: moment('When.'),
  rise: depth('Level that it rose to.').optional(),
  afterMinutes: amount('Minutes until that level.').optional(),
  flow: amount('Flow seen, cubic metres an hour.').optional(),
  remark: text('Anything else.'),
});

/** Water strikes while drilling. */
export const strikes = z.array(strike).describe('Water strikes while drilling.');

const developmentEvent = chapter({
  startedAt: moment('Start.'),
  endedAt: moment('End.'),
  method: oneOf(
    ['surging', 'bailing', 'airLift', 'jetting', 'overpumping', 'backwashing', 'other'],
    'How.',
  ).optional(),
  rate: amount('Rate, cubic metres an hour.').optional(),
  turbidity: amount('Turbidity at the end, NTU.').optional(),
  sand: amount('Sand content at the end, milligrams a litre.').optional(),
  remark: text('Anything else.'),
});

/** Development, event by event. */
export const development = z.array(developmentEvent).describe('Development, event by event.');

const reading = chapter({
  minutes: amount('Since the start of the step, or since pumping stopped for a recovery.'),
  reading: signedMetres('Depth of the water below the datum, as read.'),
  rate: amount('Rate at that time, cubic metres an hour.').optional(),
  step: count('Step of a step test, from 1.').optional(),
});

/** Minutes that are counted as those of the readings are. */
const straightPart = chapter({
  from: amount('First minute of it.').optional(),
  to: amount('Last minute of it.').optional(),
});

const test = chapter({
  kind: oneOf(['step', 'constantRate', 'recovery'], 'Kind of test.'),
  startedAt: moment('Start of pumping, or of the recovery.'),
  datum: oneOf(levelDatums, 'What the tape was read against.').optional(),
  restLevel: signedMetres('Reading before pumping, below the datum.').optional(),
  rate: amount('Rate of a constant-rate test, cubic metres an hour.').optional(),
  minutesPumped: amount('How long it was pumped, minutes.').optional(),
  pumpIntake: depth('Intake of the test pump.').optional(),
  series: z.array(reading).describe('Readings in order of time.').optional(),
  window: straightPart
    .describe(
      'Straight part of the readings, where a person chose it; minutes, both ends included.',
    )
    .optional(),
  remark: text('Anything else.'),
});

/** Pumping tests. */
export const tests = z.array(test).describe('Pumping tests as series.');

export type Level = z.infer<typeof level>;
export type LevelDatum = (typeof levelDatums)[number];
export type LevelState = (typeof levelStates)[number];
export type Strike = z.infer<typeof strike>;
export type DevelopmentEvent = z.infer<typeof developmentEvent>;
export type PumpingTest = z.infer<typeof test>;
