/**
 * Units that may be typed behind a number, and what one of each is in the unit that the record
 * keeps for its kind. The foot is 0.3048 m, the inch 25.4 mm and the pound 0.45359237 kg, exactly:
 * so agreed by the English-speaking countries in 1959; the SI's multiples are those of ISO 80000-1.
 * A gallon is not among them, since it differs from country to country.
 */
export type Kind = 'length' | 'flow' | 'volume' | 'mass' | 'time';

interface Unit {
  readonly kind: Kind;
  /** Worth of one in metres, m³/h, litres, kilograms or minutes. */
  readonly worth: number;
}

const inch = 0.0254;
const foot = 0.3048;

/** Names as people write them, in lower case and without a full stop at the end. */
const names: readonly (readonly [Kind, number, readonly string[]])[] = [
  ['length', 1, ['m', 'metre', 'metres', 'meter', 'meters', 'mètre', 'mètres', 'metro', 'metros']],
  ['length', 0.01, ['cm']],
  ['length', 0.001, ['mm']],
  [
    'length',
    inch,
    ['"', 'in', 'inch', 'inches', 'po', 'pouce', 'pouces', 'pol', 'polegada', 'polegadas'],
  ],
  ['length', foot, ["'", 'ft', 'foot', 'feet', 'pi', 'pied', 'pieds', 'pé', 'pés']],
  ['flow', 1, ['m³/h', 'm3/h']],
  ['flow', 3.6, ['l/s']],
  ['flow', 0.06, ['l/min', 'l/mn']],
  ['flow', 0.001, ['l/h']],
  ['flow', 1 / 24, ['m³/d', 'm3/d', 'm³/j', 'm3/j', 'm³/dia', 'm3/dia']],
  ['volume', 1, ['l', 'litre', 'litres', 'liter', 'liters', 'litro', 'litros']],
  ['volume', 1000, ['m³', 'm3']],
  ['mass', 1, ['kg']],
  ['mass', 0.001, ['g']],
  ['mass', 1000, ['t']],
  ['mass', 0.45359237, ['lb', 'lbs']],
  ['time', 1 / 60, ['s', 'sec']],
  ['time', 1, ['min', 'mn']],
  ['time', 60, ['h', 'hour', 'hours', 'heure', 'heures', 'hora', 'horas']],
  ['time', 1440, ['d', 'day', 'days', 'j', 'jour', 'jours', 'dia', 'dias']],
];

const units = new Map(
  names.flatMap(([kind, worth, written]) =>
    written.map((name): [string, Unit] => [name, { kind, worth }]),
  ),
);

export function unitOf(name: string): Unit | undefined {
  return units.get(name.toLowerCase().replace(/\.$/, ''));
}

/** A unit of the record's fields: its kind, and to how many decimals a converted value goes. */
interface Own extends Unit {
  readonly decimals: number;
}

/** Sizes go to a tenth of a millimetre, lengths to the millimetre. */
const own: Readonly<Record<string, Own>> = {
  m: { kind: 'length', worth: 1, decimals: 3 },
  mm: { kind: 'length', worth: 0.001, decimals: 1 },
  '± m': { kind: 'length', worth: 1, decimals: 3 },
  'm³/h': { kind: 'flow', worth: 1, decimals: 3 },
  L: { kind: 'volume', worth: 1, decimals: 1 },
  kg: { kind: 'mass', worth: 1, decimals: 3 },
  g: { kind: 'mass', worth: 0.001, decimals: 1 },
  min: { kind: 'time', worth: 1, decimals: 2 },
  h: { kind: 'time', worth: 60, decimals: 3 },
};

/** What a field's unit is; undefined where it takes no other unit than its own. */
export function ownUnit(unit: string): Own | undefined {
  return own[unit];
}
