import type { DrillingMethod } from '../../record/bore.ts';
import { fromFigure, fromQuantity } from '../inputs.ts';
import type { Missing } from '../quantity.ts';
import { nothing, reckon, told, type Reckoned } from '../reckon.ts';
import type { ReckonedWell } from '../reckonedWell.ts';
import { sources } from '../sources.ts';
import { holeVolume } from './volumes.ts';

/** Ways of drilling that carry the cuttings up with a fluid in the hole. */
const wet: readonly DrillingMethod[] = ['sludging', 'jetting', 'rotaryJetting', 'mudRotary'];

/** Whether the hole is drilled with a fluid in it; undefined where nobody wrote the way. */
export function isDrilledWet({ record: { bore } }: ReckonedWell): boolean | undefined {
  const methods = [bore?.method, ...(bore?.sections ?? []).map(({ method }) => method)];
  const written = methods.filter((method) => method !== undefined && method !== 'other');
  if (written.length === 0) return undefined;
  return written.some((method) => wet.some((one) => one === method));
}

export const methodMissing: Missing = { what: 'method', path: 'bore.method' };

/** Drilling fluid: the hole full, and what the ground and the pit take beside; its additive. */
export function reckonMud(well: ReckonedWell): Reckoned {
  const { practice } = well;
  const isWet = isDrilledWet(well);
  if (isWet === undefined) return { quantities: [], missing: [methodMissing] };
  if (!isWet) return nothing;
  const { volume, missing } = holeVolume(well);
  if (!volume) return { quantities: [], missing };
  const loss = fromFigure('e', 'mudLossShare', practice);
  const litres = reckon('mudLitres', volume.value * (1 + loss.value), {
    formula: 'V = Vh · (1 + e)',
    inputs: [fromQuantity('Vh', volume), loss],
    source: sources.common,
  });
  const dose = fromFigure('c', 'mudAdditiveKgM3', practice);
  const additive =
    litres && dose.value > 0
      ? reckon('mudAdditiveKg', (litres.value / 1000) * dose.value, {
          formula: 'm = V · c',
          inputs: [fromQuantity('V', litres), dose],
          source: sources.common,
        })
      : undefined;
  return { quantities: told([litres, additive]), missing: [] };
}
