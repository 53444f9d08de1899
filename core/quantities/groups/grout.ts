import { slurryLitres } from '../../model/volumes.ts';
import { fromFigure, fromQuantity, recordOrFigure } from '../inputs.ts';
import type { QuantityId } from '../quantity.ts';
import { reckon, sacksOf, sumOf, told, type Reckoned } from '../reckon.ts';
import type { ReckonedWell } from '../reckonedWell.ts';
import { sources } from '../sources.ts';
import { fillOf, zoneOf, zonesFilled, type FilledZone } from '../zones.ts';
import { sacksInAll } from './sacksInAll.ts';

function reckonZone({ zone, volume }: FilledZone, { record, practice }: ReckonedWell) {
  const of = { zone: zoneOf(zone) };
  const fill = fillOf(zone, record);
  const input = (
    symbol: string,
    key: 'waterCement' | 'sackMass',
    id: 'groutWaterCement' | 'cementSackKg',
  ) => recordOrFigure(symbol, fill?.[key], `${zone.path}.${key}`, id, practice);
  const extra = fromFigure('e', 'groutExtraShare', practice);
  const ratio = input('w', 'waterCement', 'groutWaterCement');
  const grain = fromFigure('ρ', 'cementGrainKgL', practice);
  const litres = reckon(
    'groutZoneLitres',
    volume.value * (1 + extra.value),
    {
      formula: 'V = Vz · (1 + e)',
      inputs: [fromQuantity('Vz', volume), extra],
      source: sources.common,
    },
    of,
  );
  const kg =
    litres &&
    reckon(
      'groutZoneCementKg',
      litres.value / slurryLitres(1, ratio.value, grain.value),
      {
        formula: 'm = V / (1 / ρ + w)',
        inputs: [fromQuantity('V', litres), grain, ratio],
        source: sources.cement,
      },
      of,
    );
  const water =
    kg &&
    reckon(
      'groutZoneWaterLitres',
      kg.value * ratio.value,
      { formula: 'V = m · w', inputs: [fromQuantity('m', kg), ratio], source: sources.cement },
      of,
    );
  const sacks = sacksOf('groutZoneCementSacks', kg, input('s', 'sackMass', 'cementSackKg'), of);
  return told([litres, kg, sacks, water]);
}

/** Neat cement slurry: its volume, the cement in it by mass and in whole sacks, and the water. */
export function reckonGrout(well: ReckonedWell): Reckoned {
  const { zones, missing } = zonesFilled(well, ['cementGrout']);
  const byZone = zones.flatMap((one) => reckonZone(one, well));
  if (missing.length > 0) return { quantities: byZone, missing };
  const parts = (id: QuantityId) => byZone.filter((one) => one.id === id);
  const kg = sumOf('groutCementKg', parts('groutZoneCementKg'));
  const whole = [
    sumOf('groutLitres', parts('groutZoneLitres')),
    kg,
    sacksInAll('groutCementSacks', kg, parts('groutZoneCementSacks')),
    sumOf('groutWaterLitres', parts('groutZoneWaterLitres')),
  ];
  return { quantities: [...byZone, ...told(whole)], missing };
}
