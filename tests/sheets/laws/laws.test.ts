import { expect, it } from 'vitest';
import type { Drawing, Item, PathItem, Segment, TextItem } from '../../../core/drawing/items.ts';
import { well } from '../../demo-data/wells.ts';
import { drawSheet, type DrawnSheet } from '../drawn.ts';
import { longPlain } from '../examples/longPlain.ts';
import { noDiameters } from '../examples/noDiameters.ts';
import { laws } from './index.ts';

type Leaf = Exclude<Item, { kind: 'group' }>;
type Spoil = (item: Leaf, groups: readonly string[]) => Item;

function spoiledItem(item: Item, groups: readonly string[], spoil: Spoil): Item {
  if (item.kind !== 'group') return spoil(item, groups);
  const inner = [...groups, item.name ?? ''];
  return { ...item, items: item.items.map((one) => spoiledItem(one, inner, spoil)) };
}

function spoiled(drawing: Drawing, spoil: Spoil): Drawing {
  const pages = drawing.pages.map((page) => ({
    ...page,
    items: page.items.map((item) => spoiledItem(item, [], spoil)),
  }));
  return { ...drawing, pages };
}

function shifted([kind, ...rest]: Segment, by: number): Segment {
  return [kind, ...rest.map((one, at) => (at % 2 === 1 ? one + by : one))] as unknown as Segment;
}

/** Moves what stands in a group down. */
const lowered =
  (group: string, by: number, kinds: readonly string[] = ['path', 'region', 'text']): Spoil =>
  (item, groups) => {
    if (!groups.includes(group) || !kinds.includes(item.kind)) return item;
    if (item.kind === 'text') return { ...item, y: item.y + by };
    if (item.kind !== 'path' && item.kind !== 'region') return item;
    return { ...item, segments: item.segments.map((one) => shifted(one, by)) };
  };

const texts =
  (change: (item: TextItem) => Partial<TextItem>, group?: string): Spoil =>
  (item, groups) =>
    item.kind === 'text' && (group === undefined || groups.includes(group))
      ? { ...item, ...change(item) }
      : item;

const replaced = (from: RegExp, to: string) =>
  texts(({ text }) => ({ text: text.replace(from, to) }));

/** Lets the leaders of a side end in the reverse order. */
const mirrored: Spoil = (item, groups) => {
  if (!groups.includes('callout') || item.kind !== 'path' || item.fill) return item;
  const away = item.segments.slice(-2).map((one) => [one[0], one[1], 300 - one[2]!] as Segment);
  return { ...item, segments: [...item.segments.slice(0, -2), ...away] };
};

/** Lets all leaders end at one height. */
const levelled: Spoil = (item, groups) => {
  if (!groups.includes('callout') || item.kind !== 'path' || item.fill) return item;
  const away = item.segments.slice(-2).map((one) => [one[0], one[1], 300] as Segment);
  return { ...item, segments: [...item.segments.slice(0, -2), ...away] };
};

function oneOf(spoil: Spoil, wanted: (item: Leaf, groups: readonly string[]) => boolean): Spoil {
  let done = false;
  return (item, groups) => {
    if (done || !wanted(item, groups)) return item;
    done = true;
    return spoil(item, groups);
  };
}

const isPath = (item: Leaf): item is PathItem => item.kind === 'path';

/** A drawing that has lost every key of a name. */
function without(drawing: Drawing, lost: string): Drawing {
  const text = JSON.stringify(drawing, (key, value: unknown) => (key === lost ? undefined : value));
  return JSON.parse(text) as Drawing;
}

/** For each law a way to break it, item by item. */
const itemSpoils: Record<string, () => Spoil> = {
  'nothing leaves the frame': () => texts(({ x }) => ({ x: x + 60 })),
  'the well and its words stand between head and foot': () => lowered('ground', 260),
  'no text is cut by a clip': () => texts(({ x }) => ({ x: x + 60 }), 'section'),
  'no two texts stand on one another': () => texts(() => ({ y: 100 }), 'descriptions'),
  'lines of the title block have white between them': () =>
    texts(({ y, em }) => ({ y: em < 3 ? y + 0.4 : y }), 'titleBlock'),
  'capitals are at least 1.8 mm high': () => texts(({ em }) => ({ em: em * 0.99 })),
  'every text is as wide as its font says, with a glyph for each letter': () =>
    texts(({ text }) => ({ text: `${text}漢` }), 'titleBlock'),
  'pens are of the ISO 128 series': () => (item) =>
    isPath(item) && item.stroke ? { ...item, stroke: { ...item.stroke, width: 0.3 } } : item,
  'items are of the six kinds': () => (item) =>
    item.kind === 'text' ? ({ ...item, kind: 'arc' } as unknown as Item) : item,
  'every measure is a finite number': () => lowered('ground', NaN),
  'leaders on one side do not cross': () => mirrored,
  'no leader to a part lies on another': () => levelled,
  'no leader runs through words': () => texts(({ x }) => ({ x: x - 3 }), 'description'),
  'no dimension line runs through a figure': () => texts(({ y }) => ({ y: y + 2 }), 'dimension'),
  'the ruler is true to the stated scale': () => replaced(/^depths 1:\d+$/, 'depths 1:250'),
  'ticks are even': () =>
    oneOf(lowered('depthRuler', 0.2), (item, groups) => {
      const short = isPath(item) && item.stroke?.width === 0.18;
      return short && groups.includes('depthRuler');
    }),
  'breaks stand at the depths that they name': () => lowered('depthBreak', 0.1, ['path']),
  'nothing of the well is left out by a break': () => replaced(/^(\d+)–(\d+) m not/, '$1–50 m not'),
  'strata reach from top to foot, each depth once': () => lowered('ground', 0.05, ['region']),
  'contacts stand at their depth': () => lowered('ground', 0.05, ['path']),
  'fills reach over the depths of their rings': () => lowered('annulus', 0.05, ['region']),
  'pipes reach from top to foot': () => lowered('string', 0.05),
  'strikes, levels and intake point at their depth, on one page': () =>
    lowered('waterColumn', 0.05),
  'figures beside the section are the depth that they lead to': () => lowered('callout', 0.5),
  'pages meet at match lines': () => replaced(/sheet 2$/, 'sheet 9'),
  'match lines stand at the depth that they name': () => lowered('matchLines', 0.1),
  'no match line runs through words': () => lowered('matchLines', -2, ['text']),
  'pages are counted': () => replaced(/^1 of \d+$/, '1'),
  'every description stands in full or is counted as left out': () =>
    oneOf(
      texts(() => ({ text: '…' })),
      (item, groups) => item.kind === 'text' && groups.includes('descriptions'),
    ),
  'a description that was cut says so': () =>
    oneOf(
      texts(() => ({ text: 'Clay' })),
      (item, groups) => item.kind === 'text' && groups.includes('descriptions'),
    ),
  'a tally has a row for each piece': () =>
    texts(({ text }) => ({ text: text.replace(/\.\d\d$/, '') }), 'tally'),
  'the particulars stand in full or say that they were cut': () =>
    texts(({ text }) => ({ text: text.replace(/[^ ]+$/, '') }), 'particulars'),
};

/** Those that the drawing as a whole breaks. */
const wholeSpoils: Record<string, (drawing: Drawing) => Drawing> = {
  'every hatch used is carried, and no other': (drawing) => ({
    ...drawing,
    hatches: Object.fromEntries(Object.entries(drawing.hatches).slice(1)),
  }),
  'every part of the well is shown': (drawing) => without(drawing, 'source'),
};

const long = drawSheet(well('telescoped-in-granite.json'), 'A4');
const clipped = drawSheet(noDiameters(), 'A4');
const broken = drawSheet(longPlain(), 'A3');

/** A sheet that shows what a law is about. */
const shownBy: Readonly<Record<string, DrawnSheet>> = {
  'no text is cut by a clip': clipped,
  'breaks stand at the depths that they name': broken,
  'nothing of the well is left out by a break': broken,
};

function spoil(sheet: DrawnSheet, law: string): DrawnSheet {
  const whole = wholeSpoils[law];
  const drawing = whole ? whole(sheet.drawing) : spoiled(sheet.drawing, itemSpoils[law]!());
  return { ...sheet, drawing };
}

it.each(Object.keys(laws))('the law that %s tells a sheet that breaks it', (name) => {
  const sheet = shownBy[name] ?? long;
  expect(laws[name]!(sheet)).toEqual([]);
  expect(laws[name]!(spoil(sheet, name))).not.toEqual([]);
});
