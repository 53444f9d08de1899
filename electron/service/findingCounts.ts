import { modelFindings } from '../../core/model/findings.ts';
import { resolveWell } from '../../core/model/resolveWell.ts';
import type { FindingCount } from '../archive/lists.ts';
import type { FindingCounts } from '../archive/tables/sights.ts';
import { sha256Hex } from '../seal/hash.ts';
import { readDocument } from './stored.ts';

/** A record that cannot be read is wrong as a whole. */
const unreadable: FindingCounts = { errors: 1, warnings: 0, notes: 0 };

/** How many findings the model has about a record in any condition. */
export function countFindings(document: unknown): FindingCounts {
  const reading = readDocument(document);
  if (!reading.ok) return unreadable;
  const { findings } = resolveWell(reading.value.record);
  const of = (weight: string) => findings.filter(({ severity }) => severity === weight).length;
  return { errors: of('error'), warnings: of('warning'), notes: of('note') };
}

/** Follows from what can be found: another program finds other things, and counts anew. */
const number = 1 + parseInt(sha256Hex(JSON.stringify(modelFindings)).slice(0, 8), 16);

export const findingCount: FindingCount = { number, count: countFindings };
