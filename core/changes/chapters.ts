import type { WellRecord } from '../record/schema.ts';

/** Parts of the record that stand for themselves, in its own order. */
export const chapters = [
  'identity',
  'site',
  'bore',
  'samples',
  'log',
  'layingOut',
  'strings',
  'annulus',
  'headworks',
  'levels',
  'strikes',
  'development',
  'tests',
  'quality',
  'disinfection',
  'pump',
  'photos',
  'explanations',
  'marks',
  'notes',
] as const satisfies readonly (keyof WellRecord)[];

export type Chapter = (typeof chapters)[number];
