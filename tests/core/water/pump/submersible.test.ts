import { describe, expect, it } from 'vitest';
import { pumpAssumptions } from '../../../../core/water/pump/assumptions.ts';
import { allGiven, allGivenBut, codes, judged, valueOf, wellWithDryLevel } from './wells.ts';

describe('a submersible by the sun', () => {
  it('is sized as a worked example does it (Masters, ch. 9)', () => {
    // 1200 US gal a day, 4.9 h of full sun: 4.1 gpm; against 170 ft at 34 %: 386 W; derating 0.80.
    const litres = 1200 * 3.785412;
    const headM = 170 * 0.3048;
    const inputs = {
      ...allGiven,
      sunHours: 4.9,
      users: 1,
      litresPerPersonDay: litres,
      outletM: headM - 14,
      deliveryInsideMm: 100,
    };
    const pump = judged('solarSubmersible', wellWithDryLevel(12), inputs);
    expect(valueOf(pump, 'flowM3h')! / 0.2271247).toBeCloseTo(4.1, 1);
    expect(valueOf(pump, 'totalHeadM')! / 0.3048).toBeCloseTo(170, 1);
    expect(Math.abs(valueOf(pump, 'electricW')! / 386 - 1)).toBeLessThan(0.01);
    expect(valueOf(pump, 'panelW')).toBeCloseTo(valueOf(pump, 'electricW')! / 0.8, 9);
    expect(pumpAssumptions.pumpEfficiency.value).toBe(0.34);
  });

  it('gives what is needed in the hours of sun', () => {
    // 200 · 20 l in 5 h: 0.8 m³/h (computed).
    const pump = judged('solarSubmersible', wellWithDryLevel(12));
    expect(valueOf(pump, 'flowM3h')).toBeCloseTo(0.8, 9);
    expect(valueOf(pump, 'peopleServed')).toBe(200);
    expect(pump.verdict).toBe('possible');
  });

  it('adds friction to the lift, more in a narrower and longer pipe', () => {
    const usual = judged('solarSubmersible', wellWithDryLevel(12));
    const long = judged('solarSubmersible', wellWithDryLevel(12), {
      ...allGiven,
      deliveryInsideMm: 21,
      deliveryM: 200,
    });
    const lift = 14.6;
    expect(valueOf(usual, 'totalHeadM')).toBeCloseTo(lift + valueOf(usual, 'frictionM')!, 9);
    expect(valueOf(usual, 'frictionM')).toBeLessThan(0.2);
    // Blasius, smooth pipe (from memory): friction goes with L · d^−4.75.
    const more = (215.6 / 15.6) * (34 / 21) ** 4.75;
    const ratio = valueOf(long, 'frictionM')! / valueOf(usual, 'frictionM')!;
    expect(Math.abs(ratio / more - 1)).toBeLessThan(0.05);
  });

  it('takes no more than the well was tested for, and says what that means', () => {
    // 4000 l a day at 0.5 m³/h take 8 h, at 0.4 m³/h 10 h; the sun gives 5, people pump 8: computed.
    const of = (safeRateM3h: number) =>
      judged('solarSubmersible', wellWithDryLevel(12), { ...allGiven, safeRateM3h });
    expect(valueOf(of(0.5), 'flowM3h')).toBe(0.5);
    expect(valueOf(of(0.5), 'peopleServed')).toBe(125);
    expect(codes(of(0.5))).toContain('longHours');
    expect(codes(of(0.4))).toContain('wellShort');
  });

  it('asks for the hours of sun', () => {
    const dark = allGivenBut('sunHours');
    const pump = judged('solarSubmersible', wellWithDryLevel(12), dark);
    expect(pump.missing).toEqual([{ what: 'sunHours', given: 'sunHours' }]);
    expect(pump.verdict).toBe('cantSay');
  });
});

describe('a submersible by the mains', () => {
  it('has no panels, and energy for its hours', () => {
    const pump = judged('electricSubmersible', wellWithDryLevel(12));
    expect(valueOf(pump, 'panelW')).toBeUndefined();
    expect(valueOf(pump, 'energyKwhDay')).toBeCloseTo((valueOf(pump, 'electricW')! * 8) / 1000, 9);
  });

  it('is ruled out without a supply, and cannot be judged where nobody said', () => {
    const unsaid = allGivenBut('mains');
    const well = wellWithDryLevel(12);
    expect(judged('electricSubmersible', well, { ...unsaid, mains: false }).verdict).toBe(
      'ruledOut',
    );
    expect(judged('electricSubmersible', well, unsaid).missing[0]!.what).toBe('mains');
  });
});

describe('cautions', () => {
  it('send everything electric to a licensed electrician', () => {
    const { cautions } = judged('solarSubmersible', wellWithDryLevel(12));
    expect(cautions).toEqual(
      expect.arrayContaining(['licensedElectrician', 'dryRunGuard', 'dipTube', 'makersCurve']),
    );
    expect(judged('deepwellLever', wellWithDryLevel(12)).cautions).not.toContain(
      'licensedElectrician',
    );
  });

  it('speak of cooling where water comes to the motor from above', () => {
    expect(judged('solarSubmersible', wellWithDryLevel(12)).cautions).not.toContain('coolingFlow');
    expect(judged('solarSubmersible', wellWithDryLevel(28)).cautions).toContain('coolingFlow');
  });
});
