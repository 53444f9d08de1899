/** The value in the middle, of an even count the mean of both; undefined of none. */
export function medianOf(values: readonly number[]): number | undefined {
  if (values.length === 0) return undefined;
  const sorted = [...values].sort((a, b) => a - b);
  const half = sorted.length / 2;
  return (sorted[Math.ceil(half) - 1]! + sorted[Math.floor(half)]!) / 2;
}

export function sumOf(values: readonly number[]): number {
  return values.reduce((sum, one) => sum + one, 0);
}
