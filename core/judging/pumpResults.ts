import { known } from '../base/known.ts';
import type { WellModel } from '../model/wellModel.ts';
import type { Practice } from '../practice/practice.ts';
import type { PumpResults } from '../practice/rules/results.ts';
import type { Missing } from '../practice/rules/rule.ts';
import type { WellRecord } from '../record/schema.ts';
import { pumpKinds } from '../water/pump/kinds.ts';
import { rankPumps } from '../water/pump/rankPumps.ts';
import type {
  KindJudgement,
  PumpMissing,
  PumpMissingWhat,
  ReasonCode,
} from '../water/pump/ranking.ts';
import type { SaidValues } from '../water/pump/said.ts';
import { recordInputs } from '../water/pump/recordInputs.ts';

/** What a choice of pump misses, as rules name it, for each limit. */
const missingLevels: Partial<Record<PumpMissingWhat, Missing>> = {
  restLevel: { what: 'restLevel', path: 'levels' },
  dryLevel: { what: 'dryLevel', path: 'layingOut.drySeasonLevel' },
  drawdown: { what: 'pumpingLevel', path: 'layingOut.drawdown' },
};
const missingSizes: Partial<Record<PumpMissingWhat, Missing>> = {
  casingInside: { what: 'pipeWall', path: 'strings' },
  strings: { what: 'strings', path: 'strings' },
};
const missingNeed: Partial<Record<PumpMissingWhat, Missing>> = {
  ...missingLevels,
  safeRate: { what: 'testRate', path: 'tests' },
  users: { what: 'users', path: 'site.users' },
};

function missingOf(
  missing: readonly PumpMissing[],
  named: Partial<Record<PumpMissingWhat, Missing>>,
): Missing[] {
  return missing.flatMap(({ what, path }) => {
    const own = named[what];
    return own ? [{ ...own, path: path ?? own.path }] : [];
  });
}

/** The values of the reason of a code that rules a kind out. */
function valuesOf({ reasons }: KindJudgement, ruling: ReasonCode): SaidValues | undefined {
  return reasons.find(({ code, effect }) => code === ruling && effect === 'rulesOut')?.values;
}

/**
 * The judgement that speaks for a kind of the record, which may stand for several that are ranked:
 * the most suitable; where all are ruled out, the one that lifts from deepest.
 */
function speaksFor(kind: string, ranked: readonly KindJudgement[]): KindJudgement | undefined {
  const ids = pumpKinds.filter(({ recordKind }) => recordKind === kind).map(({ id }) => id);
  const own = ranked.filter((one) => ids.includes(one.kind));
  const [best] = own;
  return best?.verdict === 'ruledOut' ? own.find((one) => one.kind === ids.at(-1)) : best;
}

/** How the kind of pump that a record names stands to its lift, the casing and what users need. */
export function pumpResults(
  record: WellRecord,
  model: WellModel,
  practice: Practice,
): PumpResults | undefined {
  const { kind } = record.pump ?? {};
  if (kind === undefined || kind === 'other') return undefined;
  const { kinds } = rankPumps(record, model, practice, recordInputs(record).inputs);
  const spoken = speaksFor(kind, kinds);
  const data = pumpKinds.find(({ id }) => id === spoken?.kind);
  if (!spoken || !data) return undefined;
  const { missing } = spoken;
  const high = valuesOf(spoken, 'liftBeyond');
  const lift = {
    ...known({ against: high && { liftM: Number(high['liftM']), mostM: Number(high['mostM']) } }),
    missing: high ? [] : missingOf(missing, missingLevels),
  };
  // Of a kind that does not reach the water nothing else is judged.
  if (high) return { lift };
  const narrow = valuesOf(spoken, 'casingNarrow');
  const casing = {
    ...known({
      against: narrow && {
        insideMm: Number(narrow['insideMm']),
        leastMm: Number(narrow['leastMm']),
      },
    }),
    missing: narrow ? [] : missingOf(missing, missingSizes),
  };
  const low = valuesOf(spoken, 'flowTooLow');
  const flow = {
    ...known({ against: low && { hours: Number(low['hours']) } }),
    missing: low ? [] : missingOf(missing, missingNeed),
  };
  // A motor has no lift of its own, and what it gives is a matter of its size.
  return data.drive === 'hand' ? { lift, casing, flow } : { casing };
}
