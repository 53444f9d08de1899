import type { Centimetres } from './centimetres.ts';
import type { Bed } from './ground.ts';
import { never, StringFitter, type Fitted } from './fitString.ts';
import { PlainPipes } from './plainPipes.ts';
import { isOpenTo, screenable, type Problem } from './problem.ts';
import { aims, compare, judgesOf, type Aim, type Criteria } from './score.ts';
import { stretchesOf, type Stretch } from './screens.ts';
import type { Family } from './stock.ts';

/** A completion that meets the limits: the best of its aim among those of as many cuts. */
export interface Found {
  readonly aim: Aim;
  readonly family: Family;
  readonly stretch: Stretch;
  readonly topCm: Centimetres;
  readonly footCm: Centimetres;
  readonly criteria: Criteria;
  /** Cuts through screens, 0 or 1, and through plain pipes, 0 to 2. */
  readonly screenCuts: number;
  readonly plainCuts: number;
}

function isBetter(criteria: readonly number[], held: Found | undefined): boolean {
  return held === undefined || compare(criteria, held.criteria) > 0;
}

/** What is the best so far, by aim and cuts. */
class Bests {
  private readonly held: (Found | undefined)[] = [];

  at(aim: number, screenCuts: number, plainCuts: number): Found | undefined {
    return this.held[(aim * 2 + screenCuts) * never + plainCuts];
  }

  hold(found: Found) {
    const { aim, screenCuts, plainCuts } = found;
    this.held[(aims.indexOf(aim) * 2 + screenCuts) * never + plainCuts] = found;
  }

  all(): Found[] {
    return this.held.flatMap((found) => found ?? []);
  }
}

/** Deepest that a string of a family may stand. */
function depthOf({ depthCm }: Family, { holeCm }: Problem): Centimetres {
  return Math.min(depthCm, holeCm);
}

function fitterOf(family: Family, problem: Problem): StringFitter {
  const depthCm = depthOf(family, problem);
  const plains = new PlainPipes(family.plains, depthCm + problem.limits.stickUpMostCm);
  return new StringFitter(plains, problem.limits, depthCm);
}

/** A completion as it is met with; true ends the search. */
type Visit = (
  family: Family,
  stretch: Stretch,
  topCm: Centimetres,
  footCm: Centimetres,
  screenCuts: number,
  plainCuts: number,
) => boolean;

/** A family with what is worked out once for it. */
interface Kit {
  readonly family: Family;
  readonly fitter: StringFitter;
  readonly beds: readonly Bed[];
  /** Of whole screens, and with one cut; the shorter first. */
  readonly stretches: readonly (readonly Stretch[])[];
}

/** Nothing for a family whose pipes complete no string at any depth that may be screened. */
function kitOf(problem: Problem, family: Family): Kit | undefined {
  const fitter = fitterOf(family, problem);
  const all = screenable(problem, depthOf(family, problem));
  const beds = all.filter(({ topCm, footCm }) => fitter.isAnyPossible(topCm, footCm));
  if (beds.length === 0) return undefined;
  const thickestCm = Math.max(...beds.map(({ topCm, footCm }) => footCm - topCm));
  const stretches = stretchesOf(family.screens, thickestCm).map((made) =>
    made.filter(({ openCm2 }) => openCm2 >= problem.limits.openAreaCm2),
  );
  return { family, fitter, beds, stretches };
}

/**
 * Visits every stretch of slots that the screens make at every depth of a bed, to the centimetre,
 * and that meets the limits and is completed with the plain pipes on site. True where it was ended.
 */
function visitBed(
  problem: Problem,
  { family, fitter, stretches }: Kit,
  { topCm: highestCm, footCm: lowestCm }: Bed,
  visit: Visit,
): boolean {
  for (const [screenCuts, made] of stretches.entries())
    for (let footCm = highestCm + 1; footCm <= lowestCm; footCm += 1) {
      const cutsByTop = fitter.cutsByTop(footCm);
      if (!cutsByTop) continue;
      for (const stretch of made) {
        const topCm = footCm - stretch.lengthCm;
        if (topCm < highestCm) break;
        const plainCuts = cutsByTop[topCm]!;
        if (plainCuts >= never || !isOpenTo(problem, topCm, footCm)) continue;
        if (visit(family, stretch, topCm, footCm, screenCuts, plainCuts)) return true;
      }
    }
  return false;
}

function visitAll(problem: Problem, visit: Visit): boolean {
  return problem.families
    .filter(({ plains, screens }) => plains.length > 0 && screens.length > 0)
    .flatMap((family) => kitOf(problem, family) ?? [])
    .some((kit) => kit.beds.some((bed) => visitBed(problem, kit, bed, visit)));
}

/** Whether any completion meets the limits. */
export function isPossible(problem: Problem): boolean {
  return visitAll(problem, () => true);
}

/** The best completions of each aim, one for each number of cuts through screens and plain pipes. */
export function search(problem: Problem): Found[] {
  const bests = new Bests();
  const judges = judgesOf(problem);
  const scored = [0, 0, 0, 0];
  visitAll(problem, (family, stretch, topCm, footCm, screenCuts, plainCuts) => {
    for (let at = 0; at < aims.length; at += 1) {
      const aim = aims[at]!;
      judges[aim](topCm, footCm, stretch.openCm2, scored);
      if (!isBetter(scored, bests.at(at, screenCuts, plainCuts))) continue;
      const criteria = [...scored] as unknown as Criteria;
      bests.hold({ aim, family, stretch, topCm, footCm, criteria, screenCuts, plainCuts });
    }
    return false;
  });
  return bests.all();
}

/** The plain pipe of a completion that was found. */
export function fitFound({ family, topCm, footCm }: Found, problem: Problem): Fitted {
  const fitted = fitterOf(family, problem).fit(topCm, footCm);
  if (!fitted) throw new Error('A completion was found that no pipes make.');
  return fitted;
}
