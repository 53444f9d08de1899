import { describe, expect, it, vi } from 'vitest';
import { planeAt } from '../../../core/base/geo/localPlane.ts';
import { backdropPaths, shapeNames } from '../../../renderer/archive/backdropPaths.ts';
import { moveFor, nextWell } from '../../../renderer/archive/mapKeys.ts';
import { inWindow, labelsOf, wellAt } from '../../../renderer/archive/mapLabels.ts';
import type { MapSight } from '../../../renderer/archive/mapSight.svelte.ts';

const seenAt = (id: string, x: number, y: number) => ({
  x,
  y,
  well: { id, number: id, name: '', village: '', state: '' as const, latitude: 0, longitude: 0 },
});
const plane = planeAt({ latitude: 0, longitude: 0 });
const sight = { plane, k: 0.01, x: 300, y: 200, width: 600, height: 400 };

describe('the wells of a map', () => {
  const seen = [seenAt('a', 100, 100), seenAt('b', 108, 100), seenAt('c', 700, 100)];

  it('are those whose signs lie in the window', () => {
    expect(inWindow(seen, sight).map(({ well }) => well.id)).toEqual(['a', 'b']);
  });

  it('are met by the nearest sign, not from afar', () => {
    expect(wellAt(seen, { x: 105, y: 101 })?.id).toBe('b');
    expect(wellAt(seen, { x: 95, y: 100 })?.id).toBe('a');
    expect(wellAt(seen, { x: 130, y: 130 })).toBeUndefined();
  });

  it('have labels where there is room, the chosen well before all', () => {
    const crowd = Array.from({ length: 9 }, (_, at) => seenAt(`W-${at}`, 300, 200));
    const ids = labelsOf(crowd, 'W-8', sight).map(({ id }) => id);
    expect(ids.length).toBeLessThan(9);
    expect(ids).toContain('W-8');
    expect(labelsOf(crowd, undefined, sight).map(({ id }) => id)).not.toContain('W-8');
  });

  it('are chosen one after the other, round and round', () => {
    const wells = [{ id: 'a' }, { id: 'b' }, { id: 'c' }];
    expect(nextWell('PageDown', wells, undefined)?.id).toBe('a');
    expect(nextWell('PageUp', wells, undefined)?.id).toBe('c');
    expect(nextWell('PageDown', wells, 'c')?.id).toBe('a');
    expect(nextWell('PageUp', wells, 'b')?.id).toBe('a');
    expect(nextWell('a', wells, 'b')).toBeUndefined();
    expect(nextWell('PageDown', [], 'b')).toBeUndefined();
  });
});

describe('the keys of a map', () => {
  it('move and zoom it, and leave those that are held with others to the browser', () => {
    const moved = { zoomBy: vi.fn(), panBy: vi.fn(), fit: vi.fn() };
    const press = (key: string, held: object = {}) =>
      moveFor({ key, ctrlKey: false, metaKey: false, altKey: false, ...held } as KeyboardEvent)?.(
        moved as unknown as MapSight,
      );
    press('+');
    press('ArrowLeft');
    press('0');
    press('+', { ctrlKey: true });
    press('x');
    expect(moved.zoomBy).toHaveBeenCalledExactlyOnceWith(expect.any(Number));
    expect(moved.panBy.mock.calls).toEqual([[expect.any(Number), 0]]);
    expect(moved.panBy.mock.calls[0]![0]).toBeLessThan(0);
    expect(moved.fit).toHaveBeenCalledOnce();
  });
});

describe('a backdrop', () => {
  const line = (west: number, east: number) =>
    [
      [west, 0],
      [east, 0],
      [east, 0.1],
    ] as const;
  const backdrop = {
    id: 'k',
    name: 'districts',
    addedAt: '',
    shapes: [
      { name: 'Kalo', closed: true, lines: [line(-0.1, 0.1)] },
      { name: 'A very small place', closed: true, lines: [line(0.1, 0.101)] },
      { closed: false, lines: [line(0.1, 0.2)] },
    ],
  };

  it('is drawn in metres on the plane, outlines apart from lines', () => {
    const [path] = backdropPaths([backdrop], plane);
    expect(path?.outlines).toMatch(/^M-11132,0L11132,0L11132,-11057M/);
    expect(path?.lines.match(/M/g)).toHaveLength(1);
  });

  it('bears the names for which its shapes have the width', () => {
    const names = shapeNames(backdropPaths([backdrop], plane), sight);
    expect(names.map(({ text }) => text)).toEqual(['Kalo']);
    expect(names[0]?.x).toBeCloseTo(300, 6);
  });
});
