import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { languages } from '../../core/base/language.ts';
import { orientations, paperNames } from '../../core/drawing/paper.ts';
import { switchedColumns, type SwitchedColumn } from '../../core/drawing/parts/columnNames.ts';
import { well } from '../demo-data/wells.ts';
import { drawSheet, type DrawnSheet } from './drawn.ts';
import { brokenBy } from './laws/index.ts';
import { groupsNamed } from './placed.ts';
import { demoWells, exampleWells } from './wells.ts';
import { wordyWell } from './wordyWell.ts';

const sheets = paperNames.flatMap((paper) =>
  orientations.map((orientation) => ({ paper, orientation })),
);

/** A choice for a number, so that each well is drawn with another. */
function chosen(at: number) {
  const { paper, orientation } = sheets[at % sheets.length]!;
  const language = languages[at % languages.length]!;
  return { paper, orientation, language };
}

describe('sheets with all columns', () => {
  it.each([...demoWells, ...exampleWells].map((one, at) => [...one, chosen(at)] as const))(
    'of %s keep every law',
    (_, record, { paper, language, orientation }) => {
      const choices = { orientation, columns: switchedColumns };
      expect(brokenBy(drawSheet(record, paper, language, {}, choices))).toEqual({});
    },
  );

  it('of random wells with all that people write keep every law', () => {
    const any = fc.tuple(wordyWell, fc.nat({ max: 11 }));
    fc.assert(
      fc.property(any, ([record, at]) => {
        const { paper, language, orientation } = chosen(at);
        const choices = { orientation, columns: switchedColumns };
        expect(brokenBy(drawSheet(record, paper, language, {}, choices))).toEqual({});
      }),
      { numRuns: 80, seed: 20260204 },
    );
  });
});

/** Laws that ask for what a person may leave away. */
const asked: Readonly<Record<string, readonly SwitchedColumn[]>> = {
  'strikes, levels and intake point at their depth, on one page': ['strikes'],
  'every part of the well is shown': ['strikes'],
  'every description stands in full or is counted as left out': ['description'],
};

it('sheets with any columns keep every law that does not ask for another', () => {
  const any = fc.tuple(wordyWell, fc.subarray([...switchedColumns]), fc.nat({ max: 11 }));
  fc.assert(
    fc.property(any, ([record, columns, at]) => {
      const { paper, language, orientation } = chosen(at);
      const broken = brokenBy(drawSheet(record, paper, language, {}, { orientation, columns }));
      const laws = Object.keys(broken).filter((law) =>
        (asked[law] ?? []).every((one) => columns.includes(one)),
      );
      expect(laws.map((law) => [law, broken[law]])).toEqual([]);
    }),
    { numRuns: 80, seed: 20260205 },
  );
});

const groupOf: Readonly<Record<SwitchedColumn, string>> = {
  strikes: 'waterColumn',
  samples: 'samples',
  grain: 'grain',
  description: 'descriptions',
  colour: 'colour',
  moisture: 'moisture',
  sieve: 'sieve',
  rate: 'rate',
};

function shownOn({ drawing }: DrawnSheet): SwitchedColumn[] {
  const items = drawing.pages.flatMap((page) => page.items);
  return switchedColumns.filter((name) => groupsNamed(items, groupOf[name]).length > 0);
}

const hand = well('hand-drilled-32m.json');

describe('the columns of a sheet', () => {
  it('are those that a person chose, data or none', () => {
    const columns = ['colour', 'sieve'] as const;
    expect(shownOn(drawSheet({ schemaVersion: 1 }, 'A4', 'en', {}, { columns }))).toEqual(columns);
  });

  it('are what the record has data for where nobody chose and the paper is wide', () => {
    const landscape = { orientation: 'landscape' } as const;
    expect(shownOn(drawSheet(hand, 'A4', 'en', {}, landscape))).toEqual(switchedColumns);
    const log = [{ from: 0, to: 4, colour: 'red' }];
    const drawn = drawSheet({ schemaVersion: 1, log }, 'A4', 'en', {}, landscape);
    expect(shownOn(drawn)).toEqual(['description', 'colour']);
  });

  it('leave the descriptions their room on narrow paper where nobody chose', () => {
    expect(shownOn(drawSheet(hand, 'A4'))).toEqual(['strikes', 'samples', 'description', 'rate']);
  });
});
