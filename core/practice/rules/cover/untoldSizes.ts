import { nestStrings } from '../../../model/column.ts';
import { cut, gapsIn } from '../../../model/range.ts';
import type { AnnulusZone, PieceModel, StringModel, WellModel } from '../../../model/wellModel.ts';
import type { Missing } from '../rule.ts';

function alongside({ pieces }: StringModel, { fromM, toM }: AnnulusZone): PieceModel[] {
  return pieces.filter(({ topM, bottomM }) => cut({ fromM, toM }, topM, bottomM));
}

function holeUntold({ bore }: WellModel, { fromM, toM }: AnnulusZone): Missing[] {
  return gapsIn(bore.sections, fromM, toM).map((gap) => ({
    what: 'boreDiameter',
    path: 'bore.sections',
    ...gap,
  }));
}

function outsideUntold(string: StringModel | undefined, zone: AnnulusZone): Missing[] {
  if (!string) return [];
  return alongside(string, zone)
    .filter(({ outsideMm }) => outsideMm === undefined)
    .map(({ path }) => ({ what: 'pipeDiameter', path: `${path}.outside` }));
}

function insideUntold(string: StringModel, zone: AnnulusZone): Missing[] {
  return alongside(string, zone)
    .filter(({ kind, insideMm }) => kind !== 'cap' && insideMm === undefined)
    .map(({ path }) => ({ what: 'pipeWall', path: `${path}.wall` }));
}

/**
 * The diameters for want of which the width and volume of a zone are not known; none where they
 * are, or where diameters contradict each other, which the model says.
 */
export function untoldSizes(model: WellModel, zone: AnnulusZone): Missing[] {
  if (zone.litres !== undefined) return [];
  const nested = nestStrings(model.strings);
  const at = nested.findIndex(({ index }) => index === (zone.around ?? zone.inside));
  const outer =
    zone.inside === undefined ? nested.slice(0, Math.max(at, 0)) : nested.slice(at, at + 1);
  const own = zone.inside === undefined ? nested[at] : undefined;
  const all = [
    ...(zone.inside === undefined ? holeUntold(model, zone) : []),
    ...outsideUntold(own, zone),
    ...outer.flatMap((string) => insideUntold(string, zone)),
  ];
  return all.filter(({ path }, first) => all.findIndex((one) => one.path === path) === first);
}
