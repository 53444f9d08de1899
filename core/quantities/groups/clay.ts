import type { Reckoned } from '../reckon.ts';
import type { ReckonedWell } from '../reckonedWell.ts';
import { reckonLooseFill } from './looseFill.ts';

/** Clay and bentonite, dry as they come; the practice says how far swelling may be counted on. */
export function reckonClay(well: ReckonedWell): Reckoned {
  return reckonLooseFill(well, {
    kinds: ['claySeal', 'bentonite'],
    extra: 'clayExtraShare',
    swell: 'claySwellRatio',
    kgPerL: 'clayKgL',
    sackKg: 'claySackKg',
    zone: { litres: 'clayZoneLitres', kg: 'clayZoneKg', sacks: 'clayZoneSacks' },
    all: { litres: 'clayLitres', kg: 'clayKg', sacks: 'claySacks' },
  });
}
