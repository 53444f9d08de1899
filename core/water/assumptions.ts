import type { Source } from '../practice/practice.ts';
import type { Interval } from './interval.ts';
import { sources } from './sources.ts';

interface Assumption {
  /** Absent where it is a simplification and no figure. */
  readonly value?: Interval;
  readonly unit?: string;
  readonly source: Source;
}

/** Figures and simplifications that no record tells; wherever one is used, it is named. */
export const assumptions = {
  /** Dissolved solids, mg/l, in one µS/cm. */
  solidsFactor: {
    value: { least: 0.5, most: 0.75 },
    unit: 'mg/l per µS/cm',
    source: sources.hydrochemistry,
  },
  solidsFactorMiddle: {
    value: { least: 0.65, most: 0.65 },
    unit: 'mg/l per µS/cm',
    source: sources.hydrochemistry,
  },
  gradient: { value: { least: 0.001, most: 0.01 }, unit: '1', source: sources.onSiteSanitation },
  conductivityByGround: { source: sources.conductivity },
  porosityByGround: { source: sources.specificYield },
  porosityOfRock: { source: sources.rockPorosity },
  fastestGround: { source: sources.common },
  wholeHole: { source: sources.common },
  evenGround: { source: sources.common },
  straightWay: { source: sources.common },
  noWayDown: { source: sources.onSiteSanitation },
  noPumping: { source: sources.common },
  downhillToo: { source: sources.common },
  packVoids: { value: { least: 0.35, most: 0.35 }, unit: '1', source: sources.common },
  strength: { value: { least: 70, most: 70 }, unit: '%', source: sources.whoNotes },
  liquidStrength: { value: { least: 3.5, most: 3.5 }, unit: '%', source: sources.productData },
  dose: { value: { least: 50, most: 50 }, unit: 'mg/l', source: sources.drilledWells },
  liquidByVolume: { value: { least: 10, most: 10 }, unit: 'g/l per %', source: sources.common },
  bulkDensity: { value: { least: 0.8, most: 1 }, unit: 'g/ml', source: sources.productData },
  teaspoon: { value: { least: 5, most: 5 }, unit: 'ml', source: sources.common },
  tablespoon: { value: { least: 15, most: 15 }, unit: 'ml', source: sources.common },
  stock: { value: { least: 10, most: 10 }, unit: 'g/l', source: sources.stock },
  wash: { value: { least: 200, most: 200 }, unit: 'mg/l', source: sources.washing },
  washBucket: { value: { least: 20, most: 20 }, unit: 'l', source: sources.common },
  riserAsOutside: { source: sources.common },
  spout: { value: { least: 1, most: 1 }, unit: 'm', source: sources.common },
  pumpOffVolumes: { value: { least: 3, most: 3 }, unit: '1', source: sources.common },
} as const satisfies Record<string, Assumption>;

export type AssumptionId = keyof typeof assumptions;
