import type { DepthM } from '../../base/units.ts';
import type { Component } from '../../record/strings.ts';

export interface Range {
  readonly from: DepthM;
  readonly to: DepthM;
}

/** Depths that differ by less are the same: no tape reads finer than a millimetre. */
const sameDepthM = 0.001;

/** Whether two ranges begin and end at the same depths, to the millimetre. */
export function isSameRange(a: Range, b: Range): boolean {
  return Math.abs(a.from - b.from) < sameDepthM && Math.abs(a.to - b.to) < sameDepthM;
}

/** Lengths of a string in which screens follow one another without a break, from the top down. */
export function screenRuns(
  pieces: readonly (Range & { readonly component: Component })[],
): readonly Range[] {
  const runs: Range[] = [];
  for (const { from, to, component } of pieces) {
    if (component.kind !== 'screen') continue;
    const last = runs.at(-1);
    if (last && Math.abs(last.to - from) < sameDepthM) runs.splice(-1, 1, { from: last.from, to });
    else runs.push({ from, to });
  }
  return runs;
}
