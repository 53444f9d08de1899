import { beforeAll, describe, expect, it } from 'vitest';
import {
  dictionariesIn,
  pdfObjects,
  type PdfDictionary,
  type PdfObjects,
  type PdfValue,
} from '../../reading/pdfObjects.ts';
import { complaintsAbout } from '../../reading/tools.ts';
import { people, sealedByThree } from './sealed.ts';

/*
 * What a seal adds, beside clauses of ISO 19005-2:2011 as far as they can be looked at here. Their
 * numbers and their wording are from memory; docs/archival-pdf.md tells what this does not prove.
 */
interface Read {
  readonly objects: PdfObjects;
  readonly dictionaries: readonly PdfDictionary[];
}

let states: readonly Uint8Array[];
let read: readonly Read[];

beforeAll(async () => {
  states = (await sealedByThree()).states;
  read = states.map((bytes) => {
    const objects = pdfObjects(bytes);
    return {
      objects,
      dictionaries: objects.all.flatMap(({ value }) => [...dictionariesIn(value)]),
    };
  });
});

const dictionary = ({ objects }: Read, value: PdfValue | undefined) =>
  objects.at(value) as PdfDictionary;
const rootOf = (one: Read) => dictionary(one, one.objects.trailer['/Root']);
const widgetsOf = ({ dictionaries }: Read) =>
  dictionaries.filter((one) => one['/Subtype'] === '/Widget');
const isPoint = (rectangle: PdfValue | undefined) => {
  const [left, foot, right, top] = rectangle as number[];
  return left === right && foot === top;
};

describe.each([1, 2, 3])('a paper that was sealed, by %d', (count) => {
  it('is a file of which qpdf and poppler have nothing to say (6.1)', () => {
    expect(complaintsAbout(states[count]!)).toBe('');
    expect(Buffer.from(states[count]!).toString('latin1').trimEnd().endsWith('%%EOF')).toBe(true);
  });

  it('has the id of the paper still, and another of its state (6.1.3)', () => {
    const ids = read.map(({ objects }) => objects.trailer['/ID'] as readonly string[]);
    expect(ids[count]![0]).toBe(ids[0]![0]);
    expect(new Set(ids.slice(0, count + 1).map(([, state]) => state)).size).toBe(count + 1);
    expect(read[count]!.objects.trailer).not.toHaveProperty('/Encrypt');
  });

  it('has widgets that print, on their page, neither hidden nor doing anything (6.3.2, 6.4.1)', () => {
    const widgets = widgetsOf(read[count]!);
    expect(widgets).toHaveLength(count);
    for (const widget of widgets) {
      // Bit 3 prints; none that hides, shows nowhere or lets go of the page is set.
      expect(widget).toMatchObject({ '/F': 4, '/FT': '/Sig', '/Type': '/Annot' });
      for (const key of ['/A', '/AA', '/MK', '/C', '/IC', '/DA', '/CA'])
        expect(widget).not.toHaveProperty([key]);
      const page = dictionary(read[count]!, widget['/P']);
      const notes = (read[count]!.objects.at(page['/Annots']) as PdfValue[]).map((note) =>
        read[count]!.objects.at(note),
      );
      expect(notes).toContainEqual(widget);
    }
  });

  it('has one stream for what a seal shows, of paths alone; a seal that is a point has none (6.3.3)', () => {
    const shown = widgetsOf(read[count]!).filter((widget) => !isPoint(widget['/Rect']));
    expect(shown).toHaveLength(count === 1 ? 1 : count - 1);
    for (const widget of widgetsOf(read[count]!)) {
      if (isPoint(widget['/Rect'])) {
        expect(widget).not.toHaveProperty('/AP');
        continue;
      }
      const look = widget['/AP'] as PdfDictionary;
      expect(Object.keys(look)).toEqual(['/N']);
      expect(dictionary(read[count]!, look['/N'])).toMatchObject({
        '/Subtype': '/Form',
        '/Resources': {},
      });
      const drawn = read[count]!.objects.stream(look['/N']).toString('latin1');
      const operators = new Set(drawn.split(/\s+/).filter((word) => /^[A-Za-z*'"]+$/.test(word)));
      // Colours of device grey and RGB, paths and their filling: no text, picture or state.
      const allowed = [
        'q',
        'Q',
        'cm',
        'm',
        'l',
        'c',
        'h',
        're',
        'f',
        'f*',
        'g',
        'rg',
        'S',
        'G',
        'w',
      ];
      expect([...operators].filter((one) => !allowed.includes(one))).toEqual([]);
      expect(operators.has('f') || operators.has('f*')).toBe(true);
    }
  });

  it('has one form that leaves its looks alone, with a field for each seal (6.4.1, 6.4.2)', () => {
    const form = dictionary(read[count]!, rootOf(read[count]!)['/AcroForm']);
    expect(Object.keys(form).sort()).toEqual(['/Fields', '/SigFlags']);
    expect(form['/Fields']).toHaveLength(count);
    expect(form['/SigFlags']).toBe(3);
  });

  it('has signatures that name their form and nothing that is done (6.4.3, 6.1.12)', () => {
    const signatures = read[count]!.dictionaries.filter((one) => one['/Type'] === '/Sig');
    expect(signatures.map((one) => one['/Reason'])).toEqual(
      people.slice(0, count).map(({ role }) => `u:${role}`),
    );
    for (const signature of signatures) {
      expect(signature['/SubFilter']).toBe('/ETSI.CAdES.detached');
      for (const key of ['/Reference', '/Changes', '/Cert'])
        expect(signature).not.toHaveProperty([key]);
    }
    expect(rootOf(read[count]!)).not.toHaveProperty('/Perms');
    expect(rootOf(read[count]!)).not.toHaveProperty('/DSS');
  });

  it('has in its catalogue the form alone besides what the paper had, and the same metadata (6.6)', () => {
    const { '/AcroForm': form, ...kept } = rootOf(read[count]!);
    expect(form).toBeDefined();
    expect(kept).toEqual(rootOf(read[0]!));
    const packet = (one: Read) => one.objects.stream(rootOf(one)['/Metadata']).toString();
    expect(packet(read[count]!)).toBe(packet(read[0]!));
    const info = (one: Read) => dictionary(one, one.objects.trailer['/Info']);
    expect(info(read[count]!)).toEqual(info(read[0]!));
  });

  it('has no key that is refused anywhere: transparency, scripts, layers, smoothing (6.2, 6.5, 6.9)', () => {
    const refused = [
      ...['/SMask', '/CA', '/ca', '/BM', '/Group', '/TR', '/TR2', '/HTP', '/ExtGState'],
      ...['/AA', '/JavaScript', '/JS', '/OCProperties', '/OC', '/XFA', '/NeedAppearances'],
      ...['/Alternates', '/OPI', '/Interpolate', '/PS', '/Ref', '/FFilter', '/NeedsRendering'],
    ];
    for (const one of read[count]!.dictionaries)
      for (const key of refused) expect(one).not.toHaveProperty([key]);
  });

  it('keeps the bytes of the state before', () => {
    const [before, after] = [states[count - 1]!, states[count]!];
    expect(Buffer.compare(after.subarray(0, before.length), before)).toBe(0);
  });
});
