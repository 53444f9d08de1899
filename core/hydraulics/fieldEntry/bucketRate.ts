/** Litres a second in cubic metres an hour. */
const m3hPerLitreSecond = 3.6;

/** A vessel filled against a watch. */
export interface BucketFill {
  readonly litres: number;
  readonly seconds: number;
}

export interface BucketRate {
  readonly rateM3h: number;
  /** Fastest less slowest fill, as a share of the rate; absent for a single fill. */
  readonly spread?: number;
}

const rateOf = ({ litres, seconds }: BucketFill) => (litres / seconds) * m3hPerLitreSecond;

/**
 * Pumping rate from one or more fills: all litres over all seconds. Fills without litres or
 * seconds are passed over; undefined where none is left.
 */
export function bucketRate(fills: readonly BucketFill[]): BucketRate | undefined {
  const good = fills.filter(({ litres, seconds }) => litres > 0 && seconds > 0);
  if (good.length === 0) return undefined;
  const litres = good.reduce((sum, one) => sum + one.litres, 0);
  const seconds = good.reduce((sum, one) => sum + one.seconds, 0);
  const rateM3h = rateOf({ litres, seconds });
  if (good.length === 1) return { rateM3h };
  const rates = good.map(rateOf);
  return { rateM3h, spread: (Math.max(...rates) - Math.min(...rates)) / rateM3h };
}
