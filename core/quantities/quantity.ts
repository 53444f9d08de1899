import type { RecordPath } from '../base/recordPath.ts';
import type { DepthM, Millimetres } from '../base/units.ts';
import type { AnnulusZone } from '../model/wellModel.ts';
import type { FigureId } from '../practice/figures.ts';
import type { Source } from '../practice/practice.ts';
import type { MissingWhat } from '../practice/rules/missing.ts';
import type { ComponentKind } from '../record/strings.ts';

/** Units that quantities are told in. */
export const quantityUnits = ['litres', 'kg', 'g', 'm', 'sacks', 'pieces', 'trips'] as const;
export type QuantityUnit = (typeof quantityUnits)[number];

export const groupIds = [
  'volumes',
  'gravel',
  'clay',
  'grout',
  'mud',
  'pipes',
  'concrete',
  'water',
  'load',
] as const;
export type GroupId = (typeof groupIds)[number];

/**
 * What is reckoned, each with its group and unit. An id with `Zone` stands once for each zone that
 * it speaks of, and its fellow without is the whole. Those of `pipe…` stand once for each size.
 */
export const quantityKinds = {
  boreLitres: { group: 'volumes', unit: 'litres' },
  annulusZoneLitres: { group: 'volumes', unit: 'litres' },
  annulusLitres: { group: 'volumes', unit: 'litres' },
  insideZoneLitres: { group: 'volumes', unit: 'litres' },
  casingLitres: { group: 'volumes', unit: 'litres' },
  casingWaterLitres: { group: 'volumes', unit: 'litres' },
  gravelZoneLitres: { group: 'gravel', unit: 'litres' },
  gravelZoneKg: { group: 'gravel', unit: 'kg' },
  gravelZoneSacks: { group: 'gravel', unit: 'sacks' },
  gravelLitres: { group: 'gravel', unit: 'litres' },
  gravelKg: { group: 'gravel', unit: 'kg' },
  gravelSacks: { group: 'gravel', unit: 'sacks' },
  clayZoneLitres: { group: 'clay', unit: 'litres' },
  clayZoneKg: { group: 'clay', unit: 'kg' },
  clayZoneSacks: { group: 'clay', unit: 'sacks' },
  clayLitres: { group: 'clay', unit: 'litres' },
  clayKg: { group: 'clay', unit: 'kg' },
  claySacks: { group: 'clay', unit: 'sacks' },
  groutZoneLitres: { group: 'grout', unit: 'litres' },
  groutZoneCementKg: { group: 'grout', unit: 'kg' },
  groutZoneCementSacks: { group: 'grout', unit: 'sacks' },
  groutZoneWaterLitres: { group: 'grout', unit: 'litres' },
  groutLitres: { group: 'grout', unit: 'litres' },
  groutCementKg: { group: 'grout', unit: 'kg' },
  groutCementSacks: { group: 'grout', unit: 'sacks' },
  groutWaterLitres: { group: 'grout', unit: 'litres' },
  mudLitres: { group: 'mud', unit: 'litres' },
  mudAdditiveKg: { group: 'mud', unit: 'kg' },
  pipeCount: { group: 'pipes', unit: 'pieces' },
  pipeM: { group: 'pipes', unit: 'm' },
  pipeKg: { group: 'pipes', unit: 'kg' },
  pipesCount: { group: 'pipes', unit: 'pieces' },
  pipesM: { group: 'pipes', unit: 'm' },
  pipesKg: { group: 'pipes', unit: 'kg' },
  joints: { group: 'pipes', unit: 'pieces' },
  glueG: { group: 'pipes', unit: 'g' },
  centralisers: { group: 'pipes', unit: 'pieces' },
  padLitres: { group: 'concrete', unit: 'litres' },
  drainLitres: { group: 'concrete', unit: 'litres' },
  concreteZoneLitres: { group: 'concrete', unit: 'litres' },
  concreteLitres: { group: 'concrete', unit: 'litres' },
  concreteCementKg: { group: 'concrete', unit: 'kg' },
  concreteCementSacks: { group: 'concrete', unit: 'sacks' },
  concreteSandLitres: { group: 'concrete', unit: 'litres' },
  concreteGravelLitres: { group: 'concrete', unit: 'litres' },
  concreteWaterLitres: { group: 'concrete', unit: 'litres' },
  flushLitres: { group: 'water', unit: 'litres' },
  waterLitres: { group: 'water', unit: 'litres' },
  waterTrips: { group: 'water', unit: 'trips' },
  loadKg: { group: 'load', unit: 'kg' },
  loadTrips: { group: 'load', unit: 'trips' },
} as const satisfies Record<string, { readonly group: GroupId; readonly unit: QuantityUnit }>;
export type QuantityId = keyof typeof quantityKinds;

/** Where the value of an input comes from; `model` is the well as it is resolved from the record. */
export type InputFrom =
  | { readonly figure: FigureId }
  | { readonly path: RecordPath }
  | { readonly quantity: QuantityId }
  | 'model';

/** An input of a formula, and where it comes from. */
export interface QuantityInput {
  /** As the formula writes it. */
  readonly symbol: string;
  readonly value: number;
  /** As printed: `mm`, `kg/l`; `1` for a plain number. */
  readonly unit: string;
  readonly from: InputFrom;
}

/** The stretch of the well that a quantity fills. */
export interface QuantityZone {
  readonly fromM: DepthM;
  readonly toM: DepthM;
  readonly path?: RecordPath;
  readonly fill?: AnnulusZone['fill'];
}

/** Pipes of one kind and size. Absent sizes were not recorded. */
export interface PipeSize {
  readonly kind: ComponentKind;
  readonly material?: string;
  readonly outsideMm?: Millimetres;
  /** Of a reducer. */
  readonly upperOutsideMm?: Millimetres;
  readonly wallMm?: Millimetres;
}

export interface Quantity {
  readonly id: QuantityId;
  readonly value: number;
  readonly unit: QuantityUnit;
  /**
   * Plain text, as in `V = π/4 · (D² − d²) · L`; `Σ` sums over what is counted by `ᵢ`, and `n ≥` is
   * the least whole number.
   */
  readonly formula: string;
  readonly inputs: readonly QuantityInput[];
  /** Where the formula comes from; figures of the practice have their own sources. */
  readonly source: Source;
  readonly zone?: QuantityZone;
  readonly pipe?: PipeSize;
}

/** What quantities may miss beside what rules miss. */
export const ownMissingWhats = ['method', 'pipeLength', 'joint'] as const;
export type QuantityMissingWhat = MissingWhat | (typeof ownMissingWhats)[number];

/** What the record would have to tell, and where it belongs. */
export interface Missing {
  readonly what: QuantityMissingWhat;
  readonly path: RecordPath;
  readonly fromM?: DepthM;
  readonly toM?: DepthM;
}

export interface QuantityGroup {
  readonly id: GroupId;
  readonly quantities: readonly Quantity[];
  /** Why some of the group could not be reckoned; what is missing is never taken for zero. */
  readonly missing: readonly Missing[];
}

export interface Quantities {
  /** Every group, in the order of `groupIds`; a group that does not apply is empty. */
  readonly groups: readonly QuantityGroup[];
}
