import { describe, expect, it } from 'vitest';
import { readFonts } from '../../../electron/files/fonts.ts';
import { paperFileName, recordFileName } from '../../../electron/service/paperNames.ts';
import { makeAsBuilt, makeLayingOut } from '../../../electron/service/sheet.ts';
import { recordHash } from '../../../electron/seal/recordHash.ts';

const fonts = readFonts();
const options = { paper: 'A4', fonts, madeAt: '2025-03-01T10:00:00Z' } as const;

describe('the name of a paper’s file', () => {
  it('says well, paper and revision', () => {
    const record = { schemaVersion: 1, identity: { number: 'KA-012' } } as const;
    expect(paperFileName(record, 'A3', 4)).toBe('KA-012 as-built A3 rev 4.pdf');
  });

  it('says the language where it is not English', () => {
    const record = { schemaVersion: 1, identity: { number: 'KA-012' } } as const;
    expect(paperFileName(record, 'A3', 4, 'pt')).toBe('KA-012 as-built A3 pt rev 4.pdf');
    expect(paperFileName(record, 'A3', 4, 'en')).toBe('KA-012 as-built A3 rev 4.pdf');
  });

  it('says how the paper lies where that is not usual', () => {
    const record = { schemaVersion: 1, identity: { number: 'KA-012' } } as const;
    const lying = paperFileName(record, 'A4', 4, 'pt', 'landscape');
    expect(lying).toBe('KA-012 as-built A4 landscape pt rev 4.pdf');
    expect(paperFileName(record, 'A4', 4, 'en', 'portrait')).toBe('KA-012 as-built A4 rev 4.pdf');
  });

  it('holds nothing that a system refuses', () => {
    const record = { schemaVersion: 1, identity: { number: '../KA:012\n' } } as const;
    expect(paperFileName(record, 'A4', 1)).toBe('..-KA-012- as-built A4 rev 1.pdf');
    expect(paperFileName({ schemaVersion: 1 }, 'A4', 1)).toBe('well as-built A4 rev 1.pdf');
  });
});

describe('a paper that carries its record', () => {
  it('is another paper than the one without it, and of PDF/A’s part 3', () => {
    const record = { schemaVersion: 1, identity: { number: 'KA-012' } } as const;
    const made = { ...options, attachRecord: true, revision: 2, language: 'fr' } as const;
    for (const make of [makeAsBuilt, makeLayingOut]) {
      const [plain, carrying] = [make(record, options), make(record, made)];
      expect(carrying.drawing.paperId).not.toBe(plain.drawing.paperId);
      const [without, within] = [plain, carrying].map((one) => Buffer.from(one.pdf()));
      expect(without!.includes('<pdfaid:part>2<')).toBe(true);
      expect(within!.includes('<pdfaid:part>3<')).toBe(true);
    }
  });

  it('names the file by well and revision', () => {
    expect(recordFileName({ schemaVersion: 1, identity: { number: 'KA/1' } }, 2)).toBe(
      'KA-1 record rev 2.json',
    );
    expect(recordFileName({ schemaVersion: 1 })).toBe('well record.json');
  });
});

describe('the as-built sheet', () => {
  it('carries an id that follows from the record, the paper, the language and the revision', () => {
    const idOf = (number: string, more = {}) =>
      makeAsBuilt({ schemaVersion: 1, identity: { number } }, { ...options, ...more }).drawing
        .paperId;
    expect(idOf('a')).toMatch(/^[0-9a-f]{32}$/);
    expect(idOf('a')).toBe(idOf('a'));
    const others = [idOf('b'), idOf('a', { paper: 'A3' }), idOf('a', { revision: 1 })];
    const spoken = [idOf('a', { language: 'fr' }), idOf('a', { language: 'pt' })];
    expect(new Set([idOf('a'), ...others, ...spoken]).size).toBe(6);
    expect(idOf('a', { language: 'en' })).toBe(idOf('a'));
  });

  it('names the well, the revision and the hash of its record to readers of the file', () => {
    const record = { schemaVersion: 1, identity: { number: 'KA-012' } } as const;
    const mark = { wellNumber: 'KA-012', revision: 3, recordHash: recordHash(record) };
    const made = { ...options, revision: 3 };
    expect(makeAsBuilt(record, made).drawing).toMatchObject(mark);
    expect(makeLayingOut(record, made).drawing).toMatchObject(mark);
  });

  it('has another id where the practice that it was judged by says otherwise', () => {
    const words = { en: 'Ours', fr: 'Ours', pt: 'Ours' };
    const file = { id: 'ours', name: words, scope: words, basedOn: 'handDrilled' };
    const idBy = (version: string) =>
      makeAsBuilt(
        { schemaVersion: 1, identity: { practice: 'ours' } },
        { ...options, own: [{ ...file, version, sources: {}, figures: {} }] },
      );
    expect(idBy('1').drawing.paperId).not.toBe(idBy('2').drawing.paperId);
    expect(idBy('1').svg(1)).toContain('Judged by: Ours 1');
  });

  it('lies and has columns as asked for, each way with an id of its own', () => {
    const record = { schemaVersion: 1 } as const;
    const plain = makeAsBuilt(record, options).drawing;
    const lying = makeAsBuilt(record, {
      ...options,
      paper: 'A4',
      orientation: 'landscape',
    }).drawing;
    const columns = makeAsBuilt(record, { ...options, columns: ['colour'] });
    expect(lying.pages[0]).toMatchObject({ width: 297, height: 210 });
    expect(columns.svg(1)).toContain('>Colour<');
    const ids = [plain, lying, columns.drawing].map(({ paperId }) => paperId);
    expect(new Set(ids).size).toBe(3);
  });

  it('is drawn in the language asked for, and says so to readers of the file', () => {
    const sheet = makeAsBuilt({ schemaVersion: 1 }, { ...options, language: 'fr' });
    expect(sheet.drawing.language).toBe('fr');
    expect(Buffer.from(sheet.pdf()).toString('latin1')).toContain('/Lang (fr)');
    expect(sheet.svg(1)).toContain('xml:lang="fr"');
    expect(sheet.svg(1)).toContain('Légende');
  });

  it('comes as PDF and as a drawing file that carries its fonts', () => {
    const sheet = makeAsBuilt({ schemaVersion: 1 }, options);
    expect(Buffer.from(sheet.pdf()).toString('latin1', 0, 5)).toBe('%PDF-');
    expect(sheet.svg(1)).toContain('<svg');
    expect(sheet.svg(1)).toContain('@font-face');
  });
});
