import type { Finding } from '../base/finding.ts';
import { known } from '../base/known.ts';
import type { RecordPath } from '../base/recordPath.ts';
import type { Metres, Millimetres } from '../base/units.ts';
import type { Component } from '../record/strings.ts';
import { found, type Resolved } from './findings.ts';
import { roundDepth } from './range.ts';

/** More alike pieces than any well holds: a slip of the pen that must not fill the memory. */
export const mostAlike = 500;

/** A component with its measures read; those that are not known are absent. */
export interface SizedComponent {
  readonly component: Component;
  readonly path: RecordPath;
  readonly count: number;
  /** 0 where it was not recorded. */
  readonly lengthM: Metres;
  readonly insertionM: Metres;
  readonly outsideMm?: Millimetres;
  readonly upperOutsideMm?: Millimetres;
  readonly wallMm?: Millimetres;
  /** The narrowest inside. */
  readonly insideMm?: Millimetres;
}

function positive(value: number | undefined): number | undefined {
  return value !== undefined && value > 0 && Number.isFinite(value) ? value : undefined;
}

function upperOutside(component: Component, outsideMm: number | undefined): number | undefined {
  return component.kind === 'reducer' ? positive(component.upperOutside) : outsideMm;
}

function sizesOf(component: Component) {
  const outsideMm = positive(component.outside);
  const upperOutsideMm = upperOutside(component, outsideMm);
  const wallMm = positive(component.wall);
  const narrowest = Math.min(outsideMm ?? Infinity, upperOutsideMm ?? Infinity);
  const insideMm =
    outsideMm === undefined || wallMm === undefined ? undefined : narrowest - 2 * wallMm;
  return known({ outsideMm, upperOutsideMm, wallMm, insideMm: positive(insideMm) });
}

type Sizes = ReturnType<typeof sizesOf>;

/** What is missing or impossible in a component's own measures. */
function checkComponent(
  { kind, count, length }: Component,
  { outsideMm, upperOutsideMm, wallMm, insideMm }: Sizes,
  path: RecordPath,
  named: { string: string | number; piece: string },
): Finding[] {
  const findings: Finding[] = [];
  if ((count ?? 1) > mostAlike)
    findings.push(
      found('string.countTooHigh', `${path}.count`, {
        ...named,
        count: count ?? 1,
        most: mostAlike,
      }),
    );
  // A cap's length adds nothing that a tape would show.
  if (kind !== 'cap' && positive(length) === undefined)
    findings.push(found('string.noLength', `${path}.length`, named));
  if ((kind !== 'cap' || positive(length) !== undefined) && outsideMm === undefined)
    findings.push(found('string.noDiameter', `${path}.outside`, named));
  if (kind === 'reducer' && outsideMm !== undefined && upperOutsideMm === undefined)
    findings.push(found('string.reducerOneSize', `${path}.upperOutside`, { string: named.string }));
  if (kind !== 'cap' && wallMm === undefined)
    findings.push(found('string.noWall', `${path}.wall`, named));
  if (outsideMm !== undefined && wallMm !== undefined && insideMm === undefined)
    findings.push(found('string.wallTooThick', `${path}.wall`, { ...named, wallMm, outsideMm }));
  return findings;
}

/** Reads the measures of one component of a tally. */
export function sizeComponent(
  component: Component,
  path: RecordPath,
  string: string | number,
): Resolved<SizedComponent> {
  const sizes = sizesOf(component);
  const count = Math.floor(component.count ?? 1);
  return {
    value: {
      component,
      path,
      count: count > 0 ? Math.min(count, mostAlike) : 0,
      lengthM: Math.max(roundDepth(positive(component.length) ?? 0), 0),
      insertionM: Math.max(roundDepth(positive(component.insertion) ?? 0), 0),
      ...sizes,
    },
    findings: checkComponent(component, sizes, path, { string, piece: component.kind }),
  };
}
