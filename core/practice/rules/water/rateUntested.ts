import type { WellRecord } from '../../../record/schema.ts';
import { isOver } from '../casing/compare.ts';
import { broken } from '../ruleCodes.ts';
import { judged, notApplicable, unjudged, type Rule } from '../rule.ts';
import { givesWater, stageOf } from '../stage.ts';

interface AskedRate {
  readonly path: string;
  readonly rate: number;
}

/** The highest rate that is asked of the well, cubic metres an hour. */
function askedRate({ pump, layingOut }: WellRecord): AskedRate | undefined {
  const rates = [
    { path: 'pump.rate', rate: pump?.rate },
    { path: 'layingOut.rate', rate: layingOut?.rate },
  ].filter((one): one is AskedRate => one.rate !== undefined);
  return rates.sort((a, b) => b.rate - a.rate)[0];
}

/** Rates that the pumping tests tell, as a whole or reading by reading. */
function testedRates({ tests = [] }: WellRecord): number[] {
  return tests
    .flatMap(({ rate, series = [] }) => [rate, ...series.map((reading) => reading.rate)])
    .filter((rate) => rate !== undefined);
}

/** The well is asked for no more than a pumping test drew from it. */
export const rateUntested: Rule = {
  id: 'rate.untested',
  figures: [],
  judge({ record }) {
    const asked = askedRate(record);
    if (!asked || !givesWater(record)) return notApplicable;
    const rates = testedRates(record);
    if (rates.length === 0)
      return stageOf(record) === 'coming'
        ? notApplicable
        : unjudged({ what: 'testRate', path: 'tests' });
    const tested = Math.max(...rates);
    const { path, rate } = asked;
    return judged(
      isOver(rate, tested) ? [broken('rate.untested', 'warning', path, { rate, tested })] : [],
    );
  },
};
