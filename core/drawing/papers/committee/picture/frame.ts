import type { DepthM, PaperMm } from '../../../../base/units.ts';
import type { WellModel } from '../../../../model/wellModel.ts';
import type { Stroke } from '../../../items.ts';
import { black } from '../../../pens.ts';
import type { WellFacts } from '../facts.ts';

/** Room over the ground for the pump, and under the bottom of the well. */
export const headRoom: PaperMm = 27;
const footRoom: PaperMm = 6;

/** Half widths of the hole and of the pipe in it, and where their middle stands. */
export const halfHole: PaperMm = 8;
export const halfPipe: PaperMm = 4.4;
const middleAt: PaperMm = 31;

/** Where things stand in the picture of a well: depths are true to each other, widths are not. */
export interface PictureFrame {
  readonly x: PaperMm;
  readonly y: PaperMm;
  readonly width: PaperMm;
  readonly height: PaperMm;
  /** The middle of the well across. */
  readonly middle: PaperMm;
  readonly ground: PaperMm;
  readonly foot: PaperMm;
  readonly yAt: (depthM: DepthM) => PaperMm;
}

/** Deepest that anything of the well lies; as deep as anything where nothing tells. */
function deepestM(model: WellModel, { depth, intakeM, rest }: WellFacts): DepthM {
  const told = [
    depth?.m,
    intakeM,
    rest?.m,
    ...model.strings.map(({ bottomM }) => bottomM),
    ...model.annulus.map(({ toM }) => toM),
  ].filter((one) => one !== undefined);
  return Math.max(1, ...told);
}

export function pictureFrame(
  model: WellModel,
  facts: WellFacts,
  box: Pick<PictureFrame, 'x' | 'y' | 'width' | 'height'>,
): PictureFrame {
  const ground = box.y + headRoom;
  const foot = box.y + box.height - footRoom;
  const perM = (foot - ground) / deepestM(model, facts);
  const yAt = (depthM: DepthM) => Math.min(foot, Math.max(ground, ground + depthM * perM));
  return { ...box, middle: box.x + middleAt, ground, foot, yAt };
}

export function pen(width: PaperMm): Stroke {
  return { ink: black, width, cap: 'round', join: 'round' };
}
