import { gapsIn, isRange, roundDepth, type Range } from '../../../model/range.ts';
import type { WellModel } from '../../../model/wellModel.ts';
import { figureOf, judged, unjudged, type Rule } from '../rule.ts';
import { broken } from '../ruleCodes.ts';

/** A sample speaks for as much ground as one is asked for, about its own middle. */
function spokenFor({ samples, strata }: WellModel, eachM: number): Range[] {
  const taken = samples.map(({ fromM, toM }) => ({
    fromM: roundDepth((fromM + toM - eachM) / 2),
    toM: roundDepth((fromM + toM + eachM) / 2),
  }));
  const ticked = strata.filter(({ interval }) => interval.sampled);
  return [...taken, ...ticked].filter(isRange);
}

/**
 * A sample for each metre down to the foot of the hole. An interval of the log that is marked as
 * sampled counts whole, since nobody wrote how many bags it filled. What is less than a whole
 * metre (or what else is asked for) is let pass.
 */
export const samplesSparse: Rule = {
  id: 'samples.sparse',
  figures: ['sampleEachM'],
  judge(well) {
    const eachM = figureOf(well, 'sampleEachM');
    const { bore, strata } = well.model;
    const spoken = spokenFor(well.model, eachM);
    if (spoken.length === 0) return unjudged({ what: 'samples', path: 'samples' });
    if (bore.depthM === undefined)
      return unjudged({ what: 'boreDepth', path: 'bore.depthReached' });
    const bare = gapsIn(spoken, 0, bore.depthM).filter(
      ({ fromM, toM }) => roundDepth(toM - fromM) >= eachM,
    );
    const [first] = bare;
    if (!first) return judged([]);
    const bareM = roundDepth(bare.reduce((sum, { fromM, toM }) => sum + toM - fromM, 0));
    const logged = strata.find(({ fromM, toM }) => fromM <= first.fromM && first.fromM < toM);
    const path = well.record.samples?.length ? 'samples' : (logged?.path ?? 'log');
    return judged([broken('samples.sparse', 'warning', path, { bareM, eachM }, first)]);
  },
};
