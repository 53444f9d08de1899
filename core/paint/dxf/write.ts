import type { Fonts } from '../../base/text/metrics.ts';
import { printable } from '../../base/text/printable.ts';
import type { Drawing, TextItem } from '../../drawing/items.ts';
import { encode } from './codePage.ts';
import { dxfText, real, writeCodes, type Code } from './codes.ts';
import { entitiesOf } from './entities.ts';
import type { Entity, FillEntity, LineEntity } from './entity.ts';
import type { Chain } from './flatten.ts';
import { groundOf, type Ground } from './ground.ts';
import { mainLayer } from './layers.ts';
import { colourIndex, lineType, lineWeight } from './look.ts';
import {
  blocksSection,
  classesSection,
  entitiesSection,
  handles,
  headerSection,
  objectsSection,
  tablesSection,
  type DashPattern,
  type Extent,
} from './sections.ts';

function begin(kind: string, handle: number, { layer, ink }: Entity): Code[] {
  return [
    [0, kind],
    [5, handle.toString(16).toUpperCase()],
    [330, handles.modelSpace],
    [100, 'AcDbEntity'],
    [8, layer],
    [62, colourIndex(ink)],
  ];
}

function vertices({ points }: Chain, ground: Ground): Code[] {
  return points.flatMap((point): Code[] => {
    const [x, y] = ground.at(point);
    return [
      [10, real(x)],
      [20, real(y)],
    ];
  });
}

function lineCodes(entity: LineEntity, handle: number, ground: Ground): Code[] {
  const { chain, widthMm, dash } = entity;
  return [
    ...begin('LWPOLYLINE', handle, entity),
    [6, lineType({ ...(dash && { dash }) })],
    [370, lineWeight(widthMm)],
    [100, 'AcDbPolyline'],
    [90, chain.points.length],
    [70, chain.closed ? 1 : 0],
    ...vertices(chain, ground),
  ];
}

/** A filled area; bit 1 of a path's kind says outer, 2 polyline. */
function fillCodes(entity: FillEntity, handle: number, ground: Ground): Code[] {
  const loops = entity.chains.filter(({ points }) => points.length > 2);
  return [
    ...begin('HATCH', handle, entity),
    [100, 'AcDbHatch'],
    [10, '0.0'],
    [20, '0.0'],
    [30, '0.0'],
    [210, '0.0'],
    [220, '0.0'],
    [230, '1.0'],
    [2, 'SOLID'],
    [70, 1],
    [71, 0],
    [91, loops.length],
    ...loops.flatMap((chain): Code[] => [
      [92, 3],
      [72, 0],
      [73, 1],
      [93, chain.points.length],
      ...vertices(chain, ground),
      [97, 0],
    ]),
    [75, 0],
    [76, 1],
    [98, 0],
  ];
}

/** Where a run of text ends on its baseline. */
function endOf({ x, y, width, turn = 0 }: TextItem): readonly [number, number] {
  const angle = (turn * Math.PI) / 180;
  return [x + width * Math.cos(angle), y + width * Math.sin(angle)];
}

/** Fitted between both ends of the run, so that no reader's own letters make it longer. */
function textCodes(
  entity: Extract<Entity, { kind: 'text' }>,
  handle: number,
  ground: Ground,
  fonts: Fonts,
): Code[] {
  const { text } = entity;
  const { capHeight, unitsPerEm } = fonts[text.face];
  const [x, y] = ground.at([text.x, text.y]);
  const [toX, toY] = ground.at(endOf(text));
  return [
    ...begin('TEXT', handle, entity),
    [100, 'AcDbText'],
    [10, real(x)],
    [20, real(y)],
    [30, '0.0'],
    [40, real(((text.em * capHeight) / unitsPerEm) * ground.metres)],
    [1, dxfText(printable(text.text))],
    [50, real(-(text.turn ?? 0))],
    [72, 5],
    [11, real(toX)],
    [21, real(toY)],
    [31, '0.0'],
    [100, 'AcDbText'],
    [73, 0],
  ];
}

function codesOf(entity: Entity, handle: number, ground: Ground, fonts: Fonts): Code[] {
  switch (entity.kind) {
    case 'line':
      return lineCodes(entity, handle, ground);
    case 'fill':
      return fillCodes(entity, handle, ground);
    case 'text':
      return textCodes(entity, handle, ground, fonts);
  }
}

function isShown(entity: Entity): boolean {
  if (entity.kind === 'text') return entity.text.width > 0;
  if (entity.kind === 'line') return entity.chain.points.length > 1;
  return entity.chains.some(({ points }) => points.length > 2);
}

function extentOf({ width, height }: { width: number; height: number }, ground: Ground): Extent {
  return { min: ground.at([0, height]), max: ground.at([width, 0]) };
}

function dashesOf(entities: readonly Entity[], { metres }: Ground): DashPattern[] {
  const found = new Map<string, DashPattern>();
  for (const entity of entities)
    if (entity.kind === 'line' && entity.dash) {
      const name = lineType(entity);
      found.set(name, { name, lengths: entity.dash.map((length) => length * metres) });
    }
  return [...found.values()];
}

/**
 * One page (counted from 0) as DXF of the year 2000, as text in code page 1252, in metres: see `groundOf` for where
 * its zero lies. Each named group of the drawing is a layer; hatches are strokes, cut at their
 * outline; curves are chords. `fonts` gives the height of capitals. Throws when the drawing has no
 * such page.
 */
export function paintDxf(drawing: Drawing, pageIndex: number, fonts: Fonts): Uint8Array {
  const page = drawing.pages[pageIndex];
  if (!page) throw new Error(`The drawing has no page with index ${pageIndex}`);
  const ground = groundOf(page);
  const place = { hatches: drawing.hatches, layer: mainLayer, clips: [] };
  const entities = entitiesOf(page.items, place).filter(isShown);
  const layers = [...new Set([mainLayer, ...entities.map(({ layer }) => layer)])];
  const extent = extentOf(page, ground);
  const next = (handles.first + entities.length).toString(16).toUpperCase();
  const codes = entities.flatMap((entity, at) =>
    codesOf(entity, handles.first + at, ground, fonts),
  );
  const whole = writeCodes([
    [999, 'Borefolio'],
    ...headerSection(extent, next),
    ...classesSection,
    ...tablesSection(layers, dashesOf(entities, ground), extent),
    ...blocksSection,
    ...entitiesSection(codes),
    ...objectsSection,
    [0, 'EOF'],
  ]);
  return encode(whole);
}
