/** Probability of the intervals that are given. */
export const intervalLevel = 0.95;

/** From here on the normal distribution serves; the quantiles differ by less than 0.2 %. */
const largeFreedom = 1000;
const normalQuantile = 1.959963984540054;
const halvings = 60;

/** Sum of the products of fractions that both series are made of. */
function powersOfCosine(cosine2: number, first: number, firstDivisor: number, until: number) {
  let term = 1;
  let sum = 1;
  for (let n = first, m = firstDivisor; m <= until; n += 2, m += 2) {
    term *= (cosine2 * n) / m;
    sum += term;
  }
  return sum;
}

/**
 * Probability that Student's t with whole degrees of freedom lies within ±√ν tan θ. Source:
 * Abramowitz and Stegun 26.7.3 and 26.7.4.
 */
function within(theta: number, freedom: number): number {
  const [sine, cosine] = [Math.sin(theta), Math.cos(theta)];
  if (freedom === 1) return (2 / Math.PI) * theta;
  if (freedom % 2 === 0) return sine * powersOfCosine(cosine ** 2, 1, 2, freedom - 2);
  const series = cosine * powersOfCosine(cosine ** 2, 2, 3, freedom - 2);
  return (2 / Math.PI) * (theta + sine * series);
}

/**
 * Half-width of the 95 % interval of Student's t in standard errors, for whole degrees of freedom
 * from 1; undefined below, where readings tell no scatter.
 */
export function studentT(freedom: number): number | undefined {
  if (!(freedom >= 1)) return undefined;
  if (freedom > largeFreedom) return normalQuantile;
  let [low, high] = [0, Math.PI / 2];
  for (let n = 0; n < halvings; n++) {
    const middle = (low + high) / 2;
    if (within(middle, freedom) < intervalLevel) low = middle;
    else high = middle;
  }
  return Math.sqrt(freedom) * Math.tan((low + high) / 2);
}
