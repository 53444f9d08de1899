import { beforeEach, describe, expect, it } from 'vitest';
import type { Archive } from '../../../electron/archive/archive.ts';
import { recordHash } from '../../../electron/seal/recordHash.ts';
import { heldRecord } from '../../../electron/service/heldRecord.ts';
import { storedWell } from '../../../electron/service/stored.ts';
import { openFresh, record, valueOf } from '../archive/sample.ts';

let archive: Archive;
let hash: string;
beforeEach(() => {
  archive = openFresh();
  valueOf(archive.create('w', record));
  hash = recordHash(valueOf(storedWell(valueOf(archive.open('w')))).record);
});

const wellNumber = 'KA-012';

describe('the record that a paper shows', () => {
  it('is held where a revision has its hash', () => {
    const mark = { wellNumber, revision: 1, recordHash: hash };
    expect(valueOf(heldRecord(archive, mark))).toEqual({
      held: 'same',
      id: 'w',
      revision: 1,
      newest: 1,
    });
  });

  it('is held too where the paper names another revision, or none', () => {
    for (const mark of [
      { wellNumber, recordHash: hash },
      { wellNumber, revision: 7, recordHash: hash },
    ])
      expect(valueOf(heldRecord(archive, mark))).toMatchObject({ held: 'same', revision: 1 });
  });

  it('is another where the hash is none of its well’s', () => {
    const mark = { wellNumber, revision: 1, recordHash: 'a'.repeat(64) };
    expect(valueOf(heldRecord(archive, mark))).toEqual({ held: 'other', id: 'w', newest: 1 });
  });

  it('is not held where the archive has no such well', () => {
    const mark = { wellNumber: 'KA-99', recordHash: hash };
    expect(valueOf(heldRecord(archive, mark))).toEqual({ held: 'noWell' });
  });

  it('is found too where the well has no number', () => {
    const identity = { ...record.identity, number: undefined };
    valueOf(archive.create('n', { ...record, identity }));
    const stored = valueOf(storedWell(valueOf(archive.open('n'))));
    const mark = { recordHash: recordHash(stored.record) };
    expect(valueOf(heldRecord(archive, mark))).toMatchObject({ held: 'same', id: 'n' });
  });

  it('cannot be looked for where the paper does not say what it shows', () => {
    expect(valueOf(heldRecord(archive, {}))).toEqual({ held: 'unsaid' });
  });
});
