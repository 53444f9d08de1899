import { describe, expect, it } from 'vitest';
import type { WellRecord } from '../../../../../core/record/schema.ts';
import { packToGround } from '../../../../../core/practice/rules/casing/packToGround.ts';
import {
  closedStates,
  inState,
  met,
  misses,
  passedBy,
  sand,
  say,
  sieve,
  type Chapters,
} from './wells.ts';

type Log = NonNullable<WellRecord['log']>;

const pack = (grainMin: number, grainMax: number, log?: Log): Chapters => ({
  annulus: [{ from: 20, to: 30, fill: 'gravelPack', grainMin, grainMax }],
  ...(log ? { log } : {}),
});

const bare = { material: sand.material, moisture: sand.moisture };
const sieved = (d30: number, d60: number): Log => [
  {
    from: 0,
    to: 30,
    ...bare,
    sieve: [
      { size: d30 / 2, finer: 10 },
      { size: d30, finer: 30 },
      { size: d60, finer: 60 },
    ],
  },
];

describe('the rule of the pack’s grain', () => {
  it('finds a pack that is too coarse for the finest ground screened', () => {
    const { findings } = say(packToGround, pack(2, 2, sieved(0.2, 0.4)));
    expect(findings).toMatchObject([
      {
        code: 'grain.pack',
        severity: 'warning',
        path: 'annulus[0]',
        fromM: 22.5,
        toM: 28.5,
        values: { string: 1, pack: 2, ground: 0.2, least: 4, most: 6 },
      },
    ]);
    expect(findings[0]?.values['ratio']).toBeCloseTo(10, 6);
  });

  it('notes one that is too fine', () => {
    expect(say(packToGround, pack(0.7, 0.7, sieved(0.2, 0.4))).findings).toMatchObject([
      { severity: 'note' },
    ]);
  });

  // US EPA: ground of which 70 % is retained on 0.20 mm asks for 0.80 mm (× 4) to 1.2 mm (× 6).
  it.each([0.8, 1, 1.2])('is met by %d mm round ground of 0.20 mm', (size) => {
    expect(say(packToGround, pack(size, size, sieved(0.2, 0.4)))).toEqual(met);
  });

  // US EPA: 6 to 9 times where the ground is very uneven.
  it('allows nine times where the ground is very uneven', () => {
    const uneven = sieved(0.2, 0.6);
    expect(say(packToGround, pack(1.8, 1.8, uneven))).toEqual(met);
    expect(say(packToGround, pack(1.9, 1.9, uneven)).findings).toMatchObject([
      { values: { most: 9 } },
    ]);
  });

  it('takes a pack as spread evenly between its bounds', () => {
    // d30 of 1 to 1.5 mm is 1.15 mm.
    expect(say(packToGround, pack(1, 1.5, sieved(1.15 / 6, 0.4)))).toEqual(met);
    expect(say(packToGround, pack(1, 1.5, sieved(1.14 / 6, 0.4))).findings).toHaveLength(1);
  });

  it('goes by the finest of the layers beside the screen', () => {
    const [fine] = sieved(0.2, 0.4);
    const [coarse] = sieved(0.4, 0.8);
    const log: Log = [
      { ...fine!, from: 0, to: 25 },
      { ...coarse!, from: 25, to: 30 },
    ];
    expect(say(packToGround, pack(2, 2, log)).findings).toHaveLength(1);
    const above: Log = [
      { ...fine!, from: 0, to: 22.5 },
      { ...coarse!, from: 22.5, to: 30 },
    ];
    expect(say(packToGround, pack(2, 2, above))).toEqual(met);
  });

  it('takes layers without a sieve that are called coarser as no finer than a sieved one', () => {
    const log: Log = [
      { from: 0, to: 25, ...sand, sieve },
      { from: 25, to: 30, ...sand, grain: 'coarse' },
    ];
    expect(say(packToGround, pack(1.2, 1.2, log))).toEqual(met);
  });

  it('condemns by grain words alone only what is certain', () => {
    // Fine sand of ISO 14688: 0.063 to 0.2 mm. Nine times the coarsest of it is 1.8 mm.
    const fine: Log = [{ from: 0, to: 30, ...sand, grain: 'fine' }];
    expect(say(packToGround, pack(1.9, 1.9, fine)).findings).toHaveLength(1);
    expect(misses(packToGround, pack(1, 1, fine))).toEqual(['grainOrSieve log[0].sieve']);
    // Four times its finest is 0.25 mm.
    expect(say(packToGround, pack(0.2, 0.2, fine)).findings).toMatchObject([{ severity: 'note' }]);
  });

  it('takes both scales where the log does not say which its words follow', () => {
    // 0.22 mm is medium sand in ISO 14688 and fine in Wentworth (both from memory).
    const words: Log = [{ from: 0, to: 30, material: 'sand', grain: 'fine' }];
    expect(misses(packToGround, pack(2, 2, words))).toEqual(['grainOrSieve log[0].sieve']);
  });

  it('cannot tell without grain of ground or pack, log or fills', () => {
    expect(misses(packToGround, { log: [{ from: 0, to: 30, ...bare }] })).toEqual([
      'grainOrSieve log[0].sieve',
    ]);
    const plainPack: Chapters = { annulus: [{ from: 20, to: 30, fill: 'gravelPack' }] };
    expect(misses(packToGround, plainPack)).toEqual(['packGrain annulus[0].grainMin']);
    expect(misses(packToGround, { log: [] })).toEqual(['log log']);
    expect(misses(packToGround, { annulus: [] })).toEqual(['fills annulus']);
  });

  it('takes the grain of the gravel on site where the fill has none', () => {
    const site: Chapters = {
      annulus: [{ from: 20, to: 30, fill: 'gravelPack' }],
      layingOut: { grainMin: 1, grainMax: 1.5 },
    };
    expect(say(packToGround, site)).toEqual(met);
  });

  it('passes by rock, screens without a pack and a well that gives no water', () => {
    const rock: Log = [{ from: 0, to: 30, material: 'granite', fractured: true }];
    expect(say(packToGround, pack(2, 4, rock))).toEqual(passedBy);
    const collapsed: Chapters = { annulus: [{ from: 20, to: 30, fill: 'naturalCollapse' }] };
    expect(say(packToGround, collapsed)).toEqual(passedBy);
    for (const state of closedStates)
      expect(say(packToGround, { ...pack(5, 5), ...inState(state) })).toEqual(passedBy);
  });
});
