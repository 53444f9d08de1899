import type { Finding } from '../base/finding.ts';
import type { RecordPath } from '../base/recordPath.ts';
import type { DepthM, Metres } from '../base/units.ts';
import type { FigureId } from '../practice/figures.ts';
import type { AnnulusFill } from '../record/annulus.ts';
import type { ProposalKind } from '../record/layingOut.ts';
import type { CasingString } from '../record/strings.ts';

/** Why a completion was proposed: in what it is the best, with the figures that show it. */
export const whyCodes = ['safest', 'mostProductive', 'fewestCuts', 'onlyOne'] as const;

/** What stands in the way of a completion that meets the practice. */
export const obstacleCodes = [
  'noConductingGround',
  'groundAboveDryLevel',
  'groundAbovePumpingLevel',
  'tooMuchTightGround',
  'aquiferTooThin',
  'annulusTooNarrow',
  'holeTooShallowForSump',
  'noRoomForPackAndSeals',
  'noRoomForPartingSeal',
  'screensTooFew',
  'plainPipesTooFew',
  'entranceTooFast',
] as const;

/** What laying out may lack in a record. */
export const missingInputs = [
  'log',
  'boreDepth',
  'boreDiameter',
  'restLevel',
  'plainPipes',
  'screenPipes',
  'pipeLength',
  'pipeDiameter',
  'insertion',
  'designRate',
  'drawdown',
  'openArea',
] as const;

export type WhyCode = (typeof whyCodes)[number];
export type ObstacleCode = (typeof obstacleCodes)[number];
export type MissingInput = (typeof missingInputs)[number];

export type SaidValues = Readonly<Record<string, number | string>>;

/** An input that the record lacks, and where it belongs. */
export interface Missing {
  readonly what: MissingInput;
  readonly path: RecordPath;
  /** True where nothing can be laid out without it; else it is done without, and less is told. */
  readonly stops: boolean;
}

/** A piece of the string, in the order in which the pieces go in. */
export interface TallyLine {
  /** 1 is the lowest, which goes in first. */
  readonly number: number;
  readonly kind: 'cap' | 'sump' | 'screen' | 'plain';
  /** Index in `layingOut.pipes`; absent for the cap, which is no pipe. */
  readonly pipe?: number;
  /** Length that the pipe is cut to; absent where it goes in whole. */
  readonly cutToM?: Metres;
  /** End to end, with its bell. */
  readonly lengthM: Metres;
  readonly topM: DepthM;
  readonly bottomM: DepthM;
}

/** A completion that could be built from what is on site. */
export interface Proposal {
  readonly kind: ProposalKind;
  readonly strings: CasingString[];
  readonly annulus: AnnulusFill[];
  /** From the bottom up. */
  readonly tally: readonly TallyLine[];
  readonly cuts: number;
  readonly screenM: Metres;
  /** What the practice finds in the well as it would be. */
  readonly findings: readonly Finding[];
  readonly why: { readonly code: WhyCode; readonly values: SaidValues };
}

/** A limit that stands in the way, and the figure of the practice that sets it. */
export interface Obstacle {
  readonly code: ObstacleCode;
  readonly figure?: FigureId;
  readonly values: SaidValues;
}

/** What laying out comes to. */
export interface LaidOut {
  /** None to three, each another completion. */
  readonly proposals: readonly Proposal[];
  readonly missing: readonly Missing[];
  /**
   * Which limits stand in the way where no completion meets the practice. Proposals beside them
   * fall short of a limit, but breach none gravely.
   */
  readonly obstacles: readonly Obstacle[];
}
