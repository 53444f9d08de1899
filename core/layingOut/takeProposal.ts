import type { Practice } from '../practice/practice.ts';
import type { WellRecord } from '../record/schema.ts';
import type { Proposal } from './proposal.ts';

/**
 * The record with a proposal taken: its strings and annulus are the proposed ones, and the
 * proposal is kept beside them. `day` is when, as YYYY-MM-DD.
 */
export function takeProposal(
  record: WellRecord,
  { kind, strings, annulus }: Proposal,
  day: string,
  practice: Practice,
): WellRecord {
  const kept = {
    kind,
    takenOn: day,
    practice: `${practice.id} ${practice.version}`,
    strings,
    annulus,
  };
  return { ...record, strings, annulus, layingOut: { ...record.layingOut, proposal: kept } };
}
