import type { Finding } from '../../../core/base/finding.ts';
import { resolveWell } from '../../../core/model/resolveWell.ts';
import type { WellModel } from '../../../core/model/wellModel.ts';
import type { WellRecord } from '../../../core/record/schema.ts';

/** A record of the chapters given, and nothing else. */
export function record(chapters: Omit<WellRecord, 'schemaVersion'>): WellRecord {
  return { schemaVersion: 1, ...chapters };
}

export function resolve(chapters: Omit<WellRecord, 'schemaVersion'>): WellModel {
  return resolveWell(record(chapters));
}

/** The findings of one code. */
export function said({ findings }: WellModel, code: string): Finding[] {
  return findings.filter((finding) => finding.code === code);
}

export const pipe110 = { kind: 'plain', outside: 110, wall: 4.2 } as const;
