import type { WellModel } from '../../../model/wellModel.ts';

/** What of a well the section shows, and the words beside it speak of. */
export type Built = Pick<WellModel, 'bore' | 'strings' | 'annulus' | 'levels' | 'pump'>;

/** That part of a well alone, so that a change of the log leaves the section as it was. */
export function builtOf({ bore, strings, annulus, levels, pump }: WellModel): Built {
  return { bore, strings, annulus, levels, ...(pump && { pump }) };
}
