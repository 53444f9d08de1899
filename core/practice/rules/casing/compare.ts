/** Closer to a limit than this share of it is at the limit: binary fractions are not exact. */
const noiseShare = 1e-9;

function noise(limit: number): number {
  return Math.max(Math.abs(limit), 1) * noiseShare;
}

/** Whether a value is less than a limit; at the limit it is not. */
export function isUnder(value: number, limit: number): boolean {
  return value < limit - noise(limit);
}

/** Whether a value is more than a limit; at the limit it is not. */
export function isOver(value: number, limit: number): boolean {
  return value > limit + noise(limit);
}
