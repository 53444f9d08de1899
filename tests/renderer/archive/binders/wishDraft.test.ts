// @vitest-environment jsdom
import { describe, expect, it } from 'vitest';
import type { BinderWish } from '../../../../core/contract/binderShape.ts';
import { usualBinder } from '../../../../core/contract/usualBinder.ts';
import { WishDraft } from '../../../../renderer/archive/binders/wishDraft.svelte.ts';

const joins = [
  { from: { wellId: 'a', depthM: 3 }, to: { wellId: 'b', depthM: 4 } },
  { from: { wellId: 'b', depthM: 3 }, to: { wellId: 'c', depthM: 4 } },
];
const wish: BinderWish = {
  ...usualBinder('Wells', 'en'),
  wells: { ids: ['c', 'a'] },
  attachments: true,
  withIssued: true,
  sections: [
    { title: 'Along the river', wellIds: ['a', 'b', 'c'], joins },
    { wellIds: ['c', 'a'] },
  ],
};

const draftOf = (parts: Partial<BinderWish> = {}) =>
  new WishDraft('en', '', {
    name: 'Yearly',
    wish: { ...wish, ...parts },
    changedAt: '2026-01-01T00:00:00Z',
  });

describe('a binder that is being described', () => {
  it('says what was kept when nothing was changed', () => {
    const draft = draftOf();
    expect(draft.wish({ search: 'x' })).toEqual(wish);
    expect(draft.choice).toBe('picked');
    expect(draft.whole).toBe(true);
    expect(draft.named).toEqual(['c', 'a', 'a', 'b', 'c', 'c', 'a']);
  });

  it('has the wells of the list, of the kept filter, or all', () => {
    const draft = draftOf({ wells: { filter: { districts: ['Tamaro'] } } });
    expect(draft.choice).toBe('kept');
    expect(draft.wish({ search: 'x' }).wells).toEqual({ filter: { districts: ['Tamaro'] } });
    draft.choice = 'listed';
    expect(draft.wish({ search: 'x' }).wells).toEqual({ filter: { search: 'x' } });
    draft.choice = 'all';
    expect(draft.wish({ search: 'x' }).wells).toEqual({});
  });

  it('is not whole while no well is chosen, or a section has fewer than two', () => {
    const draft = draftOf({ sections: [] });
    draft.picked = [];
    expect([draft.hasWell, draft.whole]).toEqual([false, false]);
    draft.choice = 'all';
    expect(draft.whole).toBe(true);
    draft.addSection();
    expect(draft.whole).toBe(false);
    draft.sections[0]!.wellIds = ['a', 'b'];
    expect(draft.whole).toBe(true);
    expect(draft.wish({}).sections).toEqual([{ wellIds: ['a', 'b'] }]);
    draft.removeSection(draft.sections[0]!);
    expect(draft.wish({}).sections).toEqual([]);
  });

  it('keeps the lines between wells that are still among a section’s', () => {
    const draft = draftOf();
    const [section] = draft.sections;
    section!.wellIds = ['b', 'a'];
    section!.title = ' ';
    expect(section!.choice()).toEqual({ wellIds: ['b', 'a'], joins: [joins[0]] });
  });
});
