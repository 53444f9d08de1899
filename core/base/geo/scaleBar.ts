import type { Metres } from '../units.ts';

/** The longest of 1, 2 or 5 times a power of ten metres that is no longer than `mostM`. */
export function scaleBarM(mostM: Metres): Metres {
  const power = 10 ** Math.floor(Math.log10(mostM) + 1e-12);
  const times = [5, 2, 1].find((one) => one * power <= mostM * (1 + 1e-9)) ?? 1;
  return times * power;
}
