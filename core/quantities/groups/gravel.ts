import type { Reckoned } from '../reckon.ts';
import type { ReckonedWell } from '../reckonedWell.ts';
import { reckonLooseFill } from './looseFill.ts';

/** Gravel pack and formation stabiliser, with what the hole swallows beyond its drilled size. */
export function reckonGravel(well: ReckonedWell): Reckoned {
  return reckonLooseFill(well, {
    kinds: ['gravelPack', 'formationStabiliser'],
    extra: 'gravelExtraShare',
    kgPerL: 'gravelKgL',
    sackKg: 'gravelSackKg',
    zone: { litres: 'gravelZoneLitres', kg: 'gravelZoneKg', sacks: 'gravelZoneSacks' },
    all: { litres: 'gravelLitres', kg: 'gravelKg', sacks: 'gravelSacks' },
  });
}
