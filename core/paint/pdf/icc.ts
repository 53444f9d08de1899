/**
 * The colour space sRGB as an ICC profile of our own, made from what IEC 61966-2-1:1999 publishes:
 * the chromaticities of its primaries and of its white (D65), and its curve. Laid out by
 * ICC.1:2004-10 (profile version 4.2, the one that ISO 32000-1 names): a display profile of three
 * columns and one parametric curve.
 */

type Triple = readonly [number, number, number];
type Matrix = readonly [Triple, Triple, Triple];

/** x and y of red, green, blue and white. */
const primaries = [
  [0.64, 0.33],
  [0.3, 0.6],
  [0.15, 0.06],
] as const;
const d65 = [0.3127, 0.329] as const;

/** The profile connection space's white, D50, as ICC.1 rounds it. */
const d50: Triple = [0.9642, 1, 0.8249];

/** From XYZ to the cone responses in which whites are adapted (Bradford; ICC.1, annex E). */
const bradford: Matrix = [
  [0.8951, 0.2664, -0.1614],
  [-0.7502, 1.7135, 0.0367],
  [0.0389, -0.0685, 1.0296],
];

const fromChromaticity = ([x, y]: readonly [number, number]): Triple => [x / y, 1, (1 - x - y) / y];

function apply(matrix: Matrix, [x, y, z]: Triple): Triple {
  return matrix.map(([a, b, c]) => a * x + b * y + c * z) as unknown as Triple;
}

function transposed([[a, b, c], [d, e, f], [g, h, i]]: Matrix): Matrix {
  return [
    [a, d, g],
    [b, e, h],
    [c, f, i],
  ];
}

function times(left: Matrix, right: Matrix): Matrix {
  return transposed(transposed(right).map((column) => apply(left, column)) as unknown as Matrix);
}

function diagonal([a, b, c]: Triple): Matrix {
  return [
    [a, 0, 0],
    [0, b, 0],
    [0, 0, c],
  ];
}

function inverse([[a, b, c], [d, e, f], [g, h, i]]: Matrix): Matrix {
  const determinant = a * (e * i - f * h) - b * (d * i - f * g) + c * (d * h - e * g);
  const cofactors: Matrix = [
    [e * i - f * h, c * h - b * i, b * f - c * e],
    [f * g - d * i, a * i - c * g, c * d - a * f],
    [d * h - e * g, b * g - a * h, a * e - b * d],
  ];
  return cofactors.map((row) => row.map((one) => one / determinant)) as unknown as Matrix;
}

/** From XYZ under D65 to XYZ under D50. */
function adaptation(): Matrix {
  const from = apply(bradford, fromChromaticity(d65));
  const to = apply(bradford, d50);
  const ratios: Triple = [to[0] / from[0], to[1] / from[1], to[2] / from[2]];
  return times(inverse(bradford), times(diagonal(ratios), bradford));
}

/** XYZ under D50 of full red, green and blue: one row each. */
function colorants(): Matrix {
  const columns = transposed(primaries.map(fromChromaticity) as unknown as Matrix);
  const shares = apply(inverse(columns), fromChromaticity(d65));
  return transposed(times(adaptation(), times(columns, diagonal(shares))));
}

/** The curve from a stored value X: ((X + 0.055) / 1.055)^2.4 from 0.04045 on, below it X / 12.92. */
const curve = [2.4, 1 / 1.055, 0.055 / 1.055, 1 / 12.92, 0.04045];

function big(value: number, bytes: 2 | 4): string {
  const letters = [24, 16, 8, 0].map((shift) => String.fromCharCode((value >>> shift) & 0xff));
  return letters.slice(4 - bytes).join('');
}

/** s15Fixed16Number: 16 bits before the point and 16 after. */
const fixed = (values: readonly number[]) =>
  values.map((value) => big(Math.round(value * 0x10000), 4)).join('');

const none = '\0\0\0\0';

/** multiLocalizedUnicodeType with one text in English. */
function saying(text: string): string {
  const letters = Array.from(text, (letter) => big(letter.charCodeAt(0), 2)).join('');
  return `mluc${none}${big(1, 4)}${big(12, 4)}enUS${big(letters.length, 4)}${big(28, 4)}${letters}`;
}

const xyz = (value: Triple) => `XYZ ${none}${fixed(value)}`;

/** Tags by what they hold; the three channels share one curve. */
function tags(): (readonly [names: readonly string[], data: string])[] {
  const [red, green, blue] = colorants();
  return [
    [['desc'], saying('sRGB (IEC 61966-2-1)')],
    [['cprt'], saying('No copyright is claimed')],
    [['wtpt'], xyz(d50)],
    [['chad'], `sf32${none}${fixed(adaptation().flat())}`],
    [['rXYZ'], xyz(red)],
    [['gXYZ'], xyz(green)],
    [['bXYZ'], xyz(blue)],
    [['rTRC', 'gTRC', 'bTRC'], `para${none}${big(3, 2)}${big(0, 2)}${fixed(curve)}`],
  ];
}

const onFourBytes = (data: string) => data + '\0'.repeat(-data.length & 3);

/** Year, month, day, hour, minute and second of the standard rather than of the file. */
const dated = [1999, 10, 1, 0, 0, 0].map((part) => big(part, 2)).join('');

function header(size: number): string {
  const kind = `${big(size, 4)}${none}${big(0x04200000, 4)}mntrRGB XYZ ${dated}acsp`;
  const noDevice = none.repeat(6);
  const perceptual = none;
  return `${kind}${noDevice}${perceptual}${fixed(d50)}`.padEnd(128, '\0');
}

/** The profile, one letter a byte. */
export function srgbProfile(): string {
  const held = tags();
  const count = held.reduce((sum, [names]) => sum + names.length, 0);
  const start = 128 + 4 + 12 * count;
  let table = big(count, 4);
  let body = '';
  for (const [names, data] of held) {
    const place = big(start + body.length, 4) + big(data.length, 4);
    table += names.map((name) => name + place).join('');
    body += onFourBytes(data);
  }
  return header(start + body.length) + table + body;
}
