import type { FigureId } from '../../core/practice/figures.ts';
import type { Practice } from '../../core/practice/practice.ts';
import type { Surrounding } from '../../core/record/site.ts';

const figures: Readonly<Partial<Record<Surrounding['kind'], FigureId>>> = {
  latrine: 'latrineM',
  septicTank: 'septicTankM',
  soakaway: 'soakawayM',
  livestock: 'livestockM',
  graveyard: 'graveyardM',
  wasteDump: 'wasteDumpM',
  fuelOrChemicals: 'fuelM',
  openWater: 'openWaterM',
  building: 'buildingM',
};

/** How far from the well the practice asks a kind to stand, metres; undefined where it does not. */
export function askedDistanceM(kind: Surrounding['kind'], practice: Practice): number | undefined {
  const id = figures[kind];
  return id && practice.figures[id].value;
}
