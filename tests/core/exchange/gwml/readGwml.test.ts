import { readFileSync } from 'node:fs';
import path from 'node:path';
import { expect, test } from 'vitest';
import { bytesOf } from '../../../../core/exchange/encode.ts';
import { holdsGwml, readGwml } from '../../../../core/exchange/gwml/readGwml.ts';

const data = path.join(import.meta.dirname, '../../../data');

function published(name: string) {
  const file = { name, bytes: readFileSync(path.join(data, name)) };
  expect(holdsGwml(file)).toBe(true);
  const result = readGwml(file);
  if (!result.ok) throw new Error(result.error.sentence);
  return result.value;
}

const given = (text: string) => ({ name: 'wells.xml', bytes: bytesOf([text]) });

function read(inside: string) {
  const spaces =
    'xmlns:a="http://www.opengis.net/gwml-well/2.2" xmlns:x="http://www.w3.org/1999/xlink"';
  const result = readGwml(given(`<c ${spaces}>${inside}</c>`));
  if (!result.ok) throw new Error(result.error.sentence);
  return result.value;
}

const quantity = (name: string, value: string, uom: string) =>
  `<b:${name}><s:Quantity><s:uom ${uom}/><s:value>${value}</s:value></s:Quantity></b:${name}>`;

// Figures are those of the files; 1 ft is 0.3048 m and 1 in 25.4 mm exactly.
test('a published well in feet and inches comes in as metres and millimetres', () => {
  const { wells, troubles } = published('gwml2-usgs/GW_Well_USGS_uc4.xml');
  const { record } = wells[0]!;
  expect(record.identity?.number).toBe('403836085374401');
  expect(record.bore?.depthReached).toBe(60.356496);
  expect(record.log).toHaveLength(20);
  expect(record.log?.[0]).toEqual({ from: 0, to: 2.7432, material: 'clay', words: 'Clay; BROWN' });
  expect(record.strings?.[0]?.components).toEqual([
    { kind: 'screen', material: 'steel', inside: 152.4, slotWidth: 1.016, length: 1.524 },
    { kind: 'plain', material: 'PVC, plastic', inside: 152.4, length: 58.8264 },
  ]);
  // 912.16 US survey feet, 1200/3937 m each.
  expect(record.site?.elevation).toBeCloseTo(278.0269, 4);
  expect(troubles).toMatchObject([{ line: 171, kept: true }]);
  expect(troubles[0]!.sentence).toContain('EPSG:4267');
});

test('published boreholes without a well come in each as one', () => {
  const { wells } = published('gwml2-bom/Borehole_BoM_uc1_maxfeatures5_v2-2_response.xml');
  expect(wells).toHaveLength(5);
  const { site, strings } = wells[0]!.record;
  expect(site).toEqual({ latitude: -35.335897849493136, longitude: 149.15916124413474 });
  expect(strings?.[0]?.components.map(({ kind }) => kind)).toEqual(['screen', 'plain']);
});

test('a borehole is found by the link of its well, whatever the prefixes', () => {
  const { wells } = read(
    '<a:GW_Well g:id="w"><g:name>A &amp; B</g:name><a:gwWellConstruction x:href="#h"/></a:GW_Well>' +
      `<b:Borehole g:id="h"><b:CasingComponent>${quantity('from', '-1', 'code="[ft_i]"')}` +
      `${quantity('to', '9', 'x:title="foot"')}</b:CasingComponent></b:Borehole>`,
  );
  expect(wells).toHaveLength(1);
  expect(wells[0]!.record).toMatchObject({
    identity: { number: 'A & B' },
    strings: [{ set: { by: 'bottom', depth: 2.7432 }, components: [{ length: 3.048 }] }],
  });
});

test('packs and seals become fills, in order of depth', () => {
  const range = (from: string, to: string) =>
    quantity('from', from, 'code="m"') + quantity('to', to, 'code="m"');
  const { wells, troubles } = read(
    `<b:Borehole g:id="h"><b:FiltrationComponent>${range('20', '30')}` +
      `${quantity('filterGrainSize', '0.1', 'code="in"')}</b:FiltrationComponent>` +
      `<b:SealingComponent>${range('0', '5')}<b:sealingMaterial x:title="neat cement"/>` +
      '<b:sealingType x:title="sanitary seal"/></b:SealingComponent>' +
      `<b:SealingComponent>${range('5', '6')}<b:sealingMaterial x:title="shale trap"/>` +
      '</b:SealingComponent></b:Borehole>',
  );
  expect(wells[0]!.record.annulus).toEqual([
    { from: 0, to: 5, fill: 'cementGrout', sanitary: true, remark: 'neat cement; sanitary seal' },
    { from: 20, to: 30, fill: 'gravelPack', grainMin: 2.54, grainMax: 2.54 },
  ]);
  expect(troubles).toMatchObject([{ column: 'SealingComponent', kept: false }]);
});

test('a value in a unit of something else is told and left out', () => {
  const { wells, troubles } = read(
    `<a:GW_Well g:id="w">${quantity('gwWellTotalLength', '12', 'code="kg"')}</a:GW_Well>`,
  );
  expect(wells[0]!.record.bore).toBeUndefined();
  expect(troubles).toMatchObject([{ column: 'gwWellTotalLength', kept: true }]);
});

test('an elevation counts in its unit, whatever stands behind it', () => {
  const { wells } = read(
    '<a:GW_Well g:id="w"><a:gwWellReferenceElevation><a:Elevation><a:elevation ' +
      'srsName="http://www.opengis.net/def/crs/EPSG/0/4440" uomLabels="m NZVD2009">14.295</a:elevation>' +
      '<a:elevationType x:title="Relative Level Natural Surface"/></a:Elevation>' +
      '</a:gwWellReferenceElevation></a:GW_Well>',
  );
  expect(wells[0]!.record.site).toEqual({ elevation: 14.295, elevationDatum: 'EPSG 4440' });
});

// Axis order of EPSG 4326 by its URI: latitude first (from memory: OGC axis order policy).
test.each([
  ['http://www.opengis.net/def/crs/EPSG/0/4326', { latitude: 8.5, longitude: -1.25 }],
  ['urn:ogc:def:crs:EPSG::4326', { latitude: 8.5, longitude: -1.25 }],
  ['EPSG:4326', { latitude: -1.25, longitude: 8.5 }],
])('the axes of %s are in its own order', (srsName, site) => {
  const { wells } = read(
    `<a:GW_Well g:id="w"><a:gwWellLocation><g:Point srsName="${srsName}"><g:pos>8.5 -1.25</g:pos>` +
      '</g:Point></a:gwWellLocation></a:GW_Well>',
  );
  expect(wells[0]!.record.site).toEqual(site);
});

test('a document that brings a type of its own, is broken, or has no wells is refused', () => {
  const root = '<c xmlns:a="http://www.opengis.net/gwml-well/2.2">';
  const type = '<!DOCTYPE c [<!ENTITY x SYSTEM "other.txt">]>';
  expect(readGwml(given(`${type}${root}&x;</c>`))).toMatchObject({ error: { code: 'xmlDoctype' } });
  expect(readGwml(given(`${root}<d></c>`))).toMatchObject({ error: { code: 'xmlBroken' } });
  expect(readGwml(given(`${root}</c>`))).toMatchObject({ error: { code: 'gwmlNoWells' } });
});

test('entities that nobody defined stay as they stand', () => {
  const name = '&lt;&#233;&#x41;&amp;lt;&q;';
  const { wells } = read(`<a:GW_Well g:id="w"><g:name>${name}</g:name></a:GW_Well>`);
  expect(wells[0]!.record.identity?.number).toBe('<éA&lt;&q;');
});
