import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { languages } from '../../core/base/language.ts';
import { drawSheet } from './drawn.ts';
import { brokenBy } from './laws/index.ts';
import { demoWells, exampleWells, publishedWells } from './wells.ts';
import { wordyWell } from './wordyWell.ts';

/** How the sizes do not lie by themselves; the usual ways have tests of their own. */
const unusual = [
  ['A4', 'landscape'],
  ['A3', 'portrait'],
] as const;

describe.each(unusual)('sheets on %s %s', (paper, orientation) => {
  it.each([...demoWells, ...exampleWells, ...publishedWells])(
    'of %s keep every law',
    (name, record) => {
      const language = languages[name.length % languages.length]!;
      expect(brokenBy(drawSheet(record, paper, language, {}, { orientation }))).toEqual({});
    },
  );

  it('of random wells with all that people write keep every law', () => {
    fc.assert(
      fc.property(wordyWell, (record) => {
        expect(brokenBy(drawSheet(record, paper, 'en', {}, { orientation }))).toEqual({});
      }),
      { numRuns: 60, seed: 20260203 },
    );
  });
});
