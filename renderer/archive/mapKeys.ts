import type { MapSight } from './mapSight.svelte.ts';

/** How much one press zooms, and what share of the window one moves by. */
export const zoomStep = 1.4;
const panShare = 0.12;

const moves: Readonly<Record<string, (sight: MapSight) => void>> = {
  '+': (sight) => sight.zoomBy(zoomStep),
  '=': (sight) => sight.zoomBy(zoomStep),
  '-': (sight) => sight.zoomBy(1 / zoomStep),
  '0': (sight) => sight.fit(),
  ArrowLeft: (sight) => sight.panBy(-panShare, 0),
  ArrowRight: (sight) => sight.panBy(panShare, 0),
  ArrowUp: (sight) => sight.panBy(0, -panShare),
  ArrowDown: (sight) => sight.panBy(0, panShare),
};

/** What a key does to the map's sight; undefined where it does nothing. */
export function moveFor({ key, ctrlKey, metaKey, altKey }: KeyboardEvent) {
  return ctrlKey || metaKey || altKey ? undefined : moves[key];
}

/** The next or the last of the wells, from the one that is chosen, round and round. */
export function nextWell<T extends { readonly id: string }>(
  key: string,
  wells: readonly T[],
  chosen: string | undefined,
): T | undefined {
  const by = { PageDown: 1, PageUp: -1 }[key];
  if (by === undefined || wells.length === 0) return undefined;
  const at = wells.findIndex(({ id }) => id === chosen);
  if (at < 0) return by > 0 ? wells[0] : wells.at(-1);
  return wells[(at + by + wells.length) % wells.length];
}
