import type { RecordPath } from '../../base/recordPath.ts';
import type { DepthM } from '../../base/units.ts';

/** What rules may miss in a record. Each has its words in every language of the catalogue. */
export const missingWhats = [
  'boreDiameter',
  'boreDepth',
  'log',
  'moisture',
  'samples',
  'grainOrSieve',
  'restLevel',
  'dryLevel',
  'pumpingLevel',
  'designRate',
  'strings',
  'pipeDiameter',
  'pipeWall',
  'pipeMaterial',
  'slotWidth',
  'openArea',
  'packGrain',
  'packSieve',
  'fills',
  'poured',
  'measuredDepth',
  'centralisers',
  'stickUp',
  'pumpIntake',
  'pumpBody',
  'dates',
  'pad',
  'drain',
  'surroundings',
  'distance',
  'pitBase',
  'development',
  'turbidityOrSand',
  'disinfection',
  'waterSample',
  'waterResult',
  'testRate',
  'users',
  'state',
] as const;

export type MissingWhat = (typeof missingWhats)[number];

/** What a rule would need in order to judge, and where in the record it belongs. */
export interface Missing {
  readonly what: MissingWhat;
  readonly path: RecordPath;
  readonly fromM?: DepthM;
  readonly toM?: DepthM;
}
