import type { Criteria } from '../../../core/layingOut/score.ts';
import type { Problem } from '../../../core/layingOut/problem.ts';
import type { Family, PipeKind } from '../../../core/layingOut/stock.ts';

/** Ground by the centimetre: good, tight or unknown. */
export type GroundKind = 'g' | 't' | 'u';

interface Bundle {
  readonly cm: number;
  readonly cuts: number;
  readonly taken: readonly number[];
  readonly open: number;
}

/** Every bundle of pipes in which at most one is cut, length by length; the slow and sure way. */
function everyBundle(kinds: readonly PipeKind[], inBell: boolean): Bundle[] {
  const wholes = kinds.reduce<number[][]>(
    (all, { count }) =>
      all.flatMap((taken) => Array.from({ length: count + 1 }, (_, one) => [...taken, one])),
    [[]],
  );
  const bundle = (taken: readonly number[], cutKind?: number, cutCm = 0): Bundle | undefined => {
    const all = taken.map((count, at) => (at === cutKind ? count + 1 : count));
    if (all.some((count, at) => count > kinds[at]!.count)) return undefined;
    const pieces = taken.flatMap((count, at) => Array<number>(count).fill(at));
    const lengths = pieces.map((at) => kinds[at]!.lengthCm - kinds[at]!.insertionCm);
    const opens = pieces.map((at, one) => lengths[one]! * kinds[at]!.openCm2PerCm);
    if (cutKind !== undefined) {
      lengths.push(cutCm - kinds[cutKind]!.insertionCm);
      opens.push(lengths.at(-1)! * kinds[cutKind]!.openCm2PerCm);
    }
    // The lowest piece of a string stands in no bell.
    const lowest = pieces[0] ?? cutKind;
    const free = inBell || lowest === undefined ? 0 : kinds[lowest]!.insertionCm;
    const sum = (values: readonly number[]) => values.reduce((total, one) => total + one, 0);
    return {
      cm: sum(lengths) + free,
      cuts: cutKind === undefined ? 0 : 1,
      taken: all,
      open: sum(opens),
    };
  };
  const cut = kinds.flatMap(({ lengthCm, insertionCm }, kind) => {
    const least = Math.max(50, 2 * insertionCm);
    const cuts = Array.from({ length: Math.max(0, lengthCm - least) }, (_, at) => least + at);
    return cuts.flatMap((cm) => wholes.flatMap((taken) => bundle(taken, kind, cm) ?? []));
  });
  return [...wholes.flatMap((taken) => bundle(taken) ?? []), ...cut];
}

/** Tight beds as thick as an aquitard. */
function thickTight(ground: readonly GroundKind[], leastCm: number) {
  const beds: { top: number; foot: number }[] = [];
  let top = 0;
  for (let cm = 0; cm <= ground.length; cm += 1) {
    if (ground[cm] === 't') continue;
    if (cm - top >= leastCm && cm > top) beds.push({ top, foot: cm });
    top = cm + 1;
  }
  return beds;
}

/** Whether slots may stand between two depths, limit by limit. */
function mayStand(problem: Problem, ground: readonly GroundKind[], top: number, foot: number) {
  const { limits, dryCm, pumpingCm } = problem;
  const { packCm, clayCm, sanitaryCm, partingClayCm, tightShare, aquitardCm } = limits;
  if (top < sanitaryCm + limits.clayUnderGroutCm + packCm || top < clayCm + packCm) return false;
  if (top < dryCm + limits.underDryCm || top < pumpingCm + limits.underPumpingCm) return false;
  const beside = ground.slice(top, foot);
  if (beside.filter((one) => one === 't').length > tightShare * (foot - top)) return false;
  if (!beside.includes('g')) return false;
  const tight = thickTight(ground, aquitardCm);
  if (tight.some((bed) => bed.top < foot && bed.foot > top)) return false;
  const firstOpen = ground.findIndex((one) => one !== 't');
  const lastOpen = ground.findLastIndex((one) => one !== 't');
  if (top < firstOpen || foot > lastOpen + 1) return false;
  const roof = tight.findLast((bed) => bed.foot <= top);
  const parts = roof && ground.slice(0, roof.top).includes('g');
  return !parts || top >= roof.top + partingClayCm + packCm;
}

function count(ground: readonly GroundKind[], top: number, foot: number): number {
  return ground.slice(top, foot).filter((one) => one === 'g').length;
}

/** A third of the most good ground under the dry level in one aquifer, but no less than asked. */
function need({ limits, dryCm }: Problem, ground: readonly GroundKind[]): number {
  const tight = thickTight(ground, limits.aquitardCm);
  const edges = [{ top: 0, foot: 0 }, ...tight, { top: ground.length, foot: ground.length }];
  const wet = edges
    .slice(1)
    .map(({ top }, at) => count(ground, Math.max(edges[at]!.foot, dryCm + limits.underDryCm), top));
  const most = Math.max(0, ...wet);
  return Math.min(most, Math.max(Math.ceil(most / 3), limits.screenLeastCm));
}

function criteriaOf(
  problem: Problem,
  ground: readonly GroundKind[],
  [top, foot, open]: readonly [number, number, number],
): { safest: Criteria; mostProductive: Criteria } {
  const good = count(ground, top, foot);
  const level = problem.pumpingCm + Math.max(problem.limits.underPumpingCm, 0);
  const wet = count(ground, Math.max(top, level), foot);
  return {
    safest: [Math.min(good, need(problem, ground)), good - (foot - top), top, open],
    mostProductive: [wet, wet - (foot - top), open, top],
  };
}

/** Slots at a depth with the fewest cuts through plain pipe and the most open area. */
interface Stand {
  top: number;
  foot: number;
  plainCuts: number;
  open: number;
}

function everyStand(problem: Problem, family: Family, ground: readonly GroundKind[]) {
  const { limits } = problem;
  const stands = new Map<string, Stand>();
  const plains = everyBundle(family.plains, true);
  const sumps = everyBundle(family.plains, false).filter(
    ({ cm, cuts, taken }) =>
      cm >= limits.sumpLeastCm &&
      cm <= limits.sumpMostCm &&
      (cuts === 0 || taken.reduce((sum, one) => sum + one, 0) === 1),
  );
  const fits = (a: Bundle, b: Bundle) =>
    family.plains.every((kind, at) => a.taken[at]! + b.taken[at]! <= kind.count);
  for (const slots of everyBundle(family.screens, true)) {
    if (slots.cm === 0 || slots.open < limits.openAreaCm2) continue;
    for (const sump of sumps)
      for (const upper of plains) {
        if (!fits(sump, upper)) continue;
        for (let up = limits.stickUpLeastCm; up <= limits.stickUpMostCm; up += 1) {
          const top = upper.cm - up;
          const foot = top + slots.cm;
          if (top < 0 || foot + sump.cm > family.depthCm) continue;
          const key = `${top} ${foot} ${slots.cuts}`;
          const plainCuts = sump.cuts + upper.cuts;
          const held = stands.get(key);
          if (!held) stands.set(key, { top, foot, plainCuts, open: slots.open });
          else {
            held.plainCuts = Math.min(held.plainCuts, plainCuts);
            held.open = Math.max(held.open, slots.open);
          }
        }
      }
  }
  return [...stands].filter(([, { top, foot }]) => mayStand(problem, ground, top, foot));
}

function isMore(one: Criteria, other: Criteria): boolean {
  const at = one.findIndex((value, index) => Math.abs(value - other[index]!) > 1e-6);
  return at >= 0 && one[at]! > other[at]!;
}

/**
 * The best by trying every string there is, as `aim screenCuts plainCuts`; for one family. Shares
 * no step with the search but the shape of the problem.
 */
export function bestOfEvery(problem: Problem, ground: readonly GroundKind[]) {
  const best = new Map<string, Criteria>();
  for (const [key, { top, foot, plainCuts, open }] of everyStand(
    problem,
    problem.families[0]!,
    ground,
  )) {
    const screenCuts = key.at(-1)!;
    const criteria = criteriaOf(problem, ground, [top, foot, open]);
    for (const aim of ['safest', 'mostProductive'] as const) {
      const cell = `${aim} ${screenCuts} ${plainCuts}`;
      const held = best.get(cell);
      if (!held || isMore(criteria[aim], held)) best.set(cell, criteria[aim]);
    }
  }
  return best;
}
