import { readFileSync } from 'node:fs';
import path from 'node:path';
import { expect, test } from 'vitest';
import { bytesOf } from '../../../../core/exchange/encode.ts';
import { recordReaderFor } from '../../../../core/exchange/readers.ts';

const given = (text: string) => ({ name: 'file', bytes: bytesOf([text]) });

test.each([
  ['<?xml version="1.0"?><!-- a --><kml:Document x="1"/>', 'otherXml', '"kml:Document"'],
  ['{"GetWells": []}', 'otherJson', 'GeoJSON'],
  ['[{"a": 1}]', 'otherJson', 'as tables'],
])('%s is refused with what it is', async (text, code, words) => {
  const read = await recordReaderFor(given(text))!.read(given(text));
  expect(read).toMatchObject({ ok: false, error: { code } });
  expect(!read.ok && read.error.sentence).toContain(words);
});

test('published answers of a web service are refused as lists to be written as tables', async () => {
  const name = 'waterconnect-responses.json';
  const file = path.join(import.meta.dirname, '../../../data/south-australia', name);
  const bytes = readFileSync(file);
  const read = await recordReaderFor({ name, bytes })!.read({ name, bytes });
  expect(read).toMatchObject({ error: { code: 'otherJson' } });
});

test('a table is left to those who read tables', () => {
  expect(recordReaderFor(given('well,from,to\nA,0,1\n'))).toBeUndefined();
  expect(recordReaderFor(given('[A] well;from\n'))).toBeUndefined();
});
