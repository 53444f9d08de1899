import { describe, expect, test } from 'vitest';
import { resolveWell } from '../../core/model/resolveWell.ts';
import type { CasingString } from '../../core/record/strings.ts';
import { fileNames, well } from './wells.ts';

/** Lengths less insertions, in whole millimetres; the lowest piece has nothing to go into. */
function tallyMm({ components = [] }: CasingString): number {
  return components.reduce((sum, { count = 1, length = 0, insertion = 0 }, at) => {
    const joints = at === 0 ? count - 1 : count;
    return sum + Math.round(1000 * (count * length - joints * insertion));
  }, 0);
}

const cased = fileNames.filter((name) => well(name).strings);
const headed = cased.filter((name) => well(name).headworks?.casingAboveGround !== undefined);

describe('the demo wells', () => {
  test.each(cased)('%s: the tally is its depth and its stick-up together', (name) => {
    const { strings = [], headworks } = well(name);
    const above = resolveWell(well(name)).strings.map(({ stickUpM }) => stickUpM);
    strings.forEach((string, at) => {
      const bottom = string.set?.by === 'bottom' ? string.set.depth : NaN;
      expect(tallyMm(string)).toBe(Math.round(1000 * (bottom + (above[at] ?? NaN))));
      if (string.measuredDepth !== undefined) expect(string.measuredDepth).toBe(bottom);
    });
    if (headworks?.casingAboveGround !== undefined)
      expect(headworks.casingAboveGround).toBeCloseTo(Math.max(...above), 6);
  });

  test('the tops of the cased wells that are handed over were measured', () => {
    expect(headed).toHaveLength(5);
  });

  test.each(fileNames)('%s: the log runs from the ground to the foot without a gap', (name) => {
    const { log = [], bore } = well(name);
    expect(log.map(({ from }) => from)).toEqual([0, ...log.slice(0, -1).map(({ to }) => to)]);
    expect(log.at(-1)?.to).toBe(bore?.depthReached);
  });

  test.each(fileNames)('%s: what fills the hole runs from the ground to the foot', (name) => {
    const model = resolveWell(well(name));
    const fills = [...model.annulus].sort((a, b) => a.fromM - b.fromM);
    const reached = fills.reduce((to, zone) => (zone.fromM <= to ? Math.max(to, zone.toM) : to), 0);
    expect(reached).toBe(model.bore.depthM);
    expect(fills.some(({ fill }) => fill === 'unrecorded')).toBe(false);
  });

  test.each(fileNames)('%s: no part of it contradicts another', (name) => {
    expect(resolveWell(well(name)).findings).toEqual([]);
  });

  test.each(fileNames)('%s: depths are written to the centimetre', (name) => {
    const { log = [], annulus = [], levels = [] } = well(name);
    const depths = [...log, ...annulus].flatMap(({ from, to }) => [from, to]);
    for (const depth of [...depths, ...levels.map(({ reading }) => reading)])
      expect(Math.abs(depth * 100 - Math.round(depth * 100))).toBeLessThan(1e-6);
  });
});
