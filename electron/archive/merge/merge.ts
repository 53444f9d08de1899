import { ok, refused, type Result } from '../../../core/base/result.ts';
import type { Access } from '../lists.ts';
import { findRevision } from '../tables/revisions.ts';
import { findWell } from '../tables/wells.ts';
import type { ArchiveWorld } from '../world.ts';
import { bringBeside } from './beside.ts';
import { readOther } from './otherArchive.ts';
import { headOf, planMerge, stepOf, underOurId, type MergePlan, type MergeStep } from './plan.ts';
import { takeSteps, type MergeChoices, type Merged, type MergeWorld } from './take.ts';

/** Both newest records of a well that waits for a choice, parsed but not yet judged. */
export interface BothRecords {
  readonly ours: {
    readonly revision: number;
    readonly changedAt: string;
    readonly document: unknown;
  };
  readonly theirs: {
    readonly revision: number;
    readonly changedAt: string;
    readonly document: unknown;
  };
}

/** A well as the other archive lists it. */
export interface OtherWell {
  readonly number: string;
  readonly name: string;
  readonly village: string;
}

/** A plan with what its wells are called. */
export interface MergeSight extends MergePlan {
  /** By the other archive's ids. */
  readonly wells: Readonly<Record<string, OtherWell>>;
}

export interface MergeDone extends Merged {
  /** Ids of practices, guideline values and backdrops that are otherwise in the other archive. */
  readonly differing: readonly string[];
  readonly wells: MergeSight['wells'];
}

/** Takes other archives in. */
export interface Merging {
  /** What would come, and what has to be chosen. */
  look(file: string): Result<MergeSight>;
  /** Both records of a well that waits for a choice. Refused as `noSuchStep` where it does not. */
  both(file: string, id: string): Result<BothRecords>;
  /**
   * Takes the other archive in, in one transaction. Steps that wait for a choice and have none are
   * left, and come again the next time; once all is taken, another time changes nothing.
   */
  take(file: string, choices: MergeChoices, world: Omit<MergeWorld, 'now'>): Result<MergeDone>;
}

type Handle = Parameters<typeof planMerge>[0];

function wellsOf(theirs: Handle, steps: readonly MergeStep[]): MergeSight['wells'] {
  return Object.fromEntries(
    steps.map(({ id }) => {
      const { number, name, village } = findWell(theirs, id)!;
      return [id, { number, name, village }];
    }),
  );
}

function bothOf(ours: Handle, theirs: Handle, step: MergeStep): BothRecords | undefined {
  if (step.kind !== 'apart' && step.kind !== 'alike') return undefined;
  const ourId = step.kind === 'alike' ? step.ourId : step.id;
  const our = findWell(ours, ourId)!;
  const { record, changedAt } = findRevision(ours, ourId, our.revision)!;
  const head = headOf(theirs, findWell(theirs, step.id)!);
  return {
    ours: { revision: our.revision, changedAt, document: JSON.parse(record) as unknown },
    theirs: {
      revision: head.well.revision,
      changedAt: head.well.changedAt,
      document: JSON.parse(underOurId(head.record, { id: step.id, ourId })) as unknown,
    },
  };
}

function sightOf(ours: Handle, theirs: Handle): MergeSight {
  const plan = planMerge(ours, theirs);
  return { ...plan, wells: wellsOf(theirs, plan.steps) };
}

function bothIn(ours: Handle, theirs: Handle, id: string): Result<BothRecords> {
  const well = findWell(theirs, id);
  const step = well && stepOf(ours, theirs, well);
  const both = step && bothOf(ours, theirs, step);
  if (both) return ok(both);
  return refused(
    'noSuchStep',
    'This well waits for no choice any more. Look at the archive again.',
  );
}

export function mergingOf(
  { reading, writing }: Access,
  file: string,
  world: ArchiveWorld,
): Merging {
  const itself = (other: string): Result<never> | undefined =>
    other === file
      ? refused('sameArchive', 'This is the archive that is open. Choose another one.')
      : undefined;
  return {
    look: (other) =>
      itself(other) ?? reading((ours) => readOther(other, (theirs) => ok(sightOf(ours, theirs)))),
    both: (other, id) =>
      itself(other) ?? reading((ours) => readOther(other, (theirs) => bothIn(ours, theirs, id))),
    take: (other, choices, said) =>
      itself(other) ??
      writing((db) =>
        readOther(other, (theirs) =>
          db
            .transaction((): Result<MergeDone> => {
              const { steps } = planMerge(db, theirs);
              const wells = wellsOf(theirs, steps);
              const differing = bringBeside(db, theirs);
              const sides = { db, theirs, world: { ...said, now: world.now() } };
              return ok({ ...takeSteps(sides, steps, choices), differing, wells });
            })
            .immediate(),
        ),
      ),
  };
}
