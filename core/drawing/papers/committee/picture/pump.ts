import type { PaperMm } from '../../../../base/units.ts';
import type { PumpKind } from '../../../../record/headworks.ts';
import type { Item } from '../../../items.ts';
import { black, white } from '../../../pens.ts';
import { drawPictogram, type PictogramId } from '../../../pictograms/pictogram.ts';
import { circle, group, line, rectangle } from '../../../shapes.ts';
import type { WellFacts } from '../facts.ts';
import { pen, type PictureFrame } from './frame.ts';

/** What stands on the pad, by the kind of pump. */
const heads: Readonly<Record<PumpKind, PictogramId>> = {
  ropeAndWasher: 'wheelHead',
  directAction: 'tHead',
  deepwellLever: 'leverHead',
  extraDeepLever: 'leverHead',
  suction: 'leverHead',
  electricSubmersible: 'motorHead',
  solarSubmersible: 'motorHead',
  bucketAndWindlass: 'windlassHead',
  other: 'plainHead',
};

/** The pictogram of a pump; a capped pipe where its kind is not known. */
export function headOf(kind: PumpKind | undefined): PictogramId {
  return kind === undefined ? 'plainHead' : heads[kind];
}

const padThickness: PaperMm = 2.6;
const headSide: PaperMm = 24;

/** Rope up and down with its washers. */
function rope({ middle, ground }: PictureFrame, foot: PaperMm): Item[] {
  const count = Math.max(0, Math.floor((foot - ground - 3) / 5));
  const washers = Array.from({ length: count }, (_, at) => ground + 3 + at * 5);
  return [
    line([middle - 1.5, ground], [middle - 1.5, foot], pen(0.6)),
    line([middle + 1.5, ground], [middle + 1.5, foot], pen(0.6)),
    ...washers.map((y) => line([middle + 0.5, y], [middle + 2.5, y], pen(0.9))),
    circle([middle, foot], 1.7, { stroke: pen(0.6), fill: white }),
  ];
}

/** What hangs in the well, down to the intake. */
function hanging(frame: PictureFrame, { kind, intakeM, rest }: WellFacts): Item[] {
  const { middle, ground, yAt } = frame;
  if (kind === 'bucketAndWindlass') {
    const top = yAt(rest?.m ?? 0);
    return rest === undefined
      ? []
      : [
          line([middle, ground], [middle, top - 2], pen(0.6)),
          rectangle(
            { x: middle - 1.8, y: top - 2, width: 3.6, height: 6 },
            {
              stroke: pen(0.6),
              fill: white,
            },
          ),
        ];
  }
  if (intakeM === undefined) return [];
  const foot = yAt(intakeM);
  if (kind === 'ropeAndWasher') return rope(frame, foot - 1.7);
  const body = Math.min(6, Math.max(2, (foot - ground) / 3));
  return [
    line([middle, ground], [middle, foot - body], pen(1)),
    rectangle({ x: middle - 1.9, y: foot - body, width: 3.8, height: body }, { fill: black }),
  ];
}

/** The pump on its pad, the bucket under its spout, and what hangs in the well. */
export function drawPump(frame: PictureFrame, facts: WellFacts, onPad: boolean): Item {
  const { middle, ground } = frame;
  const head = headOf(facts.kind);
  const top = onPad ? ground - padThickness : ground;
  const pad = { x: middle - 16, y: top, width: 30, height: padThickness };
  return group(
    'pump',
    [
      ...hanging(frame, facts),
      drawPictogram(head, { x: middle - headSide / 2, y: top - headSide + 0.7, side: headSide }),
      ...(head === 'plainHead' || head === 'windlassHead'
        ? []
        : [drawPictogram('bucket', { x: middle - 12, y: top - 6, side: 7 })]),
      ...(onPad ? [rectangle(pad, { stroke: pen(0.7), fill: white })] : []),
    ],
    { source: 'pump.kind' },
  );
}
