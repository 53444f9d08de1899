import { describe, expect, it } from 'vitest';
import type { Finding } from '../../../core/base/finding.ts';
import { explanationOf, unexplained } from '../../../core/record/explained.ts';

const finding: Finding = {
  code: 'sealTooShort',
  severity: 'error',
  path: 'annulus[1]',
  values: { lengthM: 0.4, leastM: 1 },
};
const explanation = {
  code: 'sealTooShort',
  path: 'annulus[1]',
  values: 'leastM=1; lengthM=0.4',
  because: 'Clay ran out; the pack was topped with bentonite by agreement.',
};

describe('why a finding remains', () => {
  it('is found by its code, place and values, in any order', () => {
    expect(explanationOf(finding, [explanation])).toBe(explanation.because);
    expect(explanationOf(finding, undefined)).toBeUndefined();
  });

  it('no longer holds when place, code or a value is another', () => {
    const others: Finding[] = [
      { ...finding, code: 'sealMissing' },
      { ...finding, path: 'annulus[0]' },
      { ...finding, values: { lengthM: 0.2, leastM: 1 } },
      { ...finding, values: { lengthM: 0.4 } },
    ];
    for (const other of others) expect(explanationOf(other, [explanation])).toBeUndefined();
  });

  it('is not a few spaces', () => {
    expect(explanationOf(finding, [{ ...explanation, because: '  ' }])).toBeUndefined();
    expect(explanationOf(finding, [{ code: finding.code, path: finding.path }])).toBeUndefined();
  });

  it('is asked for of errors alone', () => {
    const warning: Finding = { ...finding, severity: 'warning' };
    const other: Finding = { ...finding, code: 'screenInClay' };
    expect(unexplained([finding, warning, other], [explanation])).toEqual([other]);
    expect(unexplained([finding, warning], undefined)).toEqual([finding]);
  });
});
