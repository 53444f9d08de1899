import fc from 'fast-check';
import { expect, it } from 'vitest';
import { randomWell } from '../laws/randomWell.ts';
import { drawSheet, paperNames } from './drawn.ts';
import { brokenBy } from './laws/index.ts';
import { plainWell } from './plainWell.ts';
import { rulerOf } from './ruler.ts';
import { wordyWell } from './wordyWell.ts';

it.each(paperNames)('sheets of random wells keep every law on %s', (paper) => {
  fc.assert(
    fc.property(randomWell, (record) => {
      expect(brokenBy(drawSheet(record, paper))).toEqual({});
    }),
    { numRuns: 120, seed: 20260131 },
  );
});

it.each(paperNames)('sheets of wells with all that people write keep every law on %s', (paper) => {
  fc.assert(
    fc.property(wordyWell, (record) => {
      expect(brokenBy(drawSheet(record, paper))).toEqual({});
    }),
    { numRuns: 200, seed: 20260201 },
  );
});

it.each(paperNames)('sheets of plain wells, some with a broken axis, keep them on %s', (paper) => {
  let broken = 0;
  fc.assert(
    fc.property(plainWell, (record) => {
      const sheet = drawSheet(record, paper);
      expect(brokenBy(sheet)).toEqual({});
      if (sheet.drawing.pages.some((page) => rulerOf(page)?.leftOut.length)) broken += 1;
    }),
    { numRuns: 150, seed: 20260204 },
  );
  expect(broken).toBeGreaterThan(3);
});

const elsewhere = [
  ['A4', 'fr'],
  ['A3', 'pt'],
] as const;

it.each(elsewhere)('they keep them on %s in %s too', (paper, language) => {
  fc.assert(
    fc.property(wordyWell, (record) => {
      expect(brokenBy(drawSheet(record, paper, language))).toEqual({});
    }),
    { numRuns: 40, seed: 20260202 },
  );
});
