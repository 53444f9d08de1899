import { describe, expect, it } from 'vitest';
import { titleFields } from '../../../../core/drawing/papers/asBuilt/titleFields.ts';
import { drawTitleBlock, titleBlockHeight } from '../../../../core/drawing/parts/titleBlock.ts';
import { record } from '../../model/well.ts';
import { kit, pathsOf, pointsOf, textsOf, wordsOf } from '../sample.ts';

const facts = {
  madeAt: '2026-01-31T12:00:00+00:00',
  sheet: 1,
  sheets: 2,
  depthScale: 200,
  widthScale: 5,
};
const block = (identity: object = {}) =>
  drawTitleBlock(kit, titleFields(kit, record({ identity }), facts), 20, 250);

describe('the title block', () => {
  // Source: ISO 7200: owner, number, title, type, sheet, date, approval (from memory).
  it('has the fields that a drawing must have', () => {
    const words = wordsOf(block({ number: 'E-01', name: 'Market', client: 'Water office' }));
    for (const one of ['E-01', 'Market', 'Water office', '2026-01-31', '1 of 2', '1:200', '1:5'])
      expect(words).toContain(one);
    expect(words.some((one) => one.startsWith('Approved by'))).toBe(true);
  });

  it('is 180 mm wide and fills its height', () => {
    const points = pathsOf(block()).flatMap(pointsOf);
    const [xs, ys] = [points.map(([x]) => x), points.map(([, y]) => y)];
    expect([Math.min(...xs), Math.max(...xs)]).toEqual([20, 200]);
    expect([Math.min(...ys), Math.max(...ys)]).toEqual([250, 250 + titleBlockHeight]);
  });

  it('sets a long number smaller before it cuts it', () => {
    const emOf = (number: string) =>
      textsOf(block({ number })).find(({ source }) => source === 'identity.number')!;
    const [short, long] = [emOf('E-01'), emOf('LOT-12/REGION-07/000123')];
    expect(long.text).toBe('LOT-12/REGION-07/000123');
    expect(long.em).toBeLessThan(short.em);
    expect(emOf('X'.repeat(60)).text).toMatch(/^X+$/);
    expect(wordsOf(block({ number: 'X'.repeat(160) })).some((one) => /^X+…$/.test(one))).toBe(true);
  });

  it('keeps every text within the block', () => {
    const name = 'Well of the united upper and lower settlements '.repeat(3);
    for (const { x, y, width } of textsOf(block({ name, number: name, client: name }))) {
      expect(x).toBeGreaterThan(20);
      expect(x + width).toBeLessThan(200);
      expect(y).toBeLessThan(250 + titleBlockHeight);
    }
  });
});
