import { describe, expect, it } from 'vitest';
import { record } from '../../model/well.ts';
import {
  allGiven,
  allGivenBut,
  codes,
  judged,
  ranked,
  valueOf,
  wellWithDryLevel,
} from './wells.ts';

const outletM = 0.6;

/** A well whose lift in the dry season, from the water while pumping to the spout, is that. */
function wellWithLift(liftM: number) {
  return wellWithDryLevel(liftM - outletM - 2);
}

describe('the lift of the dry season', () => {
  it('goes from the water while pumping up to the spout', () => {
    const { quantities } = ranked(wellWithDryLevel(12));
    expect(valueOf({ quantities }, 'liftM')).toBeCloseTo(14.6, 9);
  });

  it.each([
    // Greatest lifts as printed: see the table of kinds.
    ['suction', 7],
    ['directAction', 15],
    ['deepwellOpenTop', 30],
  ] as const)('rules a kind out beyond its own: %s, %d m', (kind, mostM) => {
    expect(codes(judged(kind, wellWithLift(mostM - 0.1)))).not.toContain('liftBeyond');
    expect(judged(kind, wellWithLift(mostM + 0.1)).verdict).toBe('ruledOut');
    expect(codes(judged(kind, wellWithLift(mostM + 0.1)))).toContain('liftBeyond');
  });

  it('makes a kind doubtful where it works, but not well', () => {
    // Direct action: 15 m, better 12 m at most (WaterAid, 2013; maker’s data).
    expect(judged('directAction', wellWithLift(13)).verdict).toBe('doubtful');
    expect(judged('directAction', wellWithLift(11)).verdict).toBe('possible');
  });

  it('of a suction pump falls with the height above the sea (about 1 m in 1000 m, from memory)', () => {
    const low = wellWithLift(6.5);
    const high = { ...low, site: { ...low.site, elevation: 1000 } };
    expect(codes(judged('suction', low))).toContain('liftWithin');
    expect(codes(judged('suction', high))).toContain('liftBeyond');
  });

  it('rules out by the level that was read, though the dry season’s is not known', () => {
    const well = {
      ...wellWithDryLevel(0),
      layingOut: {},
      levels: [{ reading: 20, datum: 'ground' as const, state: 'static' as const }],
    };
    expect(judged('directAction', well).verdict).toBe('ruledOut');
    const lever = judged('deepwellPlastic', well);
    expect(lever.verdict).toBe('cantSay');
    expect(lever.missing.map(({ what }) => what)).toEqual(['dryLevel', 'drawdown']);
    expect(lever.quantities).toEqual([]);
  });

  it('is estimated from a swing that was told', () => {
    const well = {
      ...wellWithDryLevel(0),
      layingOut: { drawdown: 2 },
      levels: [{ reading: 10, datum: 'ground' as const, state: 'static' as const }],
    };
    const { quantities } = ranked(well, { ...allGiven, seasonalSwingM: 3 });
    expect(valueOf({ quantities }, 'liftM')).toBeCloseTo(10 + 3 + 2 + outletM, 9);
  });

  it('is nought where the water flows out by itself', () => {
    const { quantities } = ranked(wellWithDryLevel(-5));
    expect(valueOf({ quantities }, 'liftM')).toBe(0);
  });
});

describe('flow, hours and users', () => {
  it('gives the people served that the trade’s table reckons: 400 by flow, 300 by specification', () => {
    // 16.7 l/min · 60 · 8 h / 20 l = 400 (computed); 300 users (Akvopedia, IS 15500 family).
    const lever = judged('deepwellLever', wellWithLift(20));
    expect(valueOf(lever, 'flowM3h')).toBeCloseTo(1.002, 6);
    expect(valueOf(lever, 'peopleServed')).toBe(300);
    const flowAlone = (1.002 * 1000 * 8) / 20;
    expect(flowAlone).toBeCloseTo(400.8, 6);
  });

  it('needs 7.4 h for 500 people with 15 l each at 17 l/min (Sphere 2018; computed)', () => {
    // The tested rate is set so that it, not the pump, gives 17 l/min.
    const inputs = { ...allGiven, safeRateM3h: 17 * 0.06, users: 500, litresPerPersonDay: 15 };
    const pump = judged('directAction', wellWithLift(10), inputs);
    expect(valueOf(pump, 'hoursDay')).toBeCloseTo(7.35, 2);
    expect(codes(pump)).toContain('needMet');
    expect(codes(pump)).toContain('usersAboveMost');
  });

  it('says that one pump is not enough, and how many would do', () => {
    const lever = judged('deepwellLever', wellWithLift(15), { ...allGiven, users: 700 });
    const reason = lever.reasons.find(({ code }) => code === 'usersAboveMost')!;
    expect(reason.values).toMatchObject({ users: 700, most: 300, pumps: 3 });
    expect(lever.verdict).toBe('doubtful');
  });

  it('blames the well, not the pump, where the well is short', () => {
    const inputs = { ...allGiven, safeRateM3h: 0.3, users: 300 };
    const lever = judged('deepwellLever', wellWithLift(15), inputs);
    // 300 · 20 l / 300 l/h = 20 h: computed.
    expect(lever.reasons.find(({ code }) => code === 'wellShort')!.values.hours).toBeCloseTo(20, 9);
    expect(codes(lever)).not.toContain('longHours');
  });

  it('rules out a pump that could not do it in a day', () => {
    const inputs = { ...allGiven, users: 1000, safeRateM3h: 5 };
    expect(codes(judged('extraDeepLever', wellWithLift(30), inputs))).toContain('flowTooLow');
  });

  it('reckons the longest wait of the busiest hours', () => {
    // 200 · 20 l = 4000 l; 40 % in 2 h; at 0.55 m³/h 1600 l take 2.909 h, 54.5 min too long: computed.
    const deep = judged('extraDeepLever', wellWithLift(30));
    expect(valueOf(deep, 'queueMinutes')).toBeCloseTo(54.545, 2);
    // Sphere 2018: less than 30 min.
    expect(codes(deep)).toContain('longQueue');
  });

  it('says nothing without a tested rate or users', () => {
    const untested = allGivenBut('safeRateM3h');
    const lever = judged('deepwellPlastic', wellWithLift(15), untested);
    expect(lever.verdict).toBe('cantSay');
    expect(lever.missing).toEqual([{ what: 'safeRate', path: 'tests', given: 'safeRateM3h' }]);
    const well = { ...wellWithLift(15), site: {} };
    expect(judged('deepwellPlastic', well).missing.map(({ what }) => what)).toEqual(['users']);
  });

  it('takes the rate of a constant-rate test as the tested one', () => {
    const untested = allGivenBut('safeRateM3h');
    const well = { ...wellWithLift(15), tests: [{ kind: 'constantRate' as const, rate: 1 }] };
    const hours = judged('deepwellLever', well, untested).quantities.find(
      ({ id }) => id === 'hoursDay',
    )!;
    expect(hours.value).toBeCloseTo(4, 9);
    expect(hours.inputs.at(-1)).toMatchObject({ value: 1, from: { path: 'tests[0].rate' } });
  });
});

describe('casing, water and repair', () => {
  it('rules out what is clearly too wide for the casing', () => {
    const narrow = { ...allGiven, casingInsideMm: 70 };
    expect(codes(judged('deepwellLever', wellWithLift(15), narrow))).toContain('casingNarrow');
    // Boreholes from 60 mm (Akvopedia, Rope pump).
    expect(codes(judged('ropeAndWasher', wellWithLift(15), narrow))).toContain('casingTight');
  });

  it('doubts, but does not rule out, a casing just under a limit from memory', () => {
    const near = { ...allGiven, casingInsideMm: 99.4 };
    const lever = judged('deepwellPlastic', wellWithLift(15), near);
    expect(lever.verdict).toBe('doubtful');
    expect(codes(lever)).toContain('casingAtLimit');
  });

  it('reads the narrowest pipe down to the intake from the tally', () => {
    const lever = judged('deepwellLever', wellWithLift(15));
    const reason = lever.reasons.find(({ code }) => code === 'casingFits')!;
    expect(reason.values.insideMm).toBeCloseTo(101.6, 9);
  });

  it('asks for the inside where a wall is not known', () => {
    const well = wellWithLift(15);
    const components = well.strings![0]!.components!.map((one) =>
      one.kind === 'plain' ? { kind: one.kind, length: 30.5, outside: 110 } : one,
    );
    const unknown = { ...well, strings: [{ ...well.strings![0]!, components }] };
    expect(judged('deepwellPlastic', unknown).missing).toContainEqual({
      what: 'casingInside',
      path: 'strings[0].components[3].wall',
      given: 'casingInsideMm',
    });
  });

  it('keeps galvanised pumps out of sour water, and says nothing where nobody measured', () => {
    // pH below 6.5: Akvopedia, on the IS 15500 family.
    const well = wellWithLift(15);
    expect(judged('deepwellLever', well, { ...allGiven, ph: 6.4 }).verdict).toBe('ruledOut');
    expect(judged('deepwellLever', well, { ...allGiven, ph: 6.5 }).verdict).toBe('possible');
    expect(judged('deepwellPlastic', well, { ...allGiven, ph: 6.4 }).verdict).toBe('possible');
    const unmeasured = allGivenBut('ph');
    expect(judged('deepwellLever', well, unmeasured).missing[0]!.what).toBe('ph');
    expect(judged('deepwellPlastic', well, unmeasured).verdict).toBe('possible');
  });

  it('reads the pH of the last sample that has one', () => {
    const unmeasured = allGivenBut('ph');
    const sample = (takenAt: string, value: number) => ({
      takenAt,
      results: [{ parameter: 'pH', value }],
    });
    const well = {
      ...wellWithLift(15),
      quality: [sample('2026-05-01', 6.1), sample('2026-01-01', 7)],
    };
    const reason = judged('deepwellLever', well, unmeasured).reasons.find(
      ({ code }) => code === 'phCorrodes',
    );
    expect(reason!.values.ph).toBe(6.1);
  });

  it('doubts what cannot be repaired there', () => {
    const inputs = { ...allGiven, repair: 'caretaker' as const };
    expect(judged('deepwellLever', wellWithLift(15), inputs).verdict).toBe('doubtful');
    expect(judged('deepwellPlastic', wellWithLift(15), inputs).verdict).toBe('possible');
  });
});

describe('the order', () => {
  it('goes by verdict, with the bucket after all that is not ruled out', () => {
    const { kinds } = ranked(wellWithLift(15.5));
    const verdicts = kinds.map(({ verdict }) => verdict);
    const places = verdicts.map((one) =>
      ['possible', 'doubtful', 'cantSay', 'ruledOut'].indexOf(one),
    );
    const withoutBucket = places.filter((_, at) => kinds[at]!.kind !== 'bucketAndWindlass');
    expect(withoutBucket).toEqual([...withoutBucket].sort((a, b) => a - b));
    const bucket = kinds.findIndex(({ kind }) => kind === 'bucketAndWindlass');
    expect(kinds.slice(bucket + 1).every(({ verdict }) => verdict === 'ruledOut')).toBe(true);
  });

  it('sets a closed pump of the caretaker’s first for a common village well', () => {
    // Common practice: 200 users, 15 m of lift, pH 7.
    expect(ranked(wellWithLift(15)).kinds[0]!.kind).toMatch(/^deepwell(OpenTop|Plastic)$/);
  });

  it('holds every kind but for a well that was given up', () => {
    expect(ranked(wellWithLift(15)).kinds).toHaveLength(10);
    expect(ranked(record({ identity: { state: 'dry' } })).kinds).toEqual([]);
  });

  it('says of an empty record what is missing, and rules nothing out but by electricity', () => {
    const { kinds, missing } = ranked(record({}), {});
    expect(kinds.every(({ verdict }) => verdict === 'cantSay')).toBe(true);
    expect(missing.map(({ what }) => what)).toEqual(
      expect.arrayContaining(['restLevel', 'drawdown', 'safeRate', 'users', 'strings', 'ph']),
    );
    expect(ranked(record({}), { mains: false }).kinds.at(-1)!.kind).toBe('electricSubmersible');
  });
});
