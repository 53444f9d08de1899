import type { FigureId } from '../../practice/figures.ts';
import { fromFigure, fromQuantity, fromRecord } from '../inputs.ts';
import type { Missing, Quantity, QuantityId, QuantityInput } from '../quantity.ts';
import { nothing, reckon, sacksOf, sumOf, told, type Reckoned } from '../reckon.ts';
import type { ReckonedWell } from '../reckonedWell.ts';
import { sources } from '../sources.ts';
import { isForUse, isStillPlan } from '../stillPlan.ts';
import { zoneOf, zonesFilled } from '../zones.ts';

type Side = 'padLength' | 'padWidth' | 'padThickness' | 'drainLength';

/**
 * A measure of pad or drain: as recorded; on a plan, and for a thickness, else the practice's.
 * Undefined where a built one was not measured.
 */
function measured(
  { record, practice }: ReckonedWell,
  symbol: string,
  side: Side,
  id: FigureId,
): QuantityInput | undefined {
  const value = record.headworks?.[side];
  if (value !== undefined) return fromRecord(symbol, value, 'm', `headworks.${side}`);
  const isOpen = isStillPlan(record) || side === 'padThickness';
  return isOpen ? fromFigure(symbol, id, practice) : undefined;
}

function slab(id: QuantityId, formula: string, sides: readonly (QuantityInput | undefined)[]) {
  const inputs = sides.filter((side) => side !== undefined);
  if (inputs.length < sides.length) return undefined;
  const m3 = inputs.reduce((product, { value }) => product * value, 1);
  return reckon(id, m3 * 1000, { formula, inputs, source: sources.geometry });
}

/** Pad and drain; `missing` tells which of both was built without being measured. */
function reckonSlabs(well: ReckonedWell): Reckoned {
  if (!isForUse(well.record)) return nothing;
  const thickness = measured(well, 't', 'padThickness', 'padThicknessM');
  const pad = slab('padLitres', 'V = a · b · t', [
    measured(well, 'a', 'padLength', 'padSideM'),
    measured(well, 'b', 'padWidth', 'padSideM'),
    thickness,
  ]);
  const drain = slab('drainLitres', 'V = L · w · t', [
    measured(well, 'L', 'drainLength', 'drainLengthM'),
    fromFigure('w', 'drainWidthM', well.practice),
    thickness,
  ]);
  const missing: Missing[] = [
    ...(pad ? [] : [{ what: 'pad', path: 'headworks.padLength' } as const]),
    ...(drain ? [] : [{ what: 'drain', path: 'headworks.drainLength' } as const]),
  ];
  return { quantities: told([pad, drain]), missing };
}

const parts = {
  cement: 'padCementParts',
  sand: 'padSandParts',
  gravel: 'padGravelParts',
} as const;

/** Loose litres of one constituent of a mix by volume. */
function share(
  volume: Quantity,
  of: keyof typeof parts,
  { practice }: ReckonedWell,
): { litres: number; inputs: QuantityInput[] } {
  const extra = fromFigure('e', 'padExtraShare', practice);
  const dry = fromFigure('k', 'padDryRatio', practice);
  const [c, s, g] = [
    fromFigure('c', parts.cement, practice),
    fromFigure('s', parts.sand, practice),
    fromFigure('g', parts.gravel, practice),
  ];
  const own = { cement: c, sand: s, gravel: g }[of].value;
  return {
    litres: (volume.value * (1 + extra.value) * dry.value * own) / (c.value + s.value + g.value),
    inputs: [fromQuantity('V', volume), extra, dry, c, s, g],
  };
}

function mix(volume: Quantity, well: ReckonedWell): (Quantity | undefined)[] {
  const { practice } = well;
  const [cement, sand, gravel] = [
    share(volume, 'cement', well),
    share(volume, 'sand', well),
    share(volume, 'gravel', well),
  ];
  const density = fromFigure('ρ', 'looseCementKgL', practice);
  const kg = reckon('concreteCementKg', cement.litres * density.value, {
    formula: 'm = V · (1 + e) · k · c / (c + s + g) · ρ',
    inputs: [...cement.inputs, density],
    source: sources.concrete,
  });
  const ratio = fromFigure('w', 'padWaterCement', practice);
  return [
    kg,
    sacksOf('concreteCementSacks', kg, fromFigure('s', 'cementSackKg', practice)),
    reckon('concreteSandLitres', sand.litres, {
      formula: 'Vs = V · (1 + e) · k · s / (c + s + g)',
      inputs: sand.inputs,
      source: sources.concrete,
    }),
    reckon('concreteGravelLitres', gravel.litres, {
      formula: 'Vg = V · (1 + e) · k · g / (c + s + g)',
      inputs: gravel.inputs,
      source: sources.concrete,
    }),
    kg &&
      reckon('concreteWaterLitres', kg.value * ratio.value, {
        formula: 'V = m · w',
        inputs: [fromQuantity('m', kg), ratio],
        source: sources.concrete,
      }),
  ];
}

/**
 * Concrete of pad, drain and fills of concrete: its volume, and what is mixed to it by volume. A
 * drain without a length is left out and told; without a pad's measures there is no whole.
 */
export function reckonConcrete(well: ReckonedWell): Reckoned {
  const slabs = reckonSlabs(well);
  const filled = zonesFilled(well, ['concrete']);
  const lacking = filled.missing.filter(({ what }) => what !== 'fills');
  const zones = told(
    filled.zones.map(({ zone, volume }) =>
      reckon(
        'concreteZoneLitres',
        volume.value,
        { formula: 'V = Vz', inputs: [fromQuantity('Vz', volume)], source: sources.geometry },
        { zone: zoneOf(zone) },
      ),
    ),
  );
  const missing = [...slabs.missing, ...lacking];
  const placed = [...slabs.quantities, ...zones];
  if (missing.some(({ what }) => what !== 'drain')) return { quantities: placed, missing };
  const whole = sumOf('concreteLitres', placed);
  if (!whole) return { quantities: placed, missing };
  return { quantities: [...placed, whole, ...told(mix(whole, well))], missing };
}
