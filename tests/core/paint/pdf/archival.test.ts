import { describe, expect, it } from 'vitest';
import type { Drawing } from '../../../../core/drawing/items.ts';
import { paperNamespace } from '../../../../core/paint/pdf/paperNamespace.ts';
import { paintPdf } from '../../../../core/paint/pdf/paintPdf.ts';
import { openPdf } from '../../../reading/pdf.ts';
import {
  dictionariesIn,
  pdfObjects,
  type PdfDictionary,
  type PdfValue,
} from '../../../reading/pdfObjects.ts';
import { complaintsAbout } from '../../../reading/tools.ts';
import { drawing, fonts, page, trial } from '../sample.ts';

/*
 * Clauses of ISO 19005-2:2011 and ISO 19005-3:2012 as far as they can be looked at here. Their
 * numbers and their wording are from memory; docs/archival-pdf.md tells what this does not prove.
 */
const told: Drawing = {
  ...trial,
  title: 'AB-3 – Kalé <b> & co',
  wellNumber: 'AB-3',
  revision: 4,
  recordHash: 'ab'.repeat(32),
};
const record = {
  fileName: 'AB-3 Ɓ record.json',
  bytes: Buffer.from('{"number":"Kalé"}'),
  mediaType: 'application/json',
  says: 'The record that the paper shows',
  changedAt: '2024-05-06T07:08:09Z',
};
const pdf = paintPdf(told, fonts.files);
const withRecord = paintPdf(told, fonts.files, { attachment: record });
const text = Buffer.from(pdf).toString('latin1');

const objects = pdfObjects(pdf);
const root = objects.at(objects.trailer['/Root']) as PdfDictionary;
const everyDictionary = objects.all.flatMap(({ value }) => [...dictionariesIn(value)]);
const ofType = (key: string, value: PdfValue) =>
  objects.all.filter(({ value: held }) => (held as PdfDictionary | null)?.[key] === value);
const dictionary = (value: PdfValue | undefined) => objects.at(value) as PdfDictionary;

describe('6.1 the file', () => {
  it('begins with its version and a comment of four letters past 127 (6.1.2)', () => {
    expect(text).toMatch(/^%PDF-1\.7\n%[\x80-\xff]{4}\n/);
  });

  it('has an id, is open to all, and ends with its mark (6.1.3)', () => {
    expect(objects.trailer['/ID']).toHaveLength(2);
    expect(objects.trailer).not.toHaveProperty('/Encrypt');
    expect(text.endsWith('%%EOF')).toBe(true);
  });

  it('has each object’s marks and its table of places where they belong (6.1.4, 6.1.9)', () => {
    expect(text).toMatch(/\nxref\n0 \d+\n0000000000 65535 f \n(\d{10} 00000 n \n)+trailer\n/);
    const begun = text.match(/(?<=\n)\d+ 0 obj\n/g) ?? [];
    const ended = text.match(/(?<=\n)endobj\n/g) ?? [];
    expect(begun).toHaveLength(ended.length);
    expect(complaintsAbout(pdf)).toBe('');
    expect(complaintsAbout(withRecord)).toBe('');
  });

  it('has streams within itself, none of them in LZW (6.1.7)', () => {
    for (const one of everyDictionary) expect(one).not.toHaveProperty('/FFilter');
    expect([...new Set(text.match(/\/Filter \S+\w/g))]).toEqual(['/Filter /FlateDecode']);
  });

  it('keeps within the limits of numbers, names and pages (6.1.13)', () => {
    for (const { value } of ofType('/Type', '/Page')) {
      const [, , width, height] = (value as PdfDictionary)['/MediaBox'] as number[];
      for (const side of [width!, height!]) expect(side > 3 && side < 14_400).toBe(true);
    }
    expect(objects.all.length).toBeLessThan(8_388_607);
    const names = everyDictionary.flatMap((one) => Object.keys(one));
    expect(Math.max(...names.map(({ length }) => length))).toBeLessThan(127);
  });
});

describe('6.2 what is painted', () => {
  /** Pages and tiles: the streams that paint. */
  const painting = objects.all.filter(({ name, value, stream }) => {
    const contents = ofType('/Type', '/Page').map(
      (one) => (one.value as PdfDictionary)['/Contents'],
    );
    return stream && (contents.includes(name) || (value as PdfDictionary)['/PatternType'] === 1);
  });

  it('has one output intent, with a profile for red, green and blue (6.2.3)', () => {
    const [intent, ...others] = root['/OutputIntents'] as PdfDictionary[];
    expect(others).toEqual([]);
    expect(intent).toMatchObject({ '/S': '/GTS_PDFA1', '/Type': '/OutputIntent' });
    expect(intent!['/OutputConditionIdentifier']).toBe('u:sRGB IEC61966-2.1');
    const profile = intent!['/DestOutputProfile'];
    expect(dictionary(profile)).toMatchObject({ '/N': 3 });
    expect(objects.stream(profile).toString('latin1', 12, 20)).toBe('mntrRGB ');
  });

  it('has its colours in greys and red, green and blue alone (6.2.4)', () => {
    expect(painting).toHaveLength(4);
    for (const { stream } of painting)
      expect(stream!.toString('latin1')).not.toMatch(/(^|\s)(k|K|sh|\/DeviceCMYK)(\s|$)/);
    const spaces = everyDictionary.flatMap((one) => one['/ColorSpace'] ?? []);
    expect([...new Set(spaces.flat())]).toEqual(['/DeviceRGB']);
  });

  it('has for each page and tile its own list of what it uses (6.2.2)', () => {
    for (const { value } of [...ofType('/Type', '/Page'), ...ofType('/PatternType', 1)])
      expect(dictionary((value as PdfDictionary)['/Resources'])).toHaveProperty('/Font');
  });

  it('has nothing that is seen through, nor any other state of a kind that is refused (6.2.5, 6.2.10)', () => {
    const refused = ['/SMask', '/CA', '/ca', '/BM', '/Group', '/TR', '/TR2', '/HTP', '/ExtGState'];
    for (const one of everyDictionary)
      for (const key of refused) expect(one).not.toHaveProperty([key]);
  });

  it('has pictures that are neither smoothed nor exchanged, and nothing in PostScript (6.2.8, 6.2.9)', () => {
    const pictures = ofType('/Subtype', '/Image');
    expect(pictures).toHaveLength(1);
    for (const one of everyDictionary)
      for (const key of ['/Alternates', '/OPI', '/Interpolate', '/PS', '/Ref'])
        expect(one).not.toHaveProperty([key]);
  });

  it('has every face within, each letter to be read, none the sign of a lacking one (6.2.11)', () => {
    const faces = ofType('/Subtype', '/Type0').map(({ value }) => value as PdfDictionary);
    expect(faces).toHaveLength(3);
    for (const face of faces) {
      expect(face['/Encoding']).toBe('/Identity-H');
      expect(objects.stream(face['/ToUnicode']).toString()).toContain('beginbfchar');
      const [letters] = (face['/DescendantFonts'] as PdfValue[]).map(dictionary);
      expect(letters).toMatchObject({ '/Subtype': '/CIDFontType2', '/CIDToGIDMap': '/Identity' });
      const described = dictionary(letters!['/FontDescriptor']);
      expect(objects.stream(described['/FontFile2']).readUInt32BE(0)).toBe(0x00010000);
      // From part 2 on a list of glyphs is not needed; one that lacks some would be a fault.
      expect(described).not.toHaveProperty('/CIDSet');
      expect(glyphsOf(letters!).has(0)).toBe(false);
    }
    const kinds = everyDictionary.filter((one) => one['/Type'] === '/Font');
    expect(kinds).toHaveLength(2 * faces.length);
  });

  it('has letters as wide as their face says (6.2.11.5)', () => {
    for (const { value } of ofType('/Subtype', '/CIDFontType2')) {
      const letters = value as PdfDictionary;
      const file = objects.stream(dictionary(letters['/FontDescriptor'])['/FontFile2']);
      for (const [glyph, width] of glyphsOf(letters))
        expect(Math.abs(width - advance(file, glyph))).toBeLessThanOrEqual(1);
    }
  });
});

/** Glyphs of a face that the document uses, and their widths in thousandths of the em. */
function glyphsOf(letters: PdfDictionary): Map<number, number> {
  const given = letters['/W'] as readonly (number | readonly number[])[];
  const found = new Map<number, number>();
  for (let at = 0; at < given.length; at += 2)
    (given[at + 1] as number[]).forEach((width, one) =>
      found.set((given[at] as number) + one, width),
    );
  return found;
}

/** Advance of a glyph in a TrueType file, in thousandths of the em (ISO/IEC 14496-22). */
function advance(file: Buffer, glyph: number): number {
  const count = file.readUInt16BE(4);
  const tables = Array.from({ length: count }, (_, one) => 12 + 16 * one);
  const table = (tag: string) =>
    file.readUInt32BE(tables.find((at) => file.toString('latin1', at, at + 4) === tag)! + 8);
  const last = file.readUInt16BE(table('hhea') + 34) - 1;
  const units = file.readUInt16BE(table('head') + 18);
  return (file.readUInt16BE(table('hmtx') + 4 * Math.min(glyph, last)) * 1000) / units;
}

describe('6.3 to 6.11 what can be done with it', () => {
  it('has links alone beside its pages, and they print (6.3)', () => {
    const notes = everyDictionary.filter((one) => one['/Type'] === '/Annot');
    expect(notes).toHaveLength(4);
    for (const note of notes) expect(note).toMatchObject({ '/Subtype': '/Link', '/F': 4 });
  });

  it('leads to pages and addresses and does nothing else (6.5)', () => {
    const deeds = everyDictionary.filter((one) => '/S' in one && '/URI' in one);
    expect(deeds.map((one) => one['/S'])).toEqual(['/URI', '/URI']);
    expect(Array.isArray(root['/OpenAction'])).toBe(true);
    expect(JSON.stringify(everyDictionary)).not.toMatch(/"\/(AA|JavaScript|JS|Launch|GoToR)"/);
  });

  it('has no layers, forms, turning pages or demands on its reader (6.4, 6.9 to 6.11)', () => {
    const refused = ['/OCProperties', '/AcroForm', '/Requirements', '/NeedsRendering', '/Perms'];
    for (const key of refused) expect(root).not.toHaveProperty([key]);
    for (const one of everyDictionary) expect(one).not.toHaveProperty('/PresSteps');
  });
});

describe('6.6 what it says of itself', () => {
  const packet = (bytes: Uint8Array) => {
    const held = pdfObjects(bytes);
    const name = (held.at(held.trailer['/Root']) as PdfDictionary)['/Metadata'];
    return { kind: held.at(name) as PdfDictionary, xml: held.stream(name).toString('utf8') };
  };
  const stated = async (bytes: Uint8Array, key: string) => {
    const { metadata } = await (await openPdf(bytes)).getMetadata();
    return metadata?.get(key) as unknown;
  };

  it('lies open in the file as a packet of XMP (6.6.2)', () => {
    const { kind, xml } = packet(pdf);
    expect(kind).toMatchObject({ '/Type': '/Metadata', '/Subtype': '/XML' });
    expect(xml).toMatch(/^<\?xpacket begin="\ufeff" id="W5M0MpCehiHzreSzNTczkc9d"\?>\n/);
    expect(xml.endsWith('<?xpacket end="w"?>')).toBe(true);
    expect(text).toContain('<pdfaid:part>2</pdfaid:part>');
  });

  it('says the same as Info (6.6.3)', async () => {
    const { info } = await (await openPdf(pdf)).getMetadata();
    expect(info).toMatchObject({
      Title: await stated(pdf, 'dc:title'),
      Creator: await stated(pdf, 'xmp:creatortool'),
      Producer: await stated(pdf, 'pdf:producer'),
      Subject: await stated(pdf, 'dc:description'),
      CreationDate: "D:20240506050809+00'00'",
    });
    expect(await stated(pdf, 'dc:title')).toBe('AB-3 – Kalé <b> & co');
    expect(await stated(pdf, 'dc:creator')).toEqual([(info as { Author: string }).Author]);
    expect(await stated(pdf, 'xmp:createdate')).toBe('2024-05-06T05:08:09Z');
    expect(packet(pdf).xml).toContain('<rdf:li xml:lang="x-default">AB-3');
  });

  it('says which part it is made to follow, and at which level (6.6.4)', async () => {
    expect(await stated(pdf, 'pdfaid:part')).toBe('2');
    expect(await stated(pdf, 'pdfaid:conformance')).toBe('B');
    expect(await stated(withRecord, 'pdfaid:part')).toBe('3');
    expect(await stated(withRecord, 'pdfaid:conformance')).toBe('B');
  });

  it('is named by the id of its paper', async () => {
    expect(await stated(pdf, 'xmpmm:documentid')).toBe('uuid:01234567-89ab-cdef-0123-456789abcdef');
  });

  it('names the well, the revision and the record’s hash, each described (6.6.2.3)', async () => {
    const { prefix, uri } = paperNamespace;
    expect(await stated(pdf, `${prefix}:wellnumber`)).toBe('AB-3');
    expect(await stated(pdf, `${prefix}:revision`)).toBe('4');
    expect(await stated(pdf, `${prefix}:recordhash`)).toBe('ab'.repeat(32));
    const { xml } = packet(pdf);
    expect(xml).toContain(`<pdfaSchema:namespaceURI>${uri}</pdfaSchema:namespaceURI>`);
    for (const name of ['wellNumber', 'revision', 'recordHash'])
      expect(xml).toContain(`<pdfaProperty:name>${name}</pdfaProperty:name>`);
  });

  it('is silent about what the drawing does not say', () => {
    const { xml } = packet(paintPdf({ ...trial, author: '' }, fonts.files));
    expect(xml).not.toContain('<pdfaExtension');
    expect(xml).not.toContain('<dc:creator>');
    expect(() => paintPdf({ ...trial, recordHash: 'x' }, fonts.files)).toThrow('recordHash');
  });
});

describe('ISO 19005-3, 6.8: a file within', () => {
  const held = pdfObjects(withRecord);
  const catalogue = held.at(held.trailer['/Root']) as PdfDictionary;
  const [named] = catalogue['/AF'] as PdfValue[];
  const specification = held.at(named) as PdfDictionary;

  it('is what it was, with its kind and its day', () => {
    const file = (specification['/EF'] as PdfDictionary)['/F'];
    expect(held.stream(file)).toEqual(record.bytes);
    expect(held.at(file)).toMatchObject({
      '/Type': '/EmbeddedFile',
      '/Subtype': '/application/json',
      '/Params': { '/ModDate': "u:D:20240506070809+00'00'", '/Size': record.bytes.length },
    });
  });

  it('is told to be the paper’s source, by name and in the list of files', async () => {
    const name = 'u:AB-3 Ɓ record.json';
    expect(specification).toMatchObject({
      ...{ '/Type': '/Filespec', '/F': name, '/UF': name, '/AFRelationship': '/Source' },
      '/Desc': 'u:The record that the paper shows',
    });
    const files = (catalogue['/Names'] as PdfDictionary)['/EmbeddedFiles'] as PdfDictionary;
    expect(files['/Names']).toEqual([name, named]);
    const attached = (await (await openPdf(withRecord)).getAttachments()) as unknown;
    expect(JSON.stringify(Object.fromEntries(attached as Map<string, object>))).toContain(
      'AB-3 Ɓ record.json',
    );
  });

  it('has the same bytes each time, and the paper too', () => {
    expect(paintPdf(told, fonts.files, { attachment: record })).toEqual(withRecord);
    const never = { ...record, changedAt: 'never' };
    expect(() => paintPdf(told, fonts.files, { attachment: never })).toThrow(
      'never is no ISO 8601 moment',
    );
  });
});

describe('a picture in colours for printing inks', () => {
  it('keeps the document from saying that it follows PDF/A', () => {
    // A JPEG of one dot in four colours (ITU-T T.81, B.2.2; JFIF 1.02).
    const parts = [1, 2, 3, 4].flatMap((part) => [part, 0x11, 0]);
    const jfif = [0xff, 0xe0, 0, 16, 0x4a, 0x46, 0x49, 0x46, 0, 1, 2, 0, 0, 1, 0, 1, 0, 0];
    const frame = [0xff, 0xc0, 0, 20, 8, 0, 1, 0, 1, 4, ...parts];
    const head = [0xff, 0xd8, ...jfif, ...frame, 0xff, 0xd9];
    const data = `data:image/jpeg;base64,${Buffer.from(head).toString('base64')}`;
    const image = { kind: 'image', x: 0, y: 0, width: 9, height: 9, data, says: '' } as const;
    const inks = paintPdf(drawing([page([image])]), fonts.files);
    expect(Buffer.from(inks).includes('/DeviceCMYK')).toBe(true);
    expect(Buffer.from(inks).includes('<pdfaid:part>')).toBe(false);
  });
});
