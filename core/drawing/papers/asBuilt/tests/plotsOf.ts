import { curveAt } from '../../../../hydraulics/fit/theisFit.ts';
import { pumpingAxis, recoveryAxis } from '../../../../hydraulics/methods/straightLine.ts';
import type { MethodId } from '../../../../hydraulics/codes.ts';
import type { MethodResult, TestAnalysis, TestReading } from '../../../../hydraulics/results.ts';
import type { OnAxis } from '../../../../hydraulics/methods/chooseReadings.ts';
import { linearAxis, logAxis, type Axis } from '../../../parts/plots/axis.ts';
import type { LineSeries, Plot, PlottedPoint, Value } from '../../../parts/plots/plot.ts';
import { chained, dashed, solid } from '../../../pens.ts';
import type { TestKit } from './testKit.ts';

export function resultBy({ results }: TestAnalysis, method: MethodId): MethodResult | undefined {
  return results.find((one) => one.method === method);
}

const isFinite = ([x, y]: Value) => Number.isFinite(x) && Number.isFinite(y);

function pointsOf(
  readings: readonly TestReading[],
  valueOf: (reading: TestReading, at: number) => Value,
): PlottedPoint[] {
  return readings
    .map((reading, at) => ({ at: valueOf(reading, at), source: reading.path }))
    .filter(({ at }) => isFinite(at));
}

const xs = (points: readonly PlottedPoint[]) => points.map(({ at: [x] }) => x);
const ys = (points: readonly PlottedPoint[]) => points.map(({ at: [, y] }) => y);

/** Places along a logarithmic axis where a curve is reckoned. */
function along({ from, to }: Axis, count = 60): number[] {
  const cycles = Math.log10(to / from);
  return Array.from({ length: count + 1 }, (_, at) => from * 10 ** ((cycles * at) / count));
}

/** Theis's curve at some minutes; none where the fit gave none. */
function theisCurve({ own }: TestKit, test: TestAnalysis, minutes: readonly number[]) {
  const curve = resultBy(test, 'theis')?.curve;
  if (!curve) return [];
  const points = minutes
    .filter((one) => one > 0)
    .map((one): Value => [one, curveAt(curve, test.rates, one)])
    .filter(isFinite);
  return [{ name: own.key.curve, stroke: solid('medium'), points }];
}

/** Upright lines at both ends of what a line was drawn through. */
function windowLines({ own }: TestKit, from: number, to: number, y: Axis): LineSeries[] {
  const upright = (x: number): Value[] => [
    [x, y.from],
    [x, y.to],
  ];
  const stroke = chained('thin');
  return [
    { name: own.key.window, stroke, points: upright(from) },
    { stroke, points: upright(to) },
  ];
}

/** Level against time, both in equal steps; a recovery with what is left of the drawdown. */
export function linearPlot(kit: TestKit, test: TestAnalysis): Plot | undefined {
  const { axes, plots, key } = kit.own;
  const points = pointsOf(test.readings, ({ minutes, drawdownM }) => [minutes, drawdownM]);
  if (points.length < 2) return undefined;
  const recovers = test.kind === 'recovery';
  const x = linearAxis(xs(points));
  return {
    title: recovers ? plots.residual : plots.linear,
    x,
    y: linearAxis(ys(points), { backwards: true }),
    xTitle: recovers ? axes.sinceStop : axes.time,
    yTitle: recovers ? axes.residual : axes.drawdown,
    lines: [],
    points: [{ name: key.readings, sign: 'ring', points }],
    source: test.path,
  };
}

interface SemiLog {
  readonly on: OnAxis;
  readonly result: MethodResult | undefined;
  readonly title: string;
  readonly xTitle: string;
  readonly yTitle: string;
}

/** Readings on the axis of a straight line, the line, and the readings that it was drawn through. */
function semiLogPlot(kit: TestKit, test: TestAnalysis, of: SemiLog): Plot | undefined {
  const { key } = kit.own;
  const { on, result } = of;
  const usedMinutes = new Set(result?.points.map(({ minutes }) => minutes));
  const all = pointsOf(on.readings, (_, at) => [10 ** on.x[at]!, on.y[at]!]);
  if (all.length < 2) return undefined;
  const used = pointsOf(
    on.readings.filter(({ minutes }) => usedMinutes.has(minutes)),
    ({ minutes }) => {
      const at = on.readings.findIndex((one) => one.minutes === minutes);
      return [10 ** on.x[at]!, on.y[at]!];
    },
  );
  const sources = new Set(used.map(({ source }) => source));
  const others = all.filter(({ source }) => !sources.has(source));
  const x = logAxis(xs(all));
  const y = linearAxis(ys(all), { backwards: true });
  const line = result?.line;
  const lineOver = (value: number): Value => [value, line!.at0 + line!.slope * Math.log10(value)];
  const windowXs = xs(used);
  return {
    title: of.title,
    x,
    y,
    xTitle: of.xTitle,
    yTitle: of.yTitle,
    lines: [
      ...(line
        ? [{ name: key.line, stroke: solid('medium'), points: [x.from, x.to].map(lineOver) }]
        : []),
      ...(windowXs.length > 0
        ? windowLines(kit, Math.min(...windowXs), Math.max(...windowXs), y)
        : []),
    ],
    points: [
      { name: line ? key.others : key.readings, sign: 'ring', points: others },
      { name: key.used, sign: 'dot', points: used },
    ],
    source: test.path,
  };
}

/** Drawdown against log time with Cooper and Jacob's line. */
export function pumpingSemiLog(kit: TestKit, test: TestAnalysis): Plot | undefined {
  const { axes, plots } = kit.own;
  const on = pumpingAxis(test);
  if (!on) return undefined;
  return semiLogPlot(kit, test, {
    on,
    result: resultBy(test, 'cooperJacob'),
    title: plots.semiLog,
    xTitle: test.rates.length > 1 ? axes.superposed : axes.time,
    yTitle: axes.drawdown,
  });
}

/** Residual drawdown against log t/t′ with Theis's line. */
export function recoverySemiLog(kit: TestKit, test: TestAnalysis): Plot | undefined {
  const { axes, plots } = kit.own;
  const on = recoveryAxis(test);
  if (!on) return undefined;
  return semiLogPlot(kit, test, {
    on,
    result: resultBy(test, 'theisRecovery'),
    title: plots.recovery,
    xTitle: axes.ratio,
    yTitle: axes.residual,
  });
}

/** Drawdown with Theis's curve, and the derivative, on logarithmic axes. */
export function logLogPlot(kit: TestKit, test: TestAnalysis): Plot | undefined {
  const { axes, plots, key } = kit.own;
  const above = ({ at: [x, y] }: PlottedPoint) => x > 0 && y > 0;
  const points = pointsOf(test.readings, ({ minutes, drawdownM }) => [minutes, drawdownM]);
  const drawdowns = points.filter(above);
  if (drawdowns.length < 2) return undefined;
  const slopes = (test.derivative?.points ?? [])
    .map(({ minutes, derivativeM }): PlottedPoint => ({ at: [minutes, derivativeM] }))
    .filter((one) => above(one) && isFinite(one.at));
  const x = logAxis(xs(drawdowns));
  return {
    title: plots.logLog,
    x,
    y: logAxis([...ys(drawdowns), ...ys(slopes)]),
    xTitle: axes.time,
    yTitle: axes.both,
    lines: theisCurve(kit, test, along(x)),
    points: [
      { name: key.readings, sign: 'ring', points: drawdowns },
      { name: key.derivative, sign: 'cross', points: slopes },
    ],
    source: test.path,
  };
}

/** Drawdown over rate at the ends of the steps, with the line that tells the losses. */
export function stepsPlot(kit: TestKit, test: TestAnalysis): Plot | undefined {
  const { axes, plots, key } = kit.own;
  const result = resultBy(test, 'hantushBierschenk');
  if (!result?.line) return undefined;
  const { slope, at0 } = result.line;
  const points = result.points
    .map(({ x, read }): PlottedPoint => ({ at: [x, read], source: test.path }))
    .filter(({ at }) => isFinite(at));
  const x = linearAxis(xs(points));
  const ends = [x.from, x.to].map((one): Value => [one, at0 + slope * one]);
  return {
    title: plots.steps,
    x,
    y: linearAxis([...ys(points), ...ends.map(([, y]) => y)]),
    xTitle: axes.rate,
    yTitle: axes.perRate,
    lines: [{ name: key.line, stroke: dashed('narrow'), points: ends }],
    points: [{ name: key.used, sign: 'dot', points }],
    source: test.path,
  };
}
