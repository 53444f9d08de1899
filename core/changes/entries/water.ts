import { dayOf } from '../../record/moment.ts';
import { depthWords, entry, figure, type Entry, type Told } from '../entry.ts';

const ofDay = (pattern: string, at: string | undefined) =>
  pattern.replace('{day}', at === undefined ? '–' : dayOf(at));

/** Levels below ground, each by the moment at which it was read. */
export function levelEntries(told: Told): Entry[] {
  const { model, words } = told;
  return model.levels.flatMap(({ depthM, state = 'static', at }) =>
    entry('levels', `${state} ${at ?? ''}`, ofDay(words.levels[state], at), [
      depthWords(told, depthM),
    ]),
  );
}

export function strikeEntries(told: Told): Entry[] {
  const { model, words } = told;
  return model.strikes.flatMap(({ depthM, riseM }, at) =>
    entry('strikes', String(at), `${words.what.strike} ${at + 1}`, [
      depthWords(told, depthM),
      riseM === undefined ? undefined : depthWords(told, riseM),
    ]),
  );
}

export function developmentEntries(told: Told): Entry[] {
  const { record, words } = told;
  return (record.development ?? []).flatMap(({ startedAt, turbidity, sand, rate }) =>
    entry('development', startedAt ?? '', ofDay(words.of.development, startedAt), [
      figure(told, rate, 'm³/h'),
      figure(told, turbidity, 'NTU', 1),
      figure(told, sand, 'mg/L', 1),
    ]),
  );
}

export function testEntries(told: Told): Entry[] {
  const { record, sheet, words } = told;
  return (record.tests ?? []).flatMap(({ kind, startedAt, rate, minutesPumped, series }) =>
    entry('tests', `${kind} ${startedAt ?? ''}`, ofDay(words.of.test, startedAt), [
      figure(told, rate, 'm³/h'),
      figure(told, minutesPumped, sheet.minutes, 0),
      series && `${series.length} ${words.what.readings}`,
    ]),
  );
}

/** The size of its results, which pages of their own tell. */
export function qualityEntries(told: Told): Entry[] {
  const { record, sheet, words } = told;
  return (record.quality ?? []).flatMap(({ takenAt, laboratory, results }) =>
    entry('quality', takenAt ?? '', ofDay(words.of.sample, takenAt), [
      laboratory,
      results && `${results.length} ${sheet.facts.results}`,
    ]),
  );
}

export function disinfectionEntries(told: Told): Entry[] {
  const { record, sheet, words } = told;
  return (record.disinfection ?? []).flatMap(({ at, dose, contactHours, residual }) =>
    entry('disinfection', at ?? '', ofDay(words.of.disinfection, at), [
      figure(told, dose, 'mg/L', 1),
      figure(told, contactHours, sheet.hours, 1),
      figure(told, residual, 'mg/L'),
    ]),
  );
}
