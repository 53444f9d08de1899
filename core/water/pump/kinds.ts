import type { FlowPoint, PumpKindData, Sourced } from './pumpKind.ts';
import type { Source } from '../../practice/practice.ts';
import { pumpSources as from } from './sources.ts';

function of<T>(value: T, source: Source): Sourced<T> {
  return { value, source };
}

function gives(liftM: number, flowM3h: number, source: Source): FlowPoint {
  return { liftM, flowM3h, source };
}

const litresAMinute = 0.06;
const phGalvanised = of(6.5, from.is15500);

const suction: PumpKindData = {
  id: 'suction',
  recordKind: 'suction',
  drive: 'hand',
  lift: { most: of(7, from.handpumpsBrief) },
  flow: [gives(5, 2, from.trade)],
  users: { most: of(50, from.trade) },
  casing: { least: of(40, from.trade), easy: of(50, from.trade) },
  repair: of('caretaker', from.common),
  closed: true,
  parts: ['riserPipe'],
};

const directAction: PumpKindData = {
  id: 'directAction',
  recordKind: 'directAction',
  drive: 'hand',
  lift: { most: of(15, from.directAction), well: of(12, from.handpumpsBrief) },
  flow: [
    gives(5, 3.5, from.directAction),
    gives(10, 1.8, from.directAction),
    gives(15, 1.2, from.directAction),
  ],
  users: { most: of(300, from.directActionHeavy), lightType: of(100, from.directAction) },
  casing: { least: of(75, from.trade), easy: of(100, from.trade) },
  corrosionProof: from.directActionHeavy,
  repair: of('caretaker', from.common),
  closed: true,
  parts: ['riserPipe', 'pumpRod'],
};

const ropeAndWasher: PumpKindData = {
  id: 'ropeAndWasher',
  recordKind: 'ropeAndWasher',
  drive: 'hand',
  lift: { most: of(35, from.ropePump), well: of(30, from.ropePumpNote) },
  flow: [
    gives(5, 4.5, from.ropePumpNote),
    gives(10, 35 * litresAMinute, from.ropePump),
    gives(20, 17.5 * litresAMinute, from.ropePump),
    gives(35, 10 * litresAMinute, from.practicalAction),
  ],
  users: { most: of(250, from.ropePump), advised: of(100, from.ropePump) },
  casing: { least: of(60, from.ropePump), easy: of(100, from.trade) },
  repair: of('caretaker', from.common),
  closed: false,
  parts: ['riserPipe', 'rope', 'washers'],
};

/** Rated flow of the lever handpump to IS 15500 with a cylinder of 63.5 mm. */
const leverFlow = [gives(10, 1.8, from.is15500), gives(15, 1.3, from.is15500)];

const deepwellOpenTop: PumpKindData = {
  id: 'deepwellOpenTop',
  recordKind: 'deepwellLever',
  drive: 'hand',
  lift: { most: of(30, from.is15500) },
  flow: leverFlow,
  users: { most: of(300, from.is15500) },
  casing: { least: of(100, from.trade), easy: of(125, from.trade) },
  leastPh: phGalvanised,
  repair: of('caretaker', from.is15500),
  closed: true,
  parts: ['riserPipe', 'pumpRod'],
};

const deepwellPlastic: PumpKindData = {
  id: 'deepwellPlastic',
  recordKind: 'deepwellLever',
  drive: 'hand',
  lift: { most: of(45, from.plasticRiser) },
  flow: [
    gives(10, 1.4, from.plasticRiserSpec),
    gives(15, 1.1, from.plasticRiserSpec),
    gives(20, 0.9, from.plasticRiserSpec),
    gives(30, 0.7, from.plasticRiserSpec),
  ],
  users: { most: of(300, from.plasticRiser) },
  casing: { least: of(100, from.trade) },
  corrosionProof: from.plasticRiser,
  repair: of('caretaker', from.plasticRiser),
  closed: true,
  parts: ['riserPipe', 'pumpRod'],
};

const deepwellLever: PumpKindData = {
  id: 'deepwellLever',
  recordKind: 'deepwellLever',
  drive: 'hand',
  lift: { most: of(50, from.is15500) },
  flow: [
    ...leverFlow,
    gives(20, 16.7 * litresAMinute, from.ratedFlow),
    gives(25, 15 * litresAMinute, from.ratedFlow),
  ],
  users: { most: of(300, from.is15500) },
  casing: { least: of(100, from.trade) },
  leastPh: phGalvanised,
  repair: of('areaMechanic', from.is15500),
  closed: true,
  parts: ['riserPipe', 'pumpRod'],
};

const extraDeepLever: PumpKindData = {
  id: 'extraDeepLever',
  recordKind: 'extraDeepLever',
  drive: 'hand',
  lift: { most: of(80, from.is15500) },
  flow: [gives(50, 0.55, from.is15500), gives(60, 0.45, from.is15500)],
  casing: { least: of(100, from.trade) },
  leastPh: phGalvanised,
  repair: of('areaMechanic', from.is15500),
  closed: true,
  parts: ['riserPipe', 'pumpRod'],
};

/** A motor of 4 inches wants 110 to 115 mm; one of 3 inches goes into 100 mm. */
const submersible = {
  flow: [],
  casing: { least: of(100, from.trade), easy: of(110, from.trade) },
  repair: of('workshop', from.common),
  closed: true,
  parts: ['riserPipe', 'cable', 'safetyRope'],
} as const satisfies Partial<PumpKindData>;

const solarSubmersible: PumpKindData = {
  ...submersible,
  id: 'solarSubmersible',
  recordKind: 'solarSubmersible',
  drive: 'sun',
};

const electricSubmersible: PumpKindData = {
  ...submersible,
  id: 'electricSubmersible',
  recordKind: 'electricSubmersible',
  drive: 'mains',
};

/** A narrow bucket with a flap, on a rope over a drum; nothing of it is in the publications read. */
const bucketAndWindlass: PumpKindData = {
  id: 'bucketAndWindlass',
  recordKind: 'bucketAndWindlass',
  drive: 'hand',
  lift: { most: of(45, from.trade), well: of(20, from.common) },
  flow: [gives(10, 0.6, from.common), gives(20, 0.4, from.common), gives(45, 0.2, from.common)],
  users: { most: of(50, from.common) },
  casing: { least: of(75, from.common), easy: of(100, from.common) },
  repair: of('caretaker', from.common),
  closed: false,
  parts: ['bucketRope'],
};

/** Every kind that is ranked. */
export const pumpKinds: readonly PumpKindData[] = [
  suction,
  directAction,
  ropeAndWasher,
  deepwellOpenTop,
  deepwellPlastic,
  deepwellLever,
  extraDeepLever,
  solarSubmersible,
  electricSubmersible,
  bucketAndWindlass,
];
