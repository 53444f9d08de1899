import type { Finding, Severity } from '../base/finding.ts';
import type { RecordPath } from '../base/recordPath.ts';
import type { DepthM } from '../base/units.ts';

/**
 * What resolving a record can say: severity, then the values that the sentence may name besides
 * `fromM` and `toM`. An error is a contradiction within the record; nothing else is.
 */
export const modelFindings = {
  'bore.reversed': ['error'],
  'bore.empty': ['warning'],
  'bore.aboveGround': ['warning'],
  'bore.noDiameter': ['warning'],
  'bore.overlap': ['warning', 'diameterMm', 'otherMm'],
  'bore.gap': ['warning'],
  'bore.diametersUnknown': ['note'],
  'bore.depthNotBelowGround': ['error', 'depthM'],
  'bore.depthAssumed': ['note', 'depthM'],
  'bore.sectionBelowDepth': ['error', 'depthM'],
  'bore.foundBelowDepth': ['error', 'foundM', 'depthM'],
  'sample.reversed': ['error'],
  'sample.belowHole': ['error', 'depthM'],
  'log.reversed': ['error'],
  'log.empty': ['warning'],
  'log.overlap': ['error'],
  'log.sameRange': ['note', 'count'],
  'log.gap': ['warning'],
  'log.short': ['warning'],
  'log.aboveGround': ['warning'],
  'log.belowHole': ['error', 'depthM'],
  'string.noPieces': ['warning', 'string'],
  'string.noLength': ['warning', 'string', 'piece'],
  'string.noDiameter': ['warning', 'string', 'count', 'of'],
  'string.noWall': ['note', 'string', 'count', 'of'],
  'string.wallTooThick': ['error', 'string', 'piece', 'wallMm', 'outsideMm'],
  'string.insideTooWide': ['error', 'string', 'piece', 'insideMm', 'outsideMm'],
  'string.sizesDisagree': ['error', 'string', 'piece', 'outsideMm', 'wallMm', 'insideMm'],
  'string.countTooHigh': ['error', 'string', 'piece', 'count', 'most'],
  'string.insertionTooLong': ['error', 'string', 'piece', 'insertionM'],
  'string.centraliserOffPiece': ['warning', 'string', 'piece', 'heightM', 'lengthM'],
  'string.reducerOneSize': ['warning', 'string'],
  'string.reducerMisfit': ['warning', 'string', 'reducerMm', 'neighbourMm'],
  'string.stepWithoutReducer': ['warning', 'string', 'lowerMm', 'upperMm'],
  'string.placedAtHoleBottom': ['warning', 'string', 'bottomM'],
  'string.placedAtGround': ['warning', 'string'],
  'string.measuredElsewhere': ['warning', 'string', 'measuredM', 'tallyBottomM', 'differenceM'],
  'string.stickUpElsewhere': ['warning', 'string', 'measuredM', 'stickUpM'],
  'string.belowHole': ['error', 'string', 'bottomM', 'depthM'],
  'string.widerThanHole': ['error', 'string', 'outsideMm', 'holeMm'],
  'string.insideWiderThanHole': ['error', 'string', 'insideMm', 'holeMm'],
  'string.widerThanOuter': ['error', 'string', 'outer', 'outsideMm', 'insideMm'],
  'string.noRoomInOuter': ['error', 'string', 'outer', 'sizeMm', 'roomMm'],
  'screen.noStratum': ['warning', 'string'],
  'screen.aboveGround': ['error', 'string'],
  'annulus.reversed': ['error'],
  'annulus.empty': ['warning'],
  'annulus.aboveGround': ['warning', 'fill'],
  'annulus.belowHole': ['error', 'fill', 'depthM'],
  'annulus.noSuchString': ['error', 'fill', 'string'],
  'annulus.aboveString': ['warning', 'fill', 'string'],
  'annulus.insideString': ['warning', 'fill', 'string'],
  'annulus.overlap': ['error', 'fill', 'other'],
  'annulus.unrecorded': ['warning', 'string'],
  'annulus.unrecordedHole': ['note'],
  'level.noStickUp': ['warning', 'readM'],
  'level.stickUpAssumed': ['warning', 'readM', 'stickUpM'],
  'level.aboveGround': ['warning', 'heightM'],
  'level.belowHole': ['error', 'levelM', 'depthM'],
  'strike.aboveGround': ['error', 'heightM'],
  'strike.belowHole': ['error', 'strikeM', 'depthM'],
  'strike.riseBelow': ['error', 'strikeM', 'riseM'],
  'pump.aboveGround': ['error', 'heightM'],
  'pump.belowHole': ['error', 'intakeM', 'depthM'],
  'pump.belowString': ['error', 'intakeM', 'string', 'bottomM'],
  'pump.inOpenHole': ['note', 'intakeM', 'bottomM'],
  'pump.inSump': ['warning', 'intakeM'],
  'pump.cylinderBelowIntake': ['error', 'cylinderTopM', 'intakeM'],
  'pump.widerThanCasing': ['error', 'bodyMm', 'insideMm', 'string'],
} as const satisfies Record<string, readonly [Severity, ...string[]]>;

export type ModelFindingCode = keyof typeof modelFindings;

type ValueNames<C extends ModelFindingCode> = (typeof modelFindings)[C] extends readonly [
  Severity,
  ...infer Names extends readonly string[],
]
  ? Names[number]
  : never;

/** What a finding speaks of in depth; one depth where `toM` is absent. */
export interface Stretch {
  readonly fromM: DepthM;
  readonly toM?: DepthM;
}

/** Makes a finding of the table above. */
export function found<C extends ModelFindingCode>(
  code: C,
  path: RecordPath,
  values: Readonly<Record<ValueNames<C>, string | number>>,
  stretch?: Stretch,
): Finding {
  const { fromM, toM } = stretch ?? {};
  return {
    code,
    severity: modelFindings[code][0],
    path,
    ...(fromM === undefined ? {} : { fromM }),
    ...(toM === undefined ? {} : { toM }),
    values,
  };
}

/** What was resolved of a part of the record, and what is to be said of it. */
export interface Resolved<T> {
  readonly value: T;
  readonly findings: readonly Finding[];
}
