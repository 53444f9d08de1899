/** Euler's constant. */
export const eulerGamma = 0.5772156649015329;

const relativeEnd = 1e-16;
const mostTerms = 500;

/** −γ − ln u + u − u²/2·2! + u³/3·3! − …, for small u. Source: Abramowitz and Stegun 5.1.11. */
function bySeries(u: number): number {
  let sum = -eulerGamma - Math.log(u);
  let power = -1;
  for (let n = 1; n < mostTerms; n++) {
    power *= -u / n;
    const term = power / n;
    sum += term;
    if (Math.abs(term) < relativeEnd * Math.abs(sum)) break;
  }
  return sum;
}

/** e⁻ᵘ / (u + 1 − 1/(u + 3 − 4/(u + 5 − …))). Source: Abramowitz and Stegun 5.1.22, as evened. */
function byFraction(u: number): number {
  let b = u + 1;
  let c = Infinity;
  let d = 1 / b;
  let fraction = d;
  for (let n = 1; n < mostTerms; n++) {
    const a = -n * n;
    b += 2;
    d = 1 / (a * d + b);
    c = b + a / c;
    fraction *= c * d;
    if (Math.abs(c * d - 1) < relativeEnd) break;
  }
  return fraction * Math.exp(-u);
}

/**
 * Well function W(u) of Theis, the exponential integral E₁(u), to about 14 digits. Infinite at 0;
 * not a number below.
 */
export function wellFunction(u: number): number {
  if (u === 0) return Infinity;
  if (!(u > 0)) return NaN;
  return u <= 1 ? bySeries(u) : byFraction(u);
}
