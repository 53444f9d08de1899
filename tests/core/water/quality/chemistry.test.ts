import { describe, expect, it } from 'vitest';
import { judge, sample, type Row } from './samples.ts';

const mgL = (parameter: string, value: number, as?: string): Row => ({
  parameter,
  value,
  unit: 'mg/l',
  ...(as === undefined ? {} : { as }),
});
const below = (row: Row): Row => ({ ...row, below: true });

describe('nitrate and nitrite together', () => {
  const of = (...rows: Row[]) => judge([sample('2026-02-10', ...rows)]).nitrogen;

  // WHO 4th ed. ch. 12 (from memory): NO3/50 + NO2/3 at most 1.
  it('are shares that add up', () => {
    const both = of(mgL('NO3', 40), mgL('NO2', 0.9));
    expect(both?.ratio.value.most).toBeCloseTo(0.8 + 0.3, 9);
    expect(both?.state).toBe('above');
    expect(of(mgL('NO3', 35), mgL('NO2', 0.9))?.state).toBe('within');
    expect(of(mgL('NO3', 25), mgL('NO2', 1.5))?.state).toBe('within');
  });

  it('lie between nothing and the limit where one is below detection', () => {
    const fine = of(mgL('NO3', 40), below(mgL('NO2', 0.3)));
    expect(fine?.ratio.value).toEqual({ least: 0.8, most: expect.closeTo(0.9, 9) });
    expect(fine?.state).toBe('within');
    expect(of(mgL('NO3', 40), below(mgL('NO2', 1)))?.state).toBe('limitTooHigh');
    expect(of(mgL('NO3', 60), below(mgL('NO2', 1)))?.state).toBe('above');
    expect(of(mgL('Nitrate', 20), mgL('NO2', 0.1))?.state).toBe('formUnknown');
  });

  it('are told only of one sample that has both', () => {
    expect(of(mgL('NO3', 40))).toBeUndefined();
    const parted = judge([
      sample('2026-02-10', mgL('NO3', 40)),
      sample('2026-02-11', mgL('NO2', 1)),
    ]);
    expect(parted.nitrogen).toBeUndefined();
  });
});

describe('the ion balance', () => {
  /** Sea water of salinity 35 (from memory: oceanographic reference composition), mg/kg. */
  const sea = [
    mgL('Na', 10784),
    mgL('Mg', 1284),
    mgL('Ca', 412),
    mgL('K', 399),
    mgL('Cl', 19353),
    mgL('SO4', 2713),
    mgL('HCO3', 141),
  ];
  const of = (rows: Row[]) => judge([sample('2026-02-10', ...rows)]).ionBalance;

  it('closes for sea water', () => {
    const balance = of(sea)!;
    expect(balance.cations.value.most).toBeCloseTo(606, -0.5);
    expect(Math.abs(balance.error.value.most)).toBeLessThan(0.5);
    expect(balance).toMatchObject({ state: 'good', lacking: ['nitrate'] });
    expect(balance.used).toEqual([
      'calcium',
      'magnesium',
      'sodium',
      'potassium',
      'bicarbonate',
      'chloride',
      'sulfate',
    ]);
  });

  it('is 100 · (cations − anions) / (cations + anions), and says where it does not close', () => {
    const withoutSalt = sea.map((row) => (row.parameter === 'Cl' ? mgL('Cl', 12000) : row));
    const balance = of(withoutSalt)!;
    const [c, a] = [balance.cations.value.most, balance.anions.value.most];
    expect(balance.error.value.most).toBeCloseTo((100 * (c - a)) / (c + a), 9);
    expect(balance.state).toBe('poor');
  });

  it('takes alkalinity for bicarbonate, and counts it once', () => {
    const rows = [...sea.slice(0, 6), mgL('Alkalinity', 141 / 1.219)];
    expect(of(rows)!.anions.value.most).toBeCloseTo(of(sea)!.anions.value.most, 2);
    const both = [...sea, mgL('Alkalinity', 141 / 1.219)];
    expect(of(both)!.anions.value.most).toBe(of(sea)!.anions.value.most);
  });

  it('is open where detection limits are wide, and absent where a major ion is', () => {
    const thin = [
      mgL('Ca', 4),
      mgL('Mg', 1),
      mgL('Na', 3),
      mgL('HCO3', 20),
      below(mgL('Cl', 10)),
      mgL('SO4', 2),
    ];
    expect(of(thin)!.state).toBe('unclear');
    for (const { parameter } of sea.filter((row) => row.parameter !== 'K'))
      expect(of(sea.filter((row) => row.parameter !== parameter)), parameter).toBeUndefined();
    expect(of(sea.filter((row) => row.parameter !== 'K'))!.lacking).toEqual([
      'potassium',
      'nitrate',
    ]);
  });
});

describe('hardness from calcium and magnesium', () => {
  // APHA 2340 B, from memory: 2.497 · Ca + 4.118 · Mg.
  it('is told as CaCO3', () => {
    const { hardness } = judge([sample('2026-02-10', mgL('Ca', 34), mgL('Mg', 15))]);
    expect(hardness?.mgL.value.most).toBeCloseTo(2.497 * 34 + 4.118 * 15, 1);
    expect(hardness?.mgL.inputs.map(({ symbol }) => symbol)).toEqual(['a', 'Ca', 'b', 'Mg']);
  });

  it('is absent where one of them is', () => {
    expect(judge([sample('2026-02-10', mgL('Ca', 34))]).hardness).toBeUndefined();
  });
});

describe('dissolved solids from conductivity', () => {
  const ec = { parameter: 'Conductivité', value: 1000, unit: 'µS/cm' };

  // Hydrochemistry textbooks, from memory: a factor of 0.5 to 0.75, 0.65 in the middle.
  it('lie between two factors, which are said', () => {
    const { solids } = judge([sample('2026-02-10', ec)]);
    expect(solids?.mgL.value).toEqual({ least: 500, most: 750 });
    expect(solids).toMatchObject({ middleMgL: 650, band: 'fair' });
    expect(solids?.mgL.inputs[0]).toMatchObject({ from: { assumed: 'solidsFactor' } });
    expect(judge([sample('2026-02-10', { ...ec, value: 1, unit: 'mS/cm' })]).solids).toMatchObject({
      middleMgL: 650,
    });
  });

  it('are not guessed where they were measured', () => {
    expect(judge([sample('2026-02-10', ec, mgL('TDS', 600))]).solids).toBeUndefined();
  });
});
