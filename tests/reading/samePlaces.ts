import type { ReadPage, ReadPath, ReadText } from './page.ts';

type Measures = readonly number[];

function apart(one: Measures, other: Measures, tolerance: number): boolean {
  return (
    one.length !== other.length ||
    one.some((value, at) => !(Math.abs(value - other[at]!) <= tolerance))
  );
}

function textMeasures({ x, y, em, turn }: ReadText): Measures {
  return [x, y, em, turn];
}

function pathMeasures({ filled, stroked, stroke, points }: ReadPath): Measures {
  return [Number(filled), Number(stroked), stroke, ...points.flat()];
}

function textDifference(
  pdf: ReadText | undefined,
  svg: ReadText | undefined,
  tolerance: number,
): string[] {
  if (!pdf || !svg) return [`only one has the text “${(pdf ?? svg)!.text}”`];
  if (pdf.text !== svg.text) return [`“${pdf.text}” against “${svg.text}”`];
  const moved = apart(textMeasures(pdf), textMeasures(svg), tolerance);
  const places = `${textMeasures(pdf).join(' ')} against ${textMeasures(svg).join(' ')}`;
  return moved ? [`“${pdf.text}” stands at ${places}`] : [];
}

function pathDifference(
  pdf: ReadPath | undefined,
  svg: ReadPath | undefined,
  at: number,
  tolerance: number,
): string[] {
  if (!pdf || !svg) return [`only one has path ${at}`];
  const moved = apart(pathMeasures(pdf), pathMeasures(svg), tolerance);
  return moved ? [`path ${at}: ${pathMeasures(pdf)} against ${pathMeasures(svg)}`] : [];
}

function indexes(...lists: readonly (readonly unknown[])[]): number[] {
  return [...Array(Math.max(...lists.map(({ length }) => length))).keys()];
}

/**
 * Where the same page, painted twice, differs: texts (letters, place, size, turn) and paths
 * (points, stroke) in painting order, as sentences. Empty when all is within the tolerance, mm.
 */
export function samePlaces(pdf: ReadPage, svg: ReadPage, toleranceMm = 0.05): string[] {
  const size = apart([pdf.width, pdf.height], [svg.width, svg.height], toleranceMm)
    ? [`the page is ${pdf.width} × ${pdf.height} against ${svg.width} × ${svg.height}`]
    : [];
  const texts = indexes(pdf.texts, svg.texts).flatMap((at) =>
    textDifference(pdf.texts[at], svg.texts[at], toleranceMm),
  );
  const paths = indexes(pdf.paths, svg.paths).flatMap((at) =>
    pathDifference(pdf.paths[at], svg.paths[at], at, toleranceMm),
  );
  return [...size, ...texts, ...paths];
}
