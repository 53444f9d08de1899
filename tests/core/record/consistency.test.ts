import { describe, expect, it } from 'vitest';
import {
  checkBesideModel,
  checkConsistency,
  troublesBesideFindings,
  troublesOf,
} from '../../../core/record/consistency.ts';
import { readRecord } from '../../../core/record/read.ts';
import { currentVersion, type WellRecord } from '../../../core/record/schema.ts';
import { everyFinding } from '../model/everyFinding.ts';

function sentences(record: Partial<WellRecord>): string[] {
  return checkConsistency({ schemaVersion: currentVersion, ...record }).map(
    ({ sentence }) => sentence,
  );
}

const sound: Partial<WellRecord> = {
  bore: {
    startedOn: '2026-03-01',
    finishedOn: '2026-03-01',
    sections: [{ from: 0, to: 30, diameter: 200 }],
    depthReached: 30,
    depthFound: 29.5,
  },
  log: [
    {
      from: 0,
      to: 8,
      sieve: [
        { size: 2, finer: 90 },
        { size: 0.5, finer: 20 },
      ],
    },
  ],
  strings: [
    { components: [{ kind: 'screen', outside: 125, wall: 5, length: 3, centralisers: [1.5] }] },
  ],
  annulus: [{ from: 8, to: 30, fill: 'gravelPack', around: 0, grainMin: 2, grainMax: 4 }],
  strikes: [{ depth: 10, rise: 6, at: '2026-03-01T10:00+01:00' }],
  development: [{ startedAt: '2026-03-02T08:00+01:00', endedAt: '2026-03-02T12:00+01:00' }],
  pump: { intake: 24, cylinderTop: 23.5, installedOn: '2026-03-05' },
};

describe('checkConsistency', () => {
  it('is silent about a sound record and an empty one', () => {
    expect(sentences(sound)).toEqual([]);
    expect(sentences({})).toEqual([]);
  });

  it.each<[Partial<WellRecord>, string]>([
    [{ log: [{ from: 8, to: 7.5 }] }, 'log[0].to: 7.5 is above log[0].from 8.0'],
    [
      { bore: { sections: [{ from: 0, to: -3, diameter: 200 }] } },
      'bore.sections[0].to: -3.0 is above bore.sections[0].from 0.0',
    ],
    [
      { annulus: [{ from: 12.25, to: 10, fill: 'backfill' }] },
      'annulus[0].to: 10.0 is above annulus[0].from 12.25',
    ],
    [
      { development: [{ startedAt: '2026-03-02T08:00+01:00', endedAt: '2026-03-02T07:30Z' }, {}] },
      '',
    ],
    [
      { development: [{ startedAt: '2026-03-02T09:00+01:00', endedAt: '2026-03-02T07:30Z' }] },
      'development[0].endedAt: 2026-03-02T07:30Z is before development[0].startedAt 2026-03-02T09:00+01:00',
    ],
    [
      { quality: [{ takenAt: '2026-03-02', receivedAt: '2026-03-01T23:00Z' }] },
      'quality[0].receivedAt: 2026-03-01T23:00Z is before quality[0].takenAt 2026-03-02',
    ],
    [
      { disinfection: [{ at: '2026-03-02', pumpedOffAt: '2026-03-01' }] },
      'disinfection[0].pumpedOffAt: 2026-03-01 is before disinfection[0].at 2026-03-02',
    ],
    [
      {
        strings: [{ components: [] }],
        annulus: [{ from: 0, to: 3, fill: 'backfill', around: 0, insideHole: true }],
      },
      'annulus[0].around: 0 names a string, yet the fill has none inside',
    ],
    [
      { annulus: [{ from: 0, to: 3, fill: 'gravelPack', grainMin: 4, grainMax: 2 }] },
      'annulus[0].grainMax: 2.0 is finer than annulus[0].grainMin 4.0',
    ],
    [
      { strings: [{ components: [{ kind: 'screen', slotWidth: 1, slotSpacing: 0.5 }] }] },
      'strings[0].components[0].slotSpacing: 0.5 is less than strings[0].components[0].slotWidth 1.0',
    ],
    [
      {
        tests: [
          {
            kind: 'constantRate',
            series: [
              { minutes: 5, reading: 6 },
              { minutes: 2, reading: 7 },
            ],
          },
        ],
      },
      'tests[0].series[1].minutes: 2.0 is less than tests[0].series[0].minutes 5.0',
    ],
    [
      {
        log: [
          {
            from: 0,
            to: 1,
            sieve: [
              { size: 2, finer: 20 },
              { size: 0.5, finer: 60 },
            ],
          },
        ],
      },
      'log[0].sieve[0].finer: 20.0 is less than log[0].sieve[1].finer 60.0',
    ],
  ])('says of %j: %s', (record, sentence) => {
    expect(sentences(record)).toEqual(sentence === '' ? [] : [sentence]);
  });

  it.each(Object.entries(everyFinding))('leaves to the model what that says as %s', (_, record) => {
    expect(checkBesideModel({ schemaVersion: currentVersion, ...record })).toEqual([]);
  });

  it('lets the minutes begin again with each step', () => {
    const series = [
      { minutes: 60, reading: 7, step: 1 },
      { minutes: 1, reading: 8, step: 2 },
    ];
    expect(sentences({ tests: [{ kind: 'step', series }] })).toEqual([]);
    expect(sentences({ tests: [{ kind: 'step', series: series.toReversed() }] })).toEqual([
      'tests[0].series[1].step: 1.0 is less than tests[0].series[0].step 2.0',
    ]);
  });
});

describe('troublesOf', () => {
  it('speaks of places in the document where rows before were left out', () => {
    const annulus = [{ from: 0 }, { from: 8, to: 9, fill: 'gravelPack', grainMin: 2, grainMax: 1 }];
    const reading = readRecord({ schemaVersion: currentVersion, annulus });
    if (reading.kind !== 'ok') throw new Error('not read');
    expect(troublesOf(reading).map(({ sentence }) => sentence)).toEqual([
      'annulus[0].to: nothing stands here; write metres below ground, as in 12.5',
      'annulus[0].fill: nothing stands here; write one of gravelPack, formationStabiliser, claySeal, bentonite, cementGrout, concrete, backfill, naturalCollapse, open',
      'annulus[1].grainMax: 1.0 is finer than annulus[1].grainMin 2.0',
    ]);
    expect(troublesOf(reading).at(-1)!.path).toBe('annulus[1].grainMax');
  });

  it('speaks of a reversed range by both fields, unless findings stand beside', () => {
    const log = [{ from: 0 }, { from: 8, to: 7.5 }];
    const reading = readRecord({ schemaVersion: currentVersion, log });
    if (reading.kind !== 'ok') throw new Error('not read');
    expect(troublesOf(reading).at(-1)).toEqual({
      path: 'log[1].to',
      code: 'above',
      values: { figure: 7.5, other: 'log[1].from', otherFigure: 8 },
      sentence: 'log[1].to: 7.5 is above log[1].from 8.0',
    });
    expect(troublesBesideFindings(reading)).toHaveLength(1);
  });
});
