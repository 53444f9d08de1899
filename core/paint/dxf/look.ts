import type { Ink, Stroke } from '../../drawing/items.ts';

/** Line widths that the format knows, hundredths of a millimetre (from memory). */
const widths = [
  0, 5, 9, 13, 15, 18, 20, 25, 30, 35, 40, 50, 53, 60, 70, 80, 90, 100, 106, 120, 140,
];

export function lineWeight(widthMm: number): number {
  const wanted = widthMm * 100;
  return widths.reduce((best, one) =>
    Math.abs(one - wanted) < Math.abs(best - wanted) ? one : best,
  );
}

/** The indexed colours that every reader shows alike (from memory); 7 is ink on any ground. */
const indexed: readonly (readonly [index: number, red: number, green: number, blue: number])[] = [
  [7, 0, 0, 0],
  [1, 255, 0, 0],
  [2, 255, 255, 0],
  [3, 0, 255, 0],
  [4, 0, 255, 255],
  [5, 0, 0, 255],
  [6, 255, 0, 255],
  [250, 51, 51, 51],
  [251, 91, 91, 91],
  [252, 132, 132, 132],
  [253, 173, 173, 173],
  [254, 214, 214, 214],
  [255, 255, 255, 255],
];

/** The indexed colour that comes nearest. */
export function colourIndex(ink: Ink): number {
  const [red, green, blue] = [1, 3, 5].map((at) => parseInt(ink.slice(at, at + 2), 16));
  const away = ([, r, g, b]: (typeof indexed)[number]) =>
    (r - red!) ** 2 + (g - green!) ** 2 + (b - blue!) ** 2;
  return indexed.reduce((best, one) => (away(one) < away(best) ? one : best))[0];
}

/** The name under which a dash pattern stands in the file's table. */
export function lineType({ dash = [] }: Pick<Stroke, 'dash'>): string {
  return dash.length === 0 ? 'Continuous' : `DASH_${dash.join('_').replaceAll('.', 'P')}`;
}
