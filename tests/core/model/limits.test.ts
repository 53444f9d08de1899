import { describe, expect, it } from 'vitest';
import { pipe110, resolve, said } from './well.ts';

const bore = { depthReached: 30, sections: [{ from: 0, to: 30, diameter: 200 }] };
const string = {
  components: [{ ...pipe110, length: 30 }],
  set: { by: 'bottom', depth: 30 },
} as const;
const codes = (model: ReturnType<typeof resolve>, chapter: string) =>
  model.findings.map(({ code }) => code).filter((code) => code.startsWith(`${chapter}.`));

describe('what reaches just to the foot of the hole', () => {
  it('is nothing odd: a pump, a strike, a section', () => {
    const model = resolve({ bore, pump: { intake: 30 }, strikes: [{ depth: 30, rise: 30 }] });
    for (const chapter of ['pump', 'strike', 'bore']) expect(codes(model, chapter)).toEqual([]);
  });

  it('is told a centimetre deeper', () => {
    const sections = [{ from: 0, to: 30.01, diameter: 200 }];
    const model = resolve({
      bore: { ...bore, sections },
      pump: { intake: 30.01 },
      strikes: [{ depth: 30.01, rise: 30.02 }],
    });
    expect(codes(model, 'pump')).toEqual(['pump.belowHole']);
    expect(codes(model, 'strike')).toEqual(['strike.belowHole', 'strike.riseBelow']);
    expect(said(model, 'bore.sectionBelowDepth')).toMatchObject([{ fromM: 30, toM: 30.01 }]);
  });
});

describe('what stands at the ground', () => {
  it('is not above it', () => {
    const model = resolve({ bore, pump: { intake: 0 }, strikes: [{ depth: 0 }] });
    expect([...codes(model, 'pump'), ...codes(model, 'strike')]).toEqual([]);
  });

  it('is told a centimetre higher, with its height', () => {
    const model = resolve({ bore, pump: { intake: -0.01 }, strikes: [{ depth: -0.01 }] });
    expect(said(model, 'pump.aboveGround')).toMatchObject([{ values: { heightM: 0.01 } }]);
    expect(said(model, 'strike.aboveGround')).toMatchObject([{ values: { heightM: 0.01 } }]);
  });
});

describe('a pump in a pipe', () => {
  const pumped = (pump: object) => resolve({ bore, strings: [string], pump });

  it('may be just as wide as the pipe’s inside', () => {
    // 110 − 2 × 4.2 = 101.6 mm.
    expect(said(pumped({ intake: 20, bodyDiameter: 101.6 }), 'pump.widerThanCasing')).toEqual([]);
    expect(said(pumped({ intake: 20, bodyDiameter: 101.7 }), 'pump.widerThanCasing')).toMatchObject(
      [{ values: { bodyMm: 101.7, insideMm: 101.6 } }],
    );
  });

  it('is measured by its cylinder where its intake is not known, and not at all without depth', () => {
    const wide = { bodyDiameter: 150 };
    expect(said(pumped({ ...wide, cylinderTop: 10 }), 'pump.widerThanCasing')).toHaveLength(1);
    expect(said(pumped(wide), 'pump.widerThanCasing')).toEqual([]);
    expect(said(pumped({ intake: 20 }), 'pump.widerThanCasing')).toEqual([]);
  });

  it('has its cylinder at its intake or above', () => {
    const code = 'pump.cylinderBelowIntake';
    expect(said(pumped({ intake: 20, cylinderTop: 20 }), code)).toEqual([]);
    expect(said(pumped({ intake: 20, cylinderTop: 20.5 }), code)).toMatchObject([
      { fromM: 20, toM: 20.5 },
    ]);
  });
});

describe('the screen of a well', () => {
  it('is that of all its strings, less what the joints hide', () => {
    // Upper string 6 m; lower one 2 × 3 m of which the joint over the lower one hides 0.10 m.
    const screen = { ...pipe110, kind: 'screen' as const };
    const sump = { ...pipe110, kind: 'sump' as const, length: 1 };
    const upper = { components: [{ ...screen, outside: 160, wall: 5, length: 6 }] };
    const lower = { components: [sump, { ...screen, length: 3, count: 2, insertion: 0.1 }] };
    const at = (depth: number) => ({ set: { by: 'bottom' as const, depth } });
    const model = resolve({
      bore,
      strings: [
        { ...upper, ...at(10) },
        { ...lower, ...at(30) },
      ],
    });
    // The lowest screen stands 0.10 m in the sump, the next one as much in the lowest: 6 + 5.80 m.
    expect(model.totals.screenM).toBeCloseTo(11.8, 9);
  });
});
