/**
 * Numbers as people read them, without the host's locale, so that a sheet is the same on every
 * machine.
 */

/** From here on a double no longer holds the digits that rounding needs. */
const exactLimit = 1e15;
/** Lifts 2.675, which a double keeps as 2.67499999…, back to the half that was written. */
const halfNudge = 1e-9;

function digitsOf(magnitude: number, decimals: number): string {
  const scaled = magnitude * 10 ** decimals;
  if (scaled >= exactLimit) return BigInt(Math.round(magnitude)) + '.' + '0'.repeat(decimals);
  const whole = String(Math.round(scaled + halfNudge)).padStart(decimals + 1, '0');
  return `${whole.slice(0, whole.length - decimals)}.${whole.slice(whole.length - decimals)}`;
}

/**
 * A number with a fixed count of decimals (0 to 9), halves away from zero, never `-0.00`.
 * What is no finite number is a dash.
 */
export function formatFixed(value: number, decimals: number, decimalMark = '.'): string {
  if (!Number.isFinite(value)) return '–';
  const digits = digitsOf(Math.abs(value), decimals);
  const text = decimals === 0 ? digits.slice(0, digits.indexOf('.')) : digits;
  const negative = value < 0 && /[1-9]/.test(text);
  return (negative ? '-' : '') + text.replace('.', decimalMark);
}

/** A depth or height in metres, to the centimetre, without its unit. */
export function formatDepth(depthM: number, decimalMark = '.'): string {
  return formatFixed(depthM, 2, decimalMark);
}

/** A number with up to `decimals` decimals, without the zeros that end it: `4.2`, `110`. */
export function formatShort(value: number, decimals: number, decimalMark = '.'): string {
  const text = formatFixed(value, decimals, '.');
  const short = text.includes('.') ? text.replace(/\.?0+$/, '') : text;
  return short.replace('.', decimalMark);
}
