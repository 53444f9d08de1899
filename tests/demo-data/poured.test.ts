import { expect, test } from 'vitest';
import { resolveWell } from '../../core/model/resolveWell.ts';
import { fileNames, well } from './wells.ts';

/** Poured over computed, of each fill of a well that was poured. */
function ratios(name: string): number[] {
  return resolveWell(well(name)).annulus.flatMap(({ pouredLitres, litres }) =>
    pouredLitres === undefined || litres === undefined ? [] : [pouredLitres / litres],
  );
}

const bridged = 'sixty-intervals-58m.json';
const sound = fileNames.filter((name) => name !== bridged && name !== 'laid-out-45m.json');

// 10 to 25 % over theory is usual: common practice.
test.each(sound)('%s: what was poured is 0 to 20 % above what was computed', (name) => {
  const all = ratios(name);
  expect(all.length).toBeGreaterThan(0);
  expect(Math.min(...all)).toBeGreaterThan(1);
  expect(Math.max(...all)).toBeLessThan(1.2);
});

test('one pack took far too little, which hints at a bridge', () => {
  const short = ratios(bridged).filter((ratio) => ratio < 1);
  expect(short).toHaveLength(1);
  expect(short[0]).toBeLessThan(0.7);
});
