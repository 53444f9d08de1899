import { describe, expect, it } from 'vitest';
import type { Drawing, Item } from '../../core/drawing/items.ts';
import { readable } from './readable.ts';

const tick = (y: number): Item => ({
  kind: 'path',
  segments: [
    ['M', 20, y],
    ['L', 23, y],
  ],
  stroke: { ink: '#000000', width: 0.18 },
});

function linesOf(items: readonly Item[]): string[] {
  const drawing: Drawing = {
    title: 'E-01',
    subject: 'Trial',
    author: '',
    language: 'en',
    madeAt: '2026-01-31',
    paperId: '0',
    pages: [{ width: 210, height: 297, items }],
    hatches: {},
  };
  return readable(drawing).trim().split('\n').slice(4);
}

describe('a drawing in lines', () => {
  it('has neighbours that differ in place alone on one line', () => {
    expect(linesOf([tick(10), tick(15), tick(20)])).toEqual([
      '  path × 3  20.00 10.00 to 23.00 20.00  0.18 #000000',
    ]);
  });

  it('has groups as headings and cuts places to the hundredth', () => {
    const text: Item = {
      kind: 'text',
      x: 20.12345,
      y: -0.001,
      text: 'SAND',
      face: 'regular',
      em: 2.7272727,
      width: 7,
      ink: '#000000',
      source: 'log[0]',
    };
    expect(linesOf([{ kind: 'group', name: 'log', items: [text], source: 'log' }])).toEqual([
      '  log  log',
      '    text  20.12 0.00  regular 1.80 “SAND”  log[0]',
    ]);
  });
});
