/**
 * Steps that a graticule's lines may have, degrees: those that divide a degree, minute or second
 * without a rest, as maps have them.
 */
const minute = 1 / 60;
const second = 1 / 3600;
const steps = [
  ...[1, 2, 5, 10, 15, 30].map((seconds) => seconds * second),
  ...[1, 2, 5, 10, 15, 30].map((minutes) => minutes * minute),
  ...[1, 2, 5, 10, 15, 30],
];

/** The finest step, in degrees, with which a span of degrees has no more than `most` lines. */
export function graticuleStep(spanDegrees: number, most: number): number {
  return steps.find((step) => spanDegrees / step <= most) ?? steps.at(-1)!;
}

/** Every multiple of a step from one angle to another, degrees, rising. */
export function graticuleLines(from: number, to: number, step: number): number[] {
  const first = Math.ceil(from / step - 1e-9);
  const last = Math.floor(to / step + 1e-9);
  return Array.from({ length: Math.max(0, last - first + 1) }, (_, at) => (first + at) * step);
}

/**
 * An angle without its sign as it is written at a line of a graticule: `12°`, `12°30′`,
 * `12°30′05″`; as fine as the step needs.
 */
export function angleLabel(degrees: number, step: number): string {
  const seconds = Math.round(Math.abs(degrees) * 3600);
  const two = (n: number) => String(n).padStart(2, '0');
  const whole = `${Math.floor(seconds / 3600)}°`;
  if (step >= 1) return whole;
  const minutes = `${two(Math.floor(seconds / 60) % 60)}′`;
  return step >= minute - 1e-12 ? whole + minutes : `${whole}${minutes}${two(seconds % 60)}″`;
}
