import type { RecordPath } from '../../../../base/recordPath.ts';
import type { DepthM, PaperMm } from '../../../../base/units.ts';
import type { WellModel } from '../../../../model/wellModel.ts';
import { plainFigure } from '../../../figures.ts';
import type { Item } from '../../../items.ts';
import { spread } from '../../../labels/spread.ts';
import { bound, widthOf } from '../../../letters.ts';
import { black } from '../../../pens.ts';
import { circle, group, polyline } from '../../../shapes.ts';
import type { CommitteeKit } from '../committeeKit.ts';
import type { WellFacts } from '../facts.ts';
import { said } from '../text.ts';
import { halfHole, pen, type PictureFrame } from './frame.ts';
import { gravelKinds, isOf } from './hole.ts';

interface Label {
  readonly what: string;
  readonly depthM: DepthM;
  /** Whether the depth is said. */
  readonly tells: boolean;
  /** How far right of the middle the leader ends. */
  readonly across: PaperMm;
  readonly source?: RecordPath;
}

const labelHeight: PaperMm = 7.4;

function gravelLabel(kit: CommitteeKit, { annulus, strings }: WellModel): Label[] {
  const zone = annulus.find((one) => isOf(gravelKinds, one));
  if (!zone || strings.length === 0) return [];
  const label = { what: kit.own.picture.gravel, tells: false, across: halfHole - 1.6 } as const;
  const depthM = (zone.fromM + zone.toM) / 2;
  return [{ ...label, depthM, ...(zone.path !== undefined && { source: zone.path }) }];
}

function labelsOf(kit: CommitteeKit, model: WellModel, facts: WellFacts): Label[] {
  const { picture } = kit.own;
  const { rest, intakeM, depth, kind } = facts;
  const found: Label[] = gravelLabel(kit, model);
  if (rest) {
    const label = {
      what: picture.water,
      depthM: rest.m,
      tells: rest.m >= 0,
      across: halfHole + 2.4,
    };
    found.push({ ...label, source: rest.source });
  }
  if (intakeM !== undefined && kind !== 'bucketAndWindlass')
    found.push({
      what: picture.pump,
      depthM: intakeM,
      tells: true,
      across: 1.6,
      source: 'pump.intake',
    });
  if (depth)
    found.push({
      what: picture.foot,
      depthM: depth.m,
      tells: true,
      across: 0,
      source: depth.source,
    });
  return found.sort((a, b) => a.depthM - b.depthM);
}

function drawLabel(
  kit: CommitteeKit,
  { yAt, middle, x, width }: PictureFrame,
  { what, depthM, tells, across, source }: Label,
  y: PaperMm,
): Item {
  const from = yAt(depthM);
  const left = middle + halfHole + 8.4;
  const room = x + width - left;
  const word = said(kit, what, left, y + 1.3, { widest: room, source });
  const figure = tells ? `${plainFigure(kit, depthM, 1)}${bound}m` : '';
  const at = left + widthOf(kit, `${what} `, { lettering: 'plain' }) + 0.4;
  const look = { lettering: 'large', face: 'bold', source } as const;
  return group('pictureLabel', [
    polyline(
      [
        [middle + across, from],
        [middle + halfHole + 3.8, from],
        [left - 2.2, y],
        [left - 0.8, y],
      ],
      pen(0.35),
    ),
    circle([middle + across, from], 0.6, { fill: black }),
    ...word,
    ...said(kit, figure, at, y + 1.75, { ...look, widest: x + width - at }),
  ]);
}

/** What the parts of the picture are, with the depths that matter; none covers another. */
export function drawLabels(
  kit: CommitteeKit,
  model: WellModel,
  facts: WellFacts,
  frame: PictureFrame,
): Item[] {
  const labels = labelsOf(kit, model, facts);
  const wanted = labels.map(({ depthM }) => ({ middle: frame.yAt(depthM), height: labelHeight }));
  const tops = spread(wanted, frame.ground + 1.5, frame.y + frame.height);
  return (tops ?? []).map((top, at) => drawLabel(kit, frame, labels[at]!, top + labelHeight / 2));
}
