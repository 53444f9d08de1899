import { fitColumns, halfWidth, type LinearFit } from './leastSquares.ts';

/** `y = at0 + slope · x` by least squares, with what its intervals need. */
export interface LineFit {
  readonly slope: number;
  readonly at0: number;
  readonly r2?: number;
  readonly rms: number;
  /** Coefficients at x = 0 and slope. */
  readonly fit: LinearFit;
}

/** Undefined for fewer than two readings or none apart in x. */
export function fitLine(x: readonly number[], y: readonly number[]): LineFit | undefined {
  const fit = fitColumns([x.map(() => 1), x], y);
  if (!fit) return undefined;
  const [at0, slope] = [fit.coefficients[0]!, fit.coefficients[1]!];
  const mean = y.reduce((sum, one) => sum + one, 0) / y.length;
  const scatter = y.reduce((sum, one) => sum + (one - mean) ** 2, 0);
  const r2 = scatter > 0 ? { r2: Math.max(0, 1 - fit.sumOfSquares / scatter) } : {};
  return { slope, at0, ...r2, rms: Math.sqrt(fit.sumOfSquares / y.length), fit };
}

export function lineAt({ slope, at0 }: Pick<LineFit, 'slope' | 'at0'>, x: number): number {
  return at0 + slope * x;
}

/** Half-width of the 95 % interval of the slope. */
export function slopeHalfWidth({ fit }: LineFit): number | undefined {
  return halfWidth(fit, [0, 1]);
}

/** Half-width of the 95 % interval of the line's height at x. */
export function heightHalfWidth({ fit }: LineFit, x: number): number | undefined {
  return halfWidth(fit, [1, x]);
}
