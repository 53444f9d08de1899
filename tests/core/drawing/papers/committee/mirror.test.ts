import { describe, expect, it } from 'vitest';
import type { Item, TextItem } from '../../../../../core/drawing/items.ts';
import { mirrored, shifted } from '../../../../../core/drawing/papers/committee/mirror.ts';
import { layCommittee } from '../../../../../core/drawing/papers/committee/page.ts';
import { keptName } from '../../../../../core/drawing/papers/committee/text.ts';
import { paperOf } from '../../../../../core/drawing/paper.ts';
import { group, line } from '../../../../../core/drawing/shapes.ts';
import { solid } from '../../../../../core/drawing/pens.ts';
import { resolveWell } from '../../../../../core/model/resolveWell.ts';
import { guidelinesOf } from '../../../../../core/water/guidelines/chooseGuidelines.ts';
import { well } from '../../../../demo-data/wells.ts';
import { boxOfText } from '../../../../sheets/extent.ts';
import { placedOn, textsOn } from '../../../../sheets/placed.ts';
import { kitIn } from './kit.ts';

const word = (x: number, width: number, text: string): TextItem => ({
  kind: 'text',
  x,
  y: 10,
  text,
  face: 'regular',
  em: 4,
  width,
  ink: '#000000',
});

describe('an item of a sheet whose lines run from right to left', () => {
  it('stands on the other side, its lines turned round', () => {
    const drawn = mirrored(line([10, 0], [30, 5], solid('thin')), 50);
    expect(drawn).toMatchObject({
      segments: [
        ['M', 90, 0],
        ['L', 70, 5],
      ],
    });
  });

  it('is a text as it reads, that ends where it began', () => {
    expect(mirrored(word(10, 20, 'ab'), 50)).toMatchObject({ x: 70, width: 20, text: 'ab' });
  });

  it('keeps a line of several runs in their order', () => {
    const whole = group(keptName, [word(10, 20, 'ab'), word(30, 5, 'c')]);
    const { items } = mirrored(whole, 50) as { items: readonly Item[] } & Item & { kind: 'group' };
    expect(items).toMatchObject([
      { x: 65, text: 'ab' },
      { x: 85, text: 'c' },
    ]);
  });

  it('keeps its clip around it', () => {
    const clip = { x: 10, y: 0, width: 20, height: 5 };
    expect(mirrored(group('one', [], { clip }), 50)).toMatchObject({ clip: { x: 70, width: 20 } });
  });

  it('is where it was once it is mirrored twice, and moves whole', () => {
    const item = group('one', [line([1, 2], [3, 4], solid('thin')), word(10, 20, 'ab')]);
    expect(mirrored(mirrored(item, 50), 50)).toEqual(item);
    expect(shifted(item, 5)).toMatchObject({
      items: [
        {
          segments: [
            ['M', 6, 2],
            ['L', 8, 4],
          ],
        },
        { x: 15 },
      ],
    });
  });
});

describe('a sheet in a language that is written from right to left', () => {
  const record = well('hand-drilled-32m.json');
  const kit = kitIn('en', record);
  // No shipped face has a script that runs so: English stands for one.
  const mirroredKit = { ...kit, own: { ...kit.own, direction: 'rtl' as const } };
  const content = {
    record,
    model: resolveWell(record),
    guidelines: guidelinesOf(undefined),
    facts: { madeAt: '2026-01-31' },
    images: {},
  };
  const a4 = paperOf('A4');
  const { width, height, frame } = a4;
  const pageOf = (one: typeof kit) => ({
    width,
    height,
    items: layCommittee(one, content, a4)[0]!,
  });
  const [plain, turned] = [pageOf(kit), pageOf(mirroredKit)];
  const middle = frame.x + frame.width / 2;

  it('has the picture on the other side', () => {
    const xOf = (page: typeof plain) =>
      placedOn(page)
        .filter(({ groups }) => groups.includes('pump'))
        .flatMap(({ item }) => (item.kind === 'path' ? item.segments : []))
        .flatMap(([, x]) => x ?? []);
    expect(Math.max(...xOf(plain))).toBeLessThan(middle);
    expect(Math.min(...xOf(turned))).toBeGreaterThan(middle);
  });

  it('has every line of text end where the other began, with the words as they were', () => {
    const lines = (page: typeof plain) => textsOn(page).map(({ item }) => item);
    expect(lines(turned).map(({ text }) => text)).toEqual(lines(plain).map(({ text }) => text));
    const title = ({ text }: TextItem) => text === kit.own.care.title;
    const [left] = boxOfText(lines(plain).find(title)!);
    const [, , right] = boxOfText(lines(turned).find(title)!);
    expect(left).toBeCloseTo(frame.x, 3);
    expect(right).toBeCloseTo(frame.x + frame.width, 3);
  });

  it('has the bars of what is forbidden fall the other way', () => {
    const bars = (page: typeof plain) =>
      placedOn(page).flatMap(({ item, groups }) =>
        groups.at(-1) === 'forbidden' && item.kind === 'path' ? [item.segments] : [],
      );
    const falls = ([first, last]: (typeof plain.items)[0] extends never
      ? never
      : readonly (readonly unknown[])[]) => Math.sign((last![1] as number) - (first![1] as number));
    expect(new Set(bars(plain).map(falls))).toEqual(new Set([1]));
    expect(new Set(bars(turned).map(falls))).toEqual(new Set([-1]));
  });

  it('leaves marks made by hand as they were made', () => {
    const strokes = (page: typeof plain) =>
      placedOn(page)
        .filter(
          ({ groups, item }) =>
            groups.includes('marks') && groups.includes(keptName) && item.kind === 'path',
        )
        .map(({ item }) => {
          const points =
            item.kind === 'path' ? item.segments.map(([, x = 0, y = 0]) => [x, y]) : [];
          return points.map(([x, y]) =>
            [x! - points[0]![0]!, y! - points[0]![1]!].map((n) => n.toFixed(6)),
          );
        });
    expect(strokes(plain).length).toBeGreaterThan(3);
    expect(strokes(turned)).toEqual(strokes(plain));
  });
});
