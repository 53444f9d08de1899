import type { WellModel } from '../model/wellModel.ts';
import type { Practice } from '../practice/practice.ts';
import type { WellRecord } from '../record/schema.ts';
import type { LaidOut } from './proposal.ts';

/** Lays out completions from the log, the water level, the pipes on site and the practice. */
export function layOut({ log = [] }: WellRecord, { bore }: WellModel, { id }: Practice): LaidOut {
  const missing = [
    ...(log.length > 0 ? [] : [{ what: 'log', path: 'log', stops: true } as const]),
    ...(bore.depthM !== undefined || id === ''
      ? []
      : [{ what: 'boreDepth', path: 'bore.depthReached', stops: true } as const]),
  ];
  return { proposals: [], missing, obstacles: [] };
}
