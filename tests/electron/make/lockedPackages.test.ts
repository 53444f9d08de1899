import { describe, expect, it } from 'vitest';
import { nameOf, splitShipped } from '../../../electron/make/lockedPackages.ts';

const locked = {
  '': { version: '0.1.0' },
  'node_modules/store': { version: '1.0.0' },
  'node_modules/page': { version: '1.0.0', dev: true, dependencies: { line: '^2' } },
  'node_modules/page/node_modules/line': { version: '2.0.0', dev: true },
  'node_modules/line': { version: '1.0.0', dev: true, dependencies: { page: '*' } },
  'node_modules/@scope/checker': { version: '1.0.0', dev: true },
};

describe('packages that ship', () => {
  it('are those that no developer needs alone, and what the page is made of with its own versions', () => {
    expect(splitShipped(locked, ['page'])).toEqual({
      shipped: ['node_modules/page', 'node_modules/page/node_modules/line', 'node_modules/store'],
      development: ['node_modules/@scope/checker', 'node_modules/line'],
    });
  });

  it('end even where two packages need each other', () => {
    expect(splitShipped(locked, ['line']).shipped).toContain('node_modules/line');
  });

  it('are named without their folders', () => {
    expect(nameOf('node_modules/page/node_modules/@scope/line')).toBe('@scope/line');
  });
});
