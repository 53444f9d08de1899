import { expect, test } from 'vitest';
import { gwmlWriter } from '../../../../core/exchange/gwml/writeGwml.ts';
import { decode } from '../../../../core/exchange/tables/decode.ts';
import { writeWells } from '../../../../core/exchange/writer.ts';
import { readXml, within, type XmlElement } from '../../../../core/exchange/xml/readXml.ts';
import { demoWells, outgoing, writing } from '../roundTrip.ts';

/**
 * Children in their fixed order, as gwml2-well.xsd and gwml2-wellconstruction.xsd, version 2.2.0, have
 * them (github.com/highsource/ogc-schemas, schemas/src/main/resources-original/ogc/gwml/2.2), after
 * what they inherit of gml:AbstractFeature (gml 3.2.1, from memory) and of the sampling feature. `+`
 * marks what must be there, `*` what may stand several times.
 */
const list = (names: string) => names.split(' ');
const feature = list('description name*');
const sampling = [...feature, ...list('sampledFeature+* shape+')];
const component = [...feature, ...list('from to')];
const observation = list(
  'phenomenonTime+ resultTime+ procedure+ observedProperty+ featureOfInterest+ result+',
);
const order: Readonly<Record<string, readonly string[]>> = {
  GW_Well: [
    ...sampling,
    ...list('gwWellBody* gwWellConstructedDepth gwWellConstruction gwWellContributionZone'),
    ...list('gwWellLocation gwWellPurpose* gwWellReferenceElevation* gwWellStaticWaterDepth*'),
    ...list('gwWellStatus gwWellTotalLength gwWellUnit* gwWellWaterUse* gwWellYield'),
    ...list('gwWellLicence* gwWellGeology*'),
  ],
  Borehole: [
    ...sampling,
    ...list('bholeMaterialCustodian* bholeCoreInterval* bholeDateOfDrilling bholeDriller'),
    ...list('bholeDrillingMethod* bholeInclinationType bholeNominalDiameter bholeOperator'),
    ...list('bholeStartPoint bholeConstruction* bholeHeadworks+* installedEquipment*'),
  ],
  BoreCollar: [
    ...feature,
    ...list('collarElevation* collarElevationType collarHeadworkType collarLocation collarSeal'),
  ],
  Casing: [...feature, 'casingElement*'],
  Screen: [...feature, 'screenElement*'],
  Filtration: [...feature, 'filterElement*'],
  Sealing: [
    ...feature,
    ...list('sealingGroutingPlacementMethod casingLeft casingSlit sealingElement*'),
  ],
  CasingComponent: [
    ...component,
    ...list('casingMaterial casingCoating casingForm casingInternalDiameter'),
    ...list('casingExternalDiameter casingWallThickness'),
  ],
  ScreenComponent: [
    ...component,
    ...list('screenAttachmentMethod screenCoating screenForm screenHoleWidth screenHoleLength'),
    ...list('screenMaterial screenInternalDiameter screenExternalDiameter'),
    ...list('screenPerforationMethod screenFitting screenMake screenModel screenNumber'),
    ...list('screenPlacement screenWallThickness'),
  ],
  FiltrationComponent: [...component, ...list('filterGrainSize filterMaterial')],
  SealingComponent: [...component, ...list('sealingMaterial sealingType')],
  Equipment: [...feature, ...list('characteristics* equipmentType+ installationDate')],
  Elevation: list('elevation+ elevationAccuracy elevationType+ elevationMeasurementMethod+'),
  LogValue: list('fromDepth+ toDepth+ value+'),
  OM_Observation: observation,
  GW_GeologyLog: [...observation, ...list('startDepth endDepth')],
  Quantity: list('uom+ value+'),
};

/** The same as a pattern over the names of the children. */
function patternOf(names: readonly string[]): RegExp {
  const times = (name: string) =>
    name.endsWith('+*') ? '+' : name.endsWith('*') ? '*' : name.endsWith('+') ? '' : '?';
  const parts = names.map((name) => `(?:${name.replace(/[+*]/g, '')} )${times(name)}`);
  return new RegExp(`^${parts.join('')}$`);
}

async function written(): Promise<{ text: string; root: XmlElement }> {
  const wells = [...demoWells().values(), { schemaVersion: 1 as const }].map(outgoing);
  const { files } = await writeWells(gwmlWriter(writing), wells);
  const { text } = decode(files[0]!.bytes);
  const root = readXml('wells.xml', text);
  if (!root.ok) throw new Error(root.error.sentence);
  return { text, root: root.value };
}

test('parts stand in the order of the schemas, as often as these allow', async () => {
  const { root } = await written();
  for (const [name, names] of Object.entries(order)) {
    const found = within(root, name);
    expect([name, found.length]).not.toEqual([name, 0]);
    for (const { children } of found)
      expect(children.map((one) => `${one.name} `).join('')).toMatch(patternOf(names));
  }
});

// Rules of the standard's Schematron (github.com/denevers/GWML, schemas).
test('one elevation is the origin, ranges go down, lines are vertical, values have units', async () => {
  const { root } = await written();
  const valueOf = (one: XmlElement) => Number(within(one, 'value')[0]?.text);
  for (const well of within(root, 'GW_Well'))
    expect(within(well, 'Elevation').length).toBeLessThanOrEqual(1);
  for (const name of ['LogValue', 'CasingComponent', 'ScreenComponent', 'SealingComponent'])
    for (const { children } of within(root, name)) {
      const [from, to] = children.filter((one) => /^(from|to)(Depth)?$/.test(one.name));
      expect(valueOf(from!)).toBeLessThan(valueOf(to!));
    }
  for (const { text } of within(root, 'posList')) {
    const numbers = text.split(' ');
    expect(numbers).toHaveLength(6);
    expect(numbers.slice(0, 2)).toEqual(numbers.slice(3, 5));
  }
  for (const one of within(root, 'uom')) expect(one.attributes['code']).toBeTruthy();
});

test('ids are unique and every inner link leads to one', async () => {
  const { text } = await written();
  const ids = [...text.matchAll(/gml:id="([^"]+)"/g)].map(([, id]) => id!);
  expect(new Set(ids).size).toBe(ids.length);
  for (const id of ids) expect(id).toMatch(/^[A-Za-z_][\w.-]*$/);
  for (const [, target] of text.matchAll(/xlink:href="#([^"]+)"/g)) expect(ids).toContain(target);
});

test('the same wells give the same bytes', async () => {
  expect((await written()).text).toBe((await written()).text);
});
