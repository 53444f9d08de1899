import type { RecordPath } from '../../../base/recordPath.ts';
import type { DepthM, PaperMm } from '../../../base/units.ts';
import type { Range } from '../../../model/range.ts';
import { intervalsOf } from '../../../model/strata.ts';
import type { SampleModel, Stratum, WellModel } from '../../../model/wellModel.ts';
import type { GroundSample } from '../../../record/samples.ts';
import type { Item } from '../../items.ts';
import type { Kit } from '../../kit.ts';
import { letter, widthOf } from '../../letters.ts';
import { black, letterings } from '../../pens.ts';
import { shows, yAt } from '../../scale.ts';
import { group, polygon, type Point } from '../../shapes.ts';
import { figureRoom, type View } from '../columns.ts';
import { labelsLeft } from './labelsLeft.ts';
import { saidOf } from './said.ts';

/** A sample by the depth that its sign stands at. */
export interface SampleMark {
  readonly depthM: DepthM;
  readonly source: RecordPath;
  /** What tells its bag from the others of the well. */
  readonly label?: string;
}

/** Half the height of a sample's sign. */
const signReach: PaperMm = 0.85;
/** Room of a sign with what is kept free beside it. */
const signRoom: PaperMm = 3;
const leastWidth: PaperMm = 4.2;
const usualWidth: PaperMm = 5;
const mostWidth: PaperMm = 11;
/** A label nearer to the one above it would run into it. */
const leastPitch: PaperMm = letterings.small * 1.4;

/** A sample: a small filled diamond. */
export function sampleSign([x, y]: Point, source?: string, r: PaperMm = signReach): Item {
  return polygon(
    [
      [x, y - r],
      [x + r, y],
      [x, y + r],
      [x - r, y],
    ],
    { fill: black, source },
  );
}

const middleOf = ({ fromM, toM }: Range): DepthM => (fromM + toM) / 2;

/** A stratum that is said to be sampled, though none of the samples listed came from it. */
export function sampledAsWhole(stratum: Stratum, samples: readonly SampleModel[]): boolean {
  const listed = samples.some(
    (one) => middleOf(one) >= stratum.fromM && middleOf(one) <= stratum.toM,
  );
  return !listed && intervalsOf(stratum).some(({ sampled }) => sampled);
}

/** A sample's place in the record's list, by its path. */
function indexOf({ path }: SampleModel): number {
  return Number(/\[(\d+)\]$/.exec(path)?.[1]);
}

/**
 * Samples at the middle of where they came from. Where the log alone says that a stratum was
 * sampled, at its middle: it does not say from which depth.
 */
export function sampleMarks(
  { strata, samples }: Pick<WellModel, 'strata' | 'samples'>,
  listed: readonly GroundSample[] = [],
): SampleMark[] {
  const whole = strata.filter((one) => sampledAsWhole(one, samples));
  const marks = [
    ...samples.map((one) => ({
      depthM: middleOf(one),
      source: one.path,
      label: listed[indexOf(one)]?.label,
    })),
    ...whole.map((one) => ({
      depthM: middleOf(one),
      source: `${one.path}.sampled`,
      label: saidOf(one, 'sampleLabel')?.value,
    })),
  ];
  const left = labelsLeft(marks.map(({ label }) => label?.trim() ?? ''));
  return marks.map(({ depthM, source }, at) => {
    const label = left[at]!;
    return { depthM, source, ...(label !== '' && { label }) };
  });
}

/** Signs that follow each other closely are smaller, so that each can be told apart. */
function reachOf(marks: readonly SampleMark[], view: View): PaperMm {
  const inOrder = marks.map(({ depthM }) => yAt(view.axis, depthM)).sort((a, b) => a - b);
  const pitches = inOrder.slice(1).map((y, at) => y - inOrder[at]!);
  return Math.max(0.3, Math.min(signReach, 0.45 * Math.min(...pitches, Infinity)));
}

/** Room for the sign, and for the longest label where that is short. */
export function samplesWidths(kit: Kit, marks: readonly SampleMark[]) {
  const longest = Math.max(0, ...marks.map(({ label = '' }) => widthOf(kit, label)));
  const labelled = signRoom + longest + 0.8;
  const wanted = longest === 0 || labelled > mostWidth ? usualWidth : labelled;
  return { least: leastWidth, wanted: Math.max(usualWidth, wanted) };
}

/** A sign for each sample, and the label of its bag beside it where there is room for it. */
export function drawSamples(kit: Kit, marks: readonly SampleMark[], view: View): Item {
  const { x, width } = view.columns.samples;
  const r = reachOf(marks, view);
  const seen = marks
    .filter(({ depthM }) => shows(view.axis, depthM, view.first))
    .sort((a, b) => a.depthM - b.depthM);
  const room = figureRoom(view);
  let free = view.body.y;
  const items = seen.flatMap(({ depthM, source, label = '' }) => {
    const y = yAt(view.axis, depthM);
    const middle = Math.min(room.foot, Math.max(room.top, y));
    const fits = widthOf(kit, label) <= width - signRoom && middle - leastPitch / 2 >= free;
    const words = label !== '' && fits;
    if (words) free = middle + leastPitch / 2;
    const look = { source } as const;
    return [
      sampleSign([x + (width < signRoom + 2.5 ? width / 2 : 1.6), y], source, r),
      ...(words ? letter(kit, label, x + signRoom, middle + letterings.small / 2, look) : []),
    ];
  });
  return group('samples', items);
}
