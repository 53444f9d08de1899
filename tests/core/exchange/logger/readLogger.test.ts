import { describe, expect, it } from 'vitest';
import { languages } from '../../../../core/base/language.ts';
import {
  guessDelimiter,
  loggerTroubleCodes,
  readLogger,
} from '../../../../core/exchange/logger/readLogger.ts';
import { sayLoggerTrouble } from '../../../../core/exchange/logger/words.ts';

const pairs = (read: ReturnType<typeof readLogger>) =>
  read.readings.map(({ minutes, value }) => [minutes, value]);

describe('a logger’s file', () => {
  it('is read to minutes since its first row, past what the logger says of itself', () => {
    const text = [
      'Serial number: 123',
      'Place,Test well',
      '',
      'Date and time,Temperature,Level (m)',
      '2026-01-10 07:30:00,27.1,12.50',
      '2026-01-10 07:30:30,27.1,12.40',
      '2026-01-11 07:30:00,27.0,11.00',
    ].join('\r\n');
    const read = readLogger(text, { time: 'Date and time', value: 'Level (m)' });
    expect(pairs(read)).toEqual([
      [0, 12.5],
      [0.5, 12.4],
      [1440, 11],
    ]);
    expect(read.troubles).toEqual([]);
    expect(read.readings[0]!.line).toBe(5);
  });

  it('may have decimal commas, semicolons and days first', () => {
    const text = 'Temps;Niveau\n10/01/2026 07:30;12,50\n10/01/2026 07:45;12,25\n';
    const choice = { time: 'Temps', value: 'Niveau', decimal: ',', dateOrder: 'dmy' } as const;
    expect(pairs(readLogger(text, choice))).toEqual([
      [0, 12.5],
      [15, 12.25],
    ]);
  });

  it('may have months first and halves of the day', () => {
    const text = 'Time\tkPa\n1/10/2026 11:59 AM\t100\n1/10/2026 12:01 PM\t99.5\n';
    const choice = { time: 'Time', value: 'kPa', dateOrder: 'mdy' } as const;
    expect(pairs(readLogger(text, choice))).toEqual([
      [0, 100],
      [2, 99.5],
    ]);
  });

  it('may have times of the day alone, past midnight', () => {
    const text = 'h;m\n23:59:30;1.0\n00:00:30;1.1\n';
    expect(pairs(readLogger(text, { time: 'h', value: 'm' }))).toEqual([
      [0, 1],
      [1, 1.1],
    ]);
  });

  it('may count its time in a unit, which then stays as it is', () => {
    const text = 'elapsed,level\n30,1\n90,2\n';
    expect(pairs(readLogger(text, { time: 'elapsed', value: 'level', timeUnit: 's' }))).toEqual([
      [0.5, 1],
      [1.5, 2],
    ]);
  });

  it('has rows that cannot be read told and left out', () => {
    const text = 'Time;Level\n07:30;1,0\n07:31;OL\nlater;1,2\n31/02/2026 07:33;1,2\n07:33;1,3\n';
    const read = readLogger(text, { time: 'Time', value: 'Level', decimal: ',', dateOrder: 'dmy' });
    expect(pairs(read)).toEqual([
      [0, 1],
      [3, 1.3],
    ]);
    expect(read.troubles).toEqual([
      { code: 'notNumber', line: 3, column: 'Level', text: 'OL' },
      { code: 'notTime', line: 4, column: 'Time', text: 'later' },
      { code: 'notTime', line: 5, column: 'Time', text: '31/02/2026 07:33' },
    ]);
  });

  it('without such columns has nothing, and says so', () => {
    const read = readLogger('a,b\n1,2\n', { time: 'Time', value: 'Level' });
    expect(read.readings).toEqual([]);
    expect(read.troubles.map(({ code }) => code)).toEqual(['noColumn']);
    expect(readLogger('', { time: 'Time', value: 'Level' }).readings).toEqual([]);
  });

  it('is told by its commonest mark', () => {
    expect(guessDelimiter('a;b\n1,5;2,5\n')).toBe(';');
    expect(guessDelimiter('a\tb\n1\t2\n')).toBe('\t');
    expect(guessDelimiter('a,b\n1,2\n')).toBe(',');
  });
});

describe('what is wrong with a logger’s file', () => {
  it('is said in each language, with all its values', () => {
    for (const language of languages)
      for (const code of loggerTroubleCodes) {
        const said = sayLoggerTrouble({ code, line: 7, column: 'Level', text: 'OL' }, language);
        expect(said).not.toMatch(/[{}]/);
        expect(said).toMatch(code === 'noColumn' ? /Level/ : /7/);
      }
  });
});
