import { describe, expect, it } from 'vitest';
import { mostBackdrops } from '../../../electron/archive/backdrops.ts';
import { openArchive } from '../../../electron/archive/open.ts';
import { countingWorld, openFresh, valueOf } from './sample.ts';

const shapes = [{ name: 'Kalo', closed: true, lines: [[[1, 2] as const, [3, 4] as const]] }];
const backdrop = (id: string) => ({ id, name: `Map ${id}`, shapes });

describe('the backdrops of an archive', () => {
  it('are kept in it in the order in which they came', () => {
    const archive = openFresh();
    valueOf(archive.backdrops.add(backdrop('b')));
    valueOf(archive.backdrops.add(backdrop('a')));
    archive.close();
    const again = valueOf(openArchive(archive.file, countingWorld()));
    const kept = valueOf(again.backdrops.list());
    expect(kept.map(({ id }) => id)).toEqual(['b', 'a']);
    expect(kept[0]).toEqual({ ...backdrop('b'), addedAt: '2025-03-01T08:00:00.000Z' });
  });

  it('are removed one by one', () => {
    const archive = openFresh();
    valueOf(archive.backdrops.add(backdrop('a')));
    valueOf(archive.backdrops.add(backdrop('b')));
    expect(valueOf(archive.backdrops.remove('a'))).toBe(1);
    expect(valueOf(archive.backdrops.remove('a'))).toBe(1);
    expect(valueOf(archive.backdrops.list()).map(({ id }) => id)).toEqual(['b']);
  });

  it('are not too many for one map', () => {
    const archive = openFresh();
    for (let at = 0; at < mostBackdrops; at += 1)
      valueOf(archive.backdrops.add(backdrop(String(at))));
    const answer = archive.backdrops.add(backdrop('last'));
    expect(answer).toMatchObject({ error: { code: 'tooManyBackdrops' } });
    if (!answer.ok) expect(answer.error.sentence).toContain('Remove one of them first');
    expect(valueOf(archive.backdrops.list())).toHaveLength(mostBackdrops);
  });
});
