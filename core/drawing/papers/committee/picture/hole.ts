import type { PaperMm } from '../../../../base/units.ts';
import type { AnnulusZone, WellModel } from '../../../../model/wellModel.ts';
import type { FillKind } from '../../../../record/annulus.ts';
import type { Item } from '../../../items.ts';
import { black, white } from '../../../pens.ts';
import { circle, group, line, polyline, rectangle } from '../../../shapes.ts';
import type { WellFacts } from '../facts.ts';
import { halfHole, halfPipe, pen, type PictureFrame } from './frame.ts';

export const gravelKinds: readonly FillKind[] = ['gravelPack', 'formationStabiliser'];
export const sealKinds: readonly FillKind[] = ['claySeal', 'bentonite', 'cementGrout', 'concrete'];

export function isOf(kinds: readonly FillKind[], { fill }: AnnulusZone): boolean {
  return kinds.some((one) => one === fill);
}

/** Grains side by side between hole and pipe. */
function gravel({ middle, yAt }: PictureFrame, zone: AnnulusZone): Item[] {
  const [top, foot] = [yAt(zone.fromM), yAt(zone.toM)];
  const rows = Math.max(1, Math.floor((foot - top) / 1.7));
  return Array.from({ length: rows }, (_, row) => row).flatMap((row) =>
    [-1, 1].flatMap((side) =>
      [0.28, 0.74].map((share) => {
        const across = halfPipe + share * (halfHole - halfPipe) + (row % 2 === 0 ? 0 : 0.25);
        return circle([middle + side * across, top + 0.85 + row * 1.7], 0.62, {
          stroke: pen(0.25),
          fill: white,
        });
      }),
    ),
  );
}

function seal({ middle, yAt }: PictureFrame, zone: AnnulusZone, within: PaperMm): Item[] {
  const y = yAt(zone.fromM);
  const height = Math.max(0.8, yAt(zone.toM) - y);
  const width = halfHole - within;
  return [middle - halfHole, middle + within].map((x) =>
    rectangle({ x, y, width, height }, { fill: black }),
  );
}

/** Slots through both walls where water comes in. */
function slots({ middle, yAt }: PictureFrame, { strings }: WellModel): Item[] {
  const screens = strings.flatMap(({ pieces }) => pieces.filter(({ kind }) => kind === 'screen'));
  return screens.flatMap(({ topM, bottomM }) => {
    const [top, foot] = [yAt(topM), yAt(bottomM)];
    const count = Math.max(1, Math.floor((foot - top) / 1.6));
    return Array.from({ length: count }, (_, at) => top + 0.8 + at * 1.6).flatMap((y) =>
      [-1, 1].map((side) =>
        line([middle + side * (halfPipe - 0.9), y], [middle + side * (halfPipe + 0.9), y], {
          ...pen(0.5),
          ink: white,
          cap: 'butt',
        }),
      ),
    );
  });
}

/** Waves from side to side at a level. */
function wave(middle: PaperMm, half: PaperMm, y: PaperMm, width: PaperMm): Item {
  const step = half / 2;
  const points = [0, 1, 2, 3].map((at) => middle - half + at * step);
  return {
    kind: 'path',
    segments: [
      ['M', middle - half, y],
      ...points.map(
        (x, at) =>
          [
            'C',
            x + step / 3,
            y + (at % 2 === 0 ? -0.8 : 0.8),
            x + (2 * step) / 3,
            y + (at % 2 === 0 ? -0.8 : 0.8),
            x + step,
            y,
          ] as const,
      ),
    ],
    stroke: pen(width),
  };
}

/** Water in the pipe from its rest level down, and the level in the ground around. */
function water({ middle, yAt, foot }: PictureFrame, { rest }: WellFacts, inside: PaperMm): Item[] {
  if (!rest) return [];
  const top = yAt(rest.m);
  const rows = Math.floor((foot - top - 2) / 3.4);
  const dash = { ...pen(0.5), dash: [2, 1.6] };
  const level = [-1, 1].map((side) =>
    line([middle + side * (halfHole + 1), top], [middle + side * (halfHole + 3.6), top], dash),
  );
  return [
    wave(middle, inside - 0.6, top, 0.9),
    ...Array.from({ length: Math.max(0, rows) }, (_, at) =>
      wave(middle, inside - 1.2, top + 3 + at * 3.4, 0.35),
    ),
    ...level,
  ];
}

/** The hole with its pipe, what is filled in round it, and the water in it. */
export function drawHole(frame: PictureFrame, model: WellModel, facts: WellFacts): Item {
  const { middle, ground, foot, yAt } = frame;
  const cased = model.strings.length > 0;
  const pipeFoot = cased ? yAt(Math.max(...model.strings.map(({ bottomM }) => bottomM))) : foot;
  const wall = (half: PaperMm, end: PaperMm, width: PaperMm) =>
    polyline(
      [
        [middle - half, ground],
        [middle - half, end],
        [middle + half, end],
        [middle + half, ground],
      ],
      pen(width),
    );
  const zones = model.annulus;
  const inside = cased ? halfPipe : halfHole;
  return group('hole', [
    rectangle(
      { x: middle - halfHole, y: ground, width: 2 * halfHole, height: foot - ground },
      {
        fill: white,
      },
    ),
    wall(halfHole, foot, 0.5),
    ...(cased ? zones.filter((one) => isOf(gravelKinds, one)) : []).flatMap((one) =>
      gravel(frame, one),
    ),
    ...zones
      .filter((one) => isOf(sealKinds, one))
      .flatMap((one) => seal(frame, one, cased ? halfPipe : 0)),
    ...water(frame, facts, inside),
    ...(cased ? [wall(halfPipe, pipeFoot, 1), ...slots(frame, model)] : []),
  ]);
}
