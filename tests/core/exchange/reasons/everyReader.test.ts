import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { expect, test } from 'vitest';
import { bytesOf } from '../../../../core/exchange/encode.ts';
import type { GivenFile } from '../../../../core/exchange/incoming.ts';
import { recordReaderFor } from '../../../../core/exchange/readers.ts';
import { sayTableTrouble, type TableTrouble } from '../../../../core/exchange/tables/trouble.ts';

const data = path.join(import.meta.dirname, '../../../data');

const published: readonly GivenFile[] = readdirSync(data, { recursive: true, encoding: 'utf8' })
  .filter((name) => /\.(ags|xml|json|csv|geojson)$/.test(name))
  .map((name) => ({ name, bytes: readFileSync(path.join(data, name)) }));

const agsRows = [
  '"GROUP","PROJ"',
  '"GROUP","LOCA"',
  '"HEADING","LOCA_ID","LOCA_LAT","LOCA_LON","LOCA_GL","LOCA_STAR","LOCA_LLZ","LOCA_ODD"',
  '"UNIT","","","","furlong","","",""',
  '"DATA","A","north","east","3","spring","",""',
  '"DATA","B","1","2","high","","NAD27","odd"',
  '"DATA","C","91","10","","","",""',
  '"DATA","D","95","200","","","",""',
  '"DATA","E","0","0","","","",""',
  '"DATA","F","","","","","","","","long"',
  '"NONSENSE","A"',
  '"GROUP","GEOL"',
  '"HEADING","LOCA_ID","GEOL_TOP","GEOL_BASE","GEOL_DESC"',
  '"DATA","A","0","","clay"',
  '"DATA","A","3","2","clay"',
  '"DATA","Z","0","2","clay"',
  '"GROUP","PIPE"',
  '"HEADING","LOCA_ID","PIPE_TOP","PIPE_BASE","PIPE_TYPE"',
  '"DATA","A","0","2","RIDDLE"',
  '"GROUP","BKFL"',
  '"HEADING","LOCA_ID","BKFL_TOP","BKFL_BASE","BKFL_DESC"',
  '"DATA","A","0","2","Flush cover"',
  '"GROUP","CDIA"',
  '"HEADING","LOCA_ID","CDIA_DPTH","CDIA_DIAM"',
  '"DATA","A","2",""',
  '"GROUP","MOND"',
  '"HEADING","LOCA_ID","MOND_TYPE","MOND_RDNG","MOND_UNIT"',
  '"DATA","A","TEMP","2","degC"',
  '"DATA","A","WDEP","2","kPa"',
  '"GROUP","ISPT"',
  '"HEADING","LOCA_ID","ISPT_TOP"',
  '"DATA","A","2"',
];

const quantity = (value: string, unit: string) =>
  `<Quantity><uom code="${unit}"/><value>${value}</value></Quantity>`;
const gwml = `<GW_Well xmlns="http://www.opengis.net/gwml-well/2.2" id="W">
<gwWellLocation><Point srsName="EPSG:27700"><pos>1 2</pos></Point></gwWellLocation>
<gwWellReferenceElevation><Elevation><elevation uomLabels="fathom">3</elevation></Elevation></gwWellReferenceElevation>
<gwWellYield><OM_Observation><result>${quantity('2', 'bucket/day')}</result></OM_Observation></gwWellYield>
<gwWellLicence>A licence</gwWellLicence>
<gwWellTotalLength>${quantity('deep', 'm')}</gwWellTotalLength>
<gwWellConstruction><Borehole><bholeNominalDiameter>${quantity('150', 'mm')}</bholeNominalDiameter>
<CasingComponent><from>${quantity('0', 'm')}</from></CasingComponent>
<ScreenComponent><from>${quantity('9', 'm')}</from><to>${quantity('3', 'm')}</to></ScreenComponent>
<SealingComponent><from>${quantity('0', 'm')}</from><to>${quantity('1', 'cubit')}</to></SealingComponent>
<SealingComponent><from>${quantity('0', 'm')}</from><to>${quantity('1', 'm')}</to><sealingMaterial title="Wishes"/></SealingComponent>
</Borehole></gwWellConstruction></GW_Well>`;

const dov = `<kern xmlns="http://kern.schemas.dov.vlaanderen.be">
<boring><identificatie>B</identificatie><pos>1 2 3</pos><laag><van>3</van><tot>2</tot></laag></boring>
<filtermeting><boring>B</boring><peilmeting><datum>2020-01-01</datum></peilmeting></filtermeting></kern>`;

const wpdx = `#lat_deg,#lon_deg,#status_id,#report_date,#water_source,#fecal_coliform_value,odd
,,Yes,2020-01-01,Spring,many,1
1,2,Yes,"2020-01-01`;

const geoJson = `{"type": "FeatureCollection", "features": [{"type": "Feature",
"geometry": {"type": "LineString", "coordinates": []}, "properties": {"odd": 1, "depth_drilled_m": "deep"}}]}`;

const given = (name: string, text: string): GivenFile => ({ name, bytes: bytesOf([text]) });
const faulty = [
  given('faulty.ags', agsRows.join('\n')),
  given('gwml.xml', gwml),
  given('dov.xml', dov),
  given('wpdx.csv', wpdx),
  given('points.geojson', geoJson),
  given(
    'records.json',
    '[{"schemaVersion": 99}, {"schemaVersion": 1, "notes": 3}, {"schemaVersion"',
  ),
];

async function troublesOf(file: GivenFile): Promise<readonly TableTrouble[]> {
  const read = await recordReaderFor(file)?.read(file);
  return read?.ok ? read.value.troubles : [];
}

test.each([...published, ...faulty].map((file) => [file.name, file] as const))(
  'whatever the readers tell of %s is said in each language',
  async (name, file) => {
    const troubles = await troublesOf(file);
    if (faulty.includes(file)) expect(troubles.length, name).toBeGreaterThan(0);
    for (const trouble of troubles) {
      expect(sayTableTrouble(trouble, 'en')).toBe(trouble.sentence);
      for (const language of ['fr', 'pt'] as const) {
        const said = sayTableTrouble(trouble, language);
        expect(said).not.toBe(trouble.sentence);
        expect(said).not.toMatch(/\{\w+\}/);
      }
    }
  },
);

test('the faulty files tell of most that a reader can find wrong', async () => {
  const troubles = (await Promise.all(faulty.map(troublesOf))).flat();
  const codes = [...new Set(troubles.map(({ reason }) => reason.code))].sort();
  expect(codes).toEqual([
    'brokenJson',
    'columnsLeft',
    'diameterAlone',
    'groupLeft',
    'halfCasing',
    'halfRange',
    'headingsLeft',
    'heightMissing',
    'inTheSea',
    'leftOut',
    'levelUnit',
    'noFill',
    'noFlow',
    'noLength',
    'noLoca',
    'noPieceKind',
    'noPoint',
    'noPosition',
    'noRange',
    'noReading',
    'notAWell',
    'notCount',
    'notDegrees',
    'notNumberOut',
    'notOnEarth',
    'notTimeOut',
    'onGrid',
    'otherDatum',
    'partLeft',
    'propertyLeft',
    'rangeUpsideDown',
    'restComes',
    'restOfWellComes',
    'strangeLine',
    'swapped',
    'tooNew',
    'unclosedQuote',
  ]);
});
