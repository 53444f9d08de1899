import { describe, expect, it } from 'vitest';
import {
  covered,
  fill,
  filled,
  met,
  passedBy,
  pipe,
  slotted,
  stringOf,
  verdictOf,
} from './coveredWell.ts';

const packFrom = (fromM: number) =>
  filled(fill(0, 3, 'cementGrout'), fill(fromM, 28, 'gravelPack'));

describe('pack above the screen', () => {
  // 2 m: RWSN 2012-2, from memory. 0.6 m: the least of UFGS 02525N, primary filter pack.
  it('is asked for again where it is short of 2 m, and grave where short of 0.6 m', () => {
    const [short] = verdictOf('pack.low', packFrom(18.5)).findings;
    expect(short).toMatchObject({
      severity: 'warning',
      path: 'annulus[1]',
      fromM: 18.5,
      toM: 20,
      values: { aboveM: 1.5, screenM: 20, wantedM: 2, graveM: 0.6 },
    });
    expect(verdictOf('pack.low', packFrom(19.41)).findings).toMatchObject([{ severity: 'error' }]);
  });

  it('meets each limit where it is just there, also where a double falls short of it', () => {
    expect(verdictOf('pack.low', packFrom(18))).toEqual(met);
    // In a double 12.6 − 12 is a little less than 0.6, and 17.4 − 15.4 a little less than 2.
    const under = (topM: number) => ({
      strings: [stringOf([pipe, topM], [slotted, 26], [pipe, 28])],
    });
    expect(verdictOf('pack.low', { ...packFrom(12), ...under(12.6) }).findings).toMatchObject([
      { severity: 'warning', values: { aboveM: 0.6 } },
    ]);
    expect(verdictOf('pack.low', { ...packFrom(15.4), ...under(17.4) })).toEqual(met);
  });

  it('counts coarse sand and stacked packs alike', () => {
    const two = filled(fill(17, 19, 'formationStabiliser'), fill(19, 28, 'gravelPack'));
    expect(verdictOf('pack.low', two)).toEqual(met);
  });

  it('is asked once of screens that are joined, also one in the bell of the other', () => {
    const belled = { ...slotted, length: 3.1, insertion: 0.1 };
    const components = [{ ...pipe, length: 2 }, belled, belled, { ...pipe, length: 20 }];
    const strings = [{ components, set: { by: 'bottom' as const, depth: 28 } }];
    expect(verdictOf('pack.low', { ...packFrom(19), strings }).findings).toMatchObject([
      { values: { screenM: 20, aboveM: 1 } },
    ]);
  });

  it('is judged for each screen by itself', () => {
    const strings = [stringOf([pipe, 10], [slotted, 12], [pipe, 20], [slotted, 26], [pipe, 28])];
    const annulus = [
      fill(9, 13, 'gravelPack'),
      fill(13, 18, 'claySeal'),
      fill(18, 28, 'gravelPack'),
    ];
    expect(verdictOf('pack.low', { strings, annulus }).findings).toMatchObject([
      { path: 'annulus[0]', values: { aboveM: 1, screenM: 10 } },
    ]);
  });

  it('is left to pack.bare where no pack stands at the slots', () => {
    expect(verdictOf('pack.low', packFrom(21))).toEqual(met);
  });

  it('cannot be judged without fills, pipes, or a depth at which they stand', () => {
    expect(verdictOf('pack.low', { annulus: [] }).missing).toEqual([
      { what: 'fills', path: 'annulus' },
    ]);
    expect(verdictOf('pack.low', { strings: [] }).missing).toEqual([
      { what: 'strings', path: 'strings' },
    ]);
    const [{ components }] = covered.strings as [{ components: [] }];
    expect(verdictOf('pack.low', { ...packFrom(19), strings: [{ components }] })).toMatchObject({
      findings: [],
      missing: [{ what: 'measuredDepth', path: 'strings[0].measuredDepth' }],
    });
  });

  it('cannot be judged above a pipe without a length', () => {
    const string = stringOf([pipe, 20], [slotted, 26], [pipe, 28]);
    const [, ...upper] = string.components;
    const strings = [{ ...string, components: [pipe, ...upper] }];
    expect(verdictOf('pack.low', { ...packFrom(19), strings }).missing).toMatchObject([
      { what: 'strings' },
    ]);
  });

  it.each(['dry', 'abandonedAndSealed', 'decommissioned'] as const)(
    'is not asked of a hole that is %s',
    (state) => {
      expect(verdictOf('pack.low', { ...packFrom(19), identity: { state } })).toEqual(passedBy);
    },
  );

  it('is not asked where there is no screen, or no pipe yet', () => {
    const strings = [stringOf([pipe, 28])];
    expect(verdictOf('pack.low', { strings })).toEqual(passedBy);
    const drilled = { identity: { state: 'drilled' as const }, strings: [], annulus: [] };
    expect(verdictOf('pack.low', drilled)).toEqual(passedBy);
  });

  it('is not asked of a pipe for a tape only, as of the standpipes in tests/data/ags4', () => {
    const tip = { ...slotted, outside: 19, wall: 2 };
    const strings = [stringOf([{ ...pipe, outside: 19, wall: 2 }, 20], [tip, 20.3])];
    expect(verdictOf('pack.low', { ...packFrom(19.8), strings })).toEqual(passedBy);
  });

  it('is judged as a plan while the well is laid out', () => {
    const planned = { ...packFrom(19), identity: { state: 'laidOut' as const } };
    expect(verdictOf('pack.low', planned).findings).toHaveLength(1);
  });
});
