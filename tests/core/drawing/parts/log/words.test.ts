import { describe, expect, it } from 'vitest';
import type { Item } from '../../../../../core/drawing/items.ts';
import { colourWords, drawColour } from '../../../../../core/drawing/parts/log/colour.ts';
import { labelsLeft } from '../../../../../core/drawing/parts/log/labelsLeft.ts';
import { drawMoisture, moistureWords } from '../../../../../core/drawing/parts/log/moisture.ts';
import { drawSieve, sieveWords } from '../../../../../core/drawing/parts/log/sieve.ts';
import { tintOf } from '../../../../../core/drawing/parts/log/tints.ts';
import { yAt } from '../../../../../core/drawing/scale.ts';
import {
  frenchKit,
  kit,
  pathsOf,
  pointsOf,
  stratum,
  textsOf,
  viewOf,
  wordsOf,
} from '../../sample.ts';

const view = viewOf({ columns: ['colour', 'moisture', 'sieve'] });

/** Brightness of an ink, 0 for black and 1 for white (ITU-R BT.601 weights, from memory). */
function brightness(ink: string): number {
  const [red, green, blue] = [1, 3, 5].map((at) => parseInt(ink.slice(at, at + 2), 16) / 255);
  return 0.299 * red! + 0.587 * green! + 0.114 * blue!;
}

const chipsOf = (drawn: Item) => pathsOf(drawn).filter(({ fill }) => fill);

describe('colours', () => {
  it('are chips with the word that was written, outlined', () => {
    const strata = [stratum(0, 5, { colour: 'red brown' })];
    const drawn = drawColour(kit, colourWords(strata), view);
    expect(wordsOf(drawn).join(' ')).toBe('red brown');
    const [chip] = chipsOf(drawn);
    expect(chip!.stroke!.width).toBeGreaterThan(0);
    const [text] = textsOf(drawn);
    const corners = pointsOf(chip!);
    const [left, top] = corners[0]!;
    const [right, foot] = corners[2]!;
    expect(text!.x).toBeGreaterThan(left);
    expect(text!.x + text!.width).toBeLessThan(right);
    expect(text!.y).toBeGreaterThan(top);
    expect(text!.y).toBeLessThan(foot);
  });

  it('of neighbours that are alike share a chip, whose bracket spans them', () => {
    const alike = [stratum(0, 5, { colour: 'grey' }), stratum(5, 9, { colour: 'grey' })];
    const drawn = drawColour(kit, colourWords(alike), view);
    expect(chipsOf(drawn)).toHaveLength(1);
    const ys = pathsOf(drawn).flatMap((one) => pointsOf(one).map(([, y]) => y));
    expect(Math.min(...ys)).toBeCloseTo(yAt(view.axis, 0) + 0.4, 6);
    expect(Math.max(...ys)).toBeCloseTo(yAt(view.axis, 9) - 0.4, 6);
  });

  it.each([
    ['red brown', 'brun rouge', 'castanho vermelho'],
    ['dark grey', 'gris foncé', 'cinzento escuro'],
    ['yellow', 'jaune', 'amarelo'],
  ])('have one tint in three languages: %s', (english, french, portuguese) => {
    expect(tintOf(french)).toBe(tintOf(english));
    expect(tintOf(portuguese)).toBe(tintOf(english));
    expect(tintOf(english)).not.toBe('#ffffff');
  });

  it('are light enough for black letters, and white where no colour is known', () => {
    for (const colour of ['black', 'dark black', 'dark brown', 'red', 'blue', 'purple', 'green'])
      expect(brightness(tintOf(colour))).toBeGreaterThan(0.6);
    expect(tintOf('as the sample above')).toBe('#ffffff');
  });

  it('that have no room at all leave their bracket, and no word stands on another', () => {
    const many = Array.from({ length: 200 }, (_, at) =>
      stratum(at / 10, (at + 1) / 10, { colour: at % 2 ? 'grey' : 'brown' }),
    );
    const ys = textsOf(drawColour(kit, colourWords(many), view)).map(({ y }) => y);
    expect(ys.length).toBeGreaterThan(10);
    for (const [at, y] of ys.slice(1).entries()) expect(y - ys[at]!).toBeGreaterThan(2.5);
  });
});

describe('moisture', () => {
  it('stands in words of the sheet’s language', () => {
    const wet = [stratum(0, 5, { moisture: 'wet' })];
    expect(wordsOf(drawMoisture(frenchKit, moistureWords(frenchKit, wet), view))).toEqual([
      'mouillé',
    ]);
  });

  it('parts a long word at its hyphen', () => {
    const bearing = [stratum(0, 5, { moisture: 'waterBearing' })];
    const drawn = drawMoisture(kit, moistureWords(kit, bearing), view);
    expect(wordsOf(drawn)).toEqual(['water-', 'bearing']);
  });
});

describe('sieve results', () => {
  const curve = (...points: [number, number][]) => points.map(([size, finer]) => ({ size, finer }));

  it('are the sizes of which 10 and 60 per cent are finer', () => {
    const sieve = curve([0.1, 10], [0.5, 60], [2, 100]);
    const words = sieveWords(kit, [stratum(0, 5, { sieve })]);
    expect(words[0]).toMatchObject({ text: '0.1 0.5', source: 'log[0].sieve' });
    expect(wordsOf(drawSieve(kit, words, view)).join(' ')).toBe('0.1 0.5');
  });

  it('mark by a dash what a curve does not reach, and nothing where nobody sieved', () => {
    const sieve = curve([0.5, 40], [2, 80]);
    const strata = [stratum(0, 5, { sieve }), stratum(5, 9, { sieve: [] }), stratum(9, 10)];
    expect(sieveWords(kit, strata).map(({ text }) => text)).toEqual(['– 1']);
  });
});

describe('labels', () => {
  it('say what tells them apart', () => {
    expect(labelsLeft(['KV-25/01', 'KV-25/02', 'KV-25/13'])).toEqual(['01', '02', '13']);
    expect(labelsLeft(['A1', '', 'A2'])).toEqual(['A1', '', 'A2']);
  });

  it('are whole where there is but one', () => {
    expect(labelsLeft(['KV-25/01', ''])).toEqual(['KV-25/01', '']);
  });
});
