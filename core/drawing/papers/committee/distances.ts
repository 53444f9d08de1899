import type { FigureId } from '../../../practice/figures.ts';
import type { PictogramId } from '../../pictograms/pictogram.ts';

/** What is kept away, with the figure of the practice that says how far, and its pictogram. */
export const keptAway = {
  latrine: { figure: 'latrineM', sign: 'latrine' },
  livestock: { figure: 'livestockM', sign: 'animals' },
  wasteDump: { figure: 'wasteDumpM', sign: 'rubbish' },
  fuelOrChemicals: { figure: 'fuelM', sign: 'fuel' },
  graveyard: { figure: 'graveyardM', sign: 'graves' },
} as const satisfies Record<string, { figure: FigureId; sign: PictogramId }>;

export type Distance = keyof typeof keptAway;
export const distances = Object.keys(keptAway) as Distance[];
