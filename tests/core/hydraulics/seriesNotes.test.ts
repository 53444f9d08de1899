import { describe, expect, it } from 'vitest';
import { languages, type Language } from '../../../core/base/language.ts';
import { saySeriesNote } from '../../../core/hydraulics/sayHydraulics.ts';
import { seriesNotes } from '../../../core/hydraulics/seriesNotes.ts';
import { resolveWell } from '../../../core/model/resolveWell.ts';
import type { PumpingTest } from '../../../core/record/water.ts';
import { fileNames, well } from '../../demo-data/wells.ts';
import { analyseOne, tested } from './inRecord.ts';

const good = [1, 2, 4, 8, 15, 30, 60].map((minutes, at) => ({ minutes, reading: 10.4 + 0.1 * at }));
const unrated = { kind: 'constantRate', datum: 'ground', restLevel: 10 } as const;
const constant: PumpingTest = { ...unrated, rate: 2, series: good };

/** Notes of a record of one test, as `path: code`. */
function notesOf(...tests: PumpingTest[]) {
  const record = tested(tests);
  const { rows, whole } = seriesNotes(record, resolveWell(record), tests.length - 1);
  const short = (one: { path: string; code: string }) => `${one.path}: ${one.code}`;
  return { rows: [...rows.values()].flat().map(short), whole: whole.map(short) };
}

describe('a slip of the pen in a series', () => {
  it('is told at the field of its row, with the others used all the same', () => {
    const series = [
      { minutes: 0, reading: 10 },
      ...good.slice(0, 3),
      { minutes: 3, reading: 10.9 },
      { minutes: 10, reading: 9.5 },
      { minutes: 12, reading: 10 },
      { minutes: 14, reading: 31 },
      ...good.slice(4),
    ];
    const test = { ...constant, pumpIntake: 30, series };
    expect(notesOf(test)).toEqual({
      rows: [
        'tests[0].series[3].minutes: outOfOrder',
        'tests[0].series[5].reading: aboveRest',
        'tests[0].series[6].reading: atRest',
        'tests[0].series[7].reading: belowIntake',
      ],
      whole: [],
    });
    expect(analyseOne(test).results.length).toBeGreaterThan(0);
  });

  it('names the reading beside what it is compared with, to the centimetre', () => {
    const record = tested([{ ...constant, series: [...good, { minutes: 90, reading: 9.957 }] }]);
    const [note] = seriesNotes(record, resolveWell(record), 0).rows.get(7)!;
    const say = (language: Language) => saySeriesNote(note!, language).replaceAll('\u00a0', ' ');
    expect(say('en')).toContain('9.96 m, lies above the rest level of 10.00 m');
    expect(say('pt')).toContain('9,96 m, está acima do nível estático de 10,00 m');
  });

  it('is no slip where a series begins at rest, and where a good one stands', () => {
    expect(notesOf({ ...constant, series: [{ minutes: 0, reading: 10 }, ...good] })).toEqual({
      rows: [],
      whole: [],
    });
    for (const name of fileNames) {
      const record = well(name);
      const model = resolveWell(record);
      (record.tests ?? []).forEach((_, index) => {
        const { rows, whole } = seriesNotes(record, model, index);
        expect([[...rows.values()].flat(), whole], name).toEqual([[], []]);
      });
    }
  });
});

describe('a rate of nil', () => {
  const rated = (rates: readonly number[]) => ({
    ...unrated,
    series: good.map((one, at) => ({ ...one, rate: rates[at]! })),
  });

  it('before the first is a late start', () => {
    expect(notesOf(rated([0, 2, 2, 2, 2, 2, 2])).rows).toEqual([
      'tests[0].series[0].rate: rateNilBefore',
    ]);
  });

  it('in the middle is a pump that stands', () => {
    expect(notesOf(rated([2, 2, 2, 0, 2, 2, 2])).rows).toEqual([
      'tests[0].series[3].rate: rateNilStands',
    ]);
  });

  it('of a step is passed over, and a step of nothing else is not used', () => {
    const steps = (rates: readonly number[]): PumpingTest => ({
      ...unrated,
      kind: 'step',
      series: rates.flatMap((rate, at) => [
        { minutes: 10, reading: 11 + at, step: at + 1, rate: at + 1 },
        { minutes: 20, reading: 11.2 + at, step: at + 1, rate },
      ]),
    });
    expect(notesOf(steps([1, 0, 3]))).toEqual({
      rows: ['tests[0].series[3].rate: rateNil'],
      whole: [],
    });
    expect(analyseOne(steps([1, 0, 3])).rates).toEqual(analyseOne(steps([1, 2, 3])).rates);
    const still = steps([1, 2, 3]);
    const series = still.series!.map((one) => (one.step === 2 ? { ...one, rate: 0 } : one));
    expect(notesOf({ ...still, series })).toEqual({
      rows: ['tests[0].series[2].rate: rateNil', 'tests[0].series[3].rate: rateNil'],
      whole: ['tests[0].series: fewSteps'],
    });
  });

  it('of a recovery is as it should be', () => {
    const recovery = rated([0, 0, 0, 0, 0, 0, 0]);
    expect(notesOf({ ...recovery, kind: 'recovery', rate: 2, minutesPumped: 60 }).rows).toEqual([]);
  });
});

describe('a series as a whole', () => {
  it('says what it lacks, at the field that would tell it', () => {
    expect(notesOf({ kind: 'recovery', series: good }).whole).toEqual([
      'tests[0].restLevel: lacksRestLevel',
      'tests[0].rate: lacksRate',
      'tests[0].minutesPumped: lacksMinutesPumped',
    ]);
    expect(notesOf({ kind: 'recovery' }).whole).toEqual([]);
  });

  it.each([
    [2, 'fewForLine'],
    [3, 'fewForCurve'],
  ])('says that %s readings are too few: %s', (count, code) => {
    expect(notesOf({ ...constant, series: good.slice(0, count) }).whole).toEqual([
      `tests[0].series: ${code}`,
    ]);
  });

  it('is content with three readings of a recovery, which has no curve', () => {
    const recovery = { ...constant, kind: 'recovery', minutesPumped: 60 } as const;
    expect(notesOf({ ...recovery, series: good.slice(0, 3) }).whole).toEqual([]);
    expect(notesOf({ ...recovery, series: good.slice(0, 2) }).whole).toHaveLength(1);
  });

  it('counts the readings that can be used, not those that stand there', () => {
    const above = good.map((one) => ({ ...one, reading: 9 }));
    const record = tested([{ ...constant, series: [...above, good[6]!] }]);
    const [note] = seriesNotes(record, resolveWell(record), 0).whole;
    for (const language of languages) expect(saySeriesNote(note!, language)).toMatch(/: 1\. .* 3 /);
  });
});
