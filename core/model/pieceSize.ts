import type { Finding } from '../base/finding.ts';
import type { RecordPath } from '../base/recordPath.ts';
import type { Metres } from '../base/units.ts';
import type { Component } from '../record/strings.ts';
import { positive, resolveDiameters, type Diameters, type Named } from './diameters.ts';
import { found, type Resolved } from './findings.ts';
import { roundDepth } from './range.ts';

/** More alike pieces than any well holds: a slip of the pen that must not fill the memory. */
const mostAlike = 500;

/** A component with its measures read; those that are not known are absent. */
export interface SizedComponent extends Diameters {
  readonly component: Component;
  readonly path: RecordPath;
  readonly count: number;
  /** 0 where it was not recorded. */
  readonly lengthM: Metres;
  readonly insertionM: Metres;
}

/** What is missing in a component's own measures, or impossible. */
function checkComponent(
  { kind, count, length }: Component,
  { outsideMm, upperOutsideMm }: Diameters,
  path: RecordPath,
  named: Named,
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
  if (kind === 'reducer' && outsideMm !== undefined && upperOutsideMm === undefined)
    findings.push(found('string.reducerOneSize', `${path}.upperOutside`, { string: named.string }));
  return findings;
}

/** Reads the measures of one component of a tally. */
export function sizeComponent(
  component: Component,
  path: RecordPath,
  string: string | number,
): Resolved<SizedComponent> {
  const named = { string, piece: component.kind };
  const diameters = resolveDiameters(component, path, named);
  const count = Math.floor(component.count ?? 1);
  return {
    value: {
      component,
      path,
      count: count > 0 ? Math.min(count, mostAlike) : 0,
      lengthM: Math.max(roundDepth(positive(component.length) ?? 0), 0),
      insertionM: Math.max(roundDepth(positive(component.insertion) ?? 0), 0),
      ...diameters.value,
    },
    findings: [...diameters.findings, ...checkComponent(component, diameters.value, path, named)],
  };
}
