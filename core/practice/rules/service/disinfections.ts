import type { WellRecord } from '../../../record/schema.ts';

export type Dose = NonNullable<WellRecord['disinfection']>[number];

/** A disinfection with its row. */
export interface DoseRow {
  readonly dose: Dose;
  readonly path: string;
}

export function dosesOf({ disinfection = [] }: WellRecord): DoseRow[] {
  return disinfection.map((dose, at) => ({ dose, path: `disinfection[${at}]` }));
}
