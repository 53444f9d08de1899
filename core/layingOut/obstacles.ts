import type { FigureId } from '../practice/figures.ts';
import type { Practice } from '../practice/practice.ts';
import { metresOf } from './centimetres.ts';
import type { Limits } from './limits.ts';
import type { Problem } from './problem.ts';
import type { Obstacle, ObstacleCode, SaidValues } from './proposal.ts';
import { isPossible } from './search.ts';
import type { Family, PipeKind } from './stock.ts';

/** A limit, and the problem as it would be without it. */
interface Waiver {
  readonly code: ObstacleCode;
  readonly figure?: FigureId;
  readonly values: SaidValues;
  lift(problem: Problem): Problem;
}

function withLimits(problem: Problem, limits: Partial<Limits>): Problem {
  return { ...problem, limits: { ...problem.limits, ...limits } };
}

function withFamilies(problem: Problem, change: (family: Family) => Family): Problem {
  return { ...problem, families: problem.families.map(change) };
}

/** As many pipes as the hole could ever take. */
function plenty(kinds: readonly PipeKind[], { holeCm }: Problem): PipeKind[] {
  return kinds.map((kind) => ({ ...kind, count: Math.ceil(holeCm / kind.lengthCm) + 1 }));
}

function metresOn(families: readonly Family[], of: 'plains' | 'screens'): number {
  const cm = families.map((family) =>
    family[of].reduce((sum, { count, lengthCm }) => sum + count * lengthCm, 0),
  );
  return metresOf(Math.max(0, ...cm));
}

function ofPipes({ families }: Problem): Waiver[] {
  return [
    {
      code: 'screensTooFew',
      values: { screenM: metresOn(families, 'screens') },
      lift: (problem) =>
        withFamilies(problem, (one) => ({ ...one, screens: plenty(one.screens, problem) })),
    },
    {
      code: 'plainPipesTooFew',
      values: { plainM: metresOn(families, 'plains') },
      lift: (problem) =>
        withFamilies(problem, (one) => ({ ...one, plains: plenty(one.plains, problem) })),
    },
  ];
}

function ofHole({ holeCm, limits }: Problem, practice: Practice): Waiver[] {
  const { sumpLeastCm, sumpMostCm } = limits;
  return [
    {
      code: 'holeTooShallowForSump',
      figure: 'sumpLeastM',
      values: { sumpM: metresOf(sumpLeastCm), holeM: metresOf(holeCm) },
      lift: (problem) => ({
        ...withFamilies(problem, (one) => ({ ...one, depthCm: one.depthCm + sumpMostCm })),
        holeCm: problem.holeCm + sumpMostCm,
      }),
    },
    {
      code: 'annulusTooNarrow',
      figure: 'annulusGapGraveMm',
      values: { gapMm: practice.figures.annulusGapGraveMm.value },
      lift: (problem) => withFamilies(problem, (one) => ({ ...one, depthCm: problem.holeCm })),
    },
  ];
}

function ofSeals({
  limits: { packCm, clayUnderGroutCm, sanitaryCm, partingClayCm },
}: Problem): Waiver[] {
  const [packM, clayM, sealM] = [packCm, clayUnderGroutCm, sanitaryCm].map(metresOf);
  return [
    {
      code: 'noRoomForPackAndSeals',
      figure: 'packAboveScreenM',
      values: { packM: packM!, clayM: clayM!, sealM: sealM! },
      lift: (problem) =>
        withLimits(problem, { packCm: 0, clayCm: 0, clayUnderGroutCm: 0, sanitaryCm: 0 }),
    },
    {
      code: 'noRoomForPartingSeal',
      figure: 'aquitardM',
      values: { packM: packM!, clayM: metresOf(partingClayCm) },
      lift: (problem) => withLimits(problem, { partingClayCm: -Infinity }),
    },
  ];
}

function ofWater({ dryCm, pumpingCm }: Problem, practice: Practice): Waiver[] {
  const { entranceVelocityMs } = practice.figures;
  return [
    {
      code: 'entranceTooFast',
      figure: 'entranceVelocityMs',
      values: { velocityMs: entranceVelocityMs.value },
      lift: (problem) => withLimits(problem, { openAreaCm2: 0 }),
    },
    {
      code: 'groundAbovePumpingLevel',
      figure: 'screenUnderPumpingLevelM',
      values: { levelM: metresOf(pumpingCm) },
      lift: (problem) => withLimits(problem, { underPumpingCm: -Infinity }),
    },
    {
      code: 'groundAboveDryLevel',
      figure: 'screenUnderDryLevelM',
      values: { levelM: metresOf(dryCm) },
      lift: (problem) => withLimits(problem, { underDryCm: -Infinity, underPumpingCm: -Infinity }),
    },
    {
      code: 'tooMuchTightGround',
      figure: 'screenInTightShare',
      values: { percent: practice.figures.screenInTightShare.value * 100 },
      lift: (problem) => withLimits(problem, { tightShare: 1 }),
    },
  ];
}

function say({ code, figure, values }: Waiver): Obstacle {
  return { code, ...(figure ? { figure } : {}), values };
}

function lifted(problem: Problem, waivers: readonly Waiver[]): Problem {
  return waivers.reduce((held, waiver) => waiver.lift(held), problem);
}

/** Those without which nothing is possible even where all the others are lifted. */
function allNeeded(problem: Problem, waivers: readonly Waiver[]): readonly Waiver[] {
  return waivers.reduce<readonly Waiver[]>((kept, waiver) => {
    const others = kept.filter((one) => one !== waiver);
    return isPossible(lifted(problem, others)) ? others : kept;
  }, waivers);
}

/**
 * Which limits stand in the way where no completion meets them: each that would do to lift alone;
 * where none does, the fewest that have to be lifted together.
 */
export function obstaclesOf(problem: Problem, practice: Practice): Obstacle[] {
  if (problem.ground.aquifers.length === 0) return [{ code: 'noConductingGround', values: {} }];
  const waivers = [
    ...ofPipes(problem),
    ...ofHole(problem, practice),
    ...ofSeals(problem),
    ...ofWater(problem, practice),
  ];
  const alone = waivers.filter((waiver) => isPossible(waiver.lift(problem)));
  if (alone.length > 0) return alone.map(say);
  if (isPossible(lifted(problem, waivers))) return allNeeded(problem, waivers).map(say);
  return [{ code: 'aquiferTooThin', values: {} }];
}
