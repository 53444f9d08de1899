import { describe, expect, it } from 'vitest';
import { practiceOf } from '../../../../../core/practice/choosePractice.ts';
import type { DevelopmentEvent } from '../../../../../core/record/water.ts';
import { record } from '../../../model/well.ts';
import {
  completed,
  doesNotApply,
  dry,
  found,
  generalFigure,
  judge,
  laidOut,
  met,
  missed,
  sentences,
} from './judge.ts';

const day = '2025-11-14T';
const rules = ['development.short', 'development.turbid', 'development.sandy'] as const;

const after = (...development: DevelopmentEvent[]) => ({ ...completed, development });

const clear = { turbidity: 5, sand: 5 };

describe.each(rules)('%s', (rule) => {
  it('is met exactly at its figure', () => {
    const event = { startedAt: `${day}08:00Z`, endedAt: `${day}10:00Z`, ...clear };
    expect(judge(rule, after(event))).toEqual(met);
  });

  it('misses the development of a completed well that has none', () => {
    expect(missed(rule, completed)).toEqual(['development development']);
    expect(missed(rule, {})).toEqual(['state identity.state']);
  });

  it('does not speak of a well that is still being made, nor of one without water', () => {
    const begun = { startedAt: `${day}08:00Z`, endedAt: `${day}08:30Z`, turbidity: 90, sand: 90 };
    expect(judge(rule, { ...laidOut, development: [begun] })).toEqual(doesNotApply);
    expect(judge(rule, { ...dry, development: [begun] })).toEqual(doesNotApply);
  });
});

describe('development.short', () => {
  const from = (start: string, end: string) => ({
    startedAt: `${day}${start}Z`,
    endedAt: `${day}${end}Z`,
  });

  it('adds up all events', () => {
    // 2 to 8 h for village wells: from memory, ICRC 2010 and Practica 2010.
    expect(generalFigure('developmentH')).toBe(2);
    expect(
      judge('development.short', after(from('08:00', '09:00'), from('10:00', '11:00'))),
    ).toEqual(met);
    const short = after(from('08:00', '09:00'), from('10:00', '10:45'));
    expect(found('development.short', short)).toEqual(['warning development']);
    expect(sentences('development.short', short)).toEqual([
      'The well was developed for 1.75 h in all; at least 2 h is asked for.',
    ]);
  });

  it('asks for more of a well drilled by machine', () => {
    const { figures } = practiceOf(record({ bore: { method: 'airRotary' } }));
    expect(figures.developmentH.value).toBe(3);
  });

  it('misses the times of events that have none, unless the others are enough', () => {
    const untimed = { startedAt: '2025-11-15', endedAt: '2025-11-15' };
    expect(missed('development.short', after(from('08:00', '09:00'), untimed))).toEqual([
      'dates development[1].endedAt',
    ]);
    expect(judge('development.short', after(from('08:00', '10:00'), untimed))).toEqual(met);
  });
});

describe('how development ended', () => {
  it('is judged by the event that came last, wherever it stands in the list', () => {
    const last = { startedAt: '2025-11-15T07:00Z', turbidity: 2.6, sand: 2 };
    const first = { startedAt: '2025-11-14T08:00Z', turbidity: 85, sand: 60 };
    expect(judge('development.turbid', after(last, first))).toEqual(met);
    expect(judge('development.sandy', after(first, last))).toEqual(met);
  });

  it('says water that did not clear', () => {
    // Turbidity below 5 NTU wanted: from memory, WHO, RWSN, ICRC. Sand at most 5 mg/l: from
    // memory, AWWA A100.
    expect([generalFigure('turbidityNtu'), generalFigure('sandMgL')]).toEqual([5, 5]);
    expect(found('development.turbid', after({ turbidity: 5.1 }))).toEqual([
      'warning development[0].turbidity',
    ]);
    expect(found('development.sandy', after({ turbidity: 4.6, sand: 9 }))).toEqual([
      'warning development[0].sand',
    ]);
    expect(sentences('development.sandy', after({ sand: 9 }))).toEqual([
      'Development ended with 9 mg/l of sand; at most 5 mg/l is wanted.',
    ]);
  });

  it('lets either of the two stand for the other, and misses one where there is neither', () => {
    expect(judge('development.turbid', after({ sand: 2 }))).toEqual(doesNotApply);
    expect(judge('development.sandy', after({ turbidity: 2 }))).toEqual(doesNotApply);
    expect(missed('development.turbid', after({}))).toEqual([
      'turbidityOrSand development[0].turbidity',
    ]);
  });
});
