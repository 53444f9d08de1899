import { describe, expect, it } from 'vitest';
import type { Drawing, Item, LinkItem } from '../../../../core/drawing/items.ts';
import { joinDrawings } from '../../../../core/drawing/papers/joined.ts';
import { drawing, dotted, page } from '../../paint/sample.ts';

const joint = {
  title: 'Both',
  subject: 'Sheets',
  language: 'fr',
  madeAt: '2025-01-01T00:00:00Z',
  paperId: 'f'.repeat(32),
};
const box = { x: 0, y: 0, width: 9, height: 9 };
const link = (to: LinkItem['to']): LinkItem => ({ kind: 'link', box, to });
const targets = (items: readonly Item[]): LinkItem['to'][] =>
  items.flatMap((item) => {
    if (item.kind === 'group') return targets(item.items);
    return item.kind === 'link' ? [item.to] : [];
  });

describe('papers joined', () => {
  const first: Drawing = drawing([page([link({ page: 1 })]), page([], 420)]);
  const address = { address: 'https://example.org/' };
  const grouped: Item = { kind: 'group', items: [link({ page: 1 }), link(address)] };
  const second = drawing([page([grouped])], { hatches: { other: dotted } });
  const joined = joinDrawings([first, second], joint);

  it('stand one behind the other, each page in its size', () => {
    expect(joined.pages.map(({ width }) => width)).toEqual([210, 420, 210]);
    expect(joined).toMatchObject({ ...joint, author: '' });
    expect(joinDrawings([second, first], joint).pages.map(({ width }) => width)).toEqual([
      210, 210, 420,
    ]);
  });

  it('have links that lead to the page of their own paper', () => {
    expect(targets(joined.pages[0]!.items)).toEqual([{ page: 1 }]);
    expect(targets(joined.pages[2]!.items)).toEqual([{ page: 3 }, address]);
  });

  it('have the hatches of all', () => {
    expect(Object.keys(joined.hatches)).toEqual(['dotted', 'other']);
  });
});
