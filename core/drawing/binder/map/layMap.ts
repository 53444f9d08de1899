import { filled } from '../../../base/text/filled.ts';
import type { PaperMm } from '../../../base/units.ts';
import type { Box, Item, Page } from '../../items.ts';
import { letter } from '../../letters.ts';
import { placeLabels } from '../../map/labels.ts';
import { letterings, solid, white } from '../../pens.ts';
import { group, line, rectangle } from '../../shapes.ts';
import type { BinderContent, BinderKit, LaidPart, PartMark, Places } from '../binder.ts';
import { linesInColumns } from '../linedPages.ts';
import { inOrder } from '../order.ts';
import { binderPage, bodyOf, partTitle, partTitleHeight, under } from '../page.ts';
import { sayDistrict, sayNumber, sayVillage } from '../say.ts';
import { drawBackdrop } from './backdrop.ts';
import { drawFoot, footHeight } from './foot.ts';
import { drawGraticule } from './grid.ts';
import { mapLabels, type MapLabel } from './labels.ts';
import { outlineNames, type OutlineName } from './outlineNames.ts';
import { isPlaced, type PlacedWell } from './placedWell.ts';
import { mapSheets, type MapSheet } from './sheets.ts';
import { drawUtmGrid, utmGridOf } from './utmGrid.ts';
import { fitView, toPaper, type MapView } from './view.ts';
import { drawWellSign, signHalf } from './wellSign.ts';

/** Room for figures at the edges of the map. */
const margins = { left: 16, right: 17, top: 5, foot: 5 } as const;

function mapBox(kit: BinderKit): Box {
  const { x, y, width, height } = under(bodyOf(kit), partTitleHeight);
  return {
    x: x + margins.left,
    y: y + margins.top,
    width: width - margins.left - margins.right,
    height: height - margins.top - margins.foot - footHeight,
  };
}

function drawNames(kit: BinderKit, labels: readonly MapLabel[]): Item[] {
  const leaders = labels.flatMap(({ leader }) => (leader ? [line(...leader, solid('thin'))] : []));
  const names = labels.flatMap(({ at, text, width }): Item[] => {
    if (!at) return [];
    const [x, y] = at;
    const high = letterings.small;
    const ground = { x: x - 0.3, y: y - high - 0.4, width: width + 0.6, height: high * 1.25 + 0.6 };
    return [rectangle(ground, { fill: white }), ...letter(kit, text, x, y)];
  });
  return [...leaders, ...names];
}

/** A sign that leads to the papers of its well. */
function drawSign({ well, point: [x, y] }: MapLabel, places: Places): Item[] {
  const box = { x: x - signHalf, y: y - signHalf, width: 2 * signHalf, height: 2 * signHalf };
  return [
    drawWellSign(well.state, [x, y]),
    { kind: 'link', box, to: { page: places.pageOf(well.id) } },
  ];
}

/** What a map shows besides its wells. */
interface MapExtras {
  readonly places: Places;
  /** Over the wells, with the boxes that it takes up. */
  readonly over: readonly Item[];
  readonly taken?: readonly Box[];
  /** Wells have their labels. */
  readonly named: boolean;
}

function drawOutlineNames(kit: BinderKit, names: readonly OutlineName[]): Item {
  return group(
    'outlineNames',
    names.flatMap(({ text, at: [x, y], width, lettering }) => {
      const high = letterings[lettering];
      const ground = {
        x: x - 0.6,
        y: y - high - 0.5,
        width: width + 1.2,
        height: high * 1.3 + 0.8,
      };
      return [
        rectangle(ground, { fill: white }),
        ...letter(kit, text, x, y, { lettering, face: 'bold' }),
      ];
    }),
  );
}

function drawMap(
  kit: BinderKit,
  content: BinderContent,
  view: MapView,
  labels: readonly MapLabel[],
  { places, over, named, taken = [] }: MapExtras,
): Item[] {
  const grid = utmGridOf(view);
  const { box } = view;
  const body = bodyOf(kit);
  const without = (mine: boolean) =>
    named ? labels.filter(({ at, own }) => !at && own === mine).length : 0;
  const facts = {
    states: labels.map(({ well }) => well.state),
    unnamed: without(true),
    elsewhere: without(false),
    led: named && labels.some(({ leader }) => leader !== undefined),
    backdrop: content.backdrop.length > 0,
    ...(grid && { grid }),
  };
  // A sign at the very edge reaches over it.
  const clip = {
    x: box.x - signHalf - 0.2,
    y: box.y - signHalf - 0.2,
    width: box.width + 2 * signHalf + 0.4,
    height: box.height + 2 * signHalf + 0.4,
  };
  return [
    drawBackdrop(view, content.backdrop),
    drawGraticule(kit, view),
    ...(grid ? [drawUtmGrid(kit, view, grid)] : []),
    drawOutlineNames(kit, outlineNames(kit, view, content.backdrop, labels, { named, taken })),
    ...(named ? [group('names', drawNames(kit, labels))] : []),
    group('wells', labels.flatMap((label) => drawSign(label, places)), { clip }), // prettier-ignore
    ...over,
    rectangle(box, { stroke: solid('medium') }),
    drawFoot(kit, view, facts, {
      ...body,
      y: body.y + body.height - footHeight + 4,
      height: footHeight - 4,
    }),
  ];
}

/** The part of an overview that a sheet shows, cut at the overview's edge. */
function outlineOn(view: MapView, sheet: MapSheet): Box {
  const points = sheet.wells.map(({ position }) => toPaper(view, position));
  const pad: PaperMm = 2.5;
  const [xs, ys] = [points.map(([x]) => x), points.map(([, y]) => y)];
  const [x, y] = [Math.min(...xs) - pad, Math.min(...ys) - pad];
  return { x, y, width: Math.max(...xs) + pad - x, height: Math.max(...ys) + pad - y };
}

const numberHigh = letterings.large * 1.5;
const numberSize = { width: numberHigh * 1.7, height: numberHigh };

/** Boxes for the numbers of sheets in their frames, where there is room. */
function numberBoxes({ box }: MapView, frames: readonly Box[]): (Box | undefined)[] {
  const middles = frames.map(({ x, y, width, height }) => ({
    x: x + width / 2 - box.x,
    y: y + height / 2 - box.y,
    ...numberSize,
  }));
  const places = placeLabels(middles, 0.1, { width: box.width, height: box.height });
  return places.map((place) => place && { x: box.x + place.x, y: box.y + place.y, ...numberSize });
}

/** Frames of the sheets over the overview, each with its number. */
function drawSheetFrames(
  kit: BinderKit,
  frames: readonly Box[],
  numbers: readonly (Box | undefined)[],
): Item[] {
  return [
    ...frames.map((frame) => rectangle(frame, { stroke: solid('medium') })),
    ...numbers.flatMap((box, at): Item[] => {
      if (!box) return [];
      const { x, y, width, height } = box;
      return [
        rectangle(box, { fill: white, stroke: solid('thin') }),
        ...letter(kit, String(at + 1), x + width / 2, y + height * 0.5 + letterings.large / 2, {
          lettering: 'large',
          face: 'bold',
          anchor: 'middle',
        }),
      ];
    }),
  ];
}

function overview(
  kit: BinderKit,
  content: BinderContent,
  wells: readonly PlacedWell[],
  sheets: readonly MapSheet[],
  places: Places,
): Item[] {
  const view = fitView(
    wells.map(({ position }) => position),
    mapBox(kit),
  );
  const frames = sheets.map((sheet) => outlineOn(view, sheet));
  const numbers = numberBoxes(view, frames);
  const over = [group('sheetFrames', drawSheetFrames(kit, frames, numbers))];
  const taken = numbers.filter((box) => box !== undefined);
  const labels = mapLabels(kit, view, wells);
  return drawMap(kit, content, view, labels, { places, over, taken, named: false });
}

/** Wells of which nobody wrote where they are. */
function listPages(kit: BinderKit, { wells }: BinderContent, places: Places): Item[][] {
  const without = inOrder(
    wells.filter((well) => !isPlaced(well)),
    ({ district, village, number }) => [district, village, number],
  );
  if (without.length === 0) return [];
  const lines = without.map((well) => ({
    says: sayNumber(kit, well),
    more: `${sayVillage(kit, well.village)}, ${sayDistrict(kit, well.district)}`,
    bold: true,
    page: places.pageOf(well.id),
  }));
  return linesInColumns(kit, lines, places, under(bodyOf(kit), partTitleHeight));
}

interface Titled {
  readonly title: string;
  readonly items: readonly Item[];
}

/**
 * The wells on the map, in sheets under an overview where one would be crowded, and a list of those
 * without a position.
 */
export function layMap(kit: BinderKit, content: BinderContent, places: Places): LaidPart {
  const { map, parts } = kit.own;
  const placed = content.wells.filter(isPlaced);
  const sheets = placed.length === 0 ? [] : mapSheets(kit, placed, mapBox(kit));
  const several = sheets.length > 1;
  const drawn = sheets.map(({ view, wells }, at): Titled => {
    const own = new Set(wells.map(({ id }) => id));
    const others = placed.filter(({ id }) => !own.has(id));
    const labels = mapLabels(kit, view, wells, others);
    const title = filled(map.sheet, { n: String(at + 1), of: String(sheets.length) });
    return {
      title: several ? title : parts.map,
      items: drawMap(kit, content, view, labels, { places, over: [], named: true }),
    };
  });
  const first = several
    ? [{ title: map.overview, items: overview(kit, content, placed, sheets, places) }]
    : [];
  const lists = listPages(kit, content, places).map((items) => ({ title: map.without, items }));
  const all: Titled[] = [...first, ...drawn, ...lists];
  const body = bodyOf(kit);
  const pages = all.map(({ title, items }): Page =>
    binderPage(kit, content, parts.map, [partTitle(kit, title, body), ...items]),
  );
  const marks = all.flatMap(({ title }, page): PartMark[] =>
    title === parts.map || all[page - 1]?.title === title ? [] : [{ title, page }],
  );
  return { pages, marks };
}
