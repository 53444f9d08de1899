import { describe, expect, test } from 'vitest';
import { fileNames, readme, readWell, well } from './wells.ts';

describe('the demo wells', () => {
  test.each(fileNames)('%s reads without a trouble', (name) => {
    expect(readWell(name).troubles).toEqual([]);
  });

  test('are eight, each with a number and an id of its own', () => {
    const identities = fileNames.map((name) => well(name).identity);
    expect(identities).toHaveLength(8);
    expect(new Set(identities.map((who) => who?.id)).size).toBe(8);
    expect(new Set(identities.map((who) => who?.number)).size).toBe(8);
  });

  test('stand in the open sea, where no village can be meant', () => {
    for (const { site } of fileNames.map(well)) {
      expect(Math.floor(site?.latitude ?? 0)).toBe(1);
      expect(Math.floor(site?.longitude ?? 0)).toBe(-7);
    }
  });

  test('are each told of in the read-me, and no other file is', () => {
    const named = [...readme().matchAll(/`([\w-]+\.json)`/g)].map(([, name]) => name);
    expect([...new Set(named)].sort()).toEqual(fileNames);
  });
});
