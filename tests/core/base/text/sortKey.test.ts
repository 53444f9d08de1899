import { describe, expect, it } from 'vitest';
import { sortKey } from '../../../../core/base/text/sortKey.ts';

const sorted = (...texts: string[]) =>
  [...texts].sort((a, b) => (sortKey(a) < sortKey(b) ? -1 : 1));

describe('the order of texts', () => {
  it('has numbers as people count them', () => {
    expect(sorted('KB-10', 'KB-2', 'KB-100', 'KB-1')).toEqual(['KB-1', 'KB-2', 'KB-10', 'KB-100']);
    expect(sorted('KV-26-004', 'KV-25-19', 'KV-26-03')).toEqual([
      'KV-25-19',
      'KV-26-03',
      'KV-26-004',
    ]);
  });

  it('passes over noughts before a number, capitals, accents and signs', () => {
    expect(sortKey('kb-002')).toBe(sortKey('KB 2'));
    expect(sortKey(' Lémo / École ')).toBe(sortKey('lemo ecole'));
    expect(sortKey('KB-0')).not.toBe(sortKey('KB-00-1'));
    expect(sorted('Zou', 'École', 'eau')).toEqual(['eau', 'École', 'Zou']);
  });

  it('of what holds no letter is empty', () => {
    expect(sortKey(' -/ ')).toBe('');
  });
});
