import type { Metres, PaperMm } from '../../../base/units.ts';
import type { Box } from '../../items.ts';
import { spread } from '../../labels/spread.ts';
import { depthScales, paperLength } from '../../scale.ts';
import type { BinderWell } from '../binderWell.ts';
import type { StandingWell } from './sectionLine.ts';

/** Room that a column takes with its screens, level and neighbours' gap. */
export const columnPitch: PaperMm = 13;
export const columnWidth: PaperMm = 6;

/** How a page of a section is drawn to scale. */
export interface SectionFrame {
  readonly box: Box;
  /** 200 for 1 : 200, both ways. */
  readonly downScale: number;
  readonly acrossScale: number;
  readonly topM: Metres;
  readonly fromM: Metres;
  /** Middle of each column, in the order of the wells. */
  readonly middles: readonly PaperMm[];
}

/** Depth to which a well is known. */
export function footOf({ drilledM, casedM, layers }: BinderWell): Metres {
  return Math.max(0.5, drilledM ?? 0, casedM ?? 0, ...layers.map(({ toM }) => toM));
}

const digits = [1, 1.25, 1.5, 2, 2.5, 3, 4, 5, 6, 7.5, 10];

/** The next scale as maps have them, at or above a figure. */
function roundScale(least: number): number {
  const power = 10 ** Math.floor(Math.log10(least));
  return digits.find((one) => one * power >= least * (1 - 1e-9))! * power;
}

const leastAcross = 100;

export function yAt({ box, downScale, topM }: SectionFrame, elevationM: Metres): PaperMm {
  return box.y + paperLength(topM - elevationM, downScale);
}

/** True place along the line, where the columns' own places give way to their width. */
export function xAt({ box, acrossScale, fromM }: SectionFrame, alongM: Metres): PaperMm {
  return box.x + columnPitch / 2 + paperLength(alongM - fromM, acrossScale);
}

/** The largest usual scales at which some wells stand in a box. */
export function sectionFrame(wells: readonly StandingWell[], box: Box): SectionFrame {
  const topM = Math.max(...wells.map(({ groundM }) => groundM));
  const footM = Math.min(...wells.map(({ groundM, well }) => groundM - footOf(well)));
  const along = wells.map(({ alongM }) => alongM);
  const [fromM, toM] = [Math.min(...along), Math.max(...along)];
  const least = ((topM - footM) * 1000) / box.height;
  const downScale = depthScales.find((one) => one >= least) ?? roundScale(least);
  const room = box.width - columnPitch;
  const acrossScale = roundScale(Math.max(leastAcross, ((toM - fromM) * 1000) / room));
  const bare = { box, downScale, acrossScale, topM, fromM, middles: [] };
  const order = wells.map((_, at) => at).sort((a, b) => along[a]! - along[b]!);
  const wanted = order.map((at) => ({ middle: xAt(bare, along[at]!), height: columnPitch }));
  const tops = spread(wanted, box.x, box.x + box.width)!;
  const middles = wells.map((_, at) => tops[order.indexOf(at)]! + columnPitch / 2);
  return { ...bare, middles };
}
