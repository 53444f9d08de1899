import type { PaperMm } from '../../../base/units.ts';
import { depthFigure, significantFigure } from '../../figures.ts';
import type { Piece } from '../../parts/flow/part.ts';
import { rowPiece, type Cell } from '../../parts/flow/pieces.ts';
import type { BinderContent, BinderKit, Places } from '../binder.ts';
import type { BinderWell, Outcome } from '../binderWell.ts';
import { districtsOf } from '../order.ts';
import { sayDistrict } from '../say.ts';
import { sumOf } from '../statistics.ts';
import { medianFigure } from './figures.ts';
import { linkedRow } from './linkedRow.ts';

const shares = [44, 12, 12, 12, 12, 20, 23, 22, 23] as const;

function outcomes(wells: readonly BinderWell[], outcome: Outcome): string {
  return String(wells.filter((well) => well.outcome === outcome).length);
}

function figuresOf(kit: BinderKit, wells: readonly BinderWell[]): string[] {
  const drilled = wells.map(({ drilledM }) => drilledM);
  return [
    String(wells.length),
    outcomes(wells, 'water'),
    outcomes(wells, 'dry'),
    outcomes(wells, 'open'),
    depthFigure(kit, sumOf(drilled.map((depthM) => depthM ?? 0))),
    medianFigure(kit, drilled, depthFigure),
    medianFigure(kit, wells.map(({ restM }) => restM), depthFigure), // prettier-ignore
    medianFigure(kit, wells.map((well) => well.yield?.m3h), significantFigure), // prettier-ignore
  ];
}

/** Counts, metres drilled and medians of each district and of all wells. */
export function districtTable(
  kit: BinderKit,
  { wells }: BinderContent,
  places: Places,
  width: PaperMm,
): Piece[] {
  const { heads, all } = kit.own.tables;
  const whole = sumOf(shares);
  const row = (name: string, figures: readonly string[], bold: boolean): Cell[] =>
    [name, ...figures].map((text, at) => ({
      width: (shares[at]! / whole) * width,
      text,
      anchor: at === 0 ? 'start' : 'end',
      bold,
    }));
  const titles = [heads.wells, heads.water, heads.dry, heads.open, heads.metres];
  const medians = [heads.drilled, heads.rest, heads.yield];
  const head = rowPiece(kit, row(heads.district, [...titles, ...medians], true), { rule: 'thin' });
  return [
    { ...head, keeps: true },
    ...districtsOf(wells).map((district) => {
      const name = sayDistrict(kit, district.name);
      const piece = rowPiece(kit, row(name, figuresOf(kit, district.wells), false));
      return { ...linkedRow(piece, width, places.districtAt(district.name)), head };
    }),
    { ...rowPiece(kit, row(all, figuresOf(kit, wells), true), { rule: 'thin' }), head },
  ];
}
