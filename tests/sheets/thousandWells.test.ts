import fc from 'fast-check';
import { expect, it } from 'vitest';
import { languages } from '../../core/base/language.ts';
import { drawSheet } from './drawn.ts';
import { brokenBy, labelLaws } from './laws/index.ts';
import { beddedWell, wordyWell } from './wordyWell.ts';

const thousand = fc.sample(fc.oneof(wordyWell, beddedWell(4)), { numRuns: 1000, seed: 20260301 });

/** Every fifth sheet is an A3; the languages take turns. */
function broken(from: number, to: number): [number, Record<string, string[]>][] {
  return thousand.slice(from, to).flatMap((record, at) => {
    const paper = at % 5 === 4 ? 'A3' : 'A4';
    const found = brokenBy(drawSheet(record, paper, languages[at % 3]), labelLaws);
    return Object.keys(found).length === 0 ? [] : [[from + at, found]];
  });
}

it.each([0, 250, 500, 750])(
  'labels of a thousand random wells neither meet nor leave their frame nor cross: from well %i',
  (from) => {
    expect(broken(from, from + 250)).toEqual([]);
  },
);
