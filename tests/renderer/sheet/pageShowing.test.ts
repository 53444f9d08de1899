import { describe, expect, it } from 'vitest';
import type { Drawing, Item } from '../../../core/drawing/items.ts';
import { pageShowing } from '../../../renderer/sheet/pageShowing.ts';

const part = (source: string): Item => ({ kind: 'group', source, items: [] });
const page = (...items: Item[]) => ({ width: 210, height: 297, items });
const drawing: Drawing = {
  title: '',
  subject: '',
  author: '',
  language: 'en',
  madeAt: '2025-01-01T00:00:00Z',
  paperId: '0'.repeat(32),
  hatches: {},
  pages: [
    page(part('log[0]'), part('identity.number')),
    page({ kind: 'group', items: [part('log[1].to'), part('identity.number')] }),
  ],
};

describe('the page that shows a field', () => {
  it('is the one at hand where that shows it', () => {
    expect(pageShowing(drawing, 'identity.number', 1)).toBe(1);
  });

  it('is else the first that shows it or a part of it, in groups too', () => {
    expect(pageShowing(drawing, 'log[1]', 0)).toBe(1);
  });

  it('is none where none shows it', () => {
    expect(pageShowing(drawing, 'log[2]', 0)).toBeUndefined();
  });
});
