import { limits } from '../limits.ts';
import type { Estimate, MethodResult, TestReading } from '../results.ts';
import { intervalLevel } from '../special/studentT.ts';
import { assumed } from './said.ts';

const hoursPerDay = 24;

/** The last reading that water was pumped at. */
function lastPumped(readings: readonly TestReading[]): TestReading | undefined {
  return readings.findLast(({ rateM3d = 0 }) => rateM3d > 0);
}

function fromLast(last: TestReading) {
  const { minutes } = last;
  return {
    used: { fromMin: minutes, toMin: minutes, count: 1, chosen: 'last' as const },
    points: [],
    checks: [],
  };
}

/** Specific capacity Q/s at the last reading; it falls with time and with the rate. */
export function specificCapacity(readings: readonly TestReading[]): MethodResult | undefined {
  const last = lastPumped(readings);
  if (!last) return undefined;
  const value = last.rateM3d! / hoursPerDay / last.drawdownM;
  return {
    method: 'specificCapacity',
    estimates: [{ id: 'specificCapacity', value, unit: 'm³/h/m' }],
    ...fromLast(last),
    source: 'common',
    assumptions: [],
  };
}

/** T = 1.22 Q/s at the last reading, half to double. Source: Logan 1964 (from memory). */
export function logan(readings: readonly TestReading[]): MethodResult | undefined {
  const last = lastPumped(readings);
  if (!last) return undefined;
  const value = (limits.logan * last.rateM3d!) / last.drawdownM;
  const { loganFactor } = limits;
  const estimate: Estimate = {
    id: 'transmissivity',
    value,
    unit: 'm²/d',
    interval: {
      lowest: value / loganFactor,
      highest: value * loganFactor,
      level: intervalLevel,
      basis: 'spread',
    },
  };
  return {
    method: 'logan',
    estimates: [estimate],
    ...fromLast(last),
    source: 'logan1964',
    assumptions: [assumed('nearSteady'), assumed('wellLossIgnored')],
  };
}
