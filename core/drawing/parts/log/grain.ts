import type { RecordPath } from '../../../base/recordPath.ts';
import type { DepthM, PaperMm } from '../../../base/units.ts';
import type { Stratum } from '../../../model/wellModel.ts';
import type { Item, Span } from '../../items.ts';
import type { Kit } from '../../kit.ts';
import { baseline, letter } from '../../letters.ts';
import { lineHeight, solid, white } from '../../pens.ts';
import { axisBottom, shownPart, yAt } from '../../scale.ts';
import { group, line, rectangle } from '../../shapes.ts';
import type { View } from '../columns.ts';
import { coarseness, grainLetters } from './grainClasses.ts';

/** Letters of neighbouring classes stand in two rows, so that a class may be narrower than its own. */
export const grainWidths = { least: 11, wanted: 14 } as const;

/** Kept free at both sides, so that letters do not stand on the rules. */
const leftGap: PaperMm = 0.7;
const rightGap: PaperMm = 0.8;

/** How coarse the ground is over a range of depths, in classes. */
export interface GrainStep {
  readonly fromM: DepthM;
  readonly toM: DepthM;
  readonly classes: number;
  readonly source: RecordPath;
}

/** The grain of each stratum by the first row that tells it; none where the name tells no grain. */
export function grainSteps(strata: readonly Stratum[]): GrainStep[] {
  return strata.flatMap(({ fromM, toM, interval, path, others }) => {
    const rows = [{ interval, path }, ...others];
    const told = rows.map((row) => ({ classes: coarseness(row.interval), path: row.path }));
    const first = told.find(({ classes }) => classes !== undefined);
    if (first?.classes === undefined) return [];
    return [{ fromM, toM, classes: first.classes, source: `${first.path}.grain` }];
  });
}

function classWidth({ width }: Span): PaperMm {
  return (width - leftGap - rightGap) / grainLetters.length;
}

/** The classes' letters in two rows over the column, each over the middle of its class. */
export function drawGrainLetters(kit: Kit, span: Span, top: PaperMm): Item[] {
  const each = classWidth(span);
  return grainLetters.flatMap((letters, at) => {
    const y = top + (at % 2) * (lineHeight('small') - 0.25) + baseline('small');
    return letter(kit, letters, span.x + leftGap + (at + 0.5) * each, y, { anchor: 'middle' });
  });
}

/** Where the classes part, as hair lines, so that a step can be read far from the head. */
function drawParting(span: Span, { axis }: View): Item[] {
  const each = classWidth(span);
  return grainLetters.slice(1).map((_, at) => {
    const x = span.x + leftGap + (at + 1) * each;
    return line([x, axis.top], [x, axisBottom(axis)], { ...solid('hair'), dash: [0.3, 2.7] });
  });
}

/** The profile of grain sizes: the coarser the ground, the farther its step reaches to the right. */
export function drawGrain(_kit: Kit, steps: readonly GrainStep[], view: View): Item {
  const span = view.columns.grain;
  const each = classWidth(span);
  const boxes = steps.flatMap(({ fromM, toM, classes, source }) => {
    const part = shownPart(view.axis, fromM, toM);
    if (!part) return [];
    const [y, foot] = [yAt(view.axis, part.fromM), yAt(view.axis, part.toM)];
    const box = { x: span.x, y, width: leftGap + classes * each, height: foot - y };
    return [rectangle(box, { fill: white, stroke: solid('narrow'), source })];
  });
  return group('grain', [...drawParting(span, view), ...boxes]);
}
