import type { FittedPoint, MethodResult, TestAnalysis } from '../../../../hydraulics/results.ts';
import type { MethodId } from '../../../../hydraulics/codes.ts';
import { linearAxis, logAxis, type Axis } from '../../../parts/plots/axis.ts';
import type { Plot, PlottedPoint, Value } from '../../../parts/plots/plot.ts';
import { solid } from '../../../pens.ts';
import { resultBy } from './plotsOf.ts';
import type { TestKit } from './testKit.ts';

const mmPerM = 1000;
/** Half of the upright axis at least, of millimetres and of drawdown over rate. */
const leastMm = 1;
const leastPerRate = 1e-6;

type Across = Pick<Plot, 'x' | 'xTitle'>;

/** Where a point lies along the axis that the method was fitted on. */
function placeOf(method: MethodId, { x, minutes }: FittedPoint): number {
  if (method === 'hantushBierschenk') return x;
  return method === 'theis' || method === 'edenHazel' ? minutes : 10 ** x;
}

/** The axis of the plot above where it shows the same fit, else log time. */
function acrossOf(kit: TestKit, { method, points }: MethodResult, above: Plot | undefined): Across {
  if (above && method !== 'edenHazel') return above;
  const x = logAxis(points.map((one) => placeOf(method, one)));
  return { x, xTitle: kit.own.axes.time };
}

/** Nothing in the middle, as far up as down. */
function evenAxis(values: readonly number[], least: number): Axis {
  const far = Math.max(least, ...values.map(Math.abs));
  return linearAxis([-far, far]);
}

/**
 * What is left between reading and method: millimetres, of the line through the ends of steps days
 * a square metre. Undefined where the method goes by too few readings to leave any.
 */
export function residualsPlot(
  kit: TestKit,
  test: TestAnalysis,
  method: MethodId,
  above: Plot | undefined,
): Plot | undefined {
  const { plots, axes } = kit.own;
  const result = resultBy(test, method);
  const bySteps = method === 'hantushBierschenk';
  if (!result || result.points.length < 3) return undefined;
  const pathAt = new Map(test.readings.map(({ minutes, path }) => [minutes, path]));
  const points = result.points
    .map((one): PlottedPoint => {
      const off = (one.read - one.fitted) * (bySteps ? 1 : mmPerM);
      const source = bySteps ? test.path : pathAt.get(one.minutes);
      return { at: [placeOf(method, one), off], ...(source === undefined ? {} : { source }) };
    })
    .filter(({ at: [x, y] }) => Number.isFinite(x) && Number.isFinite(y));
  const { x, xTitle } = acrossOf(kit, result, above);
  const ends = [x.from, x.to].map((at): Value => [at, 0]);
  return {
    title: plots.residuals.replace('{method}', kit.analysis.methods[method]),
    x,
    y: evenAxis(
      points.map(({ at: [, off] }) => off),
      bySteps ? leastPerRate : leastMm,
    ),
    xTitle,
    yTitle: bySteps ? axes.offPerRate : axes.offMm,
    lines: [{ stroke: solid('narrow'), points: ends }],
    points: [{ name: kit.own.key.used, sign: 'dot', points }],
    source: test.path,
  };
}
