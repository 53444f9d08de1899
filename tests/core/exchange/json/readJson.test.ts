import { describe, expect, it } from 'vitest';
import { holdsRecords, readJson } from '../../../../core/exchange/json/readJson.ts';
import { recordReaderFor } from '../../../../core/exchange/readers.ts';
import { currentVersion } from '../../../../core/record/schema.ts';

const file = (text: string, name = 'wells.json') => ({
  name,
  bytes: new TextEncoder().encode(text),
});

const record = (number: string, more: object = {}) => ({
  schemaVersion: currentVersion,
  identity: { number },
  ...more,
});

function read(text: string) {
  const result = readJson(file(text));
  if (!result.ok) throw new Error(result.error.sentence);
  const { wells, troubles } = result.value;
  return {
    wells: wells.map(({ record: { identity }, line }) => [identity?.number, line]),
    troubles,
  };
}

describe('records of the archive’s own form', () => {
  it('come in one by one', () => {
    expect(read(JSON.stringify(record('W-1'), null, 2)).wells).toEqual([['W-1', 1]]);
  });

  it('come in from an array, each with its line', () => {
    const text = `[\n${JSON.stringify(record('{"[1'))},\n\n${JSON.stringify(record('W-2'))}\n]`;
    expect(read(text).wells).toEqual([
      ['{"[1', 2],
      ['W-2', 4],
    ]);
  });

  it('come in from JSON lines, and a broken line is told by its number', () => {
    const { wells, troubles } = read(
      `${JSON.stringify(record('W-1'))}\n{"schemaVersion": 1, nothing}\n${JSON.stringify(record('W-3'))}\n`,
    );
    expect(wells).toEqual([
      ['W-1', 1],
      ['W-3', 3],
    ]);
    expect(troubles).toMatchObject([
      {
        file: 'wells.json',
        line: 2,
        column: '',
        kept: false,
        sentence:
          'The record that begins here is not whole JSON, so it was not read. Write the file again.',
      },
    ]);
  });

  it('tell an array that was cut off, and keep what stands before', () => {
    const { wells, troubles } = read(`[${JSON.stringify(record('W-1'))},\n{"schemaVersion": 3`);
    expect(wells).toEqual([['W-1', 1]]);
    expect(troubles.map(({ line, kept }) => [line, kept])).toEqual([[2, false]]);
  });

  it('come in without what cannot be read of them', () => {
    const { wells, troubles } = read(
      JSON.stringify(record('W-1', { site: { latitude: 'north' } })),
    );
    expect(wells).toEqual([['W-1', 1]]);
    expect(troubles).toHaveLength(1);
    expect(troubles[0]).toMatchObject({ column: 'site.latitude', kept: true });
  });

  it('are left where a newer program made them', () => {
    const { wells, troubles } = read(JSON.stringify({ schemaVersion: currentVersion + 1 }));
    expect(wells).toEqual([]);
    expect(troubles[0]!.sentence).toContain('newer than this program knows');
  });

  it('do not change what objects are by a key __proto__', () => {
    const text = `{"schemaVersion":${currentVersion},"identity":{"number":"W"},"__proto__":{"own":1}}`;
    expect(read(text).wells).toEqual([['W', 1]]);
    expect(({} as Record<string, unknown>)['own']).toBeUndefined();
  });

  it('are told from other JSON and from tables', () => {
    expect(holdsRecords(file(JSON.stringify([record('W-1')])))).toBe(true);
    expect(holdsRecords(file('{"type":"FeatureCollection","features":[]}'))).toBe(false);
    expect(recordReaderFor(file('well,"schemaVersion":\n', 'a.csv'))).toBeUndefined();
    expect(recordReaderFor(file(JSON.stringify(record('W-1')), 'a.txt'))?.format).toBe('json');
  });
});
