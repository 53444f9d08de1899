import type { StringModel } from '../../model/wellModel.ts';
import { counted, fromFigure, fromModel } from '../inputs.ts';
import { reckon, told, wholes, type Reckoned } from '../reckon.ts';
import type { ReckonedWell } from '../reckonedWell.ts';
import { sources } from '../sources.ts';
import { isStillPlan } from '../stillPlan.ts';

function recorded(strings: readonly StringModel[]): number[] {
  return strings.map(({ pieces }) =>
    pieces.reduce((sum, { centralisersM }) => sum + centralisersM.length, 0),
  );
}

/**
 * Centralisers as recorded. A plan that names none takes one for each spacing of the practice,
 * over the part of each string below ground.
 */
export function reckonCentralisers({ record, model, practice }: ReckonedWell): Reckoned {
  const counts = recorded(model.strings);
  const sum = counts.reduce((all, count) => all + count, 0);
  if (sum > 0) {
    const quantity = reckon('centralisers', sum, {
      formula: 'n = Σ nᵢ',
      inputs: counts.map((count, at) => fromModel(counted('n', at + 1), count, '1')),
      source: sources.geometry,
    });
    return { quantities: told([quantity]), missing: [] };
  }
  if (!isStillPlan(record))
    return { quantities: [], missing: [{ what: 'centralisers', path: 'strings' }] };
  const spacing = fromFigure('a', 'centraliserSpacingM', practice);
  const lengths = model.strings.map(({ topM, bottomM }) =>
    Math.max(0, bottomM - Math.max(0, topM)),
  );
  const quantity = reckon(
    'centralisers',
    lengths.reduce((all, lengthM) => all + wholes(lengthM, spacing.value), 0),
    {
      formula: 'n = Σ nᵢ, nᵢ ≥ Lᵢ / a',
      inputs: [
        ...lengths.map((lengthM, at) => fromModel(counted('L', at + 1), lengthM, 'm')),
        spacing,
      ],
      source: sources.common,
    },
  );
  return { quantities: told([quantity]), missing: [] };
}
