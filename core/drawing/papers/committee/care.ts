import type { PumpKind } from '../../../record/headworks.ts';
import type { PictogramId } from '../../pictograms/pictogram.ts';

/**
 * What is to be done to keep a well going, with the pictogram beside it. Common practice of
 * village water supply; what the maker of a pump asks for comes first.
 */
const signs = {
  sweep: 'broom',
  bolts: 'spanner',
  fence: 'fence',
  strokes: 'strokes',
  drain: 'drain',
  grease: 'grease',
  prime: 'bucket',
  ropeLook: 'rope',
  wheelOil: 'grease',
  cover: 'cover',
  bucketClean: 'bucket',
  bucketRope: 'rope',
  windlassOil: 'grease',
  flow: 'flow',
  panels: 'panel',
  cables: 'cable',
  meter: 'book',
  seals: 'seals',
  lift: 'lift',
  ropeNew: 'rope',
  bucketRopeNew: 'rope',
  electrician: 'cable',
  mechanic: 'lift',
  level: 'level',
  sample: 'sample',
} as const satisfies Record<string, PictogramId>;

export type CareTask = keyof typeof signs;

export function signOf(task: CareTask): PictogramId {
  return signs[task];
}

export const carePeriods = ['week', 'month', 'year'] as const;
export type CarePeriod = (typeof carePeriods)[number];

type Calendar = Readonly<Record<CarePeriod, readonly CareTask[]>>;

const plans = {
  rope: {
    week: ['sweep', 'ropeLook', 'cover'],
    month: ['wheelOil', 'bolts', 'drain'],
    year: ['ropeNew', 'level', 'sample'],
  },
  direct: {
    week: ['sweep', 'bolts', 'fence'],
    month: ['strokes', 'drain'],
    year: ['seals', 'level', 'sample'],
  },
  lever: {
    week: ['sweep', 'bolts', 'fence'],
    month: ['strokes', 'grease', 'drain'],
    year: ['lift', 'level', 'sample'],
  },
  suction: {
    week: ['sweep', 'prime', 'fence'],
    month: ['strokes', 'bolts', 'drain'],
    year: ['seals', 'level', 'sample'],
  },
  mains: {
    week: ['sweep', 'flow', 'fence'],
    month: ['meter', 'cables', 'drain'],
    year: ['electrician', 'level', 'sample'],
  },
  sun: {
    week: ['sweep', 'flow', 'fence'],
    month: ['panels', 'cables', 'drain'],
    year: ['electrician', 'level', 'sample'],
  },
  bucket: {
    week: ['sweep', 'bucketClean', 'cover'],
    month: ['bucketRope', 'windlassOil', 'drain'],
    year: ['bucketRopeNew', 'level', 'sample'],
  },
  other: {
    week: ['sweep', 'bolts', 'fence'],
    month: ['flow', 'drain'],
    year: ['mechanic', 'level', 'sample'],
  },
} as const satisfies Record<string, Calendar>;

export type CarePlan = keyof typeof plans;

const planOfKind: Readonly<Record<PumpKind, CarePlan>> = {
  ropeAndWasher: 'rope',
  directAction: 'direct',
  deepwellLever: 'lever',
  extraDeepLever: 'lever',
  suction: 'suction',
  electricSubmersible: 'mains',
  solarSubmersible: 'sun',
  bucketAndWindlass: 'bucket',
  other: 'other',
};

/** The plan of a kind of pump; the general one where the kind is not known. */
export function carePlan(kind: PumpKind | undefined): CarePlan {
  return kind === undefined ? 'other' : planOfKind[kind];
}

export function careCalendar(plan: CarePlan): Calendar {
  return plans[plan];
}
