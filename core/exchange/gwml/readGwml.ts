import { known } from '../../base/known.ts';
import { ok, refused, type Result } from '../../base/result.ts';
import { wellStates } from '../../record/identity.ts';
import { pump } from '../../record/headworks.ts';
import type { CasingString } from '../../record/strings.ts';
import type { GivenFile, Incoming } from '../incoming.ts';
import { stringsFrom } from '../laid/readStrings.ts';
import { wellFrom, type WellFrom } from '../laid/recordFrom.ts';
import { fromWords } from '../laid/words.ts';
import { readPosition } from '../points/position.ts';
import { reason } from '../reasons/reason.ts';
import { decode } from '../tables/decode.ts';
import { told, type TableTrouble } from '../tables/trouble.ts';
import { convertLength } from '../tables/units.ts';
import { at, childrenOf, readXml, within, type XmlElement } from '../xml/readXml.ts';
import { fillsIn, logIn, methodIn, piecesIn } from './readParts.ts';
import {
  dayIn,
  flowIn,
  lengthIn,
  lengthUnitIn,
  linkEnd,
  momentIn,
  referenceIn,
  wordsIn,
  type Tell,
} from './values.ts';

/** A well of a document: the well itself, its borehole, or both. */
interface Found {
  readonly well?: XmlElement;
  readonly borehole?: XmlElement;
}

/** The datum of a position: WGS 84, the Australian one that is near to it, or another. */
function datumOf(srsName: string): 'wgs84' | 'near' | 'other' {
  const end = linkEnd(srsName.replaceAll(':', '/'));
  if (['4326', '4979', 'CRS84', '4936'].includes(end)) return 'wgs84';
  // GDA94 lies within two metres of WGS 84 (common practice).
  return end === '4283' ? 'near' : 'other';
}

/** Latitude comes first where the system is named by a URI of the registry, else longitude. */
const latitudeFirst = (srsName: string) =>
  /def\/crs\/EPSG|def:crs:EPSG/i.test(srsName) && !/CRS84/.test(srsName);

function srsOf(element: XmlElement, above: string): string {
  return element.attributes['srsName'] ?? above;
}

interface Pos {
  readonly element: XmlElement;
  readonly srsName: string;
}

/** The first place that is given inside an element. */
function posIn(element: XmlElement | undefined, above = ''): Pos | undefined {
  if (!element) return undefined;
  const srsName = srsOf(element, above);
  if ((element.name === 'pos' || element.name === 'posList') && element.text !== '')
    return { element, srsName };
  for (const inside of element.children) {
    const found = posIn(inside, srsName);
    if (found) return found;
  }
  return undefined;
}

function positionIn({ well, borehole }: Found, tell: Tell) {
  const pos =
    posIn(at(well, 'gwWellLocation')) ?? posIn(at(well, 'shape')) ?? posIn(at(borehole, 'shape'));
  if (!pos) return {};
  const [first = NaN, second = NaN] = pos.element.text.split(/\s+/).map(Number);
  const datum = datumOf(pos.srsName);
  if (datum === 'other') {
    tell(pos.element, reason('otherDatum', { datum: pos.srsName }), true);
    return {};
  }
  const swap = !latitudeFirst(pos.srsName);
  const position = swap ? readPosition(second, first) : readPosition(first, second);
  if ('says' in position) {
    tell(pos.element, position.says, true);
    return {};
  }
  if (datum === 'near') tell(pos.element, reason('nearDatum'), true);
  return position;
}

/** Height of the ground: the origin of the well, or the first that is not of its casing. */
function elevationIn(well: XmlElement | undefined, tell: Tell) {
  const all = childrenOf(well, 'gwWellReferenceElevation').flatMap(
    (one) => at(one, 'Elevation') ?? [],
  );
  const typeOf = (one: XmlElement) => {
    const { href = '', title = '' } = at(one, 'elevationType')?.attributes ?? {};
    return `${linkEnd(href)} ${title}`;
  };
  const own =
    all.find((one) => /originElevation|ground/i.test(typeOf(one))) ??
    all.find((one) => !/casing|collar/i.test(typeOf(one)));
  const height = at(own, 'elevation');
  const value = Number(height?.text === '' ? NaN : height?.text);
  if (!height || !Number.isFinite(value)) return {};
  const { srsName = '', uomLabels = 'm' } = height.attributes;
  // The labels are one for each axis; a name may stand behind the unit, `m NZVD2009`.
  const unit = lengthUnitIn(uomLabels.toLowerCase().split(/\s+/));
  if (unit === undefined) {
    tell(height, reason('noLength', { unit: uomLabels, value }), true);
    return {};
  }
  const datum = /nil\//.test(srsName) ? '' : linkEnd(srsName.replaceAll(':', '/'));
  const named = datum === '5773' ? 'EGM96' : datum === '' ? undefined : `EPSG ${datum}`;
  return {
    elevation: convertLength(value, unit, 'm'),
    ...known({ elevationDatum: /^EPSG \d+$|EGM96/.test(named ?? '') ? named : undefined }),
  };
}

/** When something was observed, where the document says so beside it or by a link to it. */
function timeOf(observation: XmlElement | undefined, times: ReadonlyMap<string, string>) {
  const time = at(observation, 'phenomenonTime');
  const own = time && within(time, 'timePosition')[0]?.text;
  return momentIn(own ?? times.get(time?.attributes['href']?.replace(/^#/, '') ?? ''));
}

function levelsIn(well: XmlElement | undefined, times: ReadonlyMap<string, string>, tell: Tell) {
  return childrenOf(well, 'gwWellStaticWaterDepth').flatMap((one) => {
    const observation = at(one, 'OM_Observation');
    const reading = lengthIn(at(observation, 'result'), 'm', tell);
    if (reading === undefined) return [];
    const moment = timeOf(observation, times);
    return [{ ...known({ at: moment }), reading, datum: 'ground', state: 'static' }];
  });
}

function testsIn(well: XmlElement | undefined, times: ReadonlyMap<string, string>, tell: Tell) {
  const observation = at(well, 'gwWellYield', 'OM_Observation');
  const rate = flowIn(at(observation, 'result'), tell);
  if (rate === undefined) return [];
  return [{ kind: 'constantRate', ...known({ startedAt: timeOf(observation, times) }), rate }];
}

function partyIn(borehole: XmlElement | undefined, name: string, field: string) {
  return wordsIn(at(borehole, name, 'CI_ResponsibleParty', field, 'CharacterString'));
}

function namesIn({ well, borehole }: Found) {
  const [number, name] = childrenOf(well ?? borehole, 'name').map(wordsIn);
  const identifier = at(well, 'identifier')?.text ?? at(borehole, 'identifier')?.text;
  const id = well?.attributes['id'] ?? borehole?.attributes['id'];
  return { number: number ?? (identifier ? linkEnd(identifier) : id), ...known({ name }) };
}

const pumpKinds = pump.shape.kind.unwrap().options;

/** Our own files have `kind: model`; other words are the model. */
function pumpIn(borehole: XmlElement | undefined) {
  const equipment = at(borehole, 'installedEquipment', 'Equipment');
  const title = referenceIn(at(equipment, 'equipmentType'));
  if (!equipment || title === undefined) return {};
  const [first = '', ...rest] = title.split(': ');
  const kind = fromWords(pumpKinds, first);
  const model = kind === undefined ? title : rest.join(': ') || undefined;
  const time = at(equipment, 'installationDate');
  return known({ kind, model, installedOn: dayIn(time && within(time, 'timePosition')[0]?.text) });
}

/** Words about the well that no field is for. */
function notesIn(well: XmlElement | undefined, state: string | undefined): string | undefined {
  const status = state === undefined ? referenceIn(at(well, 'gwWellStatus')) : undefined;
  const units = childrenOf(well, 'gwWellUnit').flatMap((one) => referenceIn(one) ?? []);
  const lines = [
    wordsIn(at(well, 'description')),
    status && `Status: ${status}`,
    units.length > 0 ? `Hydrogeological units: ${units.join('; ')}` : undefined,
  ];
  return lines.filter(Boolean).join('\n') || undefined;
}

function boreIn({ well, borehole }: Found, tell: Tell) {
  const totalM = lengthIn(at(well, 'gwWellTotalLength'), 'm', tell);
  const constructed = at(well, 'gwWellConstructedDepth', 'OM_Observation', 'result');
  const depthReached = totalM ?? lengthIn(constructed, 'm', tell);
  const diameter = lengthIn(at(borehole, 'bholeNominalDiameter'), 'mm', tell);
  const drilled = at(borehole, 'bholeDateOfDrilling');
  const whole = diameter !== undefined && depthReached !== undefined;
  if (diameter !== undefined && !whole)
    tell(borehole!, reason('diameterAlone', { diameter }), true);
  return {
    ...known({ method: borehole && methodIn(borehole) }),
    ...known({ finishedOn: dayIn(drilled?.text), depthReached }),
    ...(whole ? { sections: [{ from: 0, to: depthReached, diameter }] } : {}),
  };
}

/** What tells our own strings apart is no name that anybody gave them. */
function withoutName(string: CasingString): CasingString {
  const { name, ...rest } = string;
  return name === undefined ? string : rest;
}

function chaptersOf(found: Found, times: ReadonlyMap<string, string>, tell: Tell) {
  const { well, borehole } = found;
  const uses = [...childrenOf(well, 'gwWellPurpose'), ...childrenOf(well, 'gwWellWaterUse')];
  const purpose = [...new Set(uses.flatMap((one) => referenceIn(one) ?? []))].join(', ');
  const status = referenceIn(at(well, 'gwWellStatus'));
  const state = fromWords(wellStates, status);
  const strings = borehole ? stringsFrom(piecesIn(borehole, tell)) : [];
  return {
    identity: {
      ...namesIn(found),
      ...known({
        contractor: partyIn(borehole, 'bholeDriller', 'organisationName'),
        driller: partyIn(borehole, 'bholeDriller', 'individualName'),
        client: partyIn(borehole, 'bholeOperator', 'organisationName'),
        purpose: purpose || undefined,
        state,
      }),
    },
    site: { ...positionIn(found, tell), ...elevationIn(well, tell) },
    bore: boreIn(found, tell),
    log: logIn(well ?? borehole!, tell),
    strings: strings.map(withoutName),
    annulus: borehole ? fillsIn(borehole, tell) : [],
    levels: levelsIn(well, times, tell),
    tests: testsIn(well, times, tell),
    pump: pumpIn(borehole),
    notes: notesIn(well, state),
  };
}

/** Boreholes stand inside their wells, are linked from them, or stand alone. */
function findWells(root: XmlElement): Found[] {
  const wells = within(root, 'GW_Well');
  const boreholes = within(root, 'Borehole');
  const taken = new Set<XmlElement>();
  const found = wells.map((well): Found => {
    const href = at(well, 'gwWellConstruction')?.attributes['href'] ?? '';
    const inside = at(well, 'gwWellConstruction', 'Borehole');
    const linked = boreholes.find(({ attributes: { id } }) => id && href === `#${id}`);
    const about = `#${well.attributes['id'] ?? ''}`;
    const sampling = boreholes.find(
      (one) => at(one, 'sampledFeature')?.attributes['href'] === about,
    );
    const borehole = inside ?? linked ?? sampling;
    if (borehole) taken.add(borehole);
    return { well, ...(borehole ? { borehole } : {}) };
  });
  const alone = boreholes.filter((one) => !taken.has(one)).map((borehole) => ({ borehole }));
  return [...found, ...alone];
}

/** Parts of a well and a borehole that say something and that no field of a record is for. */
const notTaken = [
  ...['gwWellContributionZone', 'gwWellLicence', 'gwWellBody', 'relatedObservation'],
  ...['bholeMaterialCustodian', 'bholeCoreInterval', 'collarElevation', 'relatedSamplingFeature'],
];

function saysSomething(element: XmlElement): boolean {
  if (element.children.length > 0) return element.children.some(saysSomething);
  return element.text !== '' || referenceIn(element) !== undefined;
}

function leftOut(file: string, root: XmlElement): TableTrouble[] {
  return notTaken.flatMap((name) => {
    const first = within(root, name).find(saysSomething);
    if (!first) return [];
    const says = told(reason('partLeft', { part: name }));
    return [{ file, line: first.line, column: name, ...says, kept: true }];
  });
}

function timesIn(root: XmlElement): ReadonlyMap<string, string> {
  return new Map(
    within(root, 'TimeInstant').flatMap((one) => {
      const [position] = within(one, 'timePosition');
      const { id } = one.attributes;
      return id && position ? [[id, position.text] as const] : [];
    }),
  );
}

/** Whether a file speaks of wells in GroundWaterML 2, by its namespaces. */
export function holdsGwml({ bytes }: GivenFile): boolean {
  const { text } = decode(bytes.subarray(0, 65536));
  return /^\s*</.test(text) && /opengis\.net\/gwml-(well|wellconstruction|main)\/2/.test(text);
}

/**
 * Wells and boreholes of a GroundWaterML 2 document (2.2 and 2.2.1, OGC 16-032). Prefixes are not
 * looked at; each value counts in its own unit.
 */
export function readGwml({ name, bytes }: GivenFile): Result<Incoming> {
  const root = readXml(name, decode(bytes).text);
  if (!root.ok) return root;
  const found = findWells({ ...root.value, name: '', children: [root.value] });
  if (found.length === 0)
    return refused(
      'gwmlNoWells',
      `${name} is GroundWaterML without a GW_Well or a Borehole; other features are not read.`,
    );
  const troubles = leftOut(name, root.value);
  const tell: Tell = ({ line, name: column }, says, kept) =>
    void troubles.push({ file: name, line, column, ...told(says), kept });
  const times = timesIn(root.value);
  const wells = found.map((one): WellFrom => {
    const { line } = (one.well ?? one.borehole)!;
    return wellFrom(chaptersOf(one, times, tell), { file: name, line });
  });
  return ok({
    wells: wells.map(({ well }) => well),
    troubles: [...troubles, ...wells.flatMap((one) => one.troubles)].sort(
      (a, b) => a.line - b.line,
    ),
  });
}
