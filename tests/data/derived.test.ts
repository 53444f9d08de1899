import { readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { agsTables, southAustralianTables } from './derived.ts';
import { agsTable, jsonTable } from './tablesOf.ts';

const read = (name: string) => readFileSync(path.join(import.meta.dirname, name), 'utf8');

describe('the tables beside their published files', () => {
  const derived = { ...agsTables(), ...southAustralianTables() };

  it.each(Object.entries(derived))('%s says what its source says', (name, text) => {
    expect(read(name)).toBe(text);
  });

  it('are as many as the groups and answers', () => {
    // No HDIA group in one of the four AGS files.
    expect(Object.keys(derived)).toHaveLength(4 * 6 - 1 + 4);
  });

  it.each([
    ['gwml2-usgs/log.csv', 'gwml2-usgs/GW_Well_USGS_uc4.xml'],
    ['gwml2-usgs/pieces.csv', 'gwml2-usgs/GW_Well_USGS_uc4.xml'],
    ['dov-flanders/opbouw.csv', 'dov-flanders/grondwaterfilter_ZUVP003.xml'],
    ['dov-flanders/peilmetingen.csv', 'dov-flanders/grondwaterfilter_ZUVP003.xml'],
  ])('%s has no figure that is not in %s', (table, source) => {
    const xml = read(source);
    const [, ...rows] = read(table).trim().split('\n');
    const figures = rows.flatMap((row) => row.split(',').filter((cell) => /^-?\d/.test(cell)));
    expect(figures.length).toBeGreaterThan(rows.length);
    expect(figures.filter((figure) => !xml.includes(`>${figure}<`))).toEqual([]);
  });

  it('of the six bores have no figure that is not in their documents', () => {
    const xml = ['nsw-10042141_v2-2', 'maxfeatures5_v2-2']
      .map((part) => read(`gwml2-bom/Borehole_BoM_uc1_${part}_response.xml`))
      .join('');
    const figures = read('gwml2-bom/pieces.csv').match(/(?<=,)\d[\d.]*/g)!;
    expect(figures.length).toBe(13 * 3);
    expect(figures.filter((figure) => !xml.includes(`>${figure}<`))).toEqual([]);
  });
});

describe('a table out of another form', () => {
  it('is the group’s headings and data, without units, types and other groups', () => {
    const text = [
      '\uFEFF"GROUP","PROJ"\r\n"HEADING","PROJ_ID"\r\n"DATA","1"\r\n',
      '"GROUP","HDIA"\r\n"HEADING","LOCA_ID","HDIA_DPTH"\r\n"UNIT","","m"\r\n',
      '"TYPE","ID","2DP"\r\n"DATA","A, 1","6.00"\r\n\r\n"GROUP","UNIT"\r\n"DATA","m"\r\n',
    ].join('');
    expect(agsTable(text, 'HDIA')).toBe('"LOCA_ID","HDIA_DPTH"\n"A, 1","6.00"\n');
    expect(agsTable(text, 'PIPE')).toBeUndefined();
  });

  it('has an empty cell where an object lacks a key', () => {
    expect(jsonTable([{ a: 1, b: 'x, y' }, { a: 2 }])).toBe('a,b\n1,"x, y"\n2,\n');
  });
});
