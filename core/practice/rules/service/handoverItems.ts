import type { RecordPath } from '../../../base/recordPath.ts';
import type { FillKind } from '../../../record/annulus.ts';
import type { WellRecord } from '../../../record/schema.ts';
import type { HandoverItem } from './words.ts';

/** An item of the handover, where it belongs, and whether a record holds it. */
export interface Expected {
  readonly item: HandoverItem;
  readonly path: RecordPath;
  readonly isThere: (record: WellRecord) => boolean;
}

function isWritten(value: string | undefined): boolean {
  return value !== undefined && value.trim() !== '';
}

function holdsAny(list: readonly unknown[] | undefined): boolean {
  return list !== undefined && list.length > 0;
}

const sealing: readonly FillKind[] = ['claySeal', 'bentonite', 'cementGrout', 'concrete'];

function screens({ strings = [] }: WellRecord) {
  return strings.flatMap(({ components }) => components).filter(({ kind }) => kind === 'screen');
}

/** What holds for any hole, whether it gives water or not. */
const anyHole: readonly Expected[] = [
  {
    item: 'wellNumber',
    path: 'identity.number',
    isThere: ({ identity }) => isWritten(identity?.number),
  },
  { item: 'village', path: 'site.village', isThere: ({ site }) => isWritten(site?.village) },
  {
    item: 'position',
    path: 'site.latitude',
    isThere: ({ site }) => site?.latitude !== undefined && site.longitude !== undefined,
  },
  {
    item: 'supervisor',
    path: 'identity.supervisor',
    isThere: ({ identity }) => isWritten(identity?.supervisor),
  },
  {
    item: 'drillingDates',
    path: 'bore.startedOn',
    isThere: ({ bore }) => bore?.startedOn !== undefined && bore.finishedOn !== undefined,
  },
  {
    item: 'holeDepth',
    path: 'bore.depthReached',
    isThere: ({ bore }) => bore?.depthReached !== undefined,
  },
  { item: 'groundLog', path: 'log', isThere: ({ log }) => holdsAny(log) },
  {
    item: 'supervisorMark',
    path: 'marks',
    isThere: ({ marks = [] }) =>
      marks.some(({ role, on }) => role === 'supervisor' && on !== undefined),
  },
];

/**
 * What a well that serves is handed over with: the items that most published lists of as-built
 * records ask for. Verticality, penetration times, fluid and photographs are good to have, but no
 * well is held back for them.
 */
export const ofCompleted: readonly Expected[] = [
  ...anyHole,
  {
    item: 'client',
    path: 'identity.client',
    isThere: ({ identity }) => isWritten(identity?.client),
  },
  {
    item: 'contractor',
    path: 'identity.contractor',
    isThere: ({ identity }) => isWritten(identity?.contractor),
  },
  {
    item: 'permit',
    path: 'identity.permit',
    isThere: ({ identity }) => isWritten(identity?.permit),
  },
  {
    item: 'purpose',
    path: 'identity.purpose',
    isThere: ({ identity }) => isWritten(identity?.purpose),
  },
  {
    item: 'elevation',
    path: 'site.elevation',
    isThere: ({ site }) => site?.elevation !== undefined,
  },
  {
    item: 'surroundings',
    path: 'site.surroundings',
    isThere: ({ site }) => holdsAny(site?.surroundings),
  },
  {
    item: 'committee',
    path: 'site.committee.name',
    isThere: ({ site }) => isWritten(site?.committee?.name),
  },
  { item: 'method', path: 'bore.method', isThere: ({ bore }) => bore?.method !== undefined },
  {
    item: 'holeDiameter',
    path: 'bore.sections',
    isThere: ({ bore }) => (bore?.sections ?? []).some(({ diameter }) => diameter !== undefined),
  },
  {
    item: 'groundSamples',
    path: 'samples',
    isThere: ({ samples, log = [] }) => holdsAny(samples) || log.some(({ sampled }) => sampled),
  },
  { item: 'waterStrikes', path: 'strikes', isThere: ({ strikes }) => holdsAny(strikes) },
  { item: 'casingTally', path: 'strings', isThere: ({ strings }) => holdsAny(strings) },
  {
    item: 'slotWidth',
    path: 'strings',
    isThere: (record) => screens(record).every(({ slotWidth }) => slotWidth !== undefined),
  },
  { item: 'annulusFills', path: 'annulus', isThere: ({ annulus }) => holdsAny(annulus) },
  { item: 'developed', path: 'development', isThere: ({ development }) => holdsAny(development) },
  {
    item: 'restLevelDated',
    path: 'levels',
    isThere: ({ levels = [] }) =>
      levels.some(({ state, at }) => state === 'static' && at !== undefined),
  },
  { item: 'pumpingTest', path: 'tests', isThere: ({ tests }) => holdsAny(tests) },
  {
    item: 'chlorinated',
    path: 'disinfection',
    isThere: ({ disinfection }) => holdsAny(disinfection),
  },
  {
    item: 'waterAnalysed',
    path: 'quality',
    isThere: ({ quality = [] }) => quality.some(({ results }) => holdsAny(results)),
  },
  {
    item: 'padAndDrain',
    path: 'headworks',
    isThere: ({ headworks }) =>
      headworks?.padThickness !== undefined && headworks.drainLength !== undefined,
  },
  {
    item: 'pumpAndDepth',
    path: 'pump',
    isThere: ({ pump }) =>
      pump?.kind !== undefined && (pump.intake !== undefined || pump.kind === 'bucketAndWindlass'),
  },
];

/** The short form for a hole that was given up: also why, and how it was closed. */
export const ofGivenUp: readonly Expected[] = [
  ...anyHole,
  {
    item: 'reason',
    path: 'notes',
    isThere: ({ notes, bore }) => isWritten(notes) || isWritten(bore?.remark),
  },
  {
    item: 'sealing',
    path: 'annulus',
    isThere: ({ annulus = [] }) => annulus.some(({ fill }) => sealing.includes(fill)),
  },
];
