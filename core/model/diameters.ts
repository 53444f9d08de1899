import type { Finding } from '../base/finding.ts';
import { known } from '../base/known.ts';
import type { RecordPath } from '../base/recordPath.ts';
import type { Millimetres } from '../base/units.ts';
import type { Component } from '../record/strings.ts';
import { found, type Resolved } from './findings.ts';

/** A component's diameters and wall; those that nothing tells are absent. */
export interface Diameters {
  /** At the lower end. */
  readonly outsideMm?: Millimetres;
  readonly upperOutsideMm?: Millimetres;
  readonly wallMm?: Millimetres;
  /** The narrowest inside. */
  readonly insideMm?: Millimetres;
}

/** Which piece of which string a finding speaks of. */
export interface Named {
  readonly string: string | number;
  readonly piece: string;
}

/** Millimetres: outside, wall and inside as printed on a pipe are each rounded. */
const roundingMm = 1;

/** A measure as far as it is one; 0 and less stand for nothing. */
export function positive(value: number | undefined): number | undefined {
  return value !== undefined && value > 0 && Number.isFinite(value) ? value : undefined;
}

/** Sums of measures, without the noise of binary fractions. */
function tidy(mm: Millimetres): Millimetres {
  return Math.round(mm * 1e6) / 1e6;
}

interface Written {
  readonly outside: Millimetres | undefined;
  readonly upper: Millimetres | undefined;
  readonly wall: Millimetres | undefined;
  readonly inside: Millimetres | undefined;
}

function writtenOf(component: Component): Written {
  return {
    outside: positive(component.outside),
    upper: component.kind === 'reducer' ? positive(component.upperOutside) : undefined,
    wall: positive(component.wall),
    inside: positive(component.inside),
  };
}

/** The narrower end of a reducer, the one outside of any other piece. */
function narrowestOf({ outside, upper }: Written): Millimetres | undefined {
  return outside === undefined ? undefined : Math.min(outside, upper ?? outside);
}

/** A pipe is its inside and twice its wall wide; which end of a reducer that is nobody knows. */
function outsideOf(component: Component, { outside, wall, inside }: Written) {
  if (outside !== undefined || wall === undefined || inside === undefined) return outside;
  return component.kind === 'reducer' ? undefined : positive(tidy(inside + 2 * wall));
}

/** The inside as recorded, else what the wall leaves of the outside. */
function insideOf(written: Written): Millimetres | undefined {
  const { wall, inside } = written;
  const narrowest = narrowestOf(written);
  if (inside !== undefined && !(narrowest !== undefined && inside >= narrowest)) return inside;
  if (narrowest === undefined || wall === undefined) return undefined;
  return positive(tidy(narrowest - 2 * wall));
}

/** What of a component's own diameters cannot be true together. */
function checkDiameters(written: Written, path: RecordPath, named: Named): Finding[] {
  const { wall: wallMm, inside: insideMm } = written;
  const outsideMm = narrowestOf(written);
  if (outsideMm === undefined) return [];
  if (insideMm !== undefined && insideMm >= outsideMm)
    return [found('string.insideTooWide', `${path}.inside`, { ...named, insideMm, outsideMm })];
  if (wallMm === undefined) return [];
  if (2 * wallMm >= outsideMm)
    return [found('string.wallTooThick', `${path}.wall`, { ...named, wallMm, outsideMm })];
  if (insideMm === undefined || Math.abs(outsideMm - 2 * wallMm - insideMm) <= roundingMm)
    return [];
  const values = { ...named, outsideMm, wallMm, insideMm };
  return [found('string.sizesDisagree', `${path}.inside`, values)];
}

/**
 * Outside, wall and inside of a component: as recorded, and the third where two are. An inside
 * that contradicts the other two holds, since it was measured or published as such; one that is
 * no narrower than the outside is passed over.
 */
export function resolveDiameters(
  component: Component,
  path: RecordPath,
  named: Named,
): Resolved<Diameters> {
  const written = writtenOf(component);
  const outsideMm = outsideOf(component, written);
  const upperOutsideMm = component.kind === 'reducer' ? written.upper : outsideMm;
  const insideMm = insideOf(written);
  const narrowest = narrowestOf(written);
  const between = narrowest !== undefined && insideMm !== undefined ? narrowest - insideMm : 0;
  const wallMm = written.wall ?? positive(tidy(between / 2));
  return {
    value: known({ outsideMm, upperOutsideMm, wallMm, insideMm }),
    findings: checkDiameters(written, path, named),
  };
}
