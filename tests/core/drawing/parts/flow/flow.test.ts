import { describe, expect, it } from 'vitest';
import type { Item } from '../../../../../core/drawing/items.ts';
import { flowed, flowedParts, type Paths } from '../../../../../core/drawing/parts/flow/flow.ts';
import type { Part, Piece } from '../../../../../core/drawing/parts/flow/part.ts';

const mark = (name: string, y: number): Item => ({
  kind: 'group',
  name: `${name} ${y}`,
  items: [],
});

const column = { x: 0, y: 0, width: 100, height: 30 };

function piece(name: string, height: number, extra: Partial<Piece> = {}): Piece {
  return { height, draw: (_, y) => [mark(name, y)], ...extra };
}

const between = piece('line', 1);

const part = (name: string, pieces: readonly Piece[], more: Partial<Part> = {}): Part => ({
  name,
  pieces,
  ...more,
});

/** Items of the pages of parts, by page. */
function parts(manners: readonly (readonly Part[])[], paths: Partial<Paths> = {}): Item[][] {
  const pages = flowedParts(manners, { columns: [column], between, ...paths });
  return pages.map((page) => page.parts.flatMap(({ items }) => items));
}

const named = (pages: readonly Item[][]) =>
  pages.map((items) => items.map((item) => (item.kind === 'group' ? item.name : '')));

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

describe('parts', () => {
  const small = part('first', [piece('a', 10)]);
  const other = part('second', [piece('b', 12)]);

  it('begin a page each where that takes no more of them and leaves none nearly empty', () => {
    const long = part('long', [piece('a', 20), piece('b', 20)]);
    const full = part('full', [piece('c', 28)]);
    expect(named(parts([[part('first', [piece('a', 16)]), full]]))).toEqual([['a 0'], ['c 0']]);
    expect(named(parts([[long, full]]))).toEqual([['a 0'], ['b 0'], ['c 0']]);
  });

  it('share a page where that saves one, with a line between', () => {
    expect(named(parts([[small, other]]))).toEqual([['a 0', 'line 10', 'b 11']]);
  });

  it('are set closer where that saves a page', () => {
    const close = part('first', [piece('a', 8), piece('b', 20)]);
    const loose = part('first', [piece('a', 12), piece('b', 20)]);
    expect(named(parts([[loose], [close]]))).toEqual([['a 0', 'b 8']]);
    expect(named(parts([[close], [small]]))).toEqual([['a 0', 'b 8']]);
  });

  it('begin in free room where they may, else on the page after it', () => {
    const free = { ...column, height: 11 };
    const filling = { ...small, fills: true };
    expect(named(parts([[filling, other]], { free }))).toEqual([['a 0'], ['b 0']]);
    expect(named(parts([[small, other]], { free }))).toEqual([[], ['a 0', 'line 10', 'b 11']]);
    const low = { ...column, height: 9 };
    expect(named(parts([[filling]], { free: low }))).toEqual([[], ['a 0']]);
  });

  it('leave no page for a gap alone', () => {
    const gap = piece('gap', 4, { gap: true });
    expect(named(flowed([piece('a', 28), gap], [column]))).toEqual([['a 0']]);
  });
});
