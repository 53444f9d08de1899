import type { Finding } from '../base/finding.ts';
import type { RecordPath } from '../base/recordPath.ts';
import type { DepthM, Litres, Metres, Millimetres } from '../base/units.ts';
import type { FillKind } from '../record/annulus.ts';
import type { LogInterval } from '../record/log.ts';
import type { ComponentKind } from '../record/strings.ts';
import type { LevelDatum, LevelState } from '../record/water.ts';

/**
 * A well as resolved geometry. All depths are metres below ground level, positive down; what is
 * above ground is negative. Ranges satisfy from < to. Every part leads back to the record.
 */
export interface WellModel {
  readonly bore: BoreModel;
  readonly strata: readonly Stratum[];
  readonly strings: readonly StringModel[];
  readonly annulus: readonly AnnulusZone[];
  readonly contents: readonly ContentsModel[];
  readonly levels: readonly LevelModel[];
  readonly samples: readonly SampleModel[];
  readonly strikes: readonly StrikeModel[];
  readonly pump?: PumpModel;
  readonly totals: Totals;
  readonly findings: readonly Finding[];
}

export interface BoreModel {
  /** Non-overlapping, in order of depth; gaps are where no diameter was recorded. */
  readonly sections: readonly BoreSectionModel[];
  /** Deepest point known of the hole; absent when nothing tells. */
  readonly depthM?: DepthM;
  /** Depth sounded before casing, where it differs from the depth drilled. */
  readonly foundM?: DepthM;
}

export interface BoreSectionModel {
  readonly fromM: DepthM;
  readonly toM: DepthM;
  readonly diameterMm: Millimetres;
  readonly path: RecordPath;
}

/** An interval of the log, freed of overlaps. */
export interface Stratum {
  readonly fromM: DepthM;
  readonly toM: DepthM;
  readonly interval: LogInterval;
  readonly path: RecordPath;
  /** What the log says besides of the very same range, in the record's order; mostly nothing. */
  readonly others: readonly LoggedInterval[];
}

export interface LoggedInterval {
  readonly interval: LogInterval;
  readonly path: RecordPath;
}

export interface StringModel {
  readonly index: number;
  readonly name?: string;
  readonly path: RecordPath;
  /** From the top down. Absent sizes were not recorded. */
  readonly pieces: readonly PieceModel[];
  readonly topM: DepthM;
  readonly bottomM: DepthM;
  /** Sum of lengths less insertions. */
  readonly tallyM: Metres;
  /** Height of the top above ground; negative where it ends below ground. */
  readonly stickUpM: Metres;
  /** What told where it stands. */
  readonly placedBy: PlacedBy;
  /** The cap that closes the lower end; a cap without a length is no piece but stands here. */
  readonly capPath?: RecordPath;
}

/**
 * What told where a string stands: its own setting (`bottom`, `stickUp`), the casing height at
 * the headworks, the depth measured after setting, or nothing (`holeBottom`, `ground`: assumed).
 */
export type PlacedBy = 'bottom' | 'stickUp' | 'headworks' | 'measured' | 'holeBottom' | 'ground';

export interface PieceModel {
  readonly kind: ComponentKind;
  readonly topM: DepthM;
  readonly bottomM: DepthM;
  /** Outside diameter at the piece's lower and upper end; they differ on a reducer. */
  readonly outsideMm?: Millimetres;
  readonly upperOutsideMm?: Millimetres;
  readonly wallMm?: Millimetres;
  /** Inside diameter, of a reducer the narrower; may be known where the outside is not. */
  readonly insideMm?: Millimetres;
  readonly material?: string;
  readonly slotWidthMm?: Millimetres;
  readonly slotSpacingMm?: Millimetres;
  readonly openAreaPercent?: number;
  /** How far it overlaps the piece below. */
  readonly insertionM: Metres;
  readonly centralisersM: readonly DepthM[];
  readonly path: RecordPath;
}

/**
 * A body of revolution: a ring, or the full hole where `innerMm` is 0. A reducer counts as the
 * cylinder that takes up as much.
 */
export interface Ring {
  readonly fromM: DepthM;
  readonly toM: DepthM;
  readonly innerMm: Millimetres;
  readonly outerMm: Millimetres;
}

export interface AnnulusZone {
  readonly fromM: DepthM;
  readonly toM: DepthM;
  /** `unrecorded`: between wall and casing, but nobody wrote what stands there. */
  readonly fill: FillKind | 'unrecorded';
  readonly sanitary: boolean;
  /**
   * Index of the string that it surrounds; absent where it fills the hole without a string. A
   * fill that goes on under the string's foot stays one zone, whose rings there are full.
   */
  readonly around?: number;
  /** Index of the string whose inside it fills, as in an abandoned well left cased. */
  readonly inside?: number;
  /** Constant in diameter each, from the top down; none for depths where a diameter is unknown. */
  readonly rings: readonly Ring[];
  /** Absent where a diameter is not known. */
  readonly litres?: Litres;
  /**
   * Litres as the record says were poured: `litres`, else sacks by their mass (see volumes.ts).
   * A fill that others cut in parts bears this and `sacks` on its uppermost zone alone.
   */
  readonly pouredLitres?: Litres;
  readonly grainMinMm?: Millimetres;
  readonly grainMaxMm?: Millimetres;
  readonly sacks?: number;
  readonly path?: RecordPath;
}

/** What a string holds between its walls down to its foot, less inner strings. */
export interface ContentsModel {
  readonly string: number;
  readonly fromM: DepthM;
  readonly toM: DepthM;
  readonly litres: Litres;
  /** The part under the latest rest level. */
  readonly waterLitres?: Litres;
}

export interface LevelModel {
  readonly depthM: DepthM;
  readonly state?: LevelState;
  readonly at?: string;
  readonly rateM3h?: number;
  readonly minutesPumped?: number;
  readonly readM: Metres;
  readonly datum: LevelDatum;
  readonly path: RecordPath;
}

/** Where a sample of the ground came from; from one depth where both are the same. */
export interface SampleModel {
  readonly fromM: DepthM;
  readonly toM: DepthM;
  readonly path: RecordPath;
}

export interface StrikeModel {
  readonly depthM: DepthM;
  readonly riseM?: DepthM;
  readonly path: RecordPath;
}

export interface PumpModel {
  readonly intakeM?: DepthM;
  readonly cylinderTopM?: DepthM;
  readonly bodyMm?: Millimetres;
  readonly riserMm?: Millimetres;
  readonly path: RecordPath;
}

/** Sums over the well; absent where a part is not known. */
export interface Totals {
  readonly boreLitres?: Litres;
  /** Hole taken up by pipe, walls and contents together, below ground. */
  readonly displacedLitres?: Litres;
  readonly annulusLitres?: Litres;
  readonly screenM: Metres;
}
