import { readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { priced } from '../../../core/quantities/costOf.ts';
import { quantityKinds, type QuantityId } from '../../../core/quantities/quantity.ts';
import { fileNames, well } from '../../demo-data/wells.ts';
import { all, reckon } from './reckoned.ts';

const page = readFileSync(path.resolve(import.meta.dirname, '../../../docs/quantities.md'), 'utf8');
const rows = page.split('\n').filter((line) => line.startsWith('| `'));

/** The row whose first cell names something. */
function rowOf(name: string): string | undefined {
  return rows.find((row) => row.split(' | ')[0]!.includes(`\`${name}\``));
}

describe('the page on quantities', () => {
  it('has a row for each quantity, and for nothing that is none', () => {
    const ids = Object.keys(quantityKinds);
    expect(ids.filter((id) => rowOf(id) === undefined)).toEqual([]);
    const known = [...ids, ...Object.keys(priced)];
    const named = rows.flatMap((row) =>
      [...row.split(' | ')[0]!.matchAll(/`(\w+)`/g)].map(([, name]) => name!),
    );
    expect(named.filter((name) => !known.includes(name))).toEqual([]);
  });

  it('gives each formula and source as the program writes them', () => {
    const quantities = fileNames.flatMap((name) => all(reckon(well(name))));
    const told = quantities.filter(({ id }) => id !== 'loadKg');
    const wrong = told.filter(({ id, formula, source }) => {
      const row = rowOf(id)!;
      return !row.includes(`\`${formula}\``) || !row.includes(source.title.en);
    });
    expect([...new Set(wrong.map(({ id, formula }) => `${id}: ${formula}`))]).toEqual([]);
    const tried = new Set(told.map(({ id }) => id));
    const untried = (Object.keys(quantityKinds) as QuantityId[]).filter((id) => !tried.has(id));
    expect(untried).toEqual(['insideZoneLitres', 'loadKg']);
  });

  it('gives each key of prices with what it is paid for', () => {
    for (const [key, ids] of Object.entries(priced)) {
      const row = rows.findLast((one) => one.split(' | ')[0]!.includes(`\`${key}\``))!;
      for (const id of ids) expect(row).toContain(`\`${id}\``);
    }
  });
});
