import type { RecordPath } from '../../base/recordPath.ts';
import type { DepthM, Metres, Millimetres } from '../../base/units.ts';
import type { FigureId } from '../../practice/figures.ts';
import type { Source } from '../../practice/practice.ts';
import type { SaidValues } from './said.ts';
import type { PumpAssumptionId } from './assumptions.ts';
import type { PumpPartId, RankedKind, RepairLevel } from './pumpKind.ts';

/**
 * What a choice of pump is made from besides the record. What the record tells too is taken from
 * here where it is given. All may be absent; what is not given is assumed only where
 * `assumptions.ts` says so, else it is missing.
 */
export interface PumpInputs {
  /** Rate that the well was tested to give for good, cubic metres an hour. */
  readonly safeRateM3h?: number;
  /** Drawdown to be expected while pumping. */
  readonly drawdownM?: Metres;
  /** Between the highest and the lowest rest level of a year. */
  readonly seasonalSwingM?: Metres;
  /** Months in which the level is at its lowest, 1 to 12. */
  readonly lowMonths?: readonly number[];
  readonly users?: number;
  readonly litresPerPersonDay?: number;
  /** Most hours of pumping a day. */
  readonly hoursMost?: number;
  /** Inside diameter of the casing down to the setting depth. */
  readonly casingInsideMm?: Millimetres;
  readonly ph?: number;
  /** The best that can put a pump right there. */
  readonly repair?: RepairLevel;
  /** Whether a supply of electricity stands there. */
  readonly mains?: boolean;
  /** Hours of full sun (1 kW/m²) on the panel's plane in the poorest month, a day. */
  readonly sunHours?: number;
  /** Outlet above ground: of the spout, or of a tank that a submersible fills. */
  readonly outletM?: Metres;
  /** Inside diameter of a submersible's riser and delivery pipe. */
  readonly deliveryInsideMm?: Millimetres;
  /** Pipe from the well's head to the tank. */
  readonly deliveryM?: Metres;
}

export type PumpInputId = keyof PumpInputs;

/** Quantities with the unit that each is told in. */
export const pumpQuantityUnits = {
  needLitresDay: 'l/d',
  liftM: 'm',
  flowM3h: 'm³/h',
  hoursDay: 'h/d',
  fillMinutes: 'min',
  queueMinutes: 'min',
  peopleServed: '1',
  frictionM: 'm',
  totalHeadM: 'm',
  hydraulicW: 'W',
  electricW: 'W',
  energyKwhDay: 'kWh/d',
  panelW: 'W',
} as const;
export type PumpQuantityId = keyof typeof pumpQuantityUnits;
export type PumpUnit = (typeof pumpQuantityUnits)[PumpQuantityId];

/** Where the value of an input comes from; `model` is the well as it is resolved. */
export type PumpInputFrom =
  | { readonly given: PumpInputId }
  | { readonly path: RecordPath }
  | { readonly figure: FigureId }
  | { readonly assumed: PumpAssumptionId }
  | { readonly quantity: PumpQuantityId }
  | 'kind'
  | 'model';

export interface PumpQuantityInput {
  /** As the formula writes it. */
  readonly symbol: string;
  readonly value: number;
  /** As printed; `1` for a plain number. */
  readonly unit: string;
  readonly from: PumpInputFrom;
}

/** A figure that was reckoned, with how. */
export interface PumpQuantity {
  readonly id: PumpQuantityId;
  readonly value: number;
  readonly unit: PumpUnit;
  /** Plain text, as in `t = V / (1000 · min(Q, Qs))`; `n ≤` is the greatest whole number. */
  readonly formula: string;
  readonly inputs: readonly PumpQuantityInput[];
  readonly source: Source;
}

export const reasonCodes = [
  'liftWithin',
  'liftNearMost',
  'liftBeyond',
  'flowReckoned',
  'needMet',
  'longHours',
  'flowTooLow',
  'longQueue',
  'usersWithin',
  'usersAboveAdvised',
  'usersAboveMost',
  'lightType',
  'wellGivesLess',
  'wellShort',
  'casingFits',
  'casingTight',
  'casingAtLimit',
  'casingNarrow',
  'corrosionProof',
  'phHolds',
  'phCorrodes',
  'repairThere',
  'repairBeyond',
  'intakeFits',
  'intakeInScreen',
  'intakeInOpenHole',
  'intakeNoRoom',
  'closed',
  'notClosed',
  'priming',
  'lastResort',
  'noMains',
] as const;
export type ReasonCode = (typeof reasonCodes)[number];

/** What a reason does: rules a kind out, makes it doubtful, or is said only. */
export type ReasonEffect = 'rulesOut' | 'doubts' | 'notes';

/** Why a kind suits or does not: a code with its values, and where the limit comes from. */
export interface Reason {
  readonly code: ReasonCode;
  readonly side: 'for' | 'against';
  readonly effect: ReasonEffect;
  readonly values: SaidValues;
  readonly sources: readonly Source[];
}

/** What would have to be known. */
export const pumpMissingWhats = [
  'restLevel',
  'dryLevel',
  'drawdown',
  'safeRate',
  'users',
  'casingInside',
  'ph',
  'repair',
  'wellFoot',
  'strings',
  'mains',
  'sunHours',
] as const;
export type PumpMissingWhat = (typeof pumpMissingWhats)[number];

/** Where it belongs: in the record, or in what is given besides. */
export interface PumpMissing {
  readonly what: PumpMissingWhat;
  readonly path?: RecordPath;
  readonly given?: PumpInputId;
}

/** Cautions that belong to a kind, or to every one. */
export const cautionCodes = [
  'licensedElectrician',
  'dryRunGuard',
  'dipTube',
  'coolingFlow',
  'storageTank',
  'makersCurve',
  'liftingGear',
  'cleanHands',
  'cover',
  'localRules',
] as const;
export type CautionCode = (typeof cautionCodes)[number];

export const verdicts = ['possible', 'doubtful', 'cantSay', 'ruledOut'] as const;
export type PumpVerdict = (typeof verdicts)[number];

/** Plain pipe is best; slots and open hole only where no plain pipe is left. */
export type IntakePlace = 'plain' | 'screen' | 'openHole';

/** Depths at which the intake may hang, from the shallowest to the deepest. */
export interface IntakeWindow {
  readonly fromM: DepthM;
  readonly toM: DepthM;
  readonly where: IntakePlace;
}

export interface Intake {
  /** Between both margins, from the top down; none where the water is too low for the well. */
  readonly windows: readonly IntakeWindow[];
  /** Where it is taken to hang: the shallowest depth in plain pipe, else in screen or open hole. */
  readonly hangsIn?: IntakeWindow;
  /** Pumping level in the dry season and the margin under it. */
  readonly levelM: DepthM;
  readonly underLevelM: Metres;
  /** Foot of the well and the margin above it. */
  readonly footM: DepthM;
  readonly aboveFootM: Metres;
}

/** A line of the parts list, for the depth of the intake. */
export interface PumpPart {
  readonly id: PumpPartId;
  /** Whole length; absent of what is counted alone. */
  readonly lengthM?: Metres;
  /** How many pieces, of what length each. */
  readonly count?: number;
  readonly eachM?: Metres;
}

export interface KindJudgement {
  readonly kind: RankedKind;
  readonly verdict: PumpVerdict;
  readonly reasons: readonly Reason[];
  /** What keeps it from being judged; also of a kind that is ruled out without. */
  readonly missing: readonly PumpMissing[];
  readonly quantities: readonly PumpQuantity[];
  readonly intake?: Intake;
  readonly parts: readonly PumpPart[];
  readonly cautions: readonly CautionCode[];
}

/** Every kind, the most suitable first; none for a well that nobody draws from. */
export interface PumpRanking {
  readonly kinds: readonly KindJudgement[];
  /** What is needed and how deep the water stands, the same for every kind. */
  readonly quantities: readonly PumpQuantity[];
  readonly missing: readonly PumpMissing[];
}
