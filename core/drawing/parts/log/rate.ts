import type { RecordPath } from '../../../base/recordPath.ts';
import type { DepthM, PaperMm } from '../../../base/units.ts';
import type { Stratum } from '../../../model/wellModel.ts';
import { plainFigure } from '../../figures.ts';
import type { Item, Span } from '../../items.ts';
import type { Kit } from '../../kit.ts';
import { letter, widthOf } from '../../letters.ts';
import { letterings, solid } from '../../pens.ts';
import { axisBottom, shownMiddle, shownPart, yAt } from '../../scale.ts';
import { group, line, polyline, type Point } from '../../shapes.ts';
import type { View } from '../columns.ts';
import { saidOf } from './said.ts';

/** Drilling time over a range of depths, minutes for each metre. */
export interface RateStep {
  readonly fromM: DepthM;
  readonly toM: DepthM;
  readonly rate: number;
  readonly source: RecordPath;
}

/** Kept free at the right of the scale. */
const rightGap: PaperMm = 1.5;
const figureGap: PaperMm = 0.6;
/** A step lower than this has no figure of its own. */
const leastStep: PaperMm = letterings.small * 1.5;

/** What the log tells of the time that drilling took, by the first row of a stratum that tells. */
export function rateSteps(strata: readonly Stratum[]): RateStep[] {
  return strata.flatMap((stratum) => {
    const said = saidOf(stratum, 'minutesPerMetre');
    if (!said) return [];
    return [{ fromM: stratum.fromM, toM: stratum.toM, rate: said.value, source: said.source }];
  });
}

/** The next of 1, 2, 5, 10, 20 … at or above the largest rate. */
export function fullRate(steps: readonly RateStep[]): number {
  const most = Math.max(1, ...steps.map(({ rate }) => rate));
  const power = 10 ** Math.floor(Math.log10(most));
  return [1, 2, 5, 10].map((step) => step * power).find((step) => step >= most)!;
}

function figureOf(kit: Kit, rate: number): string {
  return plainFigure(kit, rate, rate < 10 ? 1 : 0);
}

/** Room for a figure on either side of a step in the middle. */
export function rateWidths(kit: Kit, steps: readonly RateStep[]) {
  const widest = Math.max(0, ...steps.map(({ rate }) => widthOf(kit, figureOf(kit, rate))));
  const wanted = 2 * (widest + 2 * figureGap) + rightGap;
  return { least: 9.6, wanted: Math.min(16, Math.max(11, wanted)) };
}

/** Where a rate stands across its column. */
function placer({ x, width }: Span, steps: readonly RateStep[]): (rate: number) => PaperMm {
  const full = fullRate(steps);
  return (rate) => x + (rate / full) * (width - rightGap);
}

/** The scale under the column's title: zero at the left, a round figure at the right. */
export function drawRateScale(
  kit: Kit,
  steps: readonly RateStep[],
  span: Span,
  y: PaperMm,
): Item[] {
  const full = fullRate(steps);
  return [
    ...letter(kit, '0', span.x + 0.4, y),
    ...letter(kit, String(full), placer(span, steps)(full) + 0.9, y, { anchor: 'end' }),
  ];
}

interface Seen {
  readonly step: RateStep;
  readonly at: PaperMm;
  readonly y: PaperMm;
  readonly foot: PaperMm;
  /** Where its figure stands, beside a break of the axis rather than in it. */
  readonly middle: PaperMm;
}

/** Steps whose neighbour has the same figure, as one with it. */
function joined(steps: readonly RateStep[]): RateStep[] {
  const all: RateStep[] = [];
  for (const step of steps) {
    const last = all.at(-1);
    const goesOn = last?.rate === step.rate && Math.abs(last.toM - step.fromM) < 1e-6;
    if (goesOn) all[all.length - 1] = { ...last, toM: step.toM };
    else all.push(step);
  }
  return all;
}

function seenOn(steps: readonly RateStep[], view: View): Seen[] {
  const at = placer(view.columns.rate, steps);
  return joined(steps).flatMap((step) => {
    const part = shownPart(view.axis, step.fromM, step.toM);
    if (!part) return [];
    const [y, foot] = [yAt(view.axis, part.fromM), yAt(view.axis, part.toM)];
    const middle = yAt(view.axis, shownMiddle(view.axis, part));
    return [{ step, at: at(step.rate), y, foot, middle }];
  });
}

/** One line through steps that follow each other; a gap where nobody took the time. */
function runsOf(seen: readonly Seen[]): Point[][] {
  const runs: Point[][] = [];
  seen.forEach(({ at, y, foot }, index) => {
    const points: Point[] = [
      [at, y],
      [at, foot],
    ];
    const follows = index > 0 && Math.abs(seen[index - 1]!.foot - y) < 1e-6;
    if (follows) runs.at(-1)!.push(...points);
    else runs.push(points);
  });
  return runs;
}

/** The figure of a step beside its line, on the side that has room; none where it is too low. */
function drawFigure(
  kit: Kit,
  { step, at, y, foot, middle }: Seen,
  { x, width }: Span,
  full: PaperMm,
): Item[] {
  if (foot - y < leastStep) return [];
  const text = figureOf(kit, step.rate);
  const wide = figureGap + widthOf(kit, text);
  const baseline = middle + letterings.small / 2;
  const look = { source: step.source } as const;
  const left = at - wide >= x + 0.3;
  const right = at + wide <= (left ? full - 0.3 : x + width - 0.3);
  if (right) return letter(kit, text, at + figureGap, baseline, look);
  return left ? letter(kit, text, at - figureGap, baseline, { ...look, anchor: 'end' }) : [];
}

/** Drilling time as a stepped line on its own scale, zero at the left, with its figures. */
export function drawRate(kit: Kit, steps: readonly RateStep[], view: View): Item {
  const span = view.columns.rate;
  const seen = seenOn(steps, view);
  const full = placer(span, steps)(fullRate(steps));
  const { axis } = view;
  const mark = { ...solid('hair'), dash: [0.3, 2.7] };
  return group('rate', [
    line([full, axis.top], [full, axisBottom(axis)], mark),
    ...runsOf(seen).map((run) => polyline(run, solid('medium'))),
    ...seen.flatMap((one) => drawFigure(kit, one, span, full)),
  ]);
}
