import { intervalsOf } from '../../model/strata.ts';
import type { Stratum } from '../../model/wellModel.ts';
import type { Item } from '../items.ts';
import type { Kit } from '../kit.ts';
import { letter } from '../letters.ts';
import { solid } from '../pens.ts';
import { shownPart, yAt } from '../scale.ts';
import { group, line, polyline, type Point } from '../shapes.ts';
import type { View } from './columns.ts';

/** Minutes for each metre, by the first row of the stratum that tells. */
function rateOf(stratum: Stratum): number | undefined {
  const rates = intervalsOf(stratum).map(({ minutesPerMetre }) => minutesPerMetre);
  return rates.find((rate) => rate !== undefined);
}

/** Whether the column of rates is drawn at all; its room goes to the words otherwise. */
export function hasRates(strata: readonly Stratum[]): boolean {
  return strata.some((stratum) => rateOf(stratum) !== undefined);
}

/** The next of 1, 2, 5, 10, 20 … at or above the largest rate. */
function fullScale(strata: readonly Stratum[]): number {
  const most = Math.max(1, ...strata.map((stratum) => rateOf(stratum) ?? 0));
  const power = 10 ** Math.floor(Math.log10(most));
  return [1, 2, 5, 10].map((step) => step * power).find((step) => step >= most)!;
}

/** Drilling time as a stepped line, minutes for each metre, zero at the left. */
export function drawRate(kit: Kit, strata: readonly Stratum[], view: View): Item {
  const { x, width } = view.columns.rate;
  if (width === 0) return group('rate', []);
  const full = fullScale(strata);
  const room = width - 1.5;
  const at = (rate: number) => x + (rate / full) * room;
  const runs: Point[][] = [];
  for (const stratum of strata) {
    const part = shownPart(view.axis, stratum.fromM, stratum.toM);
    const rate = rateOf(stratum);
    if (!part || rate === undefined) {
      runs.push([]);
      continue;
    }
    const steps: Point[] = [
      [at(rate), yAt(view.axis, part.fromM)],
      [at(rate), yAt(view.axis, part.toM)],
    ];
    if (runs.at(-1)?.length) runs.at(-1)!.push(...steps);
    else runs.push(steps);
  }
  return group('rate', [
    ...runs.filter(({ length }) => length > 0).map((run) => polyline(run, solid('medium'))),
    ...letter(kit, '0', x + 0.4, view.body.y - 0.8),
    ...letter(kit, String(full), at(full), view.body.y - 0.8, { anchor: 'end' }),
    line([at(full), view.body.y], [at(full), view.body.y + 1], solid('thin')),
  ]);
}
