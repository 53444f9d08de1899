import { looseCap } from '../../model/tally.ts';
import type { StringModel } from '../../model/wellModel.ts';
import type { Missing, Quantity } from '../quantity.ts';
import { nothing, sumOf, told, type Reckoned } from '../reckon.ts';
import type { ReckonedWell } from '../reckonedWell.ts';
import { reckonCentralisers } from './centralisers.ts';
import { reckonJoints } from './joints.ts';
import { pipesOfOneSize, reckonSize, type SizedPipes } from './pipeSizes.ts';

/** Pieces that stand in no tally, for want of a length. A cap needs none. */
function lengthsMissing({ record, model }: ReckonedWell): Missing[] {
  const stood = new Set(model.strings.flatMap(({ pieces }) => pieces.map(({ path }) => path)));
  return (record.strings ?? []).flatMap(({ components }, string) =>
    components.flatMap(({ kind, count }, at): Missing[] => {
      const path = `strings[${string}].components[${at}]`;
      const isThere = Math.floor(count ?? 1) > 0 && kind !== 'cap';
      return isThere && !stood.has(path) ? [{ what: 'pipeLength', path: `${path}.length` }] : [];
    }),
  );
}

/** Caps without a length of their own are no pieces of the tally, and are bought all the same. */
function looseCaps(strings: readonly StringModel[]): SizedPipes[] {
  const paths = strings.flatMap((string) => looseCap(string) ?? []);
  return paths.length === 0 ? [] : [{ size: { kind: 'cap' }, lengthsM: paths.map(() => 0) }];
}

function sumWhereWhole(
  id: 'pipesCount' | 'pipesM' | 'pipesKg',
  parts: readonly Quantity[],
  missing: readonly Missing[],
) {
  return missing.length > 0 ? undefined : sumOf(id, parts);
}

/** Pipes by kind and size, joints, glue and centralisers. */
export function reckonPipes(well: ReckonedWell): Reckoned {
  const { record, model } = well;
  if (model.strings.length === 0 && lengthsMissing(well).length === 0)
    return record.identity?.state === 'dry'
      ? nothing
      : { quantities: [], missing: [{ what: 'strings', path: 'strings' }] };
  const sizes = [...pipesOfOneSize(model.strings), ...looseCaps(model.strings)];
  const bySize = sizes.map((size) => reckonSize(size, well.practice));
  const quantities = bySize.flatMap((one) => one.quantities);
  const lengths = lengthsMissing(well);
  const masses = bySize.flatMap(({ missing }) => missing);
  const parts = (id: Quantity['id']) => quantities.filter((one) => one.id === id);
  const joints = reckonJoints(well, lengths);
  const centralisers = reckonCentralisers(well);
  return {
    quantities: told([
      ...quantities,
      sumWhereWhole('pipesCount', parts('pipeCount'), lengths),
      sumWhereWhole('pipesM', parts('pipeM'), lengths),
      sumWhereWhole('pipesKg', parts('pipeKg'), [...lengths, ...masses]),
      ...joints.quantities,
      ...centralisers.quantities,
    ]),
    missing: [...lengths, ...masses, ...joints.missing, ...centralisers.missing],
  };
}
