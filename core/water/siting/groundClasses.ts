import type { Interval } from '../interval.ts';

/** Ground as far as it tells how fast water moves in it. */
export interface GroundFigures {
  /** Metres a day. */
  readonly conductivityMd: Interval;
  /** Pores that water flows through, a share of the whole. */
  readonly porosity: Interval;
}

/**
 * Conductivity after Bouwer 1978; of silt after Freeze & Cherry 1979 (from memory). Porosity is the
 * specific yield after Johnson 1967, least to greatest; of clay its greatest and an estimate, of
 * rock after Freeze & Cherry 1979 (from memory). “Almost none” is taken as a hundredth.
 */
export const groundFigures = {
  clay: { conductivityMd: { least: 1e-8, most: 0.01 }, porosity: { least: 0.01, most: 0.05 } },
  silt: { conductivityMd: { least: 1e-4, most: 1 }, porosity: { least: 0.03, most: 0.19 } },
  fineSand: { conductivityMd: { least: 1, most: 5 }, porosity: { least: 0.1, most: 0.28 } },
  mediumSand: { conductivityMd: { least: 5, most: 20 }, porosity: { least: 0.15, most: 0.32 } },
  coarseSand: { conductivityMd: { least: 20, most: 100 }, porosity: { least: 0.2, most: 0.35 } },
  sandAndGravel: { conductivityMd: { least: 5, most: 100 }, porosity: { least: 0.2, most: 0.35 } },
  gravel: { conductivityMd: { least: 100, most: 1000 }, porosity: { least: 0.12, most: 0.35 } },
  fineToMediumSand: {
    conductivityMd: { least: 1, most: 20 },
    porosity: { least: 0.1, most: 0.32 },
  },
  mediumToCoarseSand: {
    conductivityMd: { least: 5, most: 100 },
    porosity: { least: 0.15, most: 0.35 },
  },
  anySand: { conductivityMd: { least: 1, most: 100 }, porosity: { least: 0.1, most: 0.35 } },
  sandstone: { conductivityMd: { least: 0.001, most: 1 }, porosity: { least: 0.05, most: 0.27 } },
  weatheredRock: {
    conductivityMd: { least: 0.01, most: 300 },
    porosity: { least: 0.01, most: 0.1 },
  },
  fracturedRock: {
    conductivityMd: { least: 0.01, most: 300 },
    porosity: { least: 0.001, most: 0.01 },
  },
} as const satisfies Record<string, GroundFigures>;

export type GroundClass = keyof typeof groundFigures;
export const groundClasses = Object.keys(groundFigures) as GroundClass[];

/** Classes whose pores are cracks: their porosity is not Johnson's. */
export const rockClasses: readonly GroundClass[] = ['weatheredRock', 'fracturedRock'];
