import { describe, expect, it } from 'vitest';
import { resolveWell } from '../../../../core/model/resolveWell.ts';
import { practiceOf } from '../../../../core/practice/choosePractice.ts';
import type { WellRecord } from '../../../../core/record/schema.ts';
import type { DevelopmentEvent } from '../../../../core/record/water.ts';
import { developmentSeries } from '../../../../core/water/levels/developmentSeries.ts';
import { record } from '../../model/well.ts';

function seriesOf(chapters: Omit<WellRecord, 'schemaVersion'>) {
  const well = record(chapters);
  return developmentSeries(well, resolveWell(well), practiceOf(well));
}

function developed(...development: DevelopmentEvent[]) {
  return seriesOf({ development });
}

const surging: DevelopmentEvent = {
  startedAt: '2026-03-02T08:00:00Z',
  endedAt: '2026-03-02T09:30:00Z',
  method: 'surging',
  turbidity: 80,
};
const pumping: DevelopmentEvent = {
  startedAt: '2026-03-02T10:00:00Z',
  endedAt: '2026-03-02T12:00:00Z',
  method: 'overpumping',
  rate: 1.5,
  turbidity: 4,
  sand: 2,
};

function stateOf(series: ReturnType<typeof seriesOf>, id: string) {
  return series.criteria.find((one) => one.id === id)!.state;
}

describe('development as a series', () => {
  it('stands along the hours worked, in order of time, without the pauses', () => {
    const { events, hours, turbidity, sand } = developed(pumping, surging);
    expect(events.map(({ path, fromH, toH }) => [path, fromH, toH])).toEqual([
      ['development[1]', 0, 1.5],
      ['development[0]', 1.5, 3.5],
    ]);
    expect(hours).toBe(3.5);
    expect(turbidity).toEqual([
      { hours: 1.5, value: 80, path: 'development[1]' },
      { hours: 3.5, value: 4, path: 'development[0]' },
    ]);
    expect(sand).toEqual([{ hours: 3.5, value: 2, path: 'development[0]' }]);
  });

  it('compares the water pumped with the hole under water', () => {
    // π/4 · 0.2² · 20 m = 628.3 l under rest level; 1.5 m³/h in 2 h are 3000 l: computed.
    const series = seriesOf({
      bore: { sections: [{ from: 0, to: 30, diameter: 200 }], depthReached: 30 },
      levels: [{ reading: 10, datum: 'ground', state: 'static' }],
      development: [surging, pumping],
    });
    expect(series.boreLitres).toBeCloseTo(628.3, 1);
    expect(series.litres).toBe(3000);
    expect(series.boreVolumes).toBeCloseTo(4.775, 3);
    expect(series.litresAtLeast).toBe(true);
    expect(series.missing).toEqual(['rates']);
  });

  it('names what the hole’s volume lacks, and takes nothing for zero', () => {
    const sections = [{ from: 0, to: 20, diameter: 200 }];
    const levels = [{ reading: 10, datum: 'ground', state: 'static' } as const];
    const gap = seriesOf({ bore: { sections, depthReached: 30 }, levels, development: [pumping] });
    expect(gap.missing).toEqual(['boreDiameter']);
    expect(gap.boreLitres).toBeUndefined();
    expect(developed(pumping).missing).toEqual(['restLevel', 'boreDepth']);
  });

  it('leaves out of the plot what comes after an event without times', () => {
    const untimed = { ...surging, endedAt: '2026-03-02' };
    const { turbidity, hours, hoursAtLeast, missing } = developed(untimed, pumping);
    expect(turbidity).toEqual([]);
    expect([hours, hoursAtLeast]).toEqual([2, true]);
    expect(missing).toContain('times');
  });
});

describe('the end of development', () => {
  // At least 2 h (ICRC 2010, from memory), 5 NTU (WHO, from memory), 5 mg/l (AWWA A100, from memory).

  it('is met by hours and by clear water', () => {
    const series = developed(surging, pumping);
    expect(series.criteria.map(({ state }) => state)).toEqual(['met', 'met', 'met']);
    expect(series.criteria.map(({ limit }) => limit.value)).toEqual([2, 5, 5]);
    expect(series.end).toBe('met');
  });

  it('is met by turbidity or by sand alone, and by neither of them not to be told', () => {
    const { startedAt, endedAt, rate } = pumping;
    const unread = { startedAt, endedAt, rate };
    const clear = { ...unread, turbidity: 4 };
    const sandFree = { ...unread, sand: 2 };
    expect(developed(surging, clear).end).toBe('met');
    expect(developed(surging, sandFree).end).toBe('met');
    expect(developed(surging, unread).end).toBe('cantSay');
    expect(developed(surging, unread).missing).toContain('turbidityOrSand');
  });

  it('is not met where one that was measured is above its limit', () => {
    expect(developed(surging, { ...pumping, turbidity: 6 }).end).toBe('notMet');
    expect(stateOf(developed(surging, { ...pumping, sand: 5.1 }), 'sandMgL')).toBe('notMet');
    expect(developed({ ...pumping, turbidity: 5, sand: 5 }).end).toBe('met');
  });

  it('goes by the last event, whatever was measured before', () => {
    const after = {
      ...pumping,
      startedAt: '2026-03-03T08:00:00Z',
      endedAt: '2026-03-03T08:30:00Z',
    };
    expect(developed(pumping, { ...after, turbidity: 40 }).end).toBe('notMet');
  });

  it('cannot be told from too few hours, where some are not known', () => {
    const short = { ...pumping, endedAt: '2026-03-02T11:00:00Z' };
    expect(stateOf(developed(short), 'developmentH')).toBe('notMet');
    expect(stateOf(developed(short, { method: 'bailing' }), 'developmentH')).toBe('cantSay');
    expect(developed().end).toBe('cantSay');
    expect(developed().missing).toContain('development');
  });
});
