import { studentT } from '../special/studentT.ts';

/** A least-squares fit of `y ≈ Σ coefficients · columns`. */
export interface LinearFit {
  readonly coefficients: readonly number[];
  /** Of the coefficients, in units of the scatter; multiply by `variance`. */
  readonly inverse: readonly (readonly number[])[];
  /** Of each reading: read less fitted. */
  readonly residuals: readonly number[];
  readonly sumOfSquares: number;
  /** Readings less coefficients. */
  readonly freedom: number;
}

/** Pivots below it, of columns scaled to length 1, mean that the columns do not tell apart. */
const leastPivot = 1e-12;

function dot(a: readonly number[], b: readonly number[]): number {
  let sum = 0;
  for (let at = 0; at < a.length; at++) sum += a[at]! * b[at]!;
  return sum;
}

/** Inverse of a small symmetric matrix by Gauss and Jordan; undefined where it has none. */
function invert(matrix: readonly (readonly number[])[]): number[][] | undefined {
  const size = matrix.length;
  const rows = matrix.map((row, at) => [...row, ...row.map((_, of) => (of === at ? 1 : 0))]);
  for (let at = 0; at < size; at++) {
    const best = rows.reduce(
      (found, row, of) =>
        of >= at && Math.abs(row[at]!) > Math.abs(rows[found]![at]!) ? of : found,
      at,
    );
    [rows[at], rows[best]] = [rows[best]!, rows[at]!];
    const pivot = rows[at]![at]!;
    if (!(Math.abs(pivot) > leastPivot)) return undefined;
    rows[at] = rows[at]!.map((value) => value / pivot);
    rows.forEach((row, of) => {
      if (of === at) return;
      const factor = row[at]!;
      rows[of] = row.map((value, column) => value - factor * rows[at]![column]!);
    });
  }
  return rows.map((row) => row.slice(size));
}

/**
 * Fits columns (each as long as `y`) by least squares through normal equations of columns scaled
 * to length 1. Undefined where there are fewer readings than columns or they do not tell apart.
 */
export function fitColumns(
  columns: readonly (readonly number[])[],
  y: readonly number[],
): LinearFit | undefined {
  if (y.length < columns.length) return undefined;
  const lengths = columns.map((column) => Math.sqrt(dot(column, column)));
  const scaled = columns.map((column, at) => column.map((value) => value / lengths[at]!));
  const inverted = invert(scaled.map((one) => scaled.map((other) => dot(one, other))));
  if (!inverted) return undefined;
  const right = scaled.map((column) => dot(column, y));
  const coefficients = inverted.map((row, at) => dot(row, right) / lengths[at]!);
  const inverse = inverted.map((row, at) =>
    row.map((value, of) => value / (lengths[at]! * lengths[of]!)),
  );
  const residuals = [...y];
  columns.forEach((column, of) => {
    const by = coefficients[of]!;
    for (let at = 0; at < residuals.length; at++) residuals[at]! -= column[at]! * by;
  });
  const sumOfSquares = dot(residuals, residuals);
  return { coefficients, inverse, residuals, sumOfSquares, freedom: y.length - columns.length };
}

/**
 * Half-width of the 95 % interval of a sum of coefficients, by Student's t; undefined where no
 * reading is left to tell the scatter.
 */
export function halfWidth(fit: LinearFit, weights: readonly number[]): number | undefined {
  const t = studentT(fit.freedom);
  if (t === undefined) return undefined;
  const spread = weights.reduce((sum, one, at) => sum + one * dot(fit.inverse[at]!, weights), 0);
  return t * Math.sqrt((Math.max(0, spread) * fit.sumOfSquares) / fit.freedom);
}

/** Weights that pick one coefficient out of a count of them. */
export function only(which: number, count: number): number[] {
  return Array.from({ length: count }, (_, at) => (at === which ? 1 : 0));
}
