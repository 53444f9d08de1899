import { describe, expect, it } from 'vitest';
import { factsOf, layParticulars } from '../../../../core/drawing/parts/particulars.ts';
import { outcomeOf } from '../../../../core/drawing/parts/testFacts.ts';
import { record, resolve } from '../../model/well.ts';
import { frenchKit, kit, textsOf } from '../sample.ts';

type Chapters = Parameters<typeof record>[0];

const facts = (chapters: Chapters) =>
  Object.fromEntries(
    factsOf(kit, record(chapters), resolve(chapters)).map(({ what, says }) => [what, says]),
  );

describe('the particulars', () => {
  it('are none of what nobody wrote', () => {
    expect(facts({})).toEqual({});
    expect(layParticulars(kit, record({}), resolve({}), 80)).toBeUndefined();
  });

  it.each<[Chapters, string, string]>([
    [
      { site: { latitude: -1.5, longitude: 34.25, positionAccuracy: 4 } },
      'Position',
      '1.5° S, 34.25° E, ± 4 m',
    ],
    [
      { site: { elevation: 287.4, elevationDatum: 'mean sea level' } },
      'Elevation',
      '287.4 m, mean sea level',
    ],
    [{ site: { users: 264, households: 38 } }, 'Users', '264, 38 households'],
    [{ bore: { method: 'handAuger', fluid: 'Water' } }, 'Method', 'hand auger, Water'],
    [{ bore: { startedOn: '2026-01-02', finishedOn: '2026-01-02' } }, 'Drilled', '2026-01-02'],
    [
      { headworks: { padLength: 2, padWidth: 2.5, drainLength: 6 } },
      'Headworks',
      'pad 2 × 2.5 m, drain 6 m',
    ],
    [
      { pump: { kind: 'deepwellLever', intake: 21 } },
      'Pump',
      'deepwell lever handpump, pump intake 21.00 m',
    ],
  ])('of %j say %s: %s', (chapters, what, says) => {
    expect(facts(chapters)[what]).toBe(says);
  });

  it('say a rest level reduced to ground and as it was read', () => {
    const headworks = { casingAboveGround: 0.45 };
    const levels = [
      { reading: 10.31, datum: 'casingTop' as const, at: '2026-01-12T07:10:00+01:00' },
    ];
    expect(facts({ headworks, levels })['Rest level']).toBe(
      '9.86 m, 2026-01-12 07:10, 10.31 m below casing top',
    );
  });

  it('say what a constant-rate test came to: rate, hours, drawdown, and rate over drawdown', () => {
    const series = [{ minutes: 360, reading: 12.4 }];
    const tests = [{ kind: 'constantRate' as const, restLevel: 9.9, rate: 1.8, series }];
    expect(facts({ tests })['Pumping test']).toBe('1.8 m³/h, 6 h, drawdown 2.5 m, 0.72 m³/h per m');
    expect(outcomeOf({ kind: 'constantRate', rate: 1.8, series })).toBeUndefined();
  });

  it('name the quarters, and what was measured, in the language of the sheet', () => {
    const site = { latitude: -1.5, longitude: -34.25 };
    const model = resolve({ site });
    expect(factsOf(frenchKit, record({ site }), model)[0]).toMatchObject({
      what: 'Position',
      says: '1,5° S, 34,25° O',
    });
  });

  it('make room for the longest of their names', () => {
    const chapters: Chapters = {
      tests: [
        { kind: 'constantRate', restLevel: 9, rate: 2, series: [{ minutes: 60, reading: 10 }] },
      ],
    };
    const block = layParticulars(frenchKit, record(chapters), resolve(chapters), 80)!;
    const [, name, says] = textsOf(block.draw(0, 0));
    expect(name!.text).toBe('Essai de pompage');
    expect(says!.x).toBeGreaterThan(name!.x + name!.width);
  });

  it('stand in two columns of about the same height when asked', () => {
    const chapters: Chapters = {
      site: { latitude: 1, longitude: 2, elevation: 3, users: 4 },
      bore: { method: 'jetting', startedOn: '2026-01-01' },
    };
    const lay = (columns: 1 | 2) =>
      layParticulars(kit, record(chapters), resolve(chapters), 170, columns)!;
    expect(lay(2).height).toBeLessThan(lay(1).height);
    const xs = new Set(textsOf(lay(2).draw(0, 0)).map(({ x }) => x));
    expect(xs.size).toBe(4);
  });
});
