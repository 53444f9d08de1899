import { expect, test } from 'vitest';
import { bytesOf } from '../../../../core/exchange/encode.ts';
import { recordReaderFor } from '../../../../core/exchange/readers.ts';

const given = (text: string) => ({ name: 'file', bytes: bytesOf([text]) });

test.each([
  ['<?xml version="1.0"?><!-- a --><kml:Document x="1"/>', 'otherXml', '"kml:Document"'],
  ['{"GetWells": []}', 'otherJson', 'GeoJSON'],
  ['[{"a": {"deep": 1}}]', 'otherJson', 'lists of flat rows'],
  ['{"type": "Topology"}', 'otherJson', 'as tables'],
])('%s is refused with what it is', async (text, code, words) => {
  const read = await recordReaderFor(given(text))!.read(given(text));
  expect(read).toMatchObject({ ok: false, error: { code } });
  expect(!read.ok && read.error.sentence).toContain(words);
});

test('a table is left to those who read tables', () => {
  expect(recordReaderFor(given('well,from,to\nA,0,1\n'))).toBeUndefined();
  expect(recordReaderFor(given('[A] well;from\n'))).toBeUndefined();
  expect(recordReaderFor(given('[{"well": "A", "depth": 3}]'))).toBeUndefined();
});
