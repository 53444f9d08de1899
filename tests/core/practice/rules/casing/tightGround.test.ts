import { describe, expect, it } from 'vitest';
import { tightGround } from '../../../../../core/practice/rules/casing/tightGround.ts';
import {
  cap,
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

/** Sand from 12 m to a depth, then clay; the screen stands from 22.5 m to 28.5 m. */
const clayFrom = (depth: number): Chapters => ({
  log: [
    { from: 0, to: depth, ...sand },
    { from: depth, to: 30, material: 'clay', moisture: 'moist' },
  ],
});

const granite = (moisture?: 'dry' | 'moist'): Chapters => ({
  log: [
    { from: 0, to: 26, material: 'granite', ...(moisture ? { moisture } : {}) },
    { from: 26, to: 30, material: 'granite', fractured: true, moisture: 'waterBearing' },
  ],
});

describe('the rule of the screened ground', () => {
  it('finds a screen of which a part stands in clay', () => {
    expect(say(tightGround, clayFrom(27)).findings).toMatchObject([
      {
        code: 'screened.ground',
        severity: 'warning',
        path: 'strings[0].components[2]',
        fromM: 22.5,
        toM: 28.5,
        values: { string: 1, tightM: 1.5, screenM: 6 },
      },
    ]);
  });

  it('is graver where more than half of it does', () => {
    expect(say(tightGround, clayFrom(25.5)).findings).toMatchObject([{ severity: 'warning' }]);
    expect(say(tightGround, clayFrom(25.4)).findings).toMatchObject([{ severity: 'error' }]);
  });

  it('allows a tenth of it', () => {
    expect(say(tightGround, clayFrom(27.9))).toEqual(met);
    expect(say(tightGround, clayFrom(27.8)).findings).toHaveLength(1);
  });

  it('is met in sand, and in clay that is said to bear water', () => {
    expect(say(tightGround)).toEqual(met);
    const wet = [{ from: 0, to: 30, material: 'clay', moisture: 'waterBearing' }] as const;
    expect(say(tightGround, { log: [...wet] })).toEqual(met);
  });

  it('is met where water was struck, or where shale is fractured', () => {
    const struck: Chapters = {
      log: [{ from: 0, to: 30, material: 'granite' }],
      strikes: [{ depth: 25 }],
    };
    expect(say(tightGround, struck)).toEqual(met);
    const shale: Chapters = { log: [{ from: 0, to: 30, material: 'shale', fractured: true }] };
    expect(say(tightGround, shale)).toEqual(met);
  });

  it('lets a screen reach past a fracture into whole rock, but not stand in whole rock alone', () => {
    expect(say(tightGround, granite('dry'))).toEqual(met);
    const dry: Chapters = { log: [{ from: 0, to: 30, material: 'granite', moisture: 'dry' }] };
    expect(say(tightGround, dry).findings).toMatchObject([{ severity: 'error' }]);
  });

  it('cannot tell of rock of which nobody wrote whether it bears water', () => {
    expect(misses(tightGround, granite())).toEqual(['moisture log[0].moisture']);
  });

  it('cannot tell where the log is silent', () => {
    expect(misses(tightGround, { log: [] })).toEqual(['log log']);
    expect(misses(tightGround, { log: [{ from: 0, to: 25, ...sand }] })).toEqual(['log log']);
  });

  it('cannot tell where nothing says how deep the string stands', () => {
    const loose = [{ components: [cap, sump, screen, plain] }];
    expect(misses(tightGround, { ...clayFrom(25), strings: loose })).toEqual([
      'measuredDepth strings[0].measuredDepth',
    ]);
  });

  it('passes by a well that gives no water', () => {
    for (const state of closedStates)
      expect(say(tightGround, { ...clayFrom(25), ...inState(state) })).toEqual(passedBy);
  });
});
