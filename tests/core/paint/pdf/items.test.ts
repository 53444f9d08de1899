import { OPS } from 'pdfjs-dist/legacy/build/pdf.mjs';
import { describe, expect, it } from 'vitest';
import type { Item } from '../../../../core/drawing/items.ts';
import { paintPdf } from '../../../../core/paint/pdf/paintPdf.ts';
import { openPdf } from '../../../reading/pdf.ts';
import { box, drawing, fonts, line, page, picture, text } from '../sample.ts';

const mmPerPoint = 25.4 / 72;
const bytesOf = (...items: Item[]) => paintPdf(drawing([page(items), page([])]), fonts.files);

async function pageOf(...items: Item[]) {
  return (await openPdf(bytesOf(...items))).getPage(1);
}

/** Arguments of each use of an operator on the page, in their order. */
async function usesOf(operator: number, ...items: Item[]): Promise<unknown[][]> {
  const { fnArray, argsArray } = await (await pageOf(...items)).getOperatorList();
  return argsArray.filter((_, at) => fnArray[at] === operator) as unknown[][];
}

const toMm = (points: number) => Number((points * mmPerPoint).toFixed(2));

describe('an image', () => {
  const image = {
    kind: 'image',
    ...{ x: 20, y: 140, width: 30, height: 10, data: picture, says: '' },
  } as const;

  it('stands in its box, counted from the foot of the page', async () => {
    // The matrix stretches a unit square: width, height, left, and foot 297 − 140 − 10 = 147 mm.
    const matrices = await usesOf(OPS.transform, image);
    const placed = matrices.map((args) => Array.from(args as number[]).map(toMm));
    expect(placed).toContainEqual([30, 0, 0, 10, 20, 147]);
  });

  it('may be a JPEG, which is kept as it is', () => {
    // Start, JFIF segment, frame of 3 × 2 dots in grey, end (ITU-T T.81, annex B; JFIF 1.02).
    const jfif = [0xff, 0xe0, 0, 16, 0x4a, 0x46, 0x49, 0x46, 0, 1, 2, 0, 0, 1, 0, 1, 0, 0];
    const frame = [0xff, 0xc0, 0, 11, 8, 0, 2, 0, 3, 1, 1, 0x11, 0];
    const head = [0xff, 0xd8, ...jfif, ...frame, 0xff, 0xd9];
    const data = `data:image/jpeg;base64,${Buffer.from(head).toString('base64')}`;
    const pdf = Buffer.from(bytesOf({ ...image, data })).toString('latin1');
    expect(pdf.includes('/DCTDecode')).toBe(true);
    expect(/\/Width \d+\s+\/Height \d+/.exec(pdf)?.[0].split(/\s+/)).toEqual([
      ...['/Width', '3', '/Height', '2'],
    ]);
  });
});

describe('a text', () => {
  const placeOf = async (turn?: number) => {
    const item = text('ab', 20, 30, turn === undefined ? {} : { turn });
    const { items } = await (await pageOf(item)).getTextContent();
    const found = items.find((one) => 'str' in one && one.str === 'ab') as { transform: number[] };
    return found.transform;
  };

  it('stands by the left end of its baseline in its size', async () => {
    const [a, b, , d, x, y] = (await placeOf()) as [number, number, number, number, number, number];
    // 297 − 30 = 267 mm from the foot.
    expect([toMm(a), toMm(b), toMm(d), toMm(x), toMm(y)]).toEqual([4, 0, 4, 20, 267]);
  });

  it('turns clockwise about that point', async () => {
    // PDF counts upwards: clockwise by 90° writes down the page, along (0, −1).
    const [a, b, , , x, y] = (await placeOf(90)) as [
      number,
      number,
      number,
      number,
      number,
      number,
    ];
    expect([toMm(a) + 0, toMm(b), toMm(x), toMm(y)]).toEqual([0, -4, 20, 267]);
  });
});

describe('a path', () => {
  it('without segments, or with neither pen nor fill, leaves no mark', async () => {
    const none = { kind: 'path', segments: box(0, 0, 9, 9) } as const;
    const bare = { ...line(0, 0, 1, 1), segments: [] };
    expect(await usesOf(OPS.constructPath, none, bare)).toEqual([]);
  });

  it('has its own ends and corners, whatever the pen before it had', async () => {
    const pen = { ink: '#000000', width: 0.35 } as const;
    const fancy = line(0, 0, 9, 0, { ...pen, cap: 'round', join: 'bevel' });
    // Codes of ISO 32000-1, tables 54 and 55: round 1, butt 0; bevel 2, miter 0.
    expect(await usesOf(OPS.setLineCap, fancy, line(0, 1, 9, 1))).toEqual([[1], [0]]);
    expect(await usesOf(OPS.setLineJoin, fancy, line(0, 1, 9, 1))).toEqual([[2], [0]]);
  });
});

describe('a group', () => {
  it('with a clip hides what stands outside it, and nothing after it', async () => {
    const clip = { x: 10, y: 20, width: 30, height: 40 };
    const items = [{ kind: 'group', clip, items: [line(0, 0, 99, 99)] }, line(0, 0, 1, 1)] as const;
    const { fnArray } = await (await pageOf(...items)).getOperatorList();
    const steps = fnArray.filter((one) =>
      [OPS.save, OPS.clip, OPS.restore, OPS.constructPath].includes(one),
    );
    const from = steps.indexOf(OPS.clip);
    expect(steps.slice(from - 1).filter((one) => one !== OPS.save)).toEqual([
      ...[OPS.clip, OPS.constructPath, OPS.constructPath, OPS.restore, OPS.constructPath],
    ]);
  });

  it('without a clip needs no state of its own', async () => {
    const loose = { kind: 'group', items: [line(0, 0, 9, 9)] } as const;
    expect(await usesOf(OPS.clip, loose)).toEqual([]);
    expect(await usesOf(OPS.constructPath, loose)).toHaveLength(1);
  });
});

describe('a link', () => {
  it('whose address is a script is left out, and leaves the others', async () => {
    const at = { x: 20, y: 30, width: 10, height: 5 };
    const links = [
      { kind: 'link', box: at, to: { address: 'javascript:alert(1)' } },
      { kind: 'link', box: at, to: { address: 'https://example.org/' } },
    ] as const;
    const made = await (await pageOf(...links)).getAnnotations();
    expect(made.map(({ url }) => url as string)).toEqual(['https://example.org/']);
    const alone = await (await pageOf(links[0])).getAnnotations();
    expect(alone).toEqual([]);
  });

  it('to a page that the drawing has not is refused', () => {
    const at = { x: 0, y: 0, width: 1, height: 1 };
    const to = (number: number) => bytesOf({ kind: 'link', box: at, to: { page: number } });
    expect(() => to(3)).toThrow('leads to page 3');
    expect(() => to(0)).toThrow('leads to page 0');
    expect(() => to(2)).not.toThrow();
  });
});
