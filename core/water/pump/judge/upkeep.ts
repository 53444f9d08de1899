import type { PumpBasis } from '../basis.ts';
import { repairLevels, type PumpKindData } from '../pumpKind.ts';
import { pumpSources } from '../sources.ts';
import { lacks, nothing, says, speaksAgainst, speaksFor, type Aspect } from './aspect.ts';

/** Galvanised pipe and rods in sour water rust within months. */
export function judgeCorrosion(
  { leastPh, corrosionProof }: PumpKindData,
  { ph }: PumpBasis,
): Aspect {
  if (corrosionProof) return says(speaksFor('corrosionProof', {}, corrosionProof));
  if (!leastPh) return nothing;
  if (!ph) return lacks({ what: 'ph', path: 'quality', given: 'ph' });
  const values = { ph: ph.value, least: leastPh.value };
  return says(
    ph.value < leastPh.value
      ? speaksAgainst('phCorrodes', 'rulesOut', values, leastPh.source)
      : speaksFor('phHolds', values, leastPh.source),
  );
}

/** Whether what it takes to put it right is there. A caretaker is taken to be everywhere. */
export function judgeRepair({ repair }: PumpKindData, { inputs }: PumpBasis): Aspect {
  const need = repairLevels.indexOf(repair.value);
  if (need === 0) return says(speaksFor('repairThere', { needs: repair.value }, repair.source));
  if (inputs.repair === undefined) return lacks({ what: 'repair', given: 'repair' });
  const values = { needs: repair.value, there: inputs.repair };
  return says(
    repairLevels.indexOf(inputs.repair) < need
      ? speaksAgainst('repairBeyond', 'doubts', values, repair.source)
      : speaksFor('repairThere', { needs: repair.value }, repair.source),
  );
}

/** How well it keeps hands and dirt from the water. */
export function judgeCover({ id, closed }: PumpKindData): Aspect {
  if (id === 'bucketAndWindlass')
    return says(speaksAgainst('lastResort', 'doubts', {}, pumpSources.common));
  if (id === 'suction') return says(speaksAgainst('priming', 'doubts', {}, pumpSources.trade));
  return says(
    closed
      ? speaksFor('closed', {}, pumpSources.common)
      : speaksAgainst('notClosed', 'notes', {}, pumpSources.practicalAction),
  );
}
