import type { InLanguages, Source } from '../../practice/practice.ts';

/** Key of a parameter; sets of the user may bring their own. */
export type ParameterId = string;

/** health: from health evidence; provisional: the same, with a reason to look at it again. */
export const bases = ['health', 'provisional', 'acceptability', 'operational'] as const;
export type Basis = (typeof bases)[number];

/** What a value guards against, or is for. */
export const purposes = [
  'faeces',
  'infants',
  'longUse',
  'taste',
  'odour',
  'stains',
  'scale',
  'corrosion',
  'laxative',
  'seen',
  'chlorination',
  'nearbyWaste',
] as const;
export type Purpose = (typeof purposes)[number];

/** What water a value is asked of, where not of all. */
export const conditions = ['chlorinated'] as const;
export type Condition = (typeof conditions)[number];

/** Places in an order: of risk by bacteria, and of taste by dissolved solids. */
export const bandIds = [
  'low',
  'intermediate',
  'high',
  'veryHigh',
  'excellent',
  'good',
  'fair',
  'poor',
  'unacceptable',
] as const;
export type BandId = (typeof bandIds)[number];

/** A value as a set's file holds it. */
export interface GuidelineValue {
  readonly bound: 'most' | 'least';
  readonly value: number;
  /** Where they differ from the parameter's. */
  readonly unit?: string;
  readonly as?: string;
  /**
   * The highest detection limit that is good enough: of bacteria none is asked for, and “fewer
   * than one” is as much as a test can say. Absent: the value itself.
   */
  readonly enoughBelow?: number;
  readonly basis: Basis;
  readonly purpose?: Purpose;
  /** It is asked only of water that is so; it is compared, and does not count for the parameter. */
  readonly when?: Condition;
  /** Key of its source. */
  readonly source: string;
}

/** A band begins at its figure and ends where the next begins. */
export interface Band {
  readonly id: BandId;
  readonly from: number;
}

export interface GuidelineParameter {
  readonly names: InLanguages;
  /** As laboratories write it; case, accents and marks do not tell them apart. */
  readonly aliases?: readonly string[];
  /** In which its values and bands are told: `mg/l`, `1` for a plain number. */
  readonly unit: string;
  /** Form of it, as in `NO3`. */
  readonly as?: string;
  readonly values?: Readonly<Record<string, GuidelineValue>>;
  readonly bands?: { readonly source: string; readonly list: readonly Band[] };
  /** It is looked for before handover, or one of these instead; by whom that is asked. */
  readonly beforeHandover?: {
    readonly source: string;
    readonly instead?: readonly ParameterId[];
  };
}

/** What a set may leave out of a parameter that it takes from another. */
export type PartOfParameter = Partial<GuidelineParameter>;

/**
 * A named set of guideline values with their sources, as its file holds it. What it leaves out it
 * takes from the set that it is based on; values of one parameter are overridden one by one.
 */
export interface GuidelineFile {
  readonly id: string;
  readonly version: string;
  readonly name: InLanguages;
  /** Edition of what it is taken from, as in a citation. */
  readonly edition?: string;
  readonly basedOn?: string;
  readonly sources: Readonly<Record<string, Source>>;
  readonly parameters: Readonly<Record<ParameterId, PartOfParameter>>;
  /** Parameters, or values as `iron.taste`, that it does not ask for. */
  readonly without?: readonly string[];
}

/** A value as it holds: in its own unit and form, with its source, and the set that gave it. */
export interface HeldValue extends Omit<GuidelineValue, 'source' | 'unit' | 'as'> {
  readonly key: string;
  readonly unit: string;
  readonly as?: string;
  readonly source: Source;
  readonly setBy: string;
}

export interface HeldParameter {
  readonly id: ParameterId;
  readonly names: InLanguages;
  readonly aliases: readonly string[];
  readonly unit: string;
  readonly as?: string;
  readonly values: readonly HeldValue[];
  readonly bands?: { readonly source: Source; readonly list: readonly Band[] };
  readonly beforeHandover?: { readonly source: Source; readonly instead: readonly ParameterId[] };
}

/** A set with all that it takes from those that it is based on. */
export interface GuidelineSet {
  readonly id: string;
  readonly version: string;
  readonly name: InLanguages;
  readonly edition?: string;
  /** Ids of what it is based on, the nearest first. */
  readonly basedOn: readonly string[];
  readonly parameters: readonly HeldParameter[];
}
