import type { WellRecord } from '../../record/schema.ts';
import type { PumpingTest } from '../../record/water.ts';
import { plainFigure } from '../figures.ts';
import type { Kit } from '../kit.ts';
import { fact, type Fact } from './fact.ts';

interface Outcome {
  readonly rateM3h: number;
  readonly drawdownM: number;
  readonly minutes: number;
}

/** Rate, duration and last drawdown of a constant-rate test; undefined where one is lacking. */
export function outcomeOf(test: PumpingTest): Outcome | undefined {
  const last = test.series?.at(-1);
  const rateM3h = test.rate ?? last?.rate;
  if (!last || rateM3h === undefined || test.restLevel === undefined) return undefined;
  return { rateM3h, drawdownM: last.reading - test.restLevel, minutes: last.minutes };
}

/** Specific capacity, m³/h for each metre, only where the level fell. */
function outcomeWords(kit: Kit, { rateM3h, drawdownM, minutes }: Outcome): string[] {
  const specific = drawdownM > 0 ? rateM3h / drawdownM : undefined;
  return [
    `${plainFigure(kit, rateM3h, 2)} m³/h`,
    `${plainFigure(kit, minutes / 60, 1)} ${kit.words.hours}`,
    `${kit.words.facts.drawdown} ${plainFigure(kit, drawdownM, 2)} m`,
    specific === undefined ? '' : `${plainFigure(kit, specific, 2)} ${kit.words.facts.perMetre}`,
  ];
}

/** What the constant-rate test showed: rate, hours, drawdown, and rate over drawdown. */
export function testFacts(kit: Kit, record: WellRecord): Fact[] {
  const { facts } = kit.words;
  const tests = record.tests ?? [];
  return tests.flatMap((test, at) => {
    if (test.kind !== 'constantRate') return [];
    const outcome = outcomeOf(test);
    return outcome ? fact(facts.test, outcomeWords(kit, outcome), `tests[${at}]`) : [];
  });
}
