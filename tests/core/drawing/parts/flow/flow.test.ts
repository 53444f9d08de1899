import { describe, expect, it } from 'vitest';
import type { Item } from '../../../../../core/drawing/items.ts';
import { flowed, type Piece } from '../../../../../core/drawing/parts/flow/flow.ts';

const mark = (name: string, y: number): Item => ({
  kind: 'group',
  name: `${name} ${y}`,
  items: [],
});

function piece(name: string, height: number, extra: Partial<Piece> = {}): Piece {
  return { height, draw: (_, y) => [mark(name, y)], ...extra };
}

const named = (pages: readonly Item[][]) =>
  pages.map((items) => items.map((item) => (item.kind === 'group' ? item.name : '')));

const column = { x: 0, y: 0, width: 100, height: 30 };

describe('pieces in columns', () => {
  it('stand under each other, and go on on the next page', () => {
    const pages = flowed([piece('a', 10), piece('b', 20), piece('c', 5)], [column]);
    expect(named(pages)).toEqual([['a 0', 'b 10'], ['c 0']]);
  });

  it('keep a title with what is under it', () => {
    const pages = flowed(
      [piece('a', 20), piece('t', 5, { keeps: true }), piece('b', 10)],
      [column],
    );
    expect(named(pages)).toEqual([['a 0'], ['t 0', 'b 5']]);
  });

  it('set the head of a table again where it goes on', () => {
    const head = piece('head', 3);
    const rows = ['1', '2', '3'].map((name) => piece(name, 12, { head }));
    const pages = flowed([{ ...head, keeps: true }, ...rows], [column]);
    expect(named(pages)).toEqual([
      ['head 0', '1 3', '2 15'],
      ['head 0', '3 3'],
    ]);
  });

  it('need no gap at the head of a column', () => {
    const pages = flowed([piece('a', 30), piece('gap', 4, { gap: true }), piece('b', 9)], [column]);
    expect(named(pages)).toEqual([['a 0'], ['b 0']]);
  });

  it('have narrower gaps where that saves a page', () => {
    const gap = piece('gap', 5, { gap: true });
    const pages = flowed([piece('a', 14), gap, piece('b', 14)], [column]);
    expect(named(pages)).toEqual([['a 0', 'gap 14', 'b 16']]);
  });

  it('fill both columns of the last page alike', () => {
    const two = [column, { ...column, x: 100 }];
    const pages = flowed(
      ['a', 'b', 'c', 'd'].map((name) => piece(name, 7)),
      two,
    );
    expect(named(pages)).toEqual([['a 0', 'b 7', 'c 0', 'd 7']]);
  });
});
