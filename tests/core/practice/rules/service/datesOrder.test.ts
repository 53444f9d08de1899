import { describe, expect, it } from 'vitest';
import { judge, found, met, missed, sentences } from './judge.ts';

const inOrder = {
  site: { agreedOn: '2025-10-09' },
  bore: { startedOn: '2025-11-10', finishedOn: '2025-11-13' },
};

describe('dates.order', () => {
  it('says each date that stands before one that must come first', () => {
    expect(found('dates.order', { ...inOrder, site: { agreedOn: '2025-11-11' } })).toEqual([
      'error bore.startedOn',
    ]);
    expect(
      found('dates.order', { bore: { startedOn: '2025-11-14', finishedOn: '2025-11-13' } }),
    ).toEqual(['error bore.finishedOn']);
    expect(
      found('dates.order', {
        ...inOrder,
        development: [{ startedAt: '2025-11-12T08:00Z' }],
        tests: [{ kind: 'step', startedAt: '2025-11-12' }],
        disinfection: [{ at: '2025-11-12' }],
        headworks: { builtOn: '2025-11-12' },
        pump: { installedOn: '2025-11-12' },
        marks: [
          { role: 'client', on: '2025-11-12' },
          { role: 'committee', on: '2025-12-12' },
        ],
      }),
    ).toEqual([
      'error development[0].startedAt',
      'error tests[0].startedAt',
      'error disinfection[0].at',
      'error headworks.builtOn',
      'error pump.installedOn',
      'error marks[0].on',
    ]);
  });

  it('lets levels be read and water be sampled while drilling goes on, but not before', () => {
    const on = (day: string) => ({
      ...inOrder,
      levels: [{ at: `${day}T06:00Z`, reading: 9, datum: 'ground' as const }],
      quality: [{ takenAt: day }],
      strikes: [{ depth: 10, at: `${day}T10:00Z` }],
    });
    expect(judge('dates.order', on('2025-11-11'))).toEqual(met);
    expect(found('dates.order', on('2025-11-09'))).toEqual(['error bore.startedOn']);
  });

  it('says a slip once, at the date that all later ones contradict', () => {
    const slip = {
      bore: { startedOn: '2025-11-10', finishedOn: '2026-11-13' },
      development: [{ startedAt: '2025-11-15T07:00Z' }, { startedAt: '2025-11-14T08:00Z' }],
      pump: { installedOn: '2025-12-04' },
    };
    expect(found('dates.order', slip)).toEqual(['error bore.finishedOn']);
    expect(sentences('dates.order', slip)).toEqual([
      'The start of development (2025-11-14) stands before the end of drilling (2026-11-13).',
    ]);
  });

  it('is met where all falls on one day, whatever the offset of a moment', () => {
    const day = '2025-11-13';
    const dated = {
      site: { agreedOn: day },
      bore: { startedOn: day, finishedOn: day },
      development: [{ startedAt: `${day}T00:30+05:30` }, { startedAt: `${day}T23:30-08:00` }],
      pump: { installedOn: day },
    };
    expect(judge('dates.order', dated)).toEqual(met);
  });

  it('compares with the start of drilling where its end is not known, and with neither without', () => {
    const early = { pump: { installedOn: '2025-11-01' } };
    expect(found('dates.order', { bore: { startedOn: '2025-11-10' }, ...early })).toEqual([
      'error pump.installedOn',
    ]);
    expect(missed('dates.order', early)).toEqual(['dates bore.startedOn']);
  });

  it('names both events with their days', () => {
    expect(sentences('dates.order', { ...inOrder, pump: { installedOn: '2025-11-12' } })).toEqual([
      'The setting of the pump (2025-11-12) stands before the end of drilling (2025-11-13).',
    ]);
  });
});
