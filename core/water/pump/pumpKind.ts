import type { Metres, Millimetres } from '../../base/units.ts';
import type { Source } from '../../practice/practice.ts';
import type { PumpKind } from '../../record/headworks.ts';

/** Generic kinds of pump that are ranked, in the order of their table. */
export const rankedKinds = [
  'suction',
  'directAction',
  'ropeAndWasher',
  'deepwellOpenTop',
  'deepwellPlastic',
  'deepwellLever',
  'extraDeepLever',
  'solarSubmersible',
  'electricSubmersible',
  'bucketAndWindlass',
] as const;
export type RankedKind = (typeof rankedKinds)[number];

/** A figure of the table with its source. */
export interface Sourced<T> {
  readonly value: T;
  readonly source: Source;
}

/** What a pump gives at a lift. */
export interface FlowPoint {
  readonly liftM: Metres;
  readonly flowM3h: number;
  readonly source: Source;
}

/**
 * Who can put it right: a caretaker of the village with hand tools, a mechanic of the area with
 * lifting gear and special tools, or a workshop with somebody who works on electricity.
 */
export const repairLevels = ['caretaker', 'areaMechanic', 'workshop'] as const;
export type RepairLevel = (typeof repairLevels)[number];

export type PumpDrive = 'hand' | 'mains' | 'sun';

/** Pieces that lead from the intake to the surface. */
export const pumpPartIds = [
  'riserPipe',
  'pumpRod',
  'rope',
  'washers',
  'cable',
  'safetyRope',
  'bucketRope',
] as const;
export type PumpPartId = (typeof pumpPartIds)[number];

/** A generic kind of pump, each figure with its source. */
export interface PumpKindData {
  readonly id: RankedKind;
  /** How the record calls it. */
  readonly recordKind: PumpKind;
  readonly drive: PumpDrive;
  /** Greatest lift; `wellM`, where it is less, up to which it works well. Absent: by its curve. */
  readonly lift?: { readonly most: Sourced<Metres>; readonly well?: Sourced<Metres> };
  /** What one adult gives with it, about 75 W, the smallest lift first. Empty: by its curve. */
  readonly flow: readonly FlowPoint[];
  /** Most users of one pump; `advised` is fewer. Absent: by its flow. */
  readonly users?: {
    readonly most: Sourced<number>;
    readonly advised?: Sourced<number>;
    /** Of a lighter make, which is sold beside the usual one. */
    readonly lightType?: Sourced<number>;
  };
  /** Smallest inside diameter of the casing, and the one from which it goes in with ease. */
  readonly casing: { readonly least: Sourced<Millimetres>; readonly easy?: Sourced<Millimetres> };
  /** Least pH; absent where nothing galvanised hangs in the water. */
  readonly leastPh?: Sourced<number>;
  /** Who says that nothing of it corrodes in the water. */
  readonly corrosionProof?: Source;
  readonly repair: Sourced<RepairLevel>;
  /** Whether hands and dirt are kept from the water. */
  readonly closed: boolean;
  readonly parts: readonly PumpPartId[];
}
