import { readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { readMapping, readTables } from '../../core/exchange/index.ts';
import { fieldsOf } from '../../core/exchange/tables/fields.ts';
import { lengthUnits } from '../../core/exchange/tables/units.ts';
import { currentVersion } from '../../core/record/schema.ts';

const page = readFileSync(path.resolve(import.meta.dirname, '../../docs/tables.md'), 'utf8');

/** The block that follows a file's name on the page. */
function block(name: string): string {
  const start = page.indexOf(`\n\`${name}\`\n`);
  return /```\w*\n([\s\S]*?)```/.exec(page.slice(start))![1]!;
}

describe('the page on tables', () => {
  it('has an example that reads as the page says', () => {
    const mapping = readMapping(JSON.parse(block('mapping.json')));
    if (!mapping.ok) throw new Error(mapping.error.sentence);
    const files = ['log.csv', 'casing.csv'].map((name) => ({ name, text: block(name) }));
    expect(readTables(files, mapping.value)).toMatchObject({
      records: [
        {
          schemaVersion: currentVersion,
          identity: { number: 'A1' },
          log: [
            { from: 0, to: 1.0668, material: 'topsoil', words: 'Topsoil' },
            { from: 1.0668, to: 6.4008, material: 'clay', words: 'Stiff, brown clay' },
            { from: 6.4008, to: 12.192, material: 'other', words: 'Rotten rock' },
          ],
          strings: [
            {
              components: [
                { kind: 'screen', outside: 125, length: 3 },
                { kind: 'plain', outside: 125, length: 9.5 },
              ],
              set: { by: 'bottom', depth: 12 },
            },
          ],
        },
      ],
      troubles: [],
    });
  });

  it('names every unit, and every field of each kind but the many of wells', () => {
    expect(lengthUnits.filter((unit) => !page.includes(`\`${unit}\``))).toEqual([]);
    for (const [kind, fields] of Object.entries(fieldsOf)) {
      const row = page.split('\n').find((line) => line.startsWith(`| \`${kind}\` |`))!;
      const named = [...row.matchAll(/`([^`]+)`/g)].map(([, name]) => name!).slice(1);
      const known = Object.keys(fields);
      expect(named.filter((name) => !known.includes(name))).toEqual([]);
      if (kind !== 'wells') expect(named).toEqual(known);
    }
  });

  it('marks the fields that a row needs', () => {
    for (const [kind, fields] of Object.entries(fieldsOf)) {
      const row = page.split('\n').find((line) => line.startsWith(`| \`${kind}\` |`))!;
      const marked = [...row.matchAll(/\*\*`([^`]+)`\*\*/g)].map(([, name]) => name);
      expect(marked).toEqual(Object.keys(fields).filter((name) => fields[name]!.required));
    }
  });
});
