import { describe, expect, it } from 'vitest';
import { loggerColumns } from '../../../../core/exchange/logger/loggerColumns.ts';

describe('the columns of a logger’s file', () => {
  it('stand in its heading', () => {
    expect(loggerColumns('time,level\n2025-11-17 07:30,10.2\n')).toEqual({
      columns: ['time', 'level'],
      decimal: '.',
    });
  });

  it('are found below what a logger writes of itself', () => {
    const text =
      'Serial;A12;\nInterval;60 s;\nDate;Pressure kPa;Temp\n17/11/2025 07:30;101,3;27,1\n';
    expect(loggerColumns(text)).toEqual({
      columns: ['Date', 'Pressure kPa', 'Temp'],
      decimal: ',',
    });
  });

  it('are none where there is no heading or nothing at all', () => {
    expect(loggerColumns('').columns).toEqual([]);
    expect(loggerColumns('1,2\n3,4\n').columns).toEqual([]);
    expect(loggerColumns('just words').columns).toEqual([]);
  });
});
