import { setImmediate } from 'node:timers/promises';
import { ok, type Refusal, type Result } from '../../../core/base/result.ts';
import type { WellChoice } from '../../../core/contract/importsShape.ts';
import {
  planWell,
  type KnownWell,
  type PlanKind,
  type WellPlan,
} from '../../../core/exchange/plan.ts';
import type { Archive } from '../../archive/archive.ts';
import { stopped, type BringOptions, type Brought, type BroughtWell } from '../../archive/bring.ts';
import type { ComingWell } from './openFiles.ts';

/** A well that comes in, beside what the archive has. */
export interface PlannedWell extends WellPlan {
  readonly well: ComingWell;
}

/** Wells between two looks at whether to stop: some hundredths of a second. */
const eachTime = 100;

/** Plans every well beside the archive as it is now. Refusals: `stopped` and those of the archive. */
export async function planAll(
  archive: Archive,
  wells: readonly ComingWell[],
  { onProgress, signal }: Pick<BringOptions, 'onProgress' | 'signal'> = {},
): Promise<Result<readonly PlannedWell[]>> {
  let trouble: Refusal | undefined;
  const read = <T>(result: Result<T>, none: T): T => {
    if (result.ok) return result.value;
    trouble ??= result.error;
    return none;
  };
  const open = (id: string): KnownWell | undefined => {
    const opened = archive.open(id);
    return opened.ok ? { id, document: opened.value.document as KnownWell['document'] } : undefined;
  };
  const known = {
    byId: (id: string) => (read(archive.isListed(id), false) ? open(id) : undefined),
    byNumber: (number: string) =>
      number === '' ? [] : read(archive.numbered(number), []).flatMap((id) => open(id) ?? []),
  };
  const planned: PlannedWell[] = [];
  for (const well of wells) {
    planned.push({ well, ...planWell(well.record, well.whole, known) });
    if (trouble) return { ok: false, error: trouble };
    if (planned.length % eachTime > 0) continue;
    onProgress?.(planned.length);
    await setImmediate();
    if (signal?.aborted) return stopped();
  }
  return ok(planned);
}

/** How many wells of each kind. */
export function countPlans(planned: readonly PlannedWell[]): Readonly<Record<PlanKind, number>> {
  const counts = { new: 0, same: 0, changed: 0, alike: 0 };
  for (const { kind } of planned) counts[kind] += 1;
  return counts;
}

/** The choice for a well by its place in the plan; of those that are there, leaving is the rule. */
export type ChoiceOf = (planned: PlannedWell, at: number) => WellChoice;

function under(document: Readonly<Record<string, unknown>>, id: string): BroughtWell {
  const identity = document['identity'] as object | undefined;
  return { id, document: { ...document, identity: { ...identity, id } } };
}

function broughtOf(planned: PlannedWell, choice: WellChoice, newId: () => string) {
  const { kind, id, document, well } = planned;
  if (kind === 'new') return under(document, well.record.identity?.id ?? newId());
  if (kind === 'same' || choice === 'leave') return undefined;
  return choice === 'revise'
    ? under(document, id!)
    : under(well.record as unknown as WellPlan['document'], newId());
}

/** Brings in what was planned, all or nothing. */
export function bringPlanned(
  archive: Archive,
  planned: readonly PlannedWell[],
  choiceOf: ChoiceOf,
  { newId, ...options }: BringOptions & { readonly newId: () => string },
): Promise<Result<Brought>> {
  const wells = planned.flatMap((one, at) => broughtOf(one, choiceOf(one, at), newId) ?? []);
  return archive.bring(wells, options);
}
