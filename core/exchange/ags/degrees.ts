/**
 * Degrees of the type DMS, `-7:28:52.498` (AGS 4, rule 8, from memory), or plain decimal degrees as
 * some programs write. Undefined where the text is neither.
 */
export function readDegrees(text: string): number | undefined {
  if (/^[+-]?\d+(\.\d+)?$/.test(text)) return Number(text);
  const found = /^([+-]?)(\d{1,3}):(\d{1,2}):(\d{1,2}(?:\.\d+)?)$/.exec(text);
  if (!found) return undefined;
  const [, sign, degrees, minutes, seconds] = found;
  if (Number(minutes) >= 60 || Number(seconds) >= 60) return undefined;
  const value = Number(degrees) + Number(minutes) / 60 + Number(seconds) / 3600;
  // Nine decimals are a tenth of a millimetre, and drop the noise of the division.
  return Number(((sign === '-' ? -1 : 1) * value).toFixed(9));
}

/** Seconds are written to six decimals, so that nine of a degree come back. */
export function writeDegrees(degrees: number): string {
  const millionths = Math.round(Math.abs(degrees) * 3600e6);
  const seconds = (millionths % 60e6) / 1e6;
  const minutes = Math.floor(millionths / 60e6) % 60;
  const whole = Math.floor(millionths / 3600e6);
  const two = (value: number) => String(value).padStart(2, '0');
  return `${degrees < 0 ? '-' : ''}${whole}:${two(minutes)}:${seconds.toFixed(6).padStart(9, '0')}`;
}
