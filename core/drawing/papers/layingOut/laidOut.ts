import type { RecordPath } from '../../../base/recordPath.ts';
import { resolveWell } from '../../../model/resolveWell.ts';
import type { WellModel } from '../../../model/wellModel.ts';
import type { WellState } from '../../../record/identity.ts';
import type { KeptProposal } from '../../../record/layingOut.ts';
import type { WellRecord } from '../../../record/schema.ts';

/** A well as it is to be built. */
export interface LaidOut {
  readonly record: WellRecord;
  readonly model: WellModel;
  /** The proposal that it is drawn from, where the record itself has gone on since. */
  readonly proposal?: KeptProposal;
  /** Where a part of it stands in the record that was handed in. */
  readonly pathOf: (path: RecordPath) => RecordPath;
}

/** States in which nothing is in the ground yet, so that the record itself is the plan. */
const before: readonly (WellState | undefined)[] = [undefined, 'laidOut', 'drilled'];

/**
 * What the crew is to build: strings and annulus of the record, or of the kept proposal once the
 * well is built and the record tells how it came out. `model` is that of `record`.
 */
export function laidOutOf(record: WellRecord, model: WellModel): LaidOut {
  const proposal = record.layingOut?.proposal;
  const asProposed = proposal && !before.includes(record.identity?.state);
  if (!asProposed || (!proposal.strings && !proposal.annulus))
    return { record, model, pathOf: (path) => path };
  const { strings, annulus } = proposal;
  const planned = { ...record, ...(strings && { strings }), ...(annulus && { annulus }) };
  const taken = [...(strings ? ['strings['] : []), ...(annulus ? ['annulus['] : [])];
  return {
    record: planned,
    model: resolveWell(planned),
    proposal,
    pathOf: (path) =>
      taken.some((start) => path.startsWith(start)) ? `layingOut.proposal.${path}` : path,
  };
}
