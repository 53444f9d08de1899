import { describe, expect, it } from 'vitest';
import { analyseTests } from '../../../core/hydraulics/analyseTests.ts';
import { resolveWell } from '../../../core/model/resolveWell.ts';
import { deepFreeze } from '../../../core/record/freeze.ts';
import { series, tested } from './inRecord.ts';

const well = () =>
  tested([{ kind: 'constantRate', rate: 2, restLevel: 0, series: series([[1, 1]]) }]);

describe('the tests of a record', () => {
  it('are analysed once while the record is frozen and its model stays', () => {
    const record = deepFreeze(well());
    const model = resolveWell(record);
    expect(analyseTests(record, model)).toBe(analyseTests(record, model));
    expect(analyseTests(record, resolveWell(record))).not.toBe(analyseTests(record, model));
  });

  it('are analysed anew for other choices', () => {
    const record = deepFreeze(well());
    const model = resolveWell(record);
    const chosen = { windows: { 0: { fromMin: 1, toMin: 9 } } };
    expect(analyseTests(record, model, chosen)).not.toBe(analyseTests(record, model));
  });

  it('are analysed anew while the record can change', () => {
    const record = well();
    const model = resolveWell(record);
    expect(analyseTests(record, model)).not.toBe(analyseTests(record, model));
  });
});
