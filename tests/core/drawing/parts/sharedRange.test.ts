import { describe, expect, it } from 'vitest';
import { describeStratum } from '../../../../core/drawing/describe.ts';
import { drawDescriptions } from '../../../../core/drawing/parts/descriptions.ts';
import { hatchOf } from '../../../../core/drawing/parts/ground.ts';
import { layLegend } from '../../../../core/drawing/parts/legend.ts';
import { drawRate, rateSteps } from '../../../../core/drawing/parts/log/rate.ts';
import { drawSamples, sampleMarks } from '../../../../core/drawing/parts/log/samples.ts';
import { group } from '../../../../core/drawing/shapes.ts';
import type { LogInterval } from '../../../../core/record/log.ts';
import { resolve } from '../../model/well.ts';
import { kit, pathsIn, view, within, wordsIn } from '../trial.ts';

type Row = Partial<LogInterval>;

const shared = (...rows: Row[]) =>
  resolve({ log: rows.map((row) => ({ from: 12.8, to: 14.33, ...row })) });
const stratum = (...rows: Row[]) => shared(...rows).strata[0]!;

const clay: Row = { material: 'clay', words: 'Clay interlayered' };
const gravel: Row = { material: 'gravel', words: 'Gravel small seam' };

describe('two rows of the log over one range', () => {
  it('are both described, the first first', () => {
    expect(describeStratum(stratum(clay, gravel), kit.words)).toBe(
      'Clay interlayered; Gravel small seam',
    );
    const drawn = drawDescriptions(kit, shared(clay, gravel).strata, view);
    expect(wordsIn(drawn).join(' ')).toBe('Clay interlayered; Gravel small seam');
  });

  it('are described once where they say the same', () => {
    expect(describeStratum(stratum(clay, clay), kit.words)).toBe('Clay interlayered');
  });

  it('are hatched as the first with the second in it', () => {
    expect(hatchOf(stratum(clay, gravel))).toBe('clay+gravel');
    expect(hatchOf(stratum(clay, clay))).toBe('clay');
    expect(hatchOf(stratum({}, gravel))).toBe('gravel');
    const sandy: Row = { material: 'clay', qualifiers: [{ material: 'sand' }] };
    expect(hatchOf(stratum(sandy, gravel))).toBe('clay+gravel');
    expect(hatchOf(stratum(sandy))).toBe('clay+sand');
  });

  it('are both in the legend', () => {
    const legend = layLegend(kit, shared(clay, gravel), [], 100);
    const words = wordsIn(group('legend', legend.draw(0, 0)));
    expect(words).toEqual(expect.arrayContaining(['clay', 'gravel', 'mixed ground']));
  });

  it('show the sample and the drilling rate that only the second tells', () => {
    const { strata } = shared(clay, { ...gravel, sampled: true, minutesPerMetre: 4 });
    const samples = drawSamples(kit, sampleMarks({ strata, samples: [] }), view);
    expect(within(samples).filter(({ source }) => source?.startsWith('log'))).not.toEqual([]);
    const columns = { ...view.columns, rate: { x: 100, width: 10 } };
    expect(pathsIn(drawRate(kit, rateSteps(strata), { ...view, columns })).length).toBeGreaterThan(
      1,
    );
  });
});
