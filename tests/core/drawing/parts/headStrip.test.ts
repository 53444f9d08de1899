import { describe, expect, it } from 'vitest';
import { paperOf } from '../../../../core/drawing/paper.ts';
import {
  drawHeadStrip,
  drawingStrip,
  labelled,
  readStrip,
  underStrip,
  type Template,
} from '../../../../core/drawing/parts/headStrip.ts';
import { letterings } from '../../../../core/drawing/pens.ts';
import { emForCapitals } from '../../../../core/base/text/metrics.ts';
import { kit, textsOf, wordsOf } from '../sample.ts';

const none: Template = { name: ['Water office'], address: [], logos: [], labels: {} };
const logo = { data: 'data:image/png;base64,', width: 100, height: 50, says: 'A drop' };
const strips = [
  ['a drawing', drawingStrip],
  ['a sheet read at arm’s length', readStrip],
] as const;

describe.each(strips)('the head strip over %s', (_, look) => {
  const paper = underStrip(paperOf('A4'), look);
  const strip = (template: Partial<Template>) =>
    drawHeadStrip(kit, { ...none, ...template }, paper, look);
  const top = paper.frame.y - look.height;

  it('keeps all lines apart and between its edges', () => {
    const three = ['One', 'Two', 'Three'];
    const lines = textsOf(strip({ name: three, address: three, logos: [logo, logo, logo] }));
    expect(lines).toHaveLength(6);
    for (const column of [lines.slice(0, 3), lines.slice(3)])
      for (const [at, { y }] of column.entries()) {
        expect(y).toBeGreaterThan(top + 2.4);
        expect(y).toBeLessThan(paper.frame.y - 1);
        if (at > 0) expect(y - column[at - 1]!.y).toBeGreaterThan(3);
      }
  });

  it('gives a long name the room that a short address leaves, and the other way round', () => {
    const long = 'Office of rural water supply of the northern districts';
    expect(wordsOf(strip({ name: [long], address: ['Balenkori'] }))).toContain(long);
    expect(wordsOf(strip({ name: ['Office'], address: [long] }))).toContain(long);
  });

  it('sets a name smaller before it cuts it, and no text runs into another', () => {
    const name = ['Office of rural water supply of the northern districts'];
    const address = ['Road of the old market, third house, Balenkori'];
    const [first, second] = textsOf(strip({ name, address, logos: [logo] }));
    const wished = emForCapitals(kit.fonts, letterings.large);
    expect(first!.em).toBeLessThan(wished);
    expect(first!.x + first!.width).toBeLessThan(second!.x);
    expect(second!.x + second!.width).toBeLessThan(paper.frame.x + paper.frame.width);
  });
});

it('no letter over a sheet that is read at arm’s length is smaller than 11 pt', () => {
  const template = { ...none, name: ['x'.repeat(150), 'y'], address: ['z'.repeat(150)] };
  const paper = underStrip(paperOf('A4'), readStrip);
  // 1 pt is 25.4 mm / 72 (PDF 32000-1, 8.3.2.3).
  for (const { em } of textsOf(drawHeadStrip(kit, template, paper, readStrip)))
    expect((em * 72) / 25.4).toBeGreaterThanOrEqual(11);
});

it('labels of an organisation take the place of the sheet’s, and no others', () => {
  const { title } = labelled(kit.words, { ...none, labels: { client: 'Owner' } });
  expect(title).toEqual({ ...kit.words.title, client: 'Owner' });
  expect(labelled(kit.words, undefined)).toBe(kit.words);
});
