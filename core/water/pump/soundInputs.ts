import type { PumpInputId, PumpInputs } from './ranking.ts';

/** Of these nought is a figure; of all others it is a slip. */
const mayBeNought: readonly string[] = [
  'drawdownM',
  'seasonalSwingM',
  'outletM',
  'deliveryM',
] satisfies readonly PumpInputId[];

const mostPh = 14;

function isSound(id: string, value: unknown): boolean {
  if (typeof value !== 'number') return value !== undefined;
  if (!Number.isFinite(value) || (id === 'ph' && value > mostPh)) return false;
  return mayBeNought.includes(id) ? value >= 0 : value > 0;
}

/** What is given without what cannot be meant, which then counts as not given. */
export function soundInputs(inputs: PumpInputs): PumpInputs {
  return Object.fromEntries(Object.entries(inputs).filter(([id, value]) => isSound(id, value)));
}
