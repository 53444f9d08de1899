import type { Metres, PaperMm } from '../../../base/units.ts';
import type { Item } from '../../items.ts';
import { fitted, letter } from '../../letters.ts';
import { levelSign } from '../../parts/section/waterLevels.ts';
import { dashed, letterings, solid, white } from '../../pens.ts';
import { corners, group, hatched, line, rectangle } from '../../shapes.ts';
import type { BinderKit } from '../binder.ts';
import { sayNumber, sayVillage } from '../say.ts';
import { columnWidth, footOf, yAt, type SectionFrame } from './frame.ts';
import type { StandingWell } from './sectionLine.ts';

const stripWidth: PaperMm = 1.6;
const slotPitch: PaperMm = 0.8;

type DepthY = (depthM: Metres) => PaperMm;

function drawLayers({ well }: StandingWell, left: PaperMm, y: DepthY): Item[] {
  const whole = { x: left, y: y(0), width: columnWidth, height: y(footOf(well)) - y(0) };
  const layers = well.layers.flatMap(({ fromM, toM, hatch }): Item[] => {
    const box = { x: left, y: y(fromM), width: columnWidth, height: y(toM) - y(fromM) };
    return [
      hatch === undefined
        ? rectangle(box, { fill: white })
        : hatched(corners(box), hatch, undefined, white),
      rectangle(box, { stroke: solid('thin') }),
    ];
  });
  // What nobody logged stays white in a dashed edge.
  return [rectangle(whole, { stroke: dashed('thin'), fill: white }), ...layers];
}

/** Casing as a line down to its foot, with the screens as slotted boxes on it. */
function drawCasing({ well }: StandingWell, left: PaperMm, y: DepthY): Item[] {
  const middle = left + stripWidth / 2;
  const casing =
    well.casedM === undefined
      ? []
      : [line([middle, y(0)], [middle, y(well.casedM)], solid('medium'))];
  const screens = well.screens.flatMap(({ fromM, toM }): Item[] => {
    const [top, foot] = [y(fromM), y(toM)];
    const slots = Math.floor((foot - top) / slotPitch);
    return [
      rectangle(
        { x: left, y: top, width: stripWidth, height: foot - top },
        { stroke: solid('narrow'), fill: white },
      ),
      ...Array.from({ length: slots }, (_, at) => top + (at + 0.5) * ((foot - top) / slots)).map(
        (at) => line([left, at], [left + stripWidth, at], solid('thin')),
      ),
    ];
  });
  return [...casing, ...screens];
}

/** Room over the ground for number and village, written upwards. */
export const nameHeight: PaperMm = 36;

function drawName(kit: BinderKit, { well }: StandingWell, x: PaperMm, y: PaperMm): Item[] {
  const bold = { face: 'bold', turn: -90, widest: nameHeight - 4 } as const;
  const village = fitted(kit, sayVillage(kit, well.village), nameHeight - 4);
  return [
    ...letter(kit, sayNumber(kit, well), x - 0.4, y - 3, bold),
    ...letter(kit, village, x + letterings.small + 0.8, y - 3, { turn: -90 }),
  ];
}

/** A well at its place: ground, layers, casing, screens and rest level, all to the scale down. */
export function drawColumn(
  kit: BinderKit,
  frame: SectionFrame,
  standing: StandingWell,
  middle: PaperMm,
): Item {
  const { well, groundM, assumed } = standing;
  const y: DepthY = (depthM) => yAt(frame, groundM - depthM);
  const left = middle - columnWidth / 2;
  const ground = y(0);
  const rest = well.restM === undefined ? [] : levelSign([left - 1.6, y(well.restM)], false);
  return group('sectionColumn', [
    ...drawLayers(standing, left, y),
    ...drawCasing(standing, left + columnWidth + 0.6, y),
    ...rest,
    line(
      [left - 2, ground],
      [left + columnWidth + 2, ground],
      assumed ? dashed('wide') : solid('wide'),
    ),
    ...drawName(kit, standing, middle, ground),
  ]);
}
