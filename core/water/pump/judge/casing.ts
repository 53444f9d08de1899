import type { DepthM } from '../../../base/units.ts';
import { pumpAssumptions } from '../assumptions.ts';
import type { PumpBasis } from '../basis.ts';
import type { PumpKindData } from '../pumpKind.ts';
import type { PumpMissing } from '../ranking.ts';
import { lacks, nothing, says, speaksAgainst, speaksFor, type Aspect } from './aspect.ts';

interface Room {
  /** The narrowest that is known of what the pump passes. */
  readonly insideMm?: number;
  /** Where something that it passes has no size. */
  readonly missing: readonly PumpMissing[];
}

const given = 'casingInsideMm';

/** The inside of what a pump passes on its way to a depth: pipes, or the hole where it has none. */
function roomTo(depthM: DepthM, { model, inputs, casingUntold }: PumpBasis): Room {
  if (inputs.casingInsideMm !== undefined) return { insideMm: inputs.casingInsideMm, missing: [] };
  const pieces = model.strings
    .flatMap((string) => string.pieces)
    .filter(({ topM, kind }) => topM < depthM && kind !== 'cap');
  const bored = model.bore.sections
    .filter(({ fromM }) => fromM < depthM)
    .map(({ diameterMm }) => diameterMm);
  const uncased = casingUntold ? [] : bored;
  const sizes = pieces.length > 0 ? pieces.map(({ insideMm }) => insideMm) : uncased;
  const told = sizes.filter((size) => size !== undefined);
  const unknown = pieces.find(({ insideMm }) => insideMm === undefined);
  const path = unknown ? `${unknown.path}.wall` : 'strings';
  return {
    ...(told.length > 0 ? { insideMm: Math.min(...told) } : {}),
    missing: unknown || told.length === 0 ? [{ what: 'casingInside', path, given }] : [],
  };
}

/**
 * Whether a kind goes down the casing to where its intake hangs; where that is not known, all the
 * way. A limit that nobody looked up rules out only what is well under it.
 */
export function judgeCasing(
  { casing: { least, easy } }: PumpKindData,
  basis: PumpBasis,
  depthM: DepthM = Infinity,
): Aspect {
  const { insideMm, missing } = roomTo(depthM, basis);
  if (insideMm === undefined) return lacks(...missing);
  const doubtShare = least.source.mark === 'read' ? 0 : pumpAssumptions.casingDoubtShare.value;
  const values = { insideMm, leastMm: least.value };
  if (insideMm < least.value * (1 - doubtShare))
    return says(speaksAgainst('casingNarrow', 'rulesOut', values, least.source));
  const rest = missing.length > 0 ? lacks(...missing) : nothing;
  if (insideMm < least.value)
    return {
      ...rest,
      reasons: [speaksAgainst('casingAtLimit', 'doubts', values, least.source)],
    };
  if (easy && insideMm < easy.value) {
    const tight = { insideMm, easyMm: easy.value };
    return { ...rest, reasons: [speaksAgainst('casingTight', 'notes', tight, easy.source)] };
  }
  return missing.length > 0 ? rest : says(speaksFor('casingFits', values, (easy ?? least).source));
}
