const signs = [
  ['m', 1000],
  ['cm', 900],
  ['d', 500],
  ['cd', 400],
  ['c', 100],
  ['xc', 90],
  ['l', 50],
  ['xl', 40],
  ['x', 10],
  ['ix', 9],
  ['v', 5],
  ['iv', 4],
  ['i', 1],
] as const;

/** A number from 1 in small roman letters, as pages before the first chapter are counted. */
export function roman(number: number): string {
  let left = number;
  let written = '';
  for (const [sign, value] of signs)
    while (left >= value) {
      written += sign;
      left -= value;
    }
  return written;
}
