import { readFileSync } from 'node:fs';
import { well } from '../demo-data/wells.ts';
import { drawSheet } from '../sheets/drawn.ts';
import { awkwardTallies } from '../sheets/awkwardTallies.ts';
import { drawLaidOut } from '../sheets/layingOut.ts';
import { artesian } from '../sheets/examples/artesian.ts';
import { dugAndDrilled } from '../sheets/examples/dugAndDrilled.ts';
import type { Drawing } from '../../core/drawing/items.ts';
import { readable } from './readable.ts';

/** The page of the well alone; those of tests and samples are words and figures. */
function firstPage(drawing: Drawing): Drawing {
  return { ...drawing, pages: drawing.pages.slice(0, 1) };
}

/** The few sheets that are kept as reference drawings; docs/sheets.md says what each shows. */
export const referenceSheets: Readonly<Record<string, () => string>> = {
  'shallow-direct-action-9m-A4': () =>
    readable(firstPage(drawSheet(well('shallow-direct-action-9m.json'), 'A4').drawing)),
  'dugAndDrilled-A4': () => readable(drawSheet(dugAndDrilled(), 'A4').drawing),
  'twentyFivePipes-layingOut': () =>
    readable(drawLaidOut(awkwardTallies['twentyFivePipes']!).drawing),
  'artesian-A3': () => readable(drawSheet(artesian(), 'A3').drawing),
};

/** Where a reference is kept, or a changed one lies beside it until somebody has looked at it. */
export function placeOf(name: string, changed = false): URL {
  return new URL(`${name}.txt${changed ? '.new' : ''}`, import.meta.url);
}

export function keptReference(name: string): string {
  return readFileSync(placeOf(name), 'utf8');
}
