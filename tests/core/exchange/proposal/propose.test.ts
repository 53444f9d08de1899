import { readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { plainHeading } from '../../../../core/exchange/proposal/plainHeading.ts';
import { propose, proposeMapping } from '../../../../core/exchange/proposal/propose.ts';
import { readMapping, type Source } from '../../../../core/exchange/tables/mapping.ts';
import { readSources } from '../../../../core/exchange/tables/readTables.ts';
import { sourcesOfFile, type TableSource } from '../../../../core/exchange/tables/source.ts';

async function opened(text: string, name = 'a.csv'): Promise<readonly TableSource[]> {
  const sources = await sourcesOfFile({ name, bytes: new TextEncoder().encode(text) });
  if (!sources.ok) throw new Error(sources.error.sentence);
  return sources.value;
}

const said = (source: Source) =>
  `${source.column ?? source.columns?.join('+') ?? `=${source.value}`}` +
  (source.unit ? ` ${source.unit}` : source.unitColumn ? ` by ${source.unitColumn}` : '');

/** `log: from=Top m, …` for each way in which the table is read. */
async function proposed(text: string) {
  const [source] = await opened(text);
  return propose(source!).tables.map(({ kind, fields }) => {
    const pairs = Object.entries(fields).map(([name, of]) => `${name}=${of.map(said).join('|')}`);
    return `${kind}: ${pairs.join(', ')}`;
  });
}

describe('headings', () => {
  it.each([
    ['Depth (ft)', 'depth', 'ft'],
    ['Tiefe [m]', 'tiefe', 'm'],
    ['diam. mm', 'diam', 'mm'],
    ['Casing OD inch', 'casing od', 'in'],
    ['Profondeur (pieds)', 'profondeur', 'ft'],
    ['FromDepth', 'from depth', undefined],
    ['LOCA_ID', 'loca id', undefined],
    ['Elevation (AHD)', 'elevation ahd', undefined],
    ['m', 'm', undefined],
    ['__proto__', 'proto', undefined],
  ])('are read without their unit: %s', (heading, words, unit) => {
    expect(plainHeading(heading)).toEqual(unit ? { words, unit } : { words });
  });
});

describe('what columns seem to mean', () => {
  it('is told in French, with semicolons, decimal commas, and a title above', async () => {
    const text =
      'Forages du lot 3;;;\n\nN° de forage;De (m);A (m);Nature du terrain\n' +
      'F1;0;1,5;Argile sableuse\nF1;1,5;12,25;Grès altéré\n';
    expect(await proposed(text)).toEqual([
      'log: from=De (m) m, to=A (m) m, material=Nature du terrain, ' +
        'qualifiers=Nature du terrain, words=Nature du terrain',
    ]);
    const [source] = await opened(text);
    expect(propose(source!).detected).toEqual({
      encoding: 'utf-8',
      delimiter: ';',
      headingLine: 3,
      decimal: ',',
      dateOrder: 'ymd',
      dateOrderOpen: false,
    });
  });

  it('is told in Portuguese, with the depth in feet', async () => {
    expect(await proposed('Furo,De (pés),Até (pés),Litologia\nF1,0,10,Areia\n')).toEqual([
      'log: from=De (pés) ft, to=Até (pés) ft, material=Litologia, ' +
        'qualifiers=Litologia, words=Litologia',
    ]);
  });

  it('is told by content where the heading is a strange word', async () => {
    expect(await proposed('Bore,Top,Base,Seen\nA,0,2,Sandy clay\nA,2,5,Gravel\n')).toEqual([
      'log: from=Top m, to=Base m, material=Seen, qualifiers=Seen, words=Seen',
    ]);
  });

  it('takes a unit from the column that names it', async () => {
    const [log] = await proposed('Bore,From,From unit,To,To unit,Lithology\nA,0,ft,2,ft,Clay\n');
    expect(log).toMatch(/^log: from=From by From unit, to=To by To unit,/);
  });

  it('is several things where one wide table holds wells and their pipes', async () => {
    const text =
      'Well no,Village,Lat,Long,Depth (m),SWL (m),Screen from,Screen to,Gravel top,Gravel bottom\n' +
      'W1,Kolo,12.5,-1.5,45,8.2,30,42,25,45\nW2,Bari,12.6,-1.4,50,,,,,\n';
    expect(await proposed(text)).toEqual([
      'wells: site.village=Village, site.latitude=Lat, site.longitude=Long, ' +
        'bore.depthReached=Depth (m) m',
      'levels: reading=SWL (m) m, datum==ground',
      'pieces: from=Screen from m, to=Screen to m, kind==screen',
      'fills: from=Gravel top m, to=Gravel bottom m, fill==gravelPack',
    ]);
    const sources = await opened(text);
    const { records, troubles } = readSources(sources, proposeMapping(sources)!);
    expect(troubles).toEqual([]);
    expect(records.map(({ levels, strings, annulus }) => [levels, strings, annulus])).toMatchObject(
      [
        [[{ reading: 8.2 }], [{ components: [{ kind: 'screen', length: 12 }] }], [{ from: 25 }]],
        [undefined, undefined, undefined],
      ],
    );
  });

  it('leaves open which comes first where no day tells, and says so', async () => {
    const order = async (...days: string[]) => {
      const [source] = await opened(`Well;Date\n${days.map((day) => `W;${day}`).join('\n')}\n`);
      const { dateOrder, dateOrderOpen } = propose(source!).detected;
      return [dateOrder, dateOrderOpen];
    };
    expect(await order('05/06/2024', '25/06/2024')).toEqual(['dmy', false]);
    expect(await order('05/06/2024', '06/25/2024')).toEqual(['mdy', false]);
    expect(await order('05/06/2024')).toEqual(['dmy', true]);
    expect(await order('2024-06-05')).toEqual(['ymd', false]);
  });

  it('is nothing where no column names the well', async () => {
    expect(await proposed('a,b\n1,2\n')).toEqual([]);
    expect(proposeMapping(await opened('only text'))).toBeUndefined();
    expect(proposeMapping(await opened(''))).toBeUndefined();
  });

  it.each([
    ['ngis-lithology/ngis-lithology-a.csv', 37],
    ['gwml2-usgs/log.csv', 1],
    ['gwml2-usgs/pieces.csv', 1],
    ['gwml2-bom/pieces.csv', 6],
    ['gwml2-bom/wells.csv', 6],
    ['dov-flanders/lagen.csv', 1],
    ['dov-flanders/opbouw.csv', 1],
    ['ags4/2370644/geol.csv', 9],
  ])('reads all wells of the published table %s as it stands', async (file, count) => {
    const place = path.join(import.meta.dirname, '../../../data', file);
    const sources = await opened(readFileSync(place, 'utf8'), path.basename(file));
    const mapping = readMapping(JSON.parse(JSON.stringify(proposeMapping(sources))));
    if (!mapping.ok) throw new Error(mapping.error.sentence);
    const { records, troubles } = readSources(sources, mapping.value);
    expect([records.length, troubles]).toEqual([count, []]);
  });

  it('is of feet where the published table says so row by row', async () => {
    const place = path.join(import.meta.dirname, '../../../data/gwml2-usgs/log.csv');
    const sources = await opened(readFileSync(place, 'utf8'));
    const { records } = readSources(sources, proposeMapping(sources)!);
    // 9 ft, the first interval of the published log.
    expect(records[0]!.log![0]).toMatchObject({ from: 0, to: 2.7432, material: 'clay' });
  });
});
