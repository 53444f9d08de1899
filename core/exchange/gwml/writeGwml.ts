import type { Level } from '../../record/water.ts';
import { layStrings } from '../laid/layPieces.ts';
import { loseTally } from '../laid/loseTally.ts';
import { inWords } from '../laid/words.ts';
import { losingOf, type Carried } from '../losses.ts';
import type { OutgoingWell } from '../outgoing.ts';
import { readPosition } from '../points/position.ts';
import { reason } from '../reasons/reason.ts';
import { sayReason } from '../reasons/sayReason.ts';
import type { WellWriter, Writing } from '../writer.ts';
import { element, opening, type Markup } from '../xml/writeXml.ts';
import { given, instant, quantity, reference, unknownReference, wordsOf } from './markup.ts';
import { egm96, namespaces, unknown, wgs84, wgs84WithHeight } from './namespaces.ts';
import { boreholeMarkup, type Writes } from './writeBorehole.ts';
import { geologyLog } from './writeLog.ts';

/** What a document of GroundWaterML 2 holds of a record. */
export const carriedByGwml: Carried = new Set([
  'schemaVersion',
  ...['number', 'name', 'client', 'contractor', 'driller', 'purpose', 'state'].map(
    (name) => `identity.${name}`,
  ),
  ...['latitude', 'longitude', 'elevation', 'elevationDatum'].map((name) => `site.${name}`),
  ...['method', 'finishedOn', 'depthReached'].map((name) => `bore.${name}`),
  ...['from', 'to', 'diameter'].map((name) => `bore.sections[].${name}`),
  ...['from', 'to', 'material', 'qualifiers[].material', 'qualifiers[].degree', 'colour'].map(
    (name) => `log[].${name}`,
  ),
  ...['consistency', 'remarks', 'words'].map((name) => `log[].${name}`),
  'strings[].set',
  ...['kind', 'count', 'material', 'outside', 'inside', 'wall', 'slotWidth', 'length'].map(
    (name) => `strings[].components[].${name}`,
  ),
  'strings[].components[].remark',
  ...['from', 'to', 'fill', 'sanitary', 'grainMin', 'grainMax', 'remark'].map(
    (name) => `annulus[].${name}`,
  ),
  ...['at', 'reading', 'datum', 'state'].map((name) => `levels[].${name}`),
  ...['kind', 'model', 'installedOn'].map((name) => `pump.${name}`),
  'notes',
]);

interface Place {
  readonly latitude: number;
  readonly longitude: number;
}

function placeOf({ record: { site }, losing }: Writes): Place | undefined {
  const { latitude, longitude } = site ?? {};
  const position =
    latitude === undefined || longitude === undefined
      ? { says: reason('halfPosition') }
      : readPosition(latitude, longitude);
  if (!('says' in position)) return position;
  const why = sayReason(position.says, 'en');
  if (latitude !== undefined) losing.lose('site.latitude', why);
  if (longitude !== undefined) losing.lose('site.longitude', why);
  return undefined;
}

function point(id: string, { latitude, longitude }: Place): Markup {
  return element('gml:Point', { 'gml:id': id, srsName: wgs84 }, [
    element('gml:pos', {}, `${latitude} ${longitude}`),
  ]);
}

/** A vertical line of two places where the height is known, else a point, else nothing known. */
function shapeOf({ record }: Writes, id: string, place: Place | undefined): Markup {
  if (!place) return unknownReference('sams:shape');
  const { elevation } = record.site ?? {};
  const depth = record.bore?.depthReached;
  if (elevation === undefined || depth === undefined)
    return element('sams:shape', {}, [point(id, place)]);
  const at = `${place.latitude} ${place.longitude}`;
  const line = `${at} ${elevation} ${at} ${Number((elevation - depth).toPrecision(12))}`;
  const curve = { 'gml:id': id, srsName: wgs84WithHeight, srsDimension: '3' };
  const segment = element('gml:LineStringSegment', {}, [element('gml:posList', {}, line)]);
  return element('sams:shape', {}, [
    element('gml:Curve', curve, [element('gml:segments', {}, [segment])]),
  ]);
}

const registry = 'http://www.opengis.net/def/crs/EPSG/0/';

/** The system of heights: one of the registry, as `EPSG 5702`, or EGM96. */
function heightSystem({ record: { site }, losing }: Writes): string {
  const datum = site?.elevationDatum;
  if (datum === 'EGM96') return egm96;
  const number = /^EPSG (\d+)$/.exec(datum ?? '')?.[1];
  if (number !== undefined && number !== '5773') return `${registry}${number}`;
  if (datum !== undefined)
    losing.lose('site.elevationDatum', 'A datum goes out as EGM96 or as its number, "EPSG 5702".');
  return unknown;
}

function elevationMarkup(writes: Writes): Markup[] {
  const { elevation, elevationDatum } = writes.record.site ?? {};
  if (elevation === undefined) {
    if (elevationDatum !== undefined)
      writes.losing.lose('site.elevationDatum', 'A datum needs an elevation.');
    return [];
  }
  const srs = { srsName: heightSystem(writes), srsDimension: '1' };
  return [
    element('gwml2w:gwWellReferenceElevation', {}, [
      element('gwml2w:Elevation', {}, [
        element('gwml2w:elevation', srs, String(elevation)),
        reference(
          'gwml2w:elevationType',
          'ground level',
          'http://resource.gwml.org/def/elevationType/originElevation',
        ),
        unknownReference('gwml2w:elevationMeasurementMethod'),
      ]),
    ]),
  ];
}

interface Observed {
  readonly property: string;
  readonly title: string;
  readonly moment: string | undefined;
  readonly value: number;
  readonly unit: string;
}

/** An observation of the well: what was looked at, when, and the value. */
function observation(name: string, id: string, wellId: string, seen: Observed): Markup {
  const when = given(seen.moment, (moment) => instant(`${id}.time`, moment));
  return element(name, {}, [
    element('om:OM_Observation', { 'gml:id': id }, [
      when.length === 0
        ? unknownReference('om:phenomenonTime')
        : element('om:phenomenonTime', {}, when),
      when.length === 0
        ? unknownReference('om:resultTime')
        : element('om:resultTime', { 'xlink:href': `#${id}.time` }),
      unknownReference('om:procedure'),
      reference('om:observedProperty', seen.title, seen.property),
      element('om:featureOfInterest', { 'xlink:href': `#${wellId}` }),
      quantity('om:result', seen.value, seen.unit),
    ]),
  ]);
}

const gwml = 'http://www.opengis.net/def/gwml/2.0/observedProperty';

/** Rest levels below ground; those from the casing are reduced by where its top stands. */
function levelMarkup({ id, record, strings, losing }: Writes): Markup[] {
  const topM = strings[0]?.pieces[0]?.from;
  const depthOf = ({ reading, datum }: Level) =>
    datum === 'ground'
      ? reading
      : topM === undefined
        ? undefined
        : Number((reading + topM).toPrecision(12));
  const levels = record.levels ?? [];
  const kept = levels.filter((one) => one.state === 'static' && depthOf(one) !== undefined);
  const reduced = kept.some(({ datum }) => datum !== 'ground');
  if (kept.length < levels.length || reduced)
    losing.lose('levels', 'Levels at rest go out, measured from the ground.');
  return kept.map((one, at) =>
    observation('gwml2w:gwWellStaticWaterDepth', `${id}.level${at + 1}`, id, {
      property: `${gwml}/staticGroundwaterLevel`,
      title: 'static water level',
      moment: one.at,
      value: depthOf(one)!,
      unit: 'm',
    }),
  );
}

/** The rate of the last test at one rate. */
function yieldMarkup({ id, record }: Writes): Markup[] {
  const test = (record.tests ?? []).findLast(
    ({ kind, rate }) => kind === 'constantRate' && rate !== undefined,
  );
  return given(test, ({ rate, startedAt }) =>
    observation('gwml2w:gwWellYield', `${id}.yield`, id, {
      property: `${gwml}/waterWellYield`,
      title: 'yield',
      moment: startedAt,
      value: rate!,
      unit: 'm3/h',
    }),
  );
}

/** How deep the deepest string stands. */
function constructedMarkup({ id, record, strings, losing }: Writes): Markup[] {
  if (strings.length === 0) return [];
  if (record.bore?.depthReached === undefined)
    losing.lose('bore.depthReached', 'It comes back as the depth that was constructed.');
  return [
    observation('gwml2w:gwWellConstructedDepth', `${id}.built`, id, {
      property: 'http://www.opengis.net/gwml-well/2.2/gwWellConstructedDepth',
      title: 'constructed depth',
      moment: record.bore?.finishedOn,
      value: Math.max(...strings.map(({ bottomM }) => bottomM)),
      unit: 'm',
    }),
  ];
}

function wellMarkup(writes: Writes, place: Place | undefined): Markup {
  const { id, record, words, losing } = writes;
  const { identity } = record;
  const number = words('identity.number', identity?.number);
  if (number === undefined) losing.lose('identity.number', `It goes out as "${id}".`);
  const collar = given(place, (one) =>
    element('gwml2wc:collarLocation', {}, [point(`${id}.collar.place`, one)]),
  );
  return element('gwml2w:GW_Well', { 'gml:id': id }, [
    ...given(words('notes', record.notes), (one) => element('gml:description', {}, one)),
    element('gml:name', {}, number ?? id),
    ...given(words('identity.name', identity?.name), (one) => element('gml:name', {}, one)),
    unknownReference('sam:sampledFeature'),
    shapeOf(writes, `${id}.shape`, place),
    ...constructedMarkup(writes),
    element('gwml2w:gwWellConstruction', {}, [
      boreholeMarkup(writes, shapeOf(writes, `${id}.hole.shape`, place), collar),
    ]),
    ...given(place, (one) => element('gwml2w:gwWellLocation', {}, [point(`${id}.place`, one)])),
    ...given(words('identity.purpose', identity?.purpose), (one) =>
      reference('gwml2w:gwWellPurpose', one),
    ),
    ...elevationMarkup(writes),
    ...levelMarkup(writes),
    ...given(identity?.state, (one) => reference('gwml2w:gwWellStatus', inWords(one))),
    ...given(record.bore?.depthReached, (one) => quantity('gwml2w:gwWellTotalLength', one, 'm')),
    ...yieldMarkup(writes),
    ...geologyLog(id, record, words, losing),
  ]);
}

const declared = Object.fromEntries(
  Object.entries(namespaces).map(([prefix, uri]) => [`xmlns:${prefix}`, uri]),
);

/** Writes wells as features of one GroundWaterML 2.2 document, one on each line. */
export function gwmlWriter({ name }: Writing): WellWriter {
  let count = 0;
  return {
    well({ record }: OutgoingWell) {
      const losing = losingOf(record, carriedByGwml, 'GroundWaterML 2');
      const strings = layStrings(record);
      loseTally(record, strings, losing);
      const id = `w${++count}`;
      const writes: Writes = { id, record, strings, words: wordsOf(losing), losing };
      const well = wellMarkup(writes, placeOf(writes));
      const content = `${element('gml:featureMember', {}, [well]).markup}\n`;
      return { added: [{ part: 'wells', content }], losses: losing.losses };
    },
    end() {
      const root = opening('gml:FeatureCollection', {
        'gml:id': 'wells',
        ...declared,
        'xsi:schemaLocation': `${namespaces.gwml2w} http://schemas.opengis.net/gwml/2.2/gwml2-well.xsd`,
      });
      return {
        added: [
          { part: 'head', content: `<?xml version="1.0" encoding="UTF-8"?>\n${root}\n` },
          { part: 'foot', content: '</gml:FeatureCollection>\n' },
        ],
        files: [{ name: `${name}.xml`, parts: ['head', 'wells', 'foot'] }],
      };
    },
  };
}
