import { describe, expect, it } from 'vitest';
import { resolveWell } from '../../../../core/model/resolveWell.ts';
import type { WellRecord } from '../../../../core/record/schema.ts';
import type { Level } from '../../../../core/record/water.ts';
import { levelSeries } from '../../../../core/water/levels/levelSeries.ts';
import { seasonLevels, type LevelInputs } from '../../../../core/water/levels/seasonLevels.ts';
import { record } from '../../model/well.ts';

const rest: Level = { reading: 10, datum: 'ground', state: 'static', at: '2026-10-16' };
const pumping: Level = { reading: 12.5, datum: 'ground', state: 'pumping', at: '2026-10-17' };

function levelsOf(chapters: Omit<WellRecord, 'schemaVersion'>, inputs?: LevelInputs) {
  const well = record(chapters);
  return seasonLevels(well, resolveWell(well), inputs);
}

describe('levels by season', () => {
  it('are as the record says them', () => {
    const layingOut = { drySeasonLevel: 13, drawdown: 2 };
    expect(levelsOf({ levels: [rest], layingOut })).toEqual({
      restM: 10,
      restAt: '2026-10-16',
      dryRestM: 13,
      dryBy: 'said',
      drawdownM: 2,
      pumpingM: 12,
      dryPumpingM: 15,
      atLeastM: 15,
    });
  });

  it('take the drawdown from rest to the level read while pumping, into the dry season', () => {
    const levels = levelsOf({ levels: [rest, pumping], layingOut: { drySeasonLevel: 13 } });
    expect(levels).toMatchObject({ drawdownM: 2.5, pumpingM: 12.5, dryPumpingM: 15.5 });
  });

  it('take the drawdown of a test before that, against its own datum', () => {
    const tests = [
      {
        kind: 'constantRate' as const,
        datum: 'casingTop' as const,
        restLevel: 10.5,
        series: [
          { minutes: 10, reading: 12 },
          { minutes: 60, reading: 13.6 },
        ],
      },
    ];
    const layingOut = { drySeasonLevel: 13 };
    expect(levelsOf({ levels: [rest, pumping], tests, layingOut }).drawdownM).toBeCloseTo(3.1, 9);
  });

  it('estimate the dry season from a swing that was told, unless the record says it', () => {
    const season = { swingM: 3, lowMonths: [3, 4, 5] };
    const estimated = levelsOf({ levels: [rest] }, { season, drawdownM: 2 });
    expect(estimated.dryBy).toBe('estimated');
    expect(estimated.dryPumpingM).toBeCloseTo(15, 2);
    const layingOut = { drySeasonLevel: 11 };
    expect(levelsOf({ levels: [rest], layingOut }, { season }).dryRestM).toBe(11);
  });

  it('leave unknown what nothing tells', () => {
    expect(levelsOf({})).toEqual({});
    expect(levelsOf({ levels: [rest] })).toEqual({
      restM: 10,
      restAt: '2026-10-16',
      atLeastM: 10,
    });
  });

  it('are below ground, whatever the tape was held to', () => {
    const fromTop = { ...rest, reading: 10.4, datum: 'casingTop' as const };
    const headworks = { casingAboveGround: 0.4 };
    expect(levelsOf({ levels: [fromTop], headworks }).restM).toBeCloseTo(10, 9);
  });
});

describe('a series of levels', () => {
  it('goes by time, with what has none apart, and tells the swing that was seen', () => {
    const levels = [
      { ...rest, at: '2026-11-01', reading: 9 },
      pumping,
      { ...rest, at: '2026-04-01', reading: 12 },
      { reading: 10, datum: 'ground' as const },
    ];
    const series = levelSeries(resolveWell(record({ levels })));
    expect(series.dated.map(({ depthM }) => depthM)).toEqual([12, 12.5, 9]);
    expect(series.undated).toHaveLength(1);
    expect(series.highestRest!.depthM).toBe(9);
    expect(series.lowestRest!.depthM).toBe(12);
    expect(series.seenSwingM).toBe(3);
  });

  it('sees no swing in one reading', () => {
    const series = levelSeries(resolveWell(record({ levels: [rest] })));
    expect(series.seenSwingM).toBeUndefined();
    expect(series.lowestRest!.depthM).toBe(10);
  });
});
