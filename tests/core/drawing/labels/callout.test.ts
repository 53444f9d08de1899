import { describe, expect, it } from 'vitest';
import {
  calloutsFit,
  calloutsHeight,
  drawCallouts,
  type Callout,
  type CalloutRoom,
} from '../../../../core/drawing/labels/callout.ts';
import { widthByFont } from '../../../sheets/measure.ts';
import { groupsNamed } from '../../../sheets/placed.ts';
import { kit, pathsOf, pointsOf, textsOf, wordsOf } from '../sample.ts';

const left: CalloutRoom = { side: 'left', x: 100, width: 26, top: 20, foot: 120 };
const right: CalloutRoom = { ...left, side: 'right' };

const at = (y: number, more: Partial<Callout> = {}): Callout => ({
  depthM: y,
  at: [140, y],
  text: 'gravel pack',
  source: `annulus[${y}]`,
  ...more,
});

describe('callouts', () => {
  it('are drawn by depth, whatever the order that they come in', () => {
    const drawn = drawCallouts(kit, [at(80, { text: 'low' }), at(30, { text: 'high' })], right);
    expect(wordsOf(drawn)).toEqual(['high', 'low']);
  });

  it('have a leader that ends where they point', () => {
    const [leader] = pathsOf(drawCallouts(kit, [at(30)], right));
    expect(pointsOf(leader!).at(-1)).toEqual([140, 30]);
  });

  it('end in a dot inside a part, and not at an edge', () => {
    expect(pathsOf(drawCallouts(kit, [at(30)], right))).toHaveLength(1);
    expect(pathsOf(drawCallouts(kit, [at(30, { dot: true })], right))).toHaveLength(2);
  });

  it('stand right of their leaders on the right side, and left of them on the left', () => {
    const [onRight] = textsOf(drawCallouts(kit, [at(30)], right));
    const [onLeft] = textsOf(drawCallouts(kit, [at(30, { at: [140, 30] })], left));
    expect(onRight!.x).toBeGreaterThan(right.x + 4);
    expect(onLeft!.x + onLeft!.width).toBeLessThan(left.x + left.width - 4);
  });

  it('keep their words within their column', () => {
    const long = at(30, { text: 'screen uPVC 110 × 4.2, slot 0.75, open 7 %', figure: '12.50' });
    for (const room of [left, right])
      for (const { x, face, text, em } of textsOf(drawCallouts(kit, [long], room))) {
        expect(x).toBeGreaterThanOrEqual(room.x);
        expect(x + widthByFont(face, text, em)).toBeLessThanOrEqual(room.x + room.width);
      }
  });

  it('set a depth larger and bold before its words on the right', () => {
    const [figure, words] = textsOf(drawCallouts(kit, [at(30, { figure: '12.50' })], right));
    expect(figure).toMatchObject({ text: '12.50', face: 'bold' });
    expect(figure!.em).toBeGreaterThan(words!.em);
    expect(words!.x).toBeGreaterThan(figure!.x + figure!.width);
  });

  it('lead back to the record', () => {
    const drawn = drawCallouts(kit, [at(30)], right);
    expect(textsOf(drawn)[0]!.source).toBe('annulus[30]');
  });
});

describe('callouts that are too many', () => {
  const many = Array.from({ length: 26 }, (_, n) => at(30 + n / 10, { figure: `${n}.00` }));
  const words = 'gravel pack of quartz, washed and graded, 1.5–3 mm, from the river';

  it('are told from those that fit', () => {
    expect(calloutsFit(kit, many.slice(0, 10), right)).toBe(true);
    const wordy = many.map((one) => ({ ...one, text: words }));
    expect(calloutsFit(kit, wordy, right)).toBe(false);
    expect(calloutsHeight(kit, wordy, right)).toBeGreaterThan(right.foot - right.top);
  });

  it('keep every figure when words have to go', () => {
    const notes = many.flatMap((one, n) => [
      { ...one, depthM: n },
      at(30 + n / 10 + 0.05, { text: words }),
    ]);
    const drawn = wordsOf(drawCallouts(kit, notes, { ...right, foot: 160 }));
    for (const { figure } of many) expect(drawn).toContain(figure);
    expect(drawn.length).toBeLessThan(notes.length * 2);
  });

  it('stay within their room', () => {
    const drawn = drawCallouts(kit, many, { ...right, foot: 160 });
    expect(groupsNamed([drawn], 'callout')).toHaveLength(many.length);
    for (const { y } of textsOf(drawn)) {
      expect(y).toBeGreaterThan(right.top);
      expect(y).toBeLessThan(160);
    }
  });
});
