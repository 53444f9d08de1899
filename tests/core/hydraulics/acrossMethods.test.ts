import { describe, expect, it } from 'vitest';
import { transmissivityAcross } from '../../../core/hydraulics/acrossMethods.ts';
import { fileNames, well } from '../../demo-data/wells.ts';
import { analyse, analyseOne } from './inRecord.ts';

describe('transmissivity across methods', () => {
  it('spans the intervals of all but the rule of thumb', () => {
    const name = fileNames.find((one) => one.startsWith('hand-drilled'))!;
    const { values, interval } = transmissivityAcross(analyse(well(name)))!;
    expect(values).toHaveLength(4);
    expect(interval.lowest).toBeLessThan(values[0]!);
    expect(interval.highest).toBeGreaterThan(values.at(-1)!);
    expect(interval.lowest).toBeGreaterThan(50);
  });

  it('is not known where nothing was tested', () => {
    expect(transmissivityAcross([])).toBeUndefined();
    expect(transmissivityAcross([analyseOne({ kind: 'recovery' })])).toBeUndefined();
  });
});
