import type { FigureId } from '../../practice/figures.ts';
import type { FillKind } from '../../record/annulus.ts';
import { fromFigure, fromQuantity, recordOrFigure } from '../inputs.ts';
import type { Quantity, QuantityId } from '../quantity.ts';
import { reckon, sacksOf, sumOf, told, type Reckoned } from '../reckon.ts';
import type { ReckonedWell } from '../reckonedWell.ts';
import { sources } from '../sources.ts';
import { fillOf, zoneOf, zonesFilled, type FilledZone } from '../zones.ts';
import { sacksInAll } from './sacksInAll.ts';

/** A fill that comes loose in sacks. */
export interface LooseFill {
  readonly kinds: readonly FillKind[];
  readonly extra: FigureId;
  /** Litres that a litre swells to, where it does. */
  readonly swell?: FigureId;
  readonly kgPerL: FigureId;
  readonly sackKg: FigureId;
  readonly zone: {
    readonly litres: QuantityId;
    readonly kg: QuantityId;
    readonly sacks: QuantityId;
  };
  readonly all: {
    readonly litres: QuantityId;
    readonly kg: QuantityId;
    readonly sacks: QuantityId;
  };
}

function massOf(
  id: QuantityId,
  litres: Quantity,
  { kgPerL }: LooseFill,
  { practice }: ReckonedWell,
  of: Pick<Quantity, 'zone'> = {},
): Quantity | undefined {
  const density = fromFigure('ρ', kgPerL, practice);
  return reckon(
    id,
    litres.value * density.value,
    { formula: 'm = V · ρ', inputs: [fromQuantity('V', litres), density], source: sources.common },
    of,
  );
}

function reckonZone({ zone, volume }: FilledZone, loose: LooseFill, well: ReckonedWell) {
  const { record, practice } = well;
  const of = { zone: zoneOf(zone) };
  const extra = fromFigure('e', loose.extra, practice);
  const swell = loose.swell && fromFigure('k', loose.swell, practice);
  const litres = reckon(
    loose.zone.litres,
    (volume.value * (1 + extra.value)) / (swell?.value ?? 1),
    {
      formula: swell ? 'V = Vz · (1 + e) / k' : 'V = Vz · (1 + e)',
      inputs: [fromQuantity('Vz', volume), extra, ...(swell ? [swell] : [])],
      source: sources.common,
    },
    of,
  );
  const kg = litres && massOf(loose.zone.kg, litres, loose, well, of);
  const path = `${zone.path}.sackMass`;
  const sack = recordOrFigure('s', fillOf(zone, record)?.sackMass, path, loose.sackKg, practice);
  return told([litres, kg, sacksOf(loose.zone.sacks, kg, sack, of)]);
}

/** Litres, mass and whole sacks of a loose fill, zone by zone and in all. */
export function reckonLooseFill(well: ReckonedWell, loose: LooseFill): Reckoned {
  const { zones, missing } = zonesFilled(well, loose.kinds);
  const byZone = zones.flatMap((one) => reckonZone(one, loose, well));
  if (missing.length > 0) return { quantities: byZone, missing };
  const parts = (id: QuantityId) => byZone.filter((one) => one.id === id);
  const litres = sumOf(loose.all.litres, parts(loose.zone.litres));
  const kg = sumOf(loose.all.kg, parts(loose.zone.kg));
  const sacks = sacksInAll(loose.all.sacks, kg, parts(loose.zone.sacks));
  return { quantities: [...byZone, ...told([litres, kg, sacks])], missing };
}
