import type { Item, PathItem } from '../../../core/drawing/items.ts';
import { extentOf } from '../extent.ts';
import { placedOn } from '../placed.ts';
import type { Law } from './law.ts';

/** Line widths of ISO 128-2, mm (from memory). */
const series = [0.13, 0.18, 0.25, 0.35, 0.5, 0.7, 1, 1.4, 2];

const kinds = ['path', 'text', 'region', 'image', 'group', 'link'];

function unfolded(items: readonly Item[]): Item[] {
  return items.flatMap((item) =>
    item.kind === 'group' ? [item, ...unfolded(item.items)] : [item],
  );
}

/** Lines of the pages are as wide as a pen of the series; so are the lines of hatches. */
export const pensOfSeries: Law = ({ drawing }) => {
  const lines = drawing.pages
    .flatMap(({ items }) => unfolded(items))
    .filter((item): item is PathItem => item.kind === 'path');
  const marks = Object.values(drawing.hatches).flatMap((tile) => tile.marks);
  const widths = [...lines, ...marks].flatMap(({ stroke }) => stroke?.width ?? []);
  return [...new Set(widths)].filter((one) => !series.includes(one)).map((one) => `pen ${one}`);
};

/** The drawing holds items of the six kinds only. */
export const sixKinds: Law = ({ drawing }) => {
  const used = drawing.pages.flatMap(({ items }) => unfolded(items)).map(({ kind }) => kind);
  return [...new Set(used)].filter((kind) => !kinds.includes(kind));
};

/** Every measure is a number that a painter can write. */
export const measuresFinite: Law = ({ drawing }) =>
  drawing.pages.flatMap((page, at) =>
    placedOn(page)
      .filter((one) => ![...extentOf(one.item), ...(one.clip ?? [])].every(Number.isFinite))
      .map(({ groups, source }) => `page ${at + 1}: ${groups.join('/')} (${source})`),
  );
