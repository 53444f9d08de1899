import type { Box, Drawing, Item, PathItem, RegionItem } from '../../drawing/items.ts';
import { clipChain, isInside, type Area } from './clip.ts';
import type { Entity } from './entity.ts';
import { flatten, type Chain } from './flatten.ts';
import { hatchMarks } from './hatchLines.ts';
import { layerName } from './layers.ts';

/** Where an item stands: its layer, and the areas outside of which nothing of it shows. */
interface Place {
  readonly hatches: Drawing['hatches'];
  readonly layer: string;
  readonly clips: readonly Area[];
}

function boxArea({ x, y, width, height }: Box): Area {
  const points = [
    [x, y],
    [x + width, y],
    [x + width, y + height],
    [x, y + height],
  ] as const;
  return [{ points, closed: true }];
}

function clipped(chains: readonly Chain[], { clips }: Place): Chain[] {
  return clips.reduce<readonly Chain[]>(
    (left, area) =>
      left.flatMap((chain) =>
        chain.points.every((point) => isInside(point, area)) ? [chain] : clipChain(chain, area),
      ),
    chains,
  ) as Chain[];
}

/** A fill that a clip would cut is left to its outline: an area is never shown too large. */
function isCut(chains: readonly Chain[], { clips }: Place): boolean {
  return clips.some((area) =>
    chains.some(({ points }) => points.some((point) => !isInside(point, area))),
  );
}

function drawChains(
  chains: readonly Chain[],
  look: Pick<PathItem, 'fill' | 'stroke'>,
  place: Place,
): Entity[] {
  const { layer } = place;
  const cut = isCut(chains, place);
  const { fill } = look;
  const stroke = cut && fill ? outlined(look).stroke : look.stroke;
  const fills: Entity[] =
    fill && chains.length > 0 && !cut ? [{ kind: 'fill', layer, ink: fill, chains }] : [];
  if (!stroke) return fills;
  const { ink, width: widthMm, dash } = stroke;
  const pen = { layer, ink, widthMm, ...(dash?.length ? { dash } : {}) };
  return [
    ...fills,
    ...clipped(chains, place).map((chain): Entity => ({ kind: 'line', chain, ...pen })),
  ];
}

/** The ground as a fill, and every mark of the hatch as strokes. */
function drawRegion(item: RegionItem, place: Place): Entity[] {
  const area = flatten(item.segments);
  const tile = place.hatches[item.hatch];
  if (!tile) throw new Error(`The drawing has no hatch called ${item.hatch}`);
  const ground: Entity[] = item.ground ? drawChains(area, { fill: item.ground }, place) : [];
  const marks = hatchMarks(tile, area).flatMap(({ mark, chains, whole }) =>
    drawChains(chains, whole || !mark.fill ? mark : outlined(mark), place),
  );
  return [...ground, ...marks];
}

/** What was filled and is cut keeps its outline alone. */
function outlined({ fill, stroke }: Pick<PathItem, 'fill' | 'stroke'>): Pick<PathItem, 'stroke'> {
  return { stroke: stroke ?? { ink: fill!, width: 0.13 } };
}

/** A picture is a frame with what it shows: the format would need it as a file beside. */
function drawFrame(box: Box, place: Place): Entity[] {
  return drawChains(boxArea(box), { stroke: { ink: '#000000', width: 0.13 } }, place);
}

/** Items of a page as the file holds them, in painting order; links are left out. */
export function entitiesOf(items: readonly Item[], place: Place): Entity[] {
  return items.flatMap((item): Entity[] => {
    switch (item.kind) {
      case 'path':
        return drawChains(flatten(item.segments), item, place);
      case 'region':
        return drawRegion(item, place);
      case 'text':
        return place.clips.every((area) => isInside([item.x, item.y], area))
          ? [{ kind: 'text', layer: place.layer, ink: item.ink, text: item }]
          : [];
      case 'image':
        return drawFrame(item, place);
      case 'group':
        return entitiesOf(item.items, {
          ...place,
          layer: layerName(item.name) ?? place.layer,
          clips: item.clip ? [...place.clips, boxArea(item.clip)] : place.clips,
        });
      case 'link':
        return [];
    }
  });
}
