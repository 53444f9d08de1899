import type { PathItem, RegionItem } from '../../../core/drawing/items.ts';
import type { AnnulusZone, PieceModel } from '../../../core/model/wellModel.ts';
import type { DrawnSheet } from '../drawn.ts';
import { extentOf } from '../extent.ts';
import { placedOn, withoutDetails, type Placed } from '../placed.ts';
import { rulerOf } from '../ruler.ts';
import type { Law } from './law.ts';

interface Part {
  readonly fromM: number;
  readonly toM: number;
}

interface Shown {
  readonly placed: Placed;
  readonly fromM: number;
  readonly toM: number;
}

/** Everything on pages with a ruler, with the depths that the ruler gives its upper and lower end. */
function shownIn({ drawing }: DrawnSheet, group: string): Shown[] {
  return drawing.pages.flatMap((page) => {
    const ruler = rulerOf(page);
    if (!ruler) return [];
    return placedOn(withoutDetails(page))
      .filter(({ groups }) => groups.includes(group))
      .map((placed) => {
        const [, top, , foot] = extentOf(placed.item);
        return { placed, fromM: ruler.depthAt(top), toM: ruler.depthAt(foot) };
      });
  });
}

const near = (a: number, b: number) => Math.abs(a - b) < 1e-5;

const said = ({ fromM, toM }: Part) => `${fromM.toFixed(3)}–${toM.toFixed(3)}`;

function isRegion({ placed }: Shown): boolean {
  return placed.item.kind === 'region';
}

function isFilled({ placed }: Shown): boolean {
  return placed.item.kind === 'region' || (placed.item as PathItem).fill !== undefined;
}

/** Each stratum's box reaches, page by page and without overlap, from its top to its foot. */
export const strataAtDepth: Law = (sheet) => {
  const boxes = shownIn(sheet, 'ground').filter(isFilled);
  return sheet.model.strata.flatMap((stratum) => {
    const parts = boxes
      .filter(({ placed }) => placed.source === stratum.path)
      .sort((a, b) => a.fromM - b.fromM);
    const bounds = [stratum.fromM, ...parts.slice(1).map(({ fromM }) => fromM)];
    const ends = [...parts.slice(1).map(({ fromM }) => fromM), stratum.toM];
    const right = parts.every(
      ({ fromM, toM }, at) => near(fromM, bounds[at]!) && near(toM, ends[at]!),
    );
    if (parts.length > 0 && right) return [];
    return [`${stratum.path} ${said(stratum)} is drawn ${parts.map(said).join(', ')}`];
  });
};

/** The contact at a stratum's foot is a line across the log at its depth, on one page. */
export const contactsAtDepth: Law = (sheet) => {
  const lines = shownIn(sheet, 'ground').filter(
    ({ placed, fromM, toM }) => placed.item.kind === 'path' && near(fromM, toM),
  );
  return sheet.model.strata.flatMap(({ path, toM }) =>
    lines.some(({ placed, fromM }) => placed.source === path && near(fromM, toM))
      ? []
      : [`${path} has no contact at ${toM}`],
  );
};

const lengthOf = (parts: readonly Part[]) =>
  parts.reduce((sum, { fromM, toM }) => sum + toM - fromM, 0);

function compare(path: string, drawn: readonly Part[], meant: readonly Part[]): string[] {
  const from = Math.min(...drawn.map(({ fromM }) => fromM));
  const to = Math.max(...drawn.map(({ toM }) => toM));
  const top = Math.min(...meant.map(({ fromM }) => fromM));
  const foot = Math.max(...meant.map(({ toM }) => toM));
  // Two sides each; a thousandth of a metre for the sums of many parts.
  const same = Math.abs(lengthOf(drawn) - 2 * lengthOf(meant)) < 1e-3;
  if (same && near(from, top) && near(to, foot)) return [];
  const what = `${said({ fromM: from, toM: to })}, ${(lengthOf(drawn) / 2).toFixed(3)} m in all`;
  return [`${path} ${meant.map(said).join(', ')} is drawn ${what}`];
}

function byPath<T extends { readonly path?: string }>(all: readonly T[]): Map<string, T[]> {
  const found = new Map<string, T[]>();
  for (const one of all)
    if (one.path !== undefined) found.set(one.path, [...(found.get(one.path) ?? []), one]);
  return found;
}

/** Each fill is hatched on both sides over the depths of its rings. */
export const fillsAtDepth: Law = (sheet) => {
  const regions = shownIn(sheet, 'annulus').filter(isRegion);
  return [...byPath<AnnulusZone>(sheet.model.annulus)].flatMap(([path, zones]) => {
    const rings = zones.flatMap((zone) => zone.rings);
    if (rings.length === 0) return [];
    const drawn = regions.filter(({ placed }) => placed.source === path);
    return compare(path, drawn, rings);
  });
};

/** Each pipe has walls on both sides from its top to its foot. */
export const pipesAtDepth: Law = (sheet) => {
  const walls = shownIn(sheet, 'string').filter(isFilled);
  const pieces = sheet.model.strings
    .flatMap((string) => string.pieces)
    .filter(({ kind, outsideMm }) => kind !== 'cap' && outsideMm !== undefined);
  return [...byPath<PieceModel>(pieces)].flatMap(([path, alike]) => {
    const drawn = walls.filter(({ placed }) => placed.source === path);
    return compare(
      path,
      drawn,
      alike.map(({ topM, bottomM }) => ({ fromM: topM, toM: bottomM })),
    );
  });
};

/** The hatch of a stratum or fill is in the drawing. */
export const hatchesCarried: Law = ({ drawing }) => {
  const used = drawing.pages
    .flatMap(placedOn)
    .filter(({ item }) => item.kind === 'region')
    .map(({ item }) => (item as RegionItem).hatch);
  const lacking = [...new Set(used)].filter((hatch) => !drawing.hatches[hatch]);
  const idle = Object.keys(drawing.hatches).filter((hatch) => !used.includes(hatch));
  return [...lacking.map((one) => `${one} is lacking`), ...idle.map((one) => `${one} is not used`)];
};
