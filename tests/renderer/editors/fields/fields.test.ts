import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { english } from '../../../../core/drawing/words/en.ts';
import { flagField, readChoice } from '../../../../renderer/editors/fields/choice.ts';
import { numbersField } from '../../../../renderer/editors/fields/list.ts';
import { readDay, readMoment, writeMoment } from '../../../../renderer/editors/fields/moment.ts';
import { readNumber, writeNumber } from '../../../../renderer/editors/fields/number.ts';
import type { Reading } from '../../../../renderer/state/field.ts';

const value = (reading: Reading) => (reading.ok ? reading.value : reading.sentence);

describe('a number as typed', () => {
  it.each([
    ['12.5', 12.5],
    ['12,5', 12.5],
    [' 7 ', 7],
    ['-0,45', -0.45],
    ['−0.45', -0.45],
    ['.5', 0.5],
    ['3.', 3],
  ])('%s is read', (text, number) => {
    expect(value(readNumber(text))).toBe(number);
  });

  it.each(['12x', '1e3', 'Infinity', '--1', ',', '0x10', '1 2'])(
    '%s is refused with the text in the sentence',
    (text) => {
      const reading = readNumber(text);
      expect(reading.ok).toBe(false);
      expect(value(reading)).toContain(`“${text}”`);
    },
  );

  it('is not guessed at where a mark for thousands was written', () => {
    expect(value(readNumber('1.250,5'))).toContain('more than one decimal mark');
  });

  it('is nothing when nothing was typed', () => {
    expect(readNumber('  ')).toEqual({ ok: true, value: undefined });
  });

  it('keeps its limits and says them', () => {
    expect(value(readNumber('-1', { least: 0 }))).toContain('0 is the least');
    expect(value(readNumber('101', { most: 100 }))).toContain('100 is the most');
    expect(value(readNumber('2,5', { whole: true }))).toContain('not a whole number');
  });

  it('comes back the same after it was written', () => {
    fc.assert(
      fc.property(fc.integer({ min: -9_999_999, max: 9_999_999 }), (thousandths) => {
        const number = thousandths / 1000;
        expect(value(readNumber(writeNumber(number)))).toBe(number);
      }),
      { seed: 3 },
    );
    expect(value(readNumber(writeNumber(0.0000005)))).toBe(0.0000005);
  });
});

describe('a word to choose', () => {
  it('is read from its whole, its beginning and the key of the record', () => {
    expect(value(readChoice('Cement grout', english.fills))).toBe('cementGrout');
    expect(value(readChoice('cem', english.fills))).toBe('cementGrout');
    expect(value(readChoice('gravelPack', english.fills))).toBe('gravelPack');
  });

  it('is not guessed at where several begin so', () => {
    expect(value(readChoice('b', english.fills))).toContain('bentonite seal, backfill');
  });

  it('is refused where the list has none', () => {
    expect(value(readChoice('mortar', english.fills))).toContain('“mortar” is not in the list');
  });

  it('is read without its accents and ligatures, which tired hands leave out', () => {
    const words = { sandstone: 'grès', loess: 'lœss', cap: 'bouchon d’argile' };
    expect(value(readChoice('GRES', words))).toBe('sandstone');
    expect(value(readChoice('loess', words))).toBe('loess');
    expect(value(readChoice("bouchon d'argile", words))).toBe('cap');
  });

  it('is read from its code before a beginning, and after a whole word', () => {
    const words = { sand: 'sand', silt: 'silt', s: 'shale' };
    expect(value(readChoice('sa', words, { silt: 'sa' }))).toBe('silt');
    expect(value(readChoice('sand', words, { silt: 'sand' }))).toBe('sand');
  });

  it('of yes and no leaves not known apart from no', () => {
    const field = flagField('sampled', 'Sampled');
    expect(value(field.read('no'))).toBe(false);
    expect(value(field.read(''))).toBeUndefined();
    expect(field.write(false)).toBe('no');
  });
});

describe('a day or moment as typed', () => {
  it('is read year first, and no day that the calendar lacks', () => {
    expect(value(readDay('2024-02-29'))).toBe('2024-02-29');
    expect(value(readDay('2025-02-29'))).toContain('not a day');
  });

  // Day before month: common practice in British English, French and Portuguese.
  it.each(['3/4/2025', '03/04/2025', '3.4.2025', '03-04-2025'])('is read day first: %s', (text) => {
    expect(value(readDay(text))).toBe('2025-04-03');
  });

  it.each(['31/4/2025', '3/13/2025', '3/4/25', '3/4.2025', '2025/4/3'])(
    'is not guessed at in %s',
    (text) => expect(value(readDay(text))).toContain('not a day'),
  );

  it('keeps the offset that was written', () => {
    expect(value(readMoment('2025-03-09 14:05 +01:00'))).toBe('2025-03-09T14:05:00+01:00');
    expect(value(readMoment('2025-03-09T14:05:00Z'))).toBe('2025-03-09T14:05:00Z');
    expect(value(readMoment('2025-03-09 7:05 -0330'))).toBe('2025-03-09T07:05:00-03:30');
  });

  it('takes this computer’s offset where none was written', () => {
    expect(value(readMoment('2025-03-09 14:05'))).toMatch(/^2025-03-09T14:05:00[+-]\d\d:\d\d$/);
  });

  it('is a day alone where no time was written: none is invented', () => {
    expect(value(readMoment('2025-03-09'))).toBe('2025-03-09');
    expect(value(readMoment('9/3/2025'))).toBe('2025-03-09');
    expect(value(readMoment(writeMoment('2025-03-09')))).toBe('2025-03-09');
  });

  it('is read day first with a time, which may have an h in it', () => {
    expect(value(readMoment('9/3/2025 14:05 Z'))).toBe('2025-03-09T14:05:00Z');
    expect(value(readMoment('9.3.2025 7h05 +01:00'))).toBe('2025-03-09T07:05:00+01:00');
  });

  it.each(['2025-03-09 25:00', '31/2/2025 10:00', '14:05', 'at noon'])('is refused: %s', (text) => {
    expect(value(readMoment(text))).toContain('not a date with a time');
  });

  it('is shown in its own offset and comes back the same', () => {
    const moment = '2025-03-09T14:05:30+05:45';
    expect(writeMoment(moment)).toBe('2025-03-09 14:05:30 +05:45');
    expect(value(readMoment(writeMoment(moment)))).toBe(moment);
  });
});

describe('a list as typed', () => {
  it('of numbers has semicolons between, since the comma may be a decimal mark', () => {
    const field = numbersField('centralisers', 'Centralisers', 'm');
    expect(value(field.read('0,5; 2.0'))).toEqual([0.5, 2]);
    expect(field.write([0.5, 2])).toBe('0.5; 2');
    expect(value(field.read('0.5; x'))).toContain('not a list of numbers');
  });
});
