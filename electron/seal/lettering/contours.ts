import type { Contour, Face, OutlinePoint } from './trueType.ts';

/** Bits of a point's flags. */
const [onLine, shortX, shortY, repeated, sameX, sameY] = [1, 2, 4, 8, 16, 32];

function flagsFrom(data: DataView, from: number, count: number) {
  const flags: number[] = [];
  let at = from;
  while (flags.length < count) {
    const flag = data.getUint8(at++);
    const times = flag & repeated ? 1 + data.getUint8(at++) : 1;
    for (let time = 0; time < times; time += 1) flags.push(flag);
  }
  return { flags, at };
}

/** Steps from point to point, of one byte, of two, or none. */
function coordinates(data: DataView, from: number, flags: readonly number[], bits: number[]) {
  const [short, same] = bits as [number, number];
  let [at, value] = [from, 0];
  const values = flags.map((flag) => {
    if (flag & short) value += flag & same ? data.getUint8(at++) : -data.getUint8(at++);
    else if (!(flag & same)) {
      value += data.getInt16(at);
      at += 2;
    }
    return value;
  });
  return { values, at };
}

function simple(data: DataView, count: number): Contour[] {
  const ends = Array.from({ length: count }, (_, at) => data.getUint16(10 + 2 * at));
  const instructionsAt = 10 + 2 * count;
  const from = instructionsAt + 2 + data.getUint16(instructionsAt);
  const { flags, at } = flagsFrom(data, from, ends.at(-1)! + 1);
  const x = coordinates(data, at, flags, [shortX, sameX]);
  const y = coordinates(data, x.at, flags, [shortY, sameY]);
  const points = flags.map((flag, point) => ({
    x: x.values[point]!,
    y: y.values[point]!,
    on: (flag & onLine) !== 0,
  }));
  return ends.map((end, contour) => points.slice((ends[contour - 1] ?? -1) + 1, end + 1));
}

/** Bits of a part's flags. */
const [wideSteps, areSteps, oneScale, more, twoScales, fourScales] = [1, 2, 8, 32, 64, 128];

interface Part {
  readonly glyph: number;
  move(point: OutlinePoint): OutlinePoint;
  readonly next: number;
  readonly last: boolean;
}

/** A part of a shape that is put together, as an accent on a letter. Scales are in 1/16384. */
function partAt(data: DataView, from: number): Part {
  const flags = data.getUint16(from);
  if (!(flags & areSteps)) throw new Error('A face joins its shapes by points');
  const wide = (flags & wideSteps) !== 0;
  const step = (index: number) =>
    wide ? data.getInt16(from + 4 + 2 * index) : data.getInt8(from + 4 + index);
  const [dx, dy] = [step(0), step(1)];
  const scalesAt = from + (wide ? 8 : 6);
  const scales = flags & fourScales ? 4 : flags & twoScales ? 2 : flags & oneScale ? 1 : 0;
  const scale = (index: number) => data.getInt16(scalesAt + 2 * index) / 16384;
  const [a, b, c, d] =
    scales === 4
      ? [scale(0), scale(1), scale(2), scale(3)]
      : [scales ? scale(0) : 1, 0, 0, scales ? scale(scales - 1) : 1];
  return {
    glyph: data.getUint16(from + 2),
    move: ({ x, y, on }) => ({ x: a! * x + c! * y + dx, y: b! * x + d! * y + dy, on }),
    next: scalesAt + 2 * scales,
    last: !(flags & more),
  };
}

function composite(face: Face, data: DataView): Contour[] {
  const contours: Contour[] = [];
  for (let at = 10, last = false; !last;) {
    const part = partAt(data, at);
    contours.push(...contoursOf(face, part.glyph).map((contour) => contour.map(part.move)));
    [at, last] = [part.next, part.last];
  }
  return contours;
}

/** Outlines of a shape in font units, y upwards. */
export function contoursOf(face: Face, glyph: number): readonly Contour[] {
  const data = face.dataOf(glyph);
  if (data.byteLength === 0) return [];
  const count = data.getInt16(0);
  return count < 0 ? composite(face, data) : simple(data, count);
}
