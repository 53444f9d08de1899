import { readFileSync } from 'node:fs';
import { beforeAll, describe, expect, it } from 'vitest';
import { readFonts } from '../../../electron/files/fonts.ts';
import { readPaperMark } from '../../../electron/seal/readPaperMark.ts';
import { recordHash } from '../../../electron/seal/recordHash.ts';
import { sealPdf } from '../../../electron/seal/sealPdf.ts';
import { makeAsBuilt } from '../../../electron/service/sheet.ts';
import { readDocument } from '../../../electron/service/stored.ts';
import { valueOf } from '../archive/sample.ts';
import { detailsOf, now, signerCalled } from './sealed.ts';

const file = new URL('../../../demo-data/shallow-direct-action-9m.json', import.meta.url);
const { record } = valueOf(readDocument(JSON.parse(readFileSync(file, 'utf8'))));

let pdf: Uint8Array;
beforeAll(() => {
  const named = { ...record, identity: { ...record.identity, number: 'B&B <7> ɓ' } };
  pdf = makeAsBuilt(named, { paper: 'A4', fonts: readFonts(), madeAt: now, revision: 3 }).pdf();
});

describe('a paper', () => {
  it('tells its well, revision and record, sealed or not', async () => {
    const mark = readPaperMark(pdf);
    expect(mark).toMatchObject({ wellNumber: 'B&B <7> ɓ', revision: 3 });
    expect(mark.recordHash).toMatch(/^[0-9a-f]{64}$/);
    expect(mark.recordHash).not.toBe(recordHash(record));
    const sealed = valueOf(sealPdf(pdf, await signerCalled('Ama Dravunké'), detailsOf(1)));
    expect(readPaperMark(sealed)).toEqual(mark);
  });

  it('of another program tells nothing', () => {
    expect(readPaperMark(Buffer.from('%PDF-1.7 of any kind'))).toEqual({});
    const text = Buffer.from(pdf).toString('latin1').replaceAll('bfpaper:', 'another:');
    expect(readPaperMark(Buffer.from(text, 'latin1'))).toEqual({});
  });
});
