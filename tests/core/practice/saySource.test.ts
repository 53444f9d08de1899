import { describe, expect, it } from 'vitest';
import type { Finding } from '../../../core/base/finding.ts';
import { holdPractice } from '../../../core/practice/holdPractice.ts';
import { rules } from '../../../core/practice/rules/index.ts';
import { saySource } from '../../../core/practice/saySource.ts';
import { shippedPractices } from '../../../core/practice/shippedPractices.ts';

const held = holdPractice('machineRock', shippedPractices);
if (!held.ok) throw new Error(held.error.sentence);
const said = (code: string, language: 'en' | 'fr' = 'en') => {
  const finding: Finding = { code, severity: 'warning', path: '', values: {} };
  return saySource(finding, held.value, language);
};

describe('the source of a finding', () => {
  it('is that of the figures that its rule compares with, as the practice has them', () => {
    expect(said('seal.short')).toBe(
      'common practice; Well codes of several states, surface seal of about 6 m (from memory, not looked up)',
    );
    expect(said('seal.short', 'fr')).toContain('usage courant du métier');
  });

  it('is named once where several figures have it', () => {
    expect(said('gap.narrow')).toBe('common practice');
  });

  it('is the trade where a rule has no figure, and the record where it speaks of itself', () => {
    expect(said('foot.open')).toBe('Common practice of the trade.');
    expect(said('log.gap')).toBe('The record’s own figures, compared with each other.');
    expect(said('dates.order')).toBe(said('log.gap'));
  });

  it('is said of every rule', () => {
    for (const { id } of rules) expect(said(id), id).not.toBe('');
  });
});
