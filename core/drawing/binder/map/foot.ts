import { scaleBarM } from '../../../base/geo/scaleBar.ts';
import { filled } from '../../../base/text/filled.ts';
import type { PaperMm } from '../../../base/units.ts';
import { wellStates } from '../../../record/identity.ts';
import { plainFigure } from '../../figures.ts';
import type { Box, Item } from '../../items.ts';
import { baseline, letter, lettered, widthOf, wrapped } from '../../letters.ts';
import { black, lineHeight, solid, white } from '../../pens.ts';
import { group, polygon, rectangle } from '../../shapes.ts';
import type { BinderKit } from '../binder.ts';
import type { BinderWell } from '../binderWell.ts';
import { sayState } from '../say.ts';
import type { UtmGrid } from './utmGrid.ts';
import type { MapView } from './view.ts';
import { drawWellSign, signHalf } from './wellSign.ts';

export const footHeight: PaperMm = 27;
const longestBar: PaperMm = 50;
const barThickness: PaperMm = 1.2;

function lengthSays(kit: BinderKit, metres: number): string {
  return metres >= 1000
    ? `${plainFigure(kit, metres / 1000, 1)} km`
    : `${plainFigure(kit, metres, 0)} m`;
}

/** Figures with a thin space every three digits, as scales are written. */
const grouped = (n: number) => String(n).replace(/\B(?=(\d{3})+$)/g, '\u00a0');

/** Two halves, black and white, with the lengths at their ends. */
function drawScaleBar(kit: BinderKit, { scale }: MapView, x: PaperMm, y: PaperMm): Item[] {
  const metres = scaleBarM((longestBar * scale) / 1000);
  const length = (metres * 1000) / scale;
  const half = { x, y, width: length / 2, height: barThickness };
  const says = y + barThickness + baseline('small') + 0.2;
  return [
    rectangle(half, { stroke: solid('thin'), fill: black }),
    rectangle({ ...half, x: x + length / 2 }, { stroke: solid('thin'), fill: white }),
    ...letter(kit, '0', x, says),
    ...letter(kit, lengthSays(kit, metres), x + length, says, { anchor: 'end' }),
    ...letter(kit, `1 : ${grouped(scale)}`, x, y - 1.2, { lettering: 'normal', face: 'bold' }),
  ];
}

function drawNorth(kit: BinderKit, x: PaperMm, y: PaperMm): Item {
  return group('northArrow', [
    polygon([[x, y], [x, y + 8], [x - 2, y + 9.8]], { fill: black }), // prettier-ignore
    polygon([[x, y], [x + 2, y + 9.8], [x, y + 8]], { stroke: solid('thin') }), // prettier-ignore
    ...letter(kit, kit.words.compass.north, x, y + 14, {
      lettering: 'normal',
      face: 'bold',
      anchor: 'middle',
    }),
  ]);
}

const signPitch = lineHeight('small') + 0.9;

/** Signs that stand on the map with what they mean, in rows of one width; gives where they end. */
function drawSigns(
  kit: BinderKit,
  states: readonly BinderWell['state'][],
  { x, y, width }: Box,
): { readonly items: readonly Item[]; readonly end: PaperMm } {
  const used = [...wellStates, '' as const].filter((state) => states.includes(state));
  const widest = Math.max(...used.map((state) => widthOf(kit, sayState(kit, state)))) + 8;
  const across = Math.max(1, Math.floor(width / widest));
  const items = used.flatMap((state, at) => {
    const left = x + (at % across) * widest;
    const top = y + Math.floor(at / across) * signPitch;
    return [
      drawWellSign(state, [left + signHalf, top + lineHeight('small') / 2]),
      ...letter(kit, sayState(kit, state), left + 2 * signHalf + 1.5, top + baseline('small')),
    ];
  });
  return { items, end: y + Math.ceil(used.length / across) * signPitch };
}

export interface FootFacts {
  readonly states: readonly BinderWell['state'][];
  readonly grid?: UtmGrid;
  /** Signs without a label. */
  readonly unnamed: number;
  /** Signs without a label that have one on the sheet of their own. */
  readonly elsewhere: number;
  /** Lines tie labels to signs. */
  readonly led: boolean;
  /** Lines are drawn under the wells. */
  readonly backdrop: boolean;
}

function notesOf(
  { own }: BinderKit,
  { grid, unnamed, elsewhere, led, backdrop }: FootFacts,
): string {
  const { map } = own;
  return [
    map.datum,
    ...(grid
      ? [filled(map.grid, { zone: `${grid.zone} ${grid.half}`, step: String(grid.stepM / 1000) })]
      : []),
    ...(backdrop ? [map.backdrop] : []),
    ...(led ? [map.led] : []),
    ...(elsewhere > 0 ? [filled(map.elsewhere, { n: String(elsewhere) })] : []),
    ...(unnamed > 0 ? [filled(map.unnamed, { n: String(unnamed) })] : []),
  ].join(' ');
}

/** North, scale, signs and grid under a map. */
export function drawFoot(kit: BinderKit, view: MapView, facts: FootFacts, box: Box): Item {
  const { x, y, width } = box;
  const beside = x + 78;
  const signs = { x: beside, y, width: x + width - beside, height: 0 };
  const lines = wrapped(kit, notesOf(kit, facts), signs.width);
  const drawn = drawSigns(kit, facts.states, signs);
  return group('mapFoot', [
    drawNorth(kit, x + 4, y),
    ...drawScaleBar(kit, view, x + 16, y + 6),
    ...drawn.items,
    ...lettered(kit, lines, beside, drawn.end + 1),
  ]);
}
