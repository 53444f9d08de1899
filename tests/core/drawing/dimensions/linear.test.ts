import { describe, expect, it } from 'vitest';
import { acrossDimension, downDimension } from '../../../../core/drawing/dimensions/linear.ts';
import { boundsOf, kit, pathsIn, wordsIn, within } from '../trial.ts';

describe('a dimension', () => {
  it('across has its line between both ends and its figure over the middle', () => {
    const item = acrossDimension(kit, { from: 20, to: 60, at: 30, edge: 36, says: '2.00 m' });
    const [left, right, level] = pathsIn(item).map(boundsOf);
    expect(left!.slice(0, 1)).toEqual([20]);
    expect(right!.slice(0, 1)).toEqual([60]);
    expect(level).toEqual([20, 30, 60, 30]);
    expect(wordsIn(item)).toEqual(['2.00 m']);
    const [text] = within(item).filter((one) => one.kind === 'text');
    expect(text!.x + text!.width / 2).toBeCloseTo(40);
    expect(text!.y).toBeLessThan(30);
  });

  it('too short for its figure has it at its end, past the lines of others', () => {
    const short = { from: 20, to: 24, at: 30, edge: 36, says: '0.20 m' };
    const [figure] = within(acrossDimension(kit, short)).filter((one) => one.kind === 'text');
    expect(figure!.x).toBeGreaterThan(24);
    const [farther] = within(acrossDimension(kit, { ...short, past: 40 })).filter(
      (one) => one.kind === 'text',
    );
    expect(farther!.x).toBeGreaterThan(40);
  });

  it('down has its figure on the side away from the edge', () => {
    const at = (line: number) =>
      within(downDimension(kit, { from: 10, to: 40, at: line, edge: 50, says: '6' })).find(
        (one) => one.kind === 'text',
      )!;
    expect(at(46).x + at(46).width).toBeLessThan(46);
    expect(at(54).x).toBeGreaterThan(54);
  });

  it('down may have its figure elsewhere along the line', () => {
    const down = { from: 10, to: 40, at: 46, edge: 50, says: '6', middle: 15 };
    const [text] = within(downDimension(kit, down)).filter((one) => one.kind === 'text');
    expect(text!.y).toBeLessThan(17);
  });

  it('begins its extension lines a little off the edge', () => {
    const item = acrossDimension(kit, { from: 20, to: 60, at: 30, edge: 36, says: '' });
    for (const one of pathsIn(item).slice(0, 2)) expect(boundsOf(one)[3]).toBeLessThan(36);
  });
});
