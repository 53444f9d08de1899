import type { QuantityGroup, QuantityId, Quantity } from '../../core/quantities/quantity.ts';

/** What counts where completions are compared: what has to be bought and carried. */
const compared: readonly QuantityId[] = [
  'pipesCount',
  'joints',
  'gravelSacks',
  'claySacks',
  'groutCementSacks',
];

export function comparedOf(groups: readonly QuantityGroup[]): readonly Quantity[] {
  return groups
    .flatMap(({ quantities }) => quantities)
    .filter(({ id, value }) => compared.includes(id) && value > 0);
}

const zoneOf = (id: QuantityId) => id.replace(/(Litres|Kg|Sacks|Cement.*|Water.*)$/, 'Zone$1');

/** A group without totals that would only say again what its one zone says. */
export function withoutRepeats(quantities: readonly Quantity[]): readonly Quantity[] {
  return quantities.filter(({ id, value }) => {
    const zones = quantities.filter((one) => one.id === zoneOf(id));
    return !(zones.length === 1 && zones[0]!.value === value);
  });
}
