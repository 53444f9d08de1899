import type { PaperMm } from '../../base/units.ts';
import type { Stratum, WellModel } from '../../model/wellModel.ts';
import { hatchFor, hatchForFill } from '../hatches/index.ts';
import type { Item } from '../items.ts';
import type { Kit } from '../kit.ts';
import { baseline, letter, widthOf } from '../letters.ts';
import { lineHeight, solid } from '../pens.ts';
import { corners, hatched, rectangle } from '../shapes.ts';
import { blockPad, blockTitle, blockTitleHeight, type Block } from './block.ts';
import type { SwitchedColumn } from './columnNames.ts';
import { contactSign } from './contacts.ts';
import { hatchOf, materialsOf } from './ground.ts';
import { signEntries, type LegendEntry } from './legendSigns.ts';

/** Large enough that the coarsest hatch shows what it is; the pitch leaves air between two. */
const swatch = { width: 8, height: 3.5 } as const;
const pitch: PaperMm = 4.3;
/** Room for a swatch and some twenty letters. */
const leastColumn: PaperMm = 29;

/** A hatch on white, whatever stands under it on the sheet. */
function hatchEntry(says: string, hatch: string): LegendEntry {
  return {
    says,
    draw: (x, y) => {
      const box = { x, y, ...swatch };
      return [
        hatched(corners(box), hatch, undefined, '#ffffff'),
        rectangle(box, { stroke: solid('thin') }),
      ];
    },
  };
}

/** One entry for each principal material, and one that shows how a second material is marked. */
function groundEntries(kit: Kit, strata: readonly Stratum[]): LegendEntry[] {
  const { materials, legend } = kit.words;
  const used = [...new Set(strata.flatMap(materialsOf))];
  const pure = used.map((one) => hatchEntry(materials[one].noun, hatchFor(one)));
  const mixed = strata.map(hatchOf).find((hatch) => hatch?.includes('+'));
  return mixed === undefined ? pure : [...pure, hatchEntry(legend.mixed, mixed)];
}

/** Fills that are drawn: one without a ring has no diameters and shows no hatch. */
function fillEntries(kit: Kit, { annulus }: WellModel): LegendEntry[] {
  const used = [
    ...new Set(annulus.filter(({ rings }) => rings.length > 0).map(({ fill }) => fill)),
  ];
  return used.map((fill) => hatchEntry(kit.words.fills[fill], hatchForFill(fill)));
}

/** Contacts that are not sharp. Sharp ones are plain lines and need no word. */
function contactEntries(kit: Kit, strata: readonly Stratum[]): LegendEntry[] {
  const used = new Set(strata.map(({ interval }) => interval.boundary));
  return (['gradual', 'uncertain'] as const)
    .filter((one) => used.has(one))
    .map((one) => ({
      says: kit.words.legend[one],
      draw: (x, y) => contactSign(kit, one, [x, y + 1.9], swatch.width, swatch.width),
    }));
}

/** What an entry takes across: swatch, gap, words, gap. */
function entryWidth(kit: Kit, { says }: LegendEntry): PaperMm {
  return swatch.width + 1.2 + widthOf(kit, says) + 0.6;
}

/**
 * Entries in as many columns as hold their words whole, read down each column: all of one width
 * where that will do, else each as wide as its longest entry asks.
 */
function columnsOf(kit: Kit, entries: readonly LegendEntry[], width: PaperMm): Column[] {
  const most = Math.max(1, Math.floor(width / leastColumn));
  for (let count = most; count > 1; count -= 1) {
    const rows = Math.ceil(entries.length / count);
    const parts = Array.from({ length: count }, (_, at) =>
      entries.slice(at * rows, (at + 1) * rows),
    );
    const needs = parts.map((part) => Math.max(0, ...part.map((one) => entryWidth(kit, one))));
    if (needs.every((need) => need <= width / count))
      return parts.map((part) => ({ entries: part, width: width / count }));
    const spare = (width - needs.reduce((sum, need) => sum + need, 0)) / count;
    if (spare >= 0) return parts.map((part, at) => ({ entries: part, width: needs[at]! + spare }));
  }
  return [{ entries, width }];
}

interface Column {
  readonly entries: readonly LegendEntry[];
  readonly width: PaperMm;
}

function drawColumn(kit: Kit, { entries, width }: Column, x: PaperMm, y: PaperMm): Item[] {
  return entries.flatMap((entry, at) => {
    const top = y + at * pitch;
    const text = top + (swatch.height - lineHeight('small')) / 2 + baseline('small');
    return [
      ...entry.draw(x, top),
      ...letter(kit, entry.says, x + swatch.width + 1.2, text, {
        widest: width - swatch.width - 1.8,
      }),
    ];
  });
}

/** A legend of what this sheet uses, and of nothing else. */
export function layLegend(
  kit: Kit,
  model: WellModel,
  shown: readonly SwitchedColumn[],
  width: PaperMm,
): Block {
  const columns = columnsOf(
    kit,
    [
      ...groundEntries(kit, model.strata),
      ...contactEntries(kit, model.strata),
      ...fillEntries(kit, model),
      ...signEntries(kit, model, shown),
    ],
    width,
  );
  const rows = Math.max(...columns.map(({ entries }) => entries.length));
  const draw = (x: PaperMm, y: PaperMm): Item[] => {
    let left = x;
    return [
      ...blockTitle(kit, kit.words.legend.title, x, y, width),
      ...columns.flatMap((column) => {
        const items = drawColumn(kit, column, left, y + blockTitleHeight);
        left += column.width;
        return items;
      }),
    ];
  };
  return { height: blockTitleHeight + rows * pitch + blockPad, draw };
}
