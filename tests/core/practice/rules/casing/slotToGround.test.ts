import { describe, expect, it } from 'vitest';
import { slotToGround } from '../../../../../core/practice/rules/casing/slotToGround.ts';
import {
  cap,
  casing,
  closedStates,
  inState,
  met,
  misses,
  passedBy,
  plain,
  sand,
  say,
  screen,
  sump,
  type Chapters,
} from './wells.ts';

const bareGround = (slotWidth: number, changed: Chapters = {}): Chapters => ({
  ...casing(cap, sump, { ...screen, slotWidth }, plain),
  annulus: [{ from: 20, to: 30, fill: 'naturalCollapse' }],
  ...changed,
});

const fine: Chapters = { log: [{ from: 0, to: 30, ...sand, grain: 'fine' }] };

describe('the rule of the slots without a pack', () => {
  it('finds slots that keep back too little of the ground', () => {
    expect(say(slotToGround, bareGround(0.6)).findings).toMatchObject([
      {
        code: 'slot.ground',
        severity: 'warning',
        path: 'strings[0].components[2]',
        fromM: 22.5,
        toM: 28.5,
        values: { string: 1, slot: 0.6, limit: 0.5, keeps: 40 },
      },
    ]);
  });

  // Published tutorial on well screens: without a pack the slot keeps 40 to 60 % of the ground.
  it('is met by slots as wide as the size that 40 % is retained on', () => {
    expect(say(slotToGround, bareGround(0.5))).toEqual(met);
    expect(say(slotToGround, bareGround(0.25))).toEqual(met);
  });

  it('judges by grain words only what is certain', () => {
    // Fine sand of ISO 14688: 0.063 to 0.2 mm.
    expect(say(slotToGround, bareGround(0.21, fine)).findings).toHaveLength(1);
    expect(say(slotToGround, bareGround(0.06, fine))).toEqual(met);
    expect(misses(slotToGround, bareGround(0.15, fine))).toEqual(['grainOrSieve log[0].sieve']);
  });

  it('cannot tell without slot or grain', () => {
    const open = { kind: 'screen', length: 6 } as const;
    expect(misses(slotToGround, bareGround(1, casing(cap, sump, open, plain)))).toEqual([
      'slotWidth strings[0].components[2].slotWidth',
    ]);
    const unsaid: Chapters = { log: [{ from: 0, to: 30, material: 'sand' }] };
    expect(misses(slotToGround, bareGround(1, unsaid))).toEqual(['grainOrSieve log[0].sieve']);
  });

  it('passes by packs, rock and a well that gives no water', () => {
    expect(say(slotToGround)).toEqual(passedBy);
    const rock: Chapters = { log: [{ from: 0, to: 30, material: 'granite', fractured: true }] };
    expect(say(slotToGround, bareGround(1, rock))).toEqual(passedBy);
    for (const state of closedStates)
      expect(say(slotToGround, bareGround(1, inState(state)))).toEqual(passedBy);
  });
});
