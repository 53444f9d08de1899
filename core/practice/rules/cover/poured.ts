import type { Finding } from '../../../base/finding.ts';
import {
  figureOf,
  judged,
  notApplicable,
  type JudgedWell,
  type Rule,
  type Verdict,
} from '../rule.ts';
import { broken } from '../ruleCodes.ts';
import { pouredVolumes, type PouredFill } from './pouredVolumes.ts';

const exact = 1e9;

/** Share of the space that was poured; so that what is meant to be at the limit is at it. */
function ratioOf({ poured, computed }: PouredFill): number {
  return Math.round((poured / computed) * exact) / exact;
}

/** To a tenth, as a sentence can bear. */
function tenth(value: number): number {
  return Math.round(value * 10) / 10;
}

function findingOf(code: 'poured.little' | 'poured.much', one: PouredFill, limit: number): Finding {
  const { fill, path, fromM, toM, poured, computed } = one;
  const values = {
    fill,
    poured: tenth(poured),
    computed: tenth(computed),
    percent: tenth(ratioOf(one) * 100),
    limitPercent: tenth(limit * 100),
  };
  return broken(code, 'warning', path, values, { fromM, toM });
}

function judgeVolumes(well: JudgedWell, check: (one: PouredFill) => Finding[]): Verdict {
  const { fills, missing } = pouredVolumes(well);
  if (fills.length === 0 && missing.length === 0) return notApplicable;
  return judged(fills.flatMap(check), missing);
}

/** As much was poured as the space holds; less tells of a bridge with a hollow under it. */
export const pouredLittle: Rule = {
  id: 'poured.little',
  figures: ['pouredLeastRatio'],
  judge: (well) => {
    const least = figureOf(well, 'pouredLeastRatio');
    return judgeVolumes(well, (one) =>
      ratioOf(one) < least ? [findingOf('poured.little', one, least)] : [],
    );
  },
};

/**
 * Not much more was poured than the space holds; else the hole is wider than thought or the fill
 * goes astray. Where whole sacks were counted, less than one sack over is no sign.
 */
export const pouredMuch: Rule = {
  id: 'poured.much',
  figures: ['pouredMostRatio'],
  judge: (well) => {
    const most = figureOf(well, 'pouredMostRatio');
    return judgeVolumes(well, (one) => {
      const overSack = one.poured - one.computed >= (one.sack ?? 0);
      return ratioOf(one) > most && overSack ? [findingOf('poured.much', one, most)] : [];
    });
  },
};
