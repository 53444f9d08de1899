import { describe, expect, it } from 'vitest';
import { slotToPack } from '../../../../../core/practice/rules/casing/slotToPack.ts';
import {
  cap,
  casing,
  closedStates,
  inState,
  met,
  misses,
  passedBy,
  plain,
  say,
  screen,
  sump,
  type Chapters,
} from './wells.ts';

const slots = (slotWidth: number, grainMin: number, grainMax?: number): Chapters => ({
  ...casing(cap, sump, { ...screen, slotWidth }, plain),
  annulus: [{ from: 20, to: 30, fill: 'gravelPack', grainMin, ...(grainMax ? { grainMax } : {}) }],
});

describe('the rule of the slots against the pack', () => {
  it('finds slots that keep back less of the pack than asked for', () => {
    const { findings } = say(slotToPack, slots(1.2, 1, 2));
    expect(findings).toMatchObject([
      {
        code: 'slot.pack',
        severity: 'warning',
        path: 'strings[0].components[2]',
        fromM: 22.5,
        toM: 28.5,
        values: { string: 1, slot: 1.2, finest: 1, coarsest: 2, keeps: 90 },
      },
    ]);
    expect(findings[0]?.values['limit']).toBeCloseTo(1.1, 6);
  });

  it('is graver where the slots keep back nothing', () => {
    expect(say(slotToPack, slots(2, 1, 2)).findings).toMatchObject([{ severity: 'warning' }]);
    expect(say(slotToPack, slots(2.1, 1, 2)).findings).toMatchObject([{ severity: 'error' }]);
  });

  it('is met by slots that keep back just 90 %', () => {
    expect(say(slotToPack, slots(1.1, 1, 2))).toEqual(met);
  });

  // US EPA: of a pack with d10 0.70 mm a slot of 0.70 mm keeps 90 %, one of 0.75 mm does not.
  it('is met by a slot as wide as the pack’s d10', () => {
    expect(say(slotToPack, slots(0.7, 0.6, 1.6))).toEqual(met);
    expect(say(slotToPack, slots(0.75, 0.6, 1.6)).findings).toHaveLength(1);
  });

  // ASTM D5092 (from memory): slot, finest 1 % and d10 of the pack that belongs to it, mm.
  it.each([
    [0.125, 0.09, 0.14],
    [0.25, 0.25, 0.4],
    [0.5, 0.7, 1],
    [0.75, 0.7, 1],
    [1, 1.2, 1.6],
    [1.5, 1.5, 2.3],
    [2, 2, 2.4],
  ])(
    'is met by a slot of %d mm in the pack of the table for monitoring wells',
    (slot, finest, d10) => {
      const coarsest = finest + (d10 - finest) * 10;
      expect(say(slotToPack, slots(slot, finest, coarsest))).toEqual(met);
      expect(say(slotToPack, slots(slot * 2, finest, coarsest)).findings).toHaveLength(
        slot * 2 > d10 ? 1 : 0,
      );
    },
  );

  it('is met by a slot no wider than the finest grain, whatever the coarsest', () => {
    expect(say(slotToPack, slots(1, 1))).toEqual(met);
    expect(misses(slotToPack, slots(1.1, 1))).toEqual(['packGrain annulus[0].grainMin']);
  });

  it('cannot tell without slot, grain or fills', () => {
    const bare = { kind: 'screen', outside: 110, length: 6 } as const;
    expect(misses(slotToPack, casing(cap, sump, bare, plain))).toEqual([
      'slotWidth strings[0].components[2].slotWidth',
    ]);
    expect(misses(slotToPack, { annulus: [{ from: 20, to: 30, fill: 'gravelPack' }] })).toEqual([
      'packGrain annulus[0].grainMin',
    ]);
    expect(misses(slotToPack, { annulus: [] })).toEqual(['fills annulus']);
  });

  it('asks for no fill where a tape tells none apart from its neighbour', () => {
    const pack = { fill: 'gravelPack', grainMin: 1, grainMax: 2 } as const;
    const parted = (depth: number): Chapters => ({
      annulus: [
        { from: 20, to: 25, ...pack },
        { from: depth, to: 30, ...pack },
      ],
    });
    expect(say(slotToPack, parted(25.05))).toEqual(met);
    expect(misses(slotToPack, parted(25.1))).toEqual(['fills annulus']);
  });

  it('passes by screens without a pack and a well that gives no water', () => {
    expect(say(slotToPack, { annulus: [{ from: 20, to: 30, fill: 'naturalCollapse' }] })).toEqual(
      passedBy,
    );
    for (const state of closedStates)
      expect(say(slotToPack, { ...slots(3, 1, 2), ...inState(state) })).toEqual(passedBy);
  });
});
