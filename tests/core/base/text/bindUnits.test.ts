import { expect, it } from 'vitest';
import { bindUnits } from '../../../../core/base/text/bindUnits.ts';

it('a unit stays on the line of its figure, other words do not', () => {
  const bound = (text: string) => bindUnits(text).replaceAll('\u00a0', '_');
  expect(bound('{a} m of {b} m³/h in {c} h, {d} % more')).toBe(
    '{a}_m of {b}_m³/h in {c}_h, {d}_% more',
  );
  expect(bound('{users} metres and {count} hours; a m')).toBe(
    '{users} metres and {count} hours; a m',
  );
});
