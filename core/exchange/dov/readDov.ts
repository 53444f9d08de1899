import { known } from '../../base/known.ts';
import { ok, type Result } from '../../base/result.ts';
import type { GivenFile, Incoming } from '../incoming.ts';
import { stringsFrom } from '../laid/readStrings.ts';
import { wellFrom } from '../laid/recordFrom.ts';
import { reason, type Reason } from '../reasons/reason.ts';
import { decode } from '../tables/decode.ts';
import type { Piece } from '../tables/joinPieces.ts';
import { told, type TableTrouble } from '../tables/trouble.ts';
import { understandWords } from '../words/understandWords.ts';
import { at, childrenOf, readXml, within, type XmlElement } from '../xml/readXml.ts';

/**
 * Documents of the Flemish subsoil database (namespace kern.schemas.dov.vlaanderen.be), in Dutch:
 * boreholes, described layers, filters with their pipes, levels and water samples. Names of elements
 * are those of the files in tests/data/dov-flanders.
 */
type Tell = (element: XmlElement, says: Reason, kept: boolean) => void;

/** All parts of a document that speak of one well. */
interface Parts {
  readonly name: string;
  readonly line: number;
  readonly parts: readonly XmlElement[];
}

const tidy = (value: number) => Number(value.toPrecision(12));

function wordsOf(element: XmlElement | undefined, ...way: string[]): string | undefined {
  const text = at(element, ...way)?.text;
  return text === undefined || text === '' || /^onbekend$/i.test(text) ? undefined : text;
}

function numberOf(element: XmlElement | undefined, ...way: string[]): number | undefined {
  const text = wordsOf(element, ...way);
  const value = Number(text);
  return text === undefined || !Number.isFinite(value) ? undefined : value;
}

/** `van` and `tot`, metres below ground, negative above it. */
function rangeOf(element: XmlElement, tell: Tell) {
  const [from, to] = [numberOf(element, 'van'), numberOf(element, 'tot')];
  if (from !== undefined && to !== undefined && to > from) return { from, to };
  tell(element, reason('noRange'), false);
  return undefined;
}

const present = <T>(list: readonly (T | undefined)[]) => list.filter((one) => one !== undefined);
const inside = ({ parts }: Parts, name: string) => parts.flatMap((part) => within(part, name));

function logOf(well: Parts, tell: Tell) {
  const layers = inside(well, 'laag').map((layer) => {
    const range = rangeOf(layer, tell);
    const words = wordsOf(layer, 'beschrijving');
    if (!range) return undefined;
    const { material, qualifiers } = understandWords(words ?? '');
    const seconds = qualifiers.length === 0 ? {} : { qualifiers: [...qualifiers] };
    return { ...range, ...(words === undefined ? {} : { material, ...seconds, words }) };
  });
  const colours = inside(well, 'details')
    .flatMap((details) => childrenOf(details, 'kleur'))
    .map((one) => {
      const range = rangeOf(one, tell);
      return range && { ...range, ...known({ colour: wordsOf(one, 'kleur') }) };
    });
  return present([...layers, ...colours]).sort((a, b) => a.from - b.from || a.to - b.to);
}

function piecesOf(well: Parts, tell: Tell): Piece[] {
  const filters = well.parts.filter(({ name }) => name === 'filter');
  return filters.flatMap((filter) => {
    const string = wordsOf(filter, 'identificatie');
    const pieces = within(filter, 'onderdeel').map((one) => {
      const range = rangeOf(one, tell);
      if (!range) return undefined;
      const component = {
        kind: wordsOf(one, 'filterelement') === 'filter' ? 'screen' : 'plain',
        ...known({ material: wordsOf(one, 'materiaal'), inside: numberOf(one, 'binnendiameter') }),
        length: tidy(range.to - range.from),
      };
      return { ...range, ...known({ string }), component } as Piece;
    });
    return present(pieces);
  });
}

/** The measuring point that held on a day: the last that was set before it, else the first. */
function pointOn(measuring: XmlElement, day: string | undefined) {
  const points = childrenOf(measuring, 'referentiepunt').toSorted((a, b) =>
    (wordsOf(a, 'datum') ?? '') < (wordsOf(b, 'datum') ?? '') ? -1 : 1,
  );
  const held = points.findLast((one) => (wordsOf(one, 'datum') ?? '') <= (day ?? '9999'));
  return numberOf(held ?? points[0], 'meetpunt');
}

/** Levels stand as heights in the file; the measuring point above them is the top of the pipe. */
function levelsOf(well: Parts, tell: Tell) {
  return well.parts.flatMap((measuring) =>
    childrenOf(measuring, 'peilmeting').flatMap((one) => {
      const day = wordsOf(one, 'datum');
      const [height, point] = [numberOf(one, 'peil_mtaw'), pointOn(measuring, day)];
      if (height === undefined || point === undefined) {
        tell(one, reason('heightMissing'), false);
        return [];
      }
      const state = wordsOf(one, 'filterstatus') === 'in rust' ? 'static' : undefined;
      const reading = Number((point - height).toFixed(3));
      const remark = wordsOf(one, 'methode');
      return [{ ...known({ at: day }), reading, datum: 'casingTop', ...known({ state, remark }) }];
    }),
  );
}

function resultOf(one: XmlElement) {
  const place = wordsOf(one, 'veld_labo');
  return {
    parameter: wordsOf(one, 'parameter') ?? '',
    ...known({ value: numberOf(one, 'waarde_numeriek'), unit: wordsOf(one, 'eenheid') }),
    ...(wordsOf(one, 'detectieconditie') === '<' ? { below: true } : {}),
    ...known({ where: place === 'VELD' ? 'field' : place === 'LABO' ? 'laboratory' : undefined }),
  };
}

function qualityOf(well: Parts) {
  return inside(well, 'watermonster').map((sample) => ({
    ...known({ takenAt: wordsOf(sample, 'monstername', 'datum') }),
    ...known({ laboratory: wordsOf(sample, 'laboanalyse', 'labo', 'naam') }),
    ...known({ remark: wordsOf(sample, 'identificatie') }),
    results: within(sample, 'observatie').map(resultOf),
  }));
}

function boreOf(well: Parts) {
  const [hole] = well.parts.filter(({ name }) => ['boring', 'grondwaterlocatie'].includes(name));
  const methods = within(hole ?? well.parts[0]!, 'boormethode');
  const said = methods.map(
    (one) =>
      `${wordsOf(one, 'van') ?? '?'}–${wordsOf(one, 'tot') ?? '?'} m ${wordsOf(one, 'methode') ?? ''}`,
  );
  return known({
    method: methods.length > 0 ? 'other' : undefined,
    startedOn: wordsOf(hole, 'datum_aanvang'),
    depthReached: numberOf(hole, 'diepte_tot') ?? numberOf(hole, 'diepte'),
    remark: said.join('; ') || undefined,
  });
}

/** Places are on a national grid; their height is in metres above TAW. */
function siteOf(well: Parts, tell: Tell) {
  const [pos] = inside(well, 'pos');
  if (!pos) return {};
  tell(pos, reason('onGrid'), true);
  const height = Number(pos.text.split(/\s+/)[2]);
  return Number.isFinite(height) ? { elevation: height, elevationDatum: 'TAW' } : {};
}

function identityOf({ name, parts }: Parts) {
  const hole = parts.find((part) => part.name === 'boring');
  return {
    number: name,
    ...known({
      contractor: wordsOf(hole, 'uitvoerder', 'naam'),
      driller: wordsOf(hole, 'boormeester', 'naam'),
      client: wordsOf(hole, 'opdrachtgever', 'naam'),
      purpose: wordsOf(hole, 'doel'),
    }),
  };
}

/** The well that a part is of, by its own name or by the one that it gives. */
function nameOf(part: XmlElement): string | undefined {
  const own = ['boring', 'grondwaterlocatie'].includes(part.name);
  return own
    ? wordsOf(part, 'identificatie')
    : (wordsOf(part, 'grondwaterlocatie') ?? wordsOf(part, 'boring'));
}

function wellsIn(root: XmlElement): Parts[] {
  const wells = new Map<string, { line: number; parts: XmlElement[] }>();
  const parts = root.children.flatMap((one) =>
    one.name === 'interpretaties' ? one.children : [one],
  );
  for (const part of parts) {
    const name = nameOf(part);
    if (name === undefined) continue;
    const known = wells.get(name) ?? { line: part.line, parts: [] };
    known.parts.push(part);
    wells.set(name, known);
  }
  return [...wells].map(([name, well]) => ({ name, ...well }));
}

/** Whether a file is such a document, by its namespace. */
export function holdsDov({ bytes }: GivenFile): boolean {
  return /^\s*<[^]*kern\.schemas\.dov\.vlaanderen\.be/.test(decode(bytes.subarray(0, 4096)).text);
}

/** Wells of a document of the Flemish subsoil database. */
export function readDov({ name: file, bytes }: GivenFile): Result<Incoming> {
  const root = readXml(file, decode(bytes).text);
  if (!root.ok) return root;
  const troubles: TableTrouble[] = [];
  const tell: Tell = ({ line, name: column }, says, kept) =>
    void troubles.push({ file, line, column, ...told(says), kept });
  const wells = wellsIn(root.value).map((well) => {
    const chapters = {
      identity: identityOf(well),
      site: siteOf(well, tell),
      bore: boreOf(well),
      log: logOf(well, tell),
      strings: stringsFrom(piecesOf(well, tell)),
      levels: levelsOf(well, tell),
      quality: qualityOf(well),
    };
    return wellFrom(chapters, { file, line: well.line });
  });
  return ok({
    wells: wells.map(({ well }) => well),
    troubles: [...troubles, ...wells.flatMap((one) => one.troubles)].sort(
      (a, b) => a.line - b.line,
    ),
  });
}
