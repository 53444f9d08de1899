import { describe, expect, it } from 'vitest';
import { bucketField, minutesField } from '../../../../renderer/editors/fields/reading.ts';
import { languages } from '../../../../core/base/language.ts';
import { speech } from '../../../../renderer/state/language.svelte.ts';

const minutes = minutesField('minutes', 'Minutes', '2025-11-17T07:30+00:00');
const rate = bucketField('rate', 'Rate');
const value = (value: number) => ({ ok: true, value });

describe('the minutes of a reading', () => {
  it('are typed as minutes, or with a unit of time', () => {
    expect(minutes.read('12,5')).toEqual(value(12.5));
    expect(minutes.read('90 s')).toEqual(value(1.5));
    expect(minutes.read('1h30')).toEqual(value(90));
    expect(minutes.read('')).toEqual({ ok: true, value: undefined });
  });

  it('come from a time of day where the start of the test is written with its own', () => {
    expect(minutes.read('07:31')).toEqual(value(1));
    expect(minutes.read('13:05')).toEqual(value(335));
    expect(minutes.read('13h05')).toEqual(value(335));
    expect(minutes.read('7:31:30')).toEqual(value(1.5));
  });

  it('go on past midnight', () => {
    expect(minutes.read('02:00')).toEqual(value(1110));
  });

  it.each(languages)('say in %s what is in the way of a time of day', (language) => {
    speech.language = language;
    for (const start of [undefined, '2025-11-17']) {
      const reading = minutesField('minutes', 'Minutes', start).read('13:05');
      expect(reading.ok).toBe(false);
      expect(reading).toHaveProperty('sentence', expect.stringContaining('13:05'));
    }
    expect(minutes.read('25:70').ok).toBe(false);
    speech.language = 'en';
  });
});

describe('a rate by bucket and watch', () => {
  // 20 l in 43 s is 0.4651 l/s, and a litre a second is 3.6 m³/h.
  it.each(['20 l in 43 s', '20 l en 43 s', '20 l em 43 s', '20l/43s', '20 l / 43 s'])(
    'is taken from “%s”',
    (text) => expect(rate.read(text)).toEqual(value(1.674)),
  );

  it('takes other units of volume and time', () => {
    expect(rate.read('0,2 m³ in 5 min')).toEqual(value(2.4));
  });

  it('is still typed as a rate, with or without its unit', () => {
    expect(rate.read('2.4')).toEqual(value(2.4));
    expect(rate.read('1 l/s')).toEqual(value(3.6));
    expect(rate.read('20 l/min')).toEqual(value(1.2));
  });

  it('is refused where the vessel or the watch is missing', () => {
    for (const text of ['20 in 43 s', '20 l in 43', '20 kg in 43 s', '20 l in 0 s'])
      expect(rate.read(text)).toMatchObject({ ok: false });
  });
});
