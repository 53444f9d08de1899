import type { Finding, Severity } from '../../../core/base/finding.ts';
import type { PaperMm } from '../../../core/base/units.ts';
import type { PageAxis } from '../../../core/drawing/items.ts';
import { spread } from '../../../core/drawing/labels/spread.ts';
import { yOf } from '../../../core/drawing/scale.ts';
import { isOn } from '../hands/place.ts';

/** A finding's mark beside the depth that it speaks of, in millimetres of paper. */
export interface Mark {
  readonly finding: Finding;
  /** Its sign's middle. */
  readonly x: PaperMm;
  readonly y: PaperMm;
  readonly size: PaperMm;
  /** The stretch of depth that it speaks of; of no height where it is one depth. */
  readonly bracket: { readonly x: PaperMm; readonly top: PaperMm; readonly foot: PaperMm };
}

/** Distance of brackets from the frame and from each other. */
const bracketPitch: PaperMm = 1.2;
/** Brackets side by side; further ones share the last column. */
const mostBrackets = 3;
/** What a sign keeps free round itself. */
const air: PaperMm = 0.6;

const order: Readonly<Record<Severity, number>> = { error: 0, warning: 1, note: 2 };

interface Stretch {
  readonly finding: Finding;
  readonly top: PaperMm;
  readonly foot: PaperMm;
}

/** The findings that speak of a depth which the view shows, the shallowest first. */
function stretchesOn(axis: PageAxis, findings: readonly Finding[]): Stretch[] {
  return findings
    .flatMap((finding) => {
      const { fromM, toM = fromM } = finding;
      if (fromM === undefined || toM === undefined) return [];
      const [topM, footM] = [Math.min(fromM, toM), Math.max(fromM, toM)];
      const seen = footM > axis.fromM && topM < axis.toM;
      if (!seen && !isOn(axis, topM)) return [];
      const top = yOf(axis, Math.max(topM, axis.fromM));
      return [{ finding, top, foot: yOf(axis, Math.min(footM, axis.toM)) }];
    })
    .sort(
      (a, b) =>
        a.top + a.foot - b.top - b.foot || order[a.finding.severity] - order[b.finding.severity],
    );
}

/** Brackets that would lie on each other go into columns, as far as there are any. */
function columnsOf(stretches: readonly Stretch[]): number[] {
  const feet: PaperMm[] = [];
  return stretches.map(({ top, foot }) => {
    const free = feet.findIndex((used) => used < top);
    const column = free >= 0 ? free : Math.min(feet.length, mostBrackets - 1);
    feet[column] = Math.max(feet[column] ?? 0, foot);
    return column;
  });
}

/**
 * The marks left of a view, in the margin of the page: brackets along their depths, signs spread
 * so that none hides another. Signs that are too many for the page shrink.
 */
export function layMarks(axis: PageAxis, findings: readonly Finding[], sizeMm: PaperMm): Mark[] {
  const stretches = stretchesOn(axis, findings);
  const { box } = axis;
  const pitch = Math.min(sizeMm + air, box.height / Math.max(1, stretches.length));
  const wanted = stretches.map(({ top, foot }) => ({ middle: (top + foot) / 2, height: pitch }));
  const tops =
    spread(wanted, box.y, box.y + box.height) ?? wanted.map((_, at) => box.y + at * pitch);
  const columns = columnsOf(stretches);
  const used = Math.max(0, ...columns) + 1;
  const size = Math.min(sizeMm, pitch * 0.94);
  return stretches.map(({ finding, top, foot }, at) => ({
    finding,
    x: box.x - (used + 1) * bracketPitch - size / 2,
    y: (tops[at] ?? box.y) + pitch / 2,
    size,
    bracket: { x: box.x - ((columns[at] ?? 0) + 1) * bracketPitch, top, foot },
  }));
}
