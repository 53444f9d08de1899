import type { PaperMm } from '../../../base/units.ts';
import type { WellRecord } from '../../../record/schema.ts';
import { again, type Kit } from '../../kit.ts';
import { drawnOnce, type Block } from '../../parts/block.ts';
import { layParticulars } from '../../parts/particulars.ts';
import { layQuantities } from '../../parts/quantities.ts';
import { layTallyTable, type TallyTable } from '../../parts/tallyTable.ts';
import type { SheetInput } from './sheetInput.ts';

/**
 * The blocks of a sheet that a change of the log leaves as they are. Each is handed no more of
 * the well than it shows, so that it is found again for as long as that stays.
 */

/** A block that lays its items once, as long as it stands at one place. */
export function lasting<A extends readonly unknown[], B extends Block>(
  lay: (kit: Kit, ...of: A) => B | undefined,
): (kit: Kit, ...of: A) => B | undefined {
  return (kit, ...of) => {
    const block = lay(kit, ...of);
    return block && drawnOnce(block);
  };
}

const particulars = lasting(layParticulars);
const quantities = lasting(layQuantities);
const tally = lasting(layTallyTable);

export function particularsOf(
  { kit, record, model }: SheetInput,
  width: PaperMm,
  columns: 1 | 2 = 1,
): Block | undefined {
  const others: WellRecord = { ...record };
  delete others.log;
  const { levels } = model;
  return again(kit, 'particulars', particulars, others, { levels }, width, columns);
}

export function quantitiesOf(
  { kit, model }: SheetInput,
  width: PaperMm,
  room: PaperMm = Infinity,
): Block | undefined {
  const { bore, strings, annulus, contents, totals } = model;
  const held = { bore, strings, annulus, contents, totals };
  return again(kit, 'quantities', quantities, held, width, room);
}

export function tallyOf(
  { kit, model: { strings } }: SheetInput,
  width: PaperMm,
  room: PaperMm,
): TallyTable | undefined {
  return again(kit, 'tally', tally, { strings }, width, room);
}
