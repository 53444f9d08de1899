import { expect, it } from 'vitest';
import { readRecord } from '../../../core/record/read.ts';
import { sha256Hex } from '../../../electron/seal/hash.ts';
import { recordHash } from '../../../electron/seal/recordHash.ts';
import { well } from '../../demo-data/wells.ts';

it('is the hash of the record’s JSON', () => {
  const record = { schemaVersion: 1, notes: 'é' };
  expect(recordHash(record)).toBe(sha256Hex('{"schemaVersion":1,"notes":"é"}'));
});

it('stays when a record is written and read again, and changes with one field', () => {
  const record = well('hand-drilled-32m.json');
  const again = readRecord(JSON.parse(JSON.stringify(record)));
  if (again.kind !== 'ok') throw new Error('unreadable');
  expect(recordHash(again.record)).toBe(recordHash(record));
  expect(recordHash({ ...record, notes: 'other' })).not.toBe(recordHash(record));
});
