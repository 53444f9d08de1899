import { readClock } from '../../../core/base/clock.ts';
import { bucketRate } from '../../../core/hydraulics/fieldEntry/bucketRate.ts';
import { minutesOf } from '../../../core/hydraulics/fieldEntry/clockMinutes.ts';
import { say } from '../../parts/words.ts';
import { readAs, unread, type Reading } from '../../state/field.ts';
import type { EntryField, Extras } from './entryField.ts';
import { exactly } from './measure.ts';
import { amountField } from './number.ts';

/** The clock's time in a moment as it was written; undefined where it is a day alone. */
function clockIn(moment: unknown): string | undefined {
  return typeof moment === 'string' ? /T(\d\d:\d\d(?::\d\d)?)/.exec(moment)?.[1] : undefined;
}

/** Minutes to a hundredth, which is under a second. */
const rounded = (minutes: number) => Number(minutes.toFixed(2));

/** `9:05` and `13h05`. `1h30` is an hour and a half, as in every field of time. */
const looksLikeClock = (text: string) => /^\d{1,2}:|^\d\dh\d\d$/i.test(text);

/**
 * Minutes since the start of a test: as minutes, with a unit of time, or as a time of day where the
 * start is written with its own. A time of day before the start's is one of the next day.
 */
export function minutesField(
  name: string,
  label: string,
  startedAt: unknown,
  extras: Extras = {},
): EntryField {
  const plain = amountField(name, label, 'min', extras);
  const start = clockIn(startedAt);
  return {
    ...plain,
    read(text): Reading {
      const written = text.trim();
      if (!looksLikeClock(written)) return plain.read(text);
      if (readClock(written) === undefined) return unread(say.water.entry.clock(written));
      if (start === undefined) return unread(say.water.entry.noStart(written));
      const [minutes] = minutesOf([written], start);
      return minutes === undefined
        ? unread(say.water.entry.clock(written))
        : readAs(rounded(minutes));
    },
  };
}

/** A vessel and the time that it took: `20 l in 43 s`, `20 l en 43 s`, `20 l em 43 s`, `20 l / 43 s`. */
const filling = /^(.+?)\s*(?:\s(?:in|en|em)\s|\/)\s*(\d.*)$/i;

/** A rate in m³/h, or a vessel filled against a watch. */
export function bucketField(name: string, label: string): EntryField {
  const plain = amountField(name, label, 'm³/h');
  return {
    ...plain,
    read(text): Reading {
      const [, vessel, time] = filling.exec(text.trim()) ?? [];
      if (vessel === undefined || time === undefined) return plain.read(text);
      const litres = exactly(vessel, 'volume');
      const minutes = exactly(time, 'time');
      const rate =
        litres === undefined || minutes === undefined
          ? undefined
          : bucketRate([{ litres, seconds: minutes * 60 }]);
      if (!rate) return unread(say.water.entry.bucket(text.trim()));
      return readAs(Number(rate.rateM3h.toFixed(3)));
    },
  };
}
