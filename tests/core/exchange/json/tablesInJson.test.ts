import { readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { bytesOf } from '../../../../core/exchange/encode.ts';
import { readMapping } from '../../../../core/exchange/tables/mapping.ts';
import { readSources } from '../../../../core/exchange/tables/readTables.ts';
import { sourcesOfFile } from '../../../../core/exchange/tables/source.ts';

describe('lists of flat rows in JSON', () => {
  it('are tables under their keys, with every name that a row has', async () => {
    const text = '{"a": [{"x": 1.5, "y": null}, {"z": true, "x": "one"}], "about": "wells"}';
    const sources = await sourcesOfFile({ name: 'a.json', bytes: bytesOf([text]) });
    const [table, ...others] = sources.ok ? sources.value : [];
    expect(others).toEqual([]);
    expect(table).toMatchObject({ name: 'a.json', sheet: 'a' });
    expect(table!.rows({ decimal: ',' }).rows).toEqual([
      { line: 1, cells: ['x', 'y', 'z'] },
      { line: 2, cells: ['1,5', '', ''] },
      { line: 3, cells: ['one', '', 'true'] },
    ]);
  });

  it('are one table without a key where the list is the whole file', async () => {
    const sources = await sourcesOfFile({ name: 'a.json', bytes: bytesOf(['[{"well": "A"}]']) });
    expect(sources).toMatchObject({ value: [{ name: 'a.json' }] });
    expect(sources.ok && 'sheet' in sources.value[0]!).toBe(false);
  });

  it('of published answers come in by a mapping of their keys and columns', async () => {
    const name = 'waterconnect-responses.json';
    const file = path.join(import.meta.dirname, '../../../data/south-australia', name);
    const sources = await sourcesOfFile({ name, bytes: readFileSync(file) });
    const sheet = 'GetDrillingSummary?COMPLETION_NO=70892';
    const mapping = readMapping({
      tables: [
        {
          ...{ kind: 'sections', file: name, sheet, well: 'COMPLETION_NO' },
          fields: {
            from: { column: 'DRILL_FR', unit: 'm' },
            to: { column: 'DRILL_TO', unit: 'm' },
            diameter: { column: 'DIAM', unit: 'mm' },
          },
        },
      ],
    });
    if (!sources.ok || !mapping.ok) throw new Error('not read');
    const { records } = readSources(sources.value, mapping.value);
    expect(records.map(({ bore }) => bore?.sections?.length)).toEqual([4]);
    expect(records[0]!.bore!.sections!.at(-1)!.to).toBe(253.4);
  });
});
