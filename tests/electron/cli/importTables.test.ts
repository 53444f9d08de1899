import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { ownFolder, type } from './typed.ts';

const mapping = {
  tables: [
    {
      kind: 'log',
      file: 'log.csv',
      well: 'Well',
      fields: {
        from: { column: 'From', unit: 'm' },
        to: { column: 'To', unit: 'm' },
        material: { column: 'Ground', words: { Sable: 'sand', Argile: 'clay' } },
      },
    },
  ],
};

function put(folder: string, rows: readonly string[]) {
  writeFileSync(path.join(folder, 'mapping.json'), JSON.stringify(mapping));
  writeFileSync(
    path.join(folder, 'log.csv'),
    `\uFEFF${['Well,From,To,Ground', ...rows].join('\r\n')}\r\n`,
  );
  return ['import-tables', 'mapping.json', 'log.csv', '-o', 'records'];
}

describe('borefolio import-tables', () => {
  it('writes a record a well, which check then takes', async () => {
    const folder = ownFolder();
    const rows = ['N/1,0,3,Argile', 'N/1,3,8,Sable', 'N 2,0,4,Sable'];
    const { code, out } = await type(folder, put(folder, rows));
    expect(code).toBe(0);
    expect(out).toEqual(['2 records in records, 0 rows with trouble']);
    expect(readdirSync(path.join(folder, 'records')).sort()).toEqual(['N-1.json', 'N-2.json']);
    const record = JSON.parse(readFileSync(path.join(folder, 'records/N-1.json'), 'utf8')) as {
      log: unknown;
    };
    expect(record.log).toEqual([
      { from: 0, to: 3, material: 'clay' },
      { from: 3, to: 8, material: 'sand' },
    ]);
    expect((await type(folder, ['check', 'records/N-1.json'])).code).toBe(0);
  });

  it('names a row that cannot be read by file, line and column, and gives 1', async () => {
    const folder = ownFolder();
    const { code, err } = await type(folder, put(folder, ['N1,0,3,Sable', 'N1,three,8,Sable']));
    expect(code).toBe(1);
    expect(err[0]).toMatch(/^log\.csv:3 From: /);
  });

  it('asks for what is missing', async () => {
    const { code, err } = await type(ownFolder(), ['import-tables', 'mapping.json']);
    expect(code).toBe(2);
    expect(err[0]).toContain('import-tables MAPPING.json TABLE.csv -o FOLDER');
  });
});
