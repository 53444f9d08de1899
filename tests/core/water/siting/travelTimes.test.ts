import { describe, expect, it } from 'vitest';
import type { LogInterval } from '../../../../core/record/log.ts';
import { groundOf } from '../../../../core/water/siting/groundOf.ts';
import { travelTimes } from '../../../../core/water/siting/travelTimes.ts';
import { resolveWell } from '../../../../core/model/resolveWell.ts';
import { record } from '../../model/well.ts';

const bore = { depthReached: 30, sections: [{ from: 0, to: 30, diameter: 165 }] };
const rest = [{ reading: 8, datum: 'ground' as const, state: 'static' as const }];
const layers: LogInterval[] = [
  { from: 0, to: 6, material: 'gravel' },
  { from: 6, to: 15, material: 'sand', grain: 'fine' },
  { from: 15, to: 20, material: 'clay' },
  { from: 20, to: 30, material: 'sand', grain: 'medium' },
];

function times(log: LogInterval[], surroundings: object[], levels = rest) {
  const well = record({ bore, log, levels, site: { surroundings } } as Parameters<
    typeof record
  >[0]);
  return travelTimes(well, resolveWell(well));
}

describe('what sends germs into the ground', () => {
  it('is timed by the quickest ground under the water level', () => {
    const { times: all, missing } = times(layers, [
      { kind: 'latrine', distance: 30, slope: 'uphill' },
      { kind: 'building', distance: 5 },
      { kind: 'fuelOrChemicals', distance: 40 },
    ]);
    expect(missing).toEqual([]);
    expect(all).toMatchObject([
      { path: 'site.surroundings[0]', kind: 'latrine', ground: 'mediumSand' },
    ]);
    expect(all[0]!.days.value.least).toBeCloseTo(22.5, 9);
    expect(all[0]!.references.map(({ stands }) => stands)).toEqual(['spans', 'spans']);
    expect(all[0]!.assumptions).toContain('fastestGround');
    expect(all[0]!.assumptions).not.toContain('wholeHole');
  });

  it('is timed by the whole log where no rest level is known, and downhill too', () => {
    const [time] = times(layers, [{ kind: 'latrine', distance: 30, slope: 'downhill' }], []).times;
    expect(time).toMatchObject({ ground: 'gravel' });
    expect(time!.assumptions).toEqual(expect.arrayContaining(['wholeHole', 'downhillToo']));
  });

  it('is not timed without a distance, a log, or in limestone', () => {
    expect(times(layers, [{ kind: 'latrine' }]).missing).toEqual([
      { what: 'distance', path: 'site.surroundings[0].distance' },
    ]);
    expect(times([], [{ kind: 'latrine', distance: 30 }]).missing).toEqual([
      { what: 'ground', path: 'log' },
    ]);
    const karst = [...layers.slice(0, 3), { from: 20, to: 30, material: 'limestone' as const }];
    expect(times(karst, [{ kind: 'latrine', distance: 30 }]).missing).toEqual([
      { what: 'channels', path: 'log' },
    ]);
  });
});

describe('ground is classed by its description', () => {
  const of = (interval: Partial<LogInterval>) => groundOf({ from: 0, to: 1, ...interval });

  it.each([
    [{ material: 'sand' }, 'anySand'],
    [{ material: 'sand', grain: 'coarse' }, 'coarseSand'],
    [{ material: 'sand', grain: 'fineToMedium' }, 'fineToMediumSand'],
    [{ material: 'sand', grain: 'mediumToCoarse' }, 'mediumToCoarseSand'],
    [{ material: 'sand', qualifiers: [{ material: 'gravel' }] }, 'sandAndGravel'],
    [{ material: 'gravel', qualifiers: [{ material: 'sand' }] }, 'sandAndGravel'],
    [{ material: 'gravel', qualifiers: [{ material: 'sand', degree: 'slightly' }] }, 'gravel'],
    [{ material: 'shale' }, 'clay'],
    [{ material: 'shale', fractured: true }, 'fracturedRock'],
    [{ material: 'sandstone' }, 'sandstone'],
    [{ material: 'granite' }, 'fracturedRock'],
    [{ material: 'granite', weathering: 'highly' }, 'weatheredRock'],
    [{ material: 'saprolite' }, 'weatheredRock'],
    [{ material: 'chalk' }, 'channels'],
    [{ material: 'cavity' }, 'channels'],
    [{ material: 'noSample' }, undefined],
    [{ material: 'soil' }, undefined],
    [{}, undefined],
  ] as const)('%o is %s', (interval, ground) => {
    expect(of(interval as Partial<LogInterval>)).toBe(ground);
  });
});
