import { describe, expect, it } from 'vitest';
import type { Detail } from '../../../../../core/drawing/parts/details/detail.ts';
import { footDetail } from '../../../../../core/drawing/parts/details/footDetail.ts';
import { headDetail } from '../../../../../core/drawing/parts/details/headDetail.ts';
import { padDetail } from '../../../../../core/drawing/parts/details/padDetail.ts';
import { slotDetail, slottedPieces } from '../../../../../core/drawing/parts/details/slotDetail.ts';
import { builtOf } from '../../../../../core/drawing/parts/section/built.ts';
import { group } from '../../../../../core/drawing/shapes.ts';
import { resolveWell } from '../../../../../core/model/resolveWell.ts';
import { well } from '../../../../demo-data/wells.ts';
import { resolve } from '../../../model/well.ts';
import { boundsOf, kit, pathsIn, wordsIn } from '../../trial.ts';

const record = well('hand-drilled-32m.json');
const built = builtOf(resolveWell(record));
const drawn = (detail: Detail | undefined) => group('all', detail!.draw(20, 10));

/** Lengths of dimension lines by their figure: the third line of each dimension. */
function dimensionsOf(detail: Detail | undefined): Record<string, number> {
  const found: Record<string, number> = {};
  const walk = (items: readonly unknown[]): void => {
    for (const one of items as ReturnType<Detail['draw']>) {
      if (one.kind !== 'group') continue;
      if (one.name === 'dimension') {
        const [x0, y0, x1, y1] = boundsOf(pathsIn(one)[2]!);
        found[wordsIn(one).join('')] = Math.max(x1 - x0, y1 - y0);
      }
      walk(one.items);
    }
  };
  walk([drawn(detail)]);
  return found;
}

describe('the foot of the casing', () => {
  it('shows cap and pack with diameters at its scale', () => {
    const detail = footDetail(kit, built, 85);
    const words = wordsIn(drawn(detail)).join(' ');
    expect(words).toContain('32.00');
    expect(words).toContain('bottom cap');
    expect(words).toContain('sump 1.50 m in all');
    const { scale } = detail!.bar;
    const lengths = dimensionsOf(detail);
    expect(lengths['Ø 110']).toBeCloseTo(110 / scale, 2);
    expect(lengths['Ø 165']).toBeCloseTo(165 / scale, 2);
  });

  it('is absent where the string is open at its foot, or no size is known', () => {
    const open = resolve({
      strings: [{ components: [{ kind: 'plain', outside: 110, length: 3 }] }],
    });
    expect(footDetail(kit, builtOf(open), 85)).toBeUndefined();
    const bare = resolve({ strings: [{ components: [{ kind: 'cap', length: 0.1 }] }] });
    expect(footDetail(kit, builtOf(bare), 85)).toBeUndefined();
  });
});

describe('the slots of a screen', () => {
  const [piece] = slottedPieces(built.strings);
  const detail = slotDetail(kit, piece!, 85);

  it('have their true width and distance at 2:1', () => {
    expect(detail.bar.scale).toBe(0.5);
    expect(dimensionsOf(detail)['6 mm']).toBeCloseTo(12, 2);
    const stripes = pathsIn(drawn(detail)).filter(({ fill }) => fill !== undefined);
    const tops = [...new Set(stripes.map((one) => boundsOf(one)[1].toFixed(3)))].map(Number);
    for (const one of stripes) expect(boundsOf(one)[3] - boundsOf(one)[1]).toBeCloseTo(1, 6);
    for (const [at, top] of tops.slice(1).entries()) expect(top - tops[at]!).toBeCloseTo(12, 2);
  });

  it('are drawn once for screens that are alike, and not where a distance is unknown', () => {
    expect(slottedPieces(built.strings)).toHaveLength(1);
    const granite = resolveWell(well('telescoped-in-granite.json'));
    expect(slottedPieces(granite.strings)).toEqual([]);
  });
});

describe('the headworks', () => {
  it('have pad, thickness and stick-up at one scale down and across', () => {
    const lengths = dimensionsOf(headDetail(kit, built, record.headworks, 176));
    expect(lengths['2.00 m']).toBeCloseTo(100, 2);
    expect(lengths['0.12 m']).toBeCloseTo(6, 2);
    expect(lengths['0.45 m']).toBeCloseTo(22.5, 2);
  });

  it('show the drain from above at its true length', () => {
    const detail = padDetail(kit, record.headworks, 110, 176);
    expect(dimensionsOf(detail)['6.00 m']).toBeCloseTo(6000 / detail!.bar.scale, 2);
    expect(wordsIn(drawn(detail))).toContain('drain, fall 2 %');
  });

  it('is at a smaller scale where the page has less height', () => {
    const heightAt = (most: number) => headDetail(kit, built, record.headworks, 263, most)!.height;
    expect(heightAt(60)).toBeLessThanOrEqual(60);
    expect(heightAt(60)).toBeLessThan(heightAt(Infinity));
  });

  it('are absent where no pad is known', () => {
    expect(headDetail(kit, built, { plate: true }, 176)).toBeUndefined();
    expect(padDetail(kit, undefined, 110, 176)).toBeUndefined();
  });
});
