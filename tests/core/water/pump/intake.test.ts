import { describe, expect, it } from 'vitest';
import { allGiven, codes, judged, wellWithDryLevel } from './wells.ts';
import { record } from '../../model/well.ts';

describe('the intake', () => {
  it('hangs from a margin under the pumping level to a margin above the foot', () => {
    // Margins of 1 m each: common practice, as the shipped practice holds them.
    const { intake } = judged('deepwellLever', wellWithDryLevel(12));
    expect(intake).toMatchObject({ levelM: 14, underLevelM: 1, footM: 39, aboveFootM: 1 });
    expect(intake!.windows).toEqual([
      { fromM: 15, toM: 30, where: 'plain' },
      { fromM: 30, toM: 38, where: 'screen' },
    ]);
    expect(intake!.hangsIn).toEqual({ fromM: 15, toM: 30, where: 'plain' });
  });

  it('keeps room for a motor under it', () => {
    const { intake } = judged('solarSubmersible', wellWithDryLevel(12));
    expect(intake!.windows.at(-1)!.toM).toBeCloseTo(39 - 1 - 0.8, 9);
  });

  it('comes into the screen only where no plain pipe is left, and that is doubtful', () => {
    const pump = judged('deepwellPlastic', wellWithDryLevel(28));
    expect(pump.intake!.hangsIn).toEqual({ fromM: 31, toM: 38, where: 'screen' });
    expect(codes(pump)).toContain('intakeInScreen');
    expect(pump.verdict).toBe('doubtful');
  });

  it('rules out every pump where the water stands too near the foot', () => {
    const pump = judged('deepwellPlastic', wellWithDryLevel(35.5));
    expect(codes(pump)).toContain('intakeNoRoom');
    expect(pump.verdict).toBe('ruledOut');
  });

  it('is not sought in a hole that is still to be cased', () => {
    const well = record({
      identity: { state: 'drilled' },
      bore: { sections: [{ from: 0, to: 40, diameter: 200 }], depthReached: 40 },
      layingOut: { drySeasonLevel: 12, drawdown: 2 },
    });
    const pump = judged('deepwellLever', well, { ...allGiven, users: 200 });
    expect(pump.intake).toBeUndefined();
    expect(pump.missing.map(({ what }) => what)).toEqual(['strings', 'casingInside']);
  });

  it('hangs in open hole where a well was completed without casing, with a doubt', () => {
    const well = record({
      identity: { state: 'completed' },
      bore: { sections: [{ from: 0, to: 40, diameter: 150 }], depthReached: 40 },
      layingOut: { drySeasonLevel: 12, drawdown: 2 },
    });
    const pump = judged('deepwellLever', well, { ...allGiven, users: 200 });
    expect(codes(pump)).toEqual(expect.arrayContaining(['intakeInOpenHole', 'casingFits']));
  });

  it('leads to the lengths of riser, rods, rope and cable', () => {
    // Intake 15 m, spout 0.6 m: 15.6 m in pieces of 3 m are 6 (computed).
    expect(judged('deepwellLever', wellWithDryLevel(12)).parts).toEqual([
      { id: 'riserPipe', lengthM: 15.6, count: 6, eachM: 3 },
      { id: 'pumpRod', lengthM: 15.6, count: 6, eachM: 3 },
    ]);
    const rope = judged('ropeAndWasher', wellWithDryLevel(12)).parts;
    expect(rope.find(({ id }) => id === 'rope')!.lengthM).toBeCloseTo(2 * 15.6 + 2, 9);
    expect(rope.find(({ id }) => id === 'washers')!.count).toBe(34);
    const cable = judged('solarSubmersible', wellWithDryLevel(12)).parts;
    expect(cable.find(({ id }) => id === 'cable')!.lengthM).toBeCloseTo(20.6, 9);
    expect(judged('bucketAndWindlass', wellWithDryLevel(12)).parts[0]!.lengthM).toBeCloseTo(
      41.6,
      9,
    );
  });
});
