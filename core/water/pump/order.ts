import { pumpKinds } from './kinds.ts';
import { repairLevels, type PumpKindData } from './pumpKind.ts';
import { verdicts, type KindJudgement, type PumpQuantityId } from './ranking.ts';

function valueOf({ quantities }: KindJudgement, id: PumpQuantityId): number {
  return quantities.find((one) => one.id === id)?.value ?? Infinity;
}

/** The last resort comes after all that is not ruled out. */
function standing({ verdict, reasons }: KindJudgement): number {
  if (verdict === 'ruledOut') return 2;
  return reasons.some(({ code }) => code === 'lastResort') ? 1 : 0;
}

function doubts({ reasons }: KindJudgement): number {
  return reasons.filter(({ effect }) => effect === 'doubts').length;
}

interface Placed {
  readonly judgement: KindJudgement;
  readonly kind: PumpKindData;
}

/** What counts, one after the other; the least first. */
const criteria: readonly ((placed: Placed) => number)[] = [
  ({ judgement }) => standing(judgement),
  ({ judgement }) => verdicts.indexOf(judgement.verdict),
  ({ judgement }) => doubts(judgement),
  ({ kind }) => (kind.closed ? 0 : 1),
  ({ kind }) => repairLevels.indexOf(kind.repair.value),
  ({ judgement }) => valueOf(judgement, 'hoursDay'),
  ({ kind }) => pumpKinds.indexOf(kind),
];

function compare(one: Placed, other: Placed): number {
  for (const criterion of criteria) {
    const [a, b] = [criterion(one), criterion(other)];
    if (a !== b) return a < b ? -1 : 1;
  }
  return 0;
}

/**
 * The most suitable first: by verdict; by how much is doubtful; closed before open; what a caretaker
 * repairs before what takes a workshop; the fewest hours of pumping; the order of the table.
 */
export function inOrder(judgements: readonly KindJudgement[]): KindJudgement[] {
  return judgements
    .flatMap((judgement) => {
      const kind = pumpKinds.find(({ id }) => id === judgement.kind);
      return kind ? [{ judgement, kind }] : [];
    })
    .sort(compare)
    .map(({ judgement }) => judgement);
}
