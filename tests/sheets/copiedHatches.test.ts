import { describe, expect, it } from 'vitest';
import { hatchFor, hatchForFill, tilesFor } from '../../core/drawing/hatches/index.ts';
import type { Box, Drawing } from '../../core/drawing/items.ts';
import { corners, hatched } from '../../core/drawing/shapes.ts';
import { paintPdf } from '../../core/paint/pdf/paintPdf.ts';
import { fillKinds } from '../../core/record/annulus.ts';
import { materials } from '../../core/record/materials.ts';
import { bitsOf, cutOut, inkOf, unlike, type Bits } from '../reading/bits.ts';
import { fonts } from './drawn.ts';

/**
 * Thin beds of every hatch as a copier in black and white sees them: 150 dots to the inch cut at
 * half grey, coarser than the 200 of a fax (common practice). A hatch is in millimetres of paper
 * and the same at every scale, so that beds of one thickness stand for all scales.
 */
const dotsPerInch = 150;
/** The thinnest bed that sheets are planned for, as wide as the log. */
const bed = { width: 14, height: 2.2 } as const;
/** Where on its tile a bed begins, millimetres. */
const phases = [0, 3, 6, 9];

const grounds = materials.map((one) => hatchFor(one));
const fills = fillKinds.filter((one) => one !== 'open').map((one) => hatchForFill(one));
const all = [...grounds, ...fills];

/** Fifteen columns of hatches, each with a bed for each phase; tiles fit into 12 mm. */
function bedOf(hatch: string, phase: number): Box {
  const at = all.indexOf(hatch);
  return { x: 12 + (at % 15) * 24, y: 12 + Math.floor(at / 15) * 60 + phase * 5, ...bed };
}

const drawing: Drawing = {
  title: 'Beds',
  subject: '',
  author: '',
  language: 'en',
  madeAt: '2026-01-31T12:00:00+00:00',
  paperId: '0'.repeat(32),
  pages: [
    {
      width: 420,
      height: 297,
      items: all.flatMap((hatch) =>
        phases.map((phase) => hatched(corners(bedOf(hatch, phase)), hatch)),
      ),
    },
  ],
  hatches: tilesFor(all),
};

const page = bitsOf(paintPdf(drawing, fonts.files), dotsPerInch);
const beds = new Map<string, Bits[]>(
  all.map((hatch) => [
    hatch,
    phases.map((phase) => cutOut(page, dotsPerInch, bedOf(hatch, phase))),
  ]),
);

/** Pairs of hatches that a copy of thin beds hardly tells apart, at some phase. */
function alike(hatches: readonly string[]): string[] {
  return hatches.flatMap((one, at) =>
    hatches.slice(at + 1).flatMap((other) => {
      const apart = phases.map((_, n) => unlike(beds.get(one)![n]!, beds.get(other)![n]!, 12, 3));
      const least = Math.min(...apart);
      return least < 0.2 ? [`${one} and ${other}: ${least.toFixed(2)}`] : [];
    }),
  );
}

/** Ground that often lies on, or is taken for, another. */
const neighbours = [
  ['clay', 'mudstone'],
  ['mud', 'mudstone'],
  ['laterite', 'saprolite'],
] as const;

describe('thin beds, copied in black and white', () => {
  it.each(all.filter((hatch) => hatch !== 'coal'))(
    'of %s show their marks and do not run together',
    (hatch) => {
      for (const one of beds.get(hatch)!) {
        expect(inkOf(one)).toBeGreaterThan(0.02);
        expect(inkOf(one)).toBeLessThan(0.6);
      }
    },
  );

  it('of coal alone are black', () => {
    for (const one of beds.get('coal')!) expect(inkOf(one)).toBe(1);
  });

  it('of different ground can be told apart', () => {
    expect(alike(grounds)).toEqual([]);
  });

  it.each(neighbours)('of %s and %s are told apart at a glance', (one, other) => {
    const [a, b] = [beds.get(one)!, beds.get(other)!];
    for (const n of phases.keys()) expect(unlike(a[n]!, b[n]!, 12, 3)).toBeGreaterThan(0.4);
  });

  it('of different fills can be told apart', () => {
    expect(alike(fills)).toEqual([]);
  });
});
