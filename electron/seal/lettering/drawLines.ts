import { deflateSync } from 'node:zlib';
import type { ShownSeal } from '../seal.ts';
import { contoursOf } from './contours.ts';
import { openFace, type Contour, type Face, type OutlinePoint } from './trueType.ts';

const pointsPerMm = 72 / 25.4;
/** In points: letters no larger than this, lines this many ems apart, and white at the edge. */
const largest = 10;
const lineStep = 1.25;
const margin = 2;

const middle = (a: OutlinePoint, b: OutlinePoint): OutlinePoint => ({
  x: (a.x + b.x) / 2,
  y: (a.y + b.y) / 2,
  on: true,
});

const figure = (value: number) => String(Number(value.toFixed(2)));
const pair = ({ x, y }: { x: number; y: number }) => `${figure(x)} ${figure(y)}`;

/** TrueType bends towards one point, PDF towards two: each two thirds of the way there. */
function bend(from: OutlinePoint, towards: OutlinePoint, to: OutlinePoint): string {
  const part = (end: OutlinePoint) => ({
    x: end.x + (2 / 3) * (towards.x - end.x),
    y: end.y + (2 / 3) * (towards.y - end.y),
  });
  return `${pair(part(from))} ${pair(part(to))} ${pair(to)} c`;
}

/** Between two points off the line lies one on it, half-way, that the file leaves out. */
function filledIn(contour: Contour): readonly OutlinePoint[] {
  return contour.flatMap((point, at) => {
    const next = contour[(at + 1) % contour.length]!;
    return point.on || next.on ? [point] : [point, middle(point, next)];
  });
}

function operatorsOf(contour: Contour): string {
  const all = filledIn(contour);
  const start = all.findIndex(({ on }) => on);
  if (start < 0) return '';
  const points = [...all.slice(start), ...all.slice(0, start), all[start]!];
  const words = [`${pair(points[0]!)} m`];
  for (let at = 1; at < points.length; at += 1)
    if (points[at]!.on) words.push(`${pair(points[at]!)} l`);
    else {
      words.push(bend(points[at - 1]!, points[at]!, points[at + 1]!));
      at += 1;
    }
  return `${words.join('\n')} h`;
}

function widthOf(face: Face, line: string): number {
  const advances = [...line].map((letter) => face.advanceOf(face.glyphOf(letter.codePointAt(0)!)));
  return advances.reduce((sum, one) => sum + one, 0);
}

function drawLine(face: Face, line: string): string {
  let x = 0;
  return [...line]
    .flatMap((letter) => {
      const glyph = face.glyphOf(letter.codePointAt(0)!);
      const at = x;
      x += face.advanceOf(glyph);
      return contoursOf(face, glyph).map((contour) =>
        operatorsOf(contour.map(({ x: right, y, on }) => ({ x: right + at, y, on }))),
      );
    })
    .join('\n');
}

/** Size of the em in points at which all lines fit the box. */
function sizeOf(face: Face, { box, lines }: ShownSeal): number {
  const widest = Math.max(1, ...lines.map((line) => widthOf(face, line))) / face.unitsPerEm;
  const width = (box.width * pointsPerMm - 2 * margin) / widest;
  const height = (box.height * pointsPerMm - 2 * margin) / (lineStep * lines.length);
  return Math.max(0.1, Math.min(largest, width, height));
}

/**
 * Operators that draw lines of text in a seal's box, as outlines in black on white, since the lines
 * to fill in by hand may stand there; compressed, one letter a byte. As outlines they need no font in the file, which archival PDF would want within.
 */
export function drawLines(shown: ShownSeal): string {
  const face = openFace(shown.face);
  const lines = shown.lines.map((line) => line.normalize('NFC'));
  const size = sizeOf(face, { ...shown, lines });
  const scale = size / face.unitsPerEm;
  const [width, height] = [shown.box.width * pointsPerMm, shown.box.height * pointsPerMm];
  const ground = `1 g\n0 0 ${figure(width)} ${figure(height)} re\nf`;
  const drawn = lines.map((line, at) => {
    const y = height - margin - size * (0.95 + lineStep * at);
    const k = Number(scale.toFixed(6));
    return `q ${k} 0 0 ${k} ${figure(margin)} ${figure(y)} cm\n${drawLine(face, line)}\nf\nQ`;
  });
  return deflateSync(Buffer.from(`${ground}\n0 g\n${drawn.join('\n')}\n`), { level: 9 }).toString(
    'latin1',
  );
}
