import { expect, it } from 'vitest';
import lock from '../package-lock.json' with { type: 'json' };

it('the lock file names no address of a package, so that any registry serves it', () => {
  const packages = Object.entries(lock.packages as Record<string, object>);
  expect(packages.length).toBeGreaterThan(100);
  expect(packages.filter(([, one]) => 'resolved' in one)).toEqual([]);
});
