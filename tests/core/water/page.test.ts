import { readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { assumptions } from '../../../core/water/assumptions.ts';
import { guidelinesOf } from '../../../core/water/guidelines/chooseGuidelines.ts';
import { readGuidelinesText } from '../../../core/water/guidelines/readGuidelines.ts';
import { reckonedUnits } from '../../../core/water/reckoned.ts';

const read = (name: string) =>
  readFileSync(path.resolve(import.meta.dirname, '../../../docs', name), 'utf8');
const quality = read('water-quality.md');
const rows = `${quality}\n${read('disinfection.md')}`
  .split('\n')
  .filter((line) => line.startsWith('| '));

/** The row in whose first two cells something is named. */
function rowOf(name: string): string | undefined {
  return rows.find((row) => row.split(' | ').slice(0, 2).join(' ').includes(`\`${name}\``));
}

describe('the pages on water', () => {
  it('give every guideline value with its figure, and say which are from memory', () => {
    for (const { id, values } of guidelinesOf(undefined).parameters)
      for (const { key, value, source } of values) {
        const row = rowOf(`${id}.${key}`);
        expect(row, `${id}.${key}`).toMatch(new RegExp(`[≤≥] ${value}\\b`));
        expect(row!.includes('_memory_'), row).toBe(source.mark === 'fromMemory');
      }
  });

  it('give every assumption, and say which are from memory', () => {
    for (const [id, { source }] of Object.entries(assumptions))
      expect(rowOf(id)?.includes('_memory_'), id).toBe(source.mark === 'fromMemory');
  });

  it('give a formula for whatever is reckoned', () => {
    for (const id of Object.keys(reckonedUnits))
      expect(rowOf(id) ?? quality, id).toContain(`\`${id}\``);
  });

  it('show a set of values that can be read', () => {
    const [, example] = /```json\n([\s\S]*?)```/.exec(quality)!;
    expect(readGuidelinesText(example!).ok).toBe(true);
  });
});
