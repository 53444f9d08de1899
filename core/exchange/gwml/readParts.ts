import type { AnnulusFill } from '../../record/annulus.ts';
import { drillingMethods, type DrillingMethod } from '../../record/bore.ts';
import { fillKinds } from '../../record/annulus.ts';
import { componentKinds } from '../../record/strings.ts';
import type { LogInterval } from '../../record/log.ts';
import { materials } from '../../record/materials.ts';
import { known } from '../../base/known.ts';
import { fillOfWords, fromWords } from '../laid/words.ts';
import { reason } from '../reasons/reason.ts';
import type { Piece } from '../tables/joinPieces.ts';
import { understandWords } from '../words/understandWords.ts';
import { at, childrenOf, within, type XmlElement } from '../xml/readXml.ts';
import { drillingConcept, materialOfConcept } from './lithology.ts';
import { lithologyConcepts } from './namespaces.ts';
import { lengthIn, linkEnd, referenceIn, wordsIn, type Tell } from './values.ts';

const tidy = (value: number) => Number(value.toPrecision(12));

/** The range of a part; told where it is half said or upside down, silent where nothing is. */
function rangeIn(element: XmlElement, names: readonly [string, string], tell: Tell) {
  const [from, to] = names.map((name) => lengthIn(at(element, name), 'm', tell));
  if (from === undefined && to === undefined) return undefined;
  if (from !== undefined && to !== undefined && to > from) return { from, to };
  const says =
    from === undefined || to === undefined
      ? reason('halfRange', { part: element.name })
      : reason('rangeUpsideDown', { from, to });
  tell(element, says, false);
  return undefined;
}

const referencesIn = (element: XmlElement, name: string) =>
  childrenOf(element, name)
    .flatMap((one) => referenceIn(one) ?? [])
    .join(', ') || undefined;

/** Strings of our own files are told apart by the ids of what they are made of. */
const stringOf = ({ attributes: { id = '' } }: XmlElement) => /\.s(\d+)\.\d+$/.exec(id)?.[1];

function pieceIn(element: XmlElement, kind: Piece['component']['kind'], tell: Tell) {
  const range = rangeIn(element, ['from', 'to'], tell);
  if (!range) return undefined;
  const prefix = element.name === 'ScreenComponent' ? 'screen' : 'casing';
  const millimetres = (name: string) => lengthIn(at(element, `${prefix}${name}`), 'mm', tell);
  const component = {
    kind,
    ...known({
      material: referencesIn(element, `${prefix}Material`),
      outside: millimetres('ExternalDiameter'),
      inside: millimetres('InternalDiameter'),
      wall: millimetres('WallThickness'),
      slotWidth: prefix === 'screen' ? millimetres('HoleWidth') : undefined,
      remark: wordsIn(at(element, 'description')),
    }),
    length: tidy(range.to - range.from),
  };
  return { ...range, ...known({ string: stringOf(element) }), component } as Piece;
}

/** Casing and screens of a borehole, in the order of the document. */
export function piecesIn(borehole: XmlElement, tell: Tell): Piece[] {
  const casing = within(borehole, 'CasingComponent').map((one) => {
    const form = referenceIn(at(one, 'casingForm'));
    return pieceIn(one, fromWords(componentKinds, form) ?? 'plain', tell);
  });
  const screens = within(borehole, 'ScreenComponent').map((one) => pieceIn(one, 'screen', tell));
  const pieces = [...casing, ...screens].filter((one) => one !== undefined);
  return pieces.sort((a, b) => Number(a.string ?? 0) - Number(b.string ?? 0));
}

function packIn(element: XmlElement, tell: Tell): AnnulusFill | undefined {
  const range = rangeIn(element, ['from', 'to'], tell);
  if (!range) return undefined;
  const words = referencesIn(element, 'filterMaterial');
  const named = fromWords(fillKinds, words);
  const grain = lengthIn(at(element, 'filterGrainSize'), 'mm', tell);
  const remark = wordsIn(at(element, 'description')) ?? (named ? undefined : words);
  const fill = named ?? 'gravelPack';
  return { ...range, fill, ...known({ grainMin: grain, grainMax: grain, remark }) } as AnnulusFill;
}

function sealIn(element: XmlElement, tell: Tell): AnnulusFill | undefined {
  const range = rangeIn(element, ['from', 'to'], tell);
  if (!range) return undefined;
  const [material, type] = ['sealingMaterial', 'sealingType'].map((name) =>
    referencesIn(element, name),
  );
  const named = fromWords(fillKinds, material);
  const fill = named ?? fillOfWords([material, type].filter(Boolean).join(' '));
  if (!fill) {
    const word = material ?? type ?? 'unknown';
    tell(element, reason('noFill', { word }), false);
    return undefined;
  }
  const sanitary = type !== undefined && /sanitary|surface/i.test(type) ? true : undefined;
  const said = wordsIn(at(element, 'description'));
  const remark = said ?? (named ? undefined : [material, type].filter(Boolean).join('; '));
  return { ...range, fill, ...known({ sanitary, remark }) } as AnnulusFill;
}

const byDepth = (a: { from: number; to: number }, b: { from: number; to: number }) =>
  a.from - b.from || a.to - b.to;

/** Packs and seals, from the ground down. */
export function fillsIn(borehole: XmlElement, tell: Tell): AnnulusFill[] {
  const packs = within(borehole, 'FiltrationComponent').map((one) => packIn(one, tell));
  const seals = within(borehole, 'SealingComponent').map((one) => sealIn(one, tell));
  return [...packs, ...seals].filter((one) => one !== undefined).sort(byDepth);
}

/** A field of a log's record: its name and what stands in it. */
interface LogField {
  readonly name: string;
  readonly words: string;
}

function fieldsIn(value: XmlElement): LogField[] {
  return within(value, 'field').flatMap((field) => {
    const words = wordsIn(within(field, 'value')[0]);
    return words === undefined ? [] : [{ name: field.attributes['name'] ?? '', words }];
  });
}

/** `slightly sand, gravel` as our own files have second materials. */
function secondsIn(words: string) {
  return words.split(', ').flatMap((one) => {
    const [, degree, name] = /^(?:(slightly|plain|very) )?(.+)$/.exec(one) ?? [];
    const material = fromWords(materials, name);
    return material === undefined ? [] : [{ material, ...known({ degree }) }];
  });
}

const isConcept = (words: string) => words.startsWith(lithologyConcepts);

/** The material by its own word, by its concept, or as other people's words are understood. */
function groundOf(fields: readonly LogField[]) {
  const said = (name: string) => fields.find((one) => one.name === name)?.words;
  const own = fromWords(materials, said('material'));
  const seconds = said('secondMaterials');
  if (own) return { material: own, qualifiers: seconds === undefined ? [] : secondsIn(seconds) };
  const concept = fields.find(({ words }) => isConcept(words))?.words;
  const material = concept && materialOfConcept(linkEnd(concept));
  if (material) return { material, qualifiers: [] };
  const named = fields.filter(
    ({ name, words }) => /lith|material/i.test(name) && !isConcept(words),
  );
  const understood = named.map(({ words }) => understandWords(words)).find((one) => one.known);
  return understood ?? (named.length > 0 ? { material: 'other', qualifiers: [] } : undefined);
}

/** Fields of our own files that stand in the record under the same name. */
const ownFields = ['colour', 'consistency', 'remarks'] as const;
const leading = ['material', 'secondMaterials', ...ownFields];

function intervalIn(element: XmlElement, tell: Tell): LogInterval | undefined {
  const range = rangeIn(element, ['fromDepth', 'toDepth'], tell);
  const value = at(element, 'value');
  if (!range || !value) return undefined;
  const fields = fieldsIn(value);
  const ground = groundOf(fields);
  const words = fields.filter(
    ({ name, words: text }) => !leading.includes(name) && !isConcept(text),
  );
  const own = ownFields.flatMap((name) => {
    const found = fields.find((one) => one.name === name);
    return found ? [[name, found.words] as const] : [];
  });
  return {
    ...range,
    ...known({ material: ground?.material }),
    ...(ground && ground.qualifiers.length > 0 ? { qualifiers: [...ground.qualifiers] } : {}),
    ...Object.fromEntries(own),
    ...known({ words: [...new Set(words.map((one) => one.words))].join('; ') || undefined }),
  } as LogInterval;
}

/** Intervals of the logs of ground inside an element, from the ground down. */
export function logIn(element: XmlElement, tell: Tell): LogInterval[] {
  return within(element, 'LogValue')
    .map((one) => intervalIn(one, tell))
    .filter((one) => one !== undefined)
    .sort(byDepth);
}

/** Methods by the words that others use for them (common practice). */
const methodWords: readonly (readonly [RegExp, DrillingMethod])[] = [
  [/hand.?auger/, 'handAuger'],
  [/cable.?tool/, 'cableTool'],
  [/hand.?dug|^dug$/, 'handDug'],
  [/jett/, 'jetting'],
  [/mud.?rotary/, 'mudRotary'],
  [/air.?rotary/, 'airRotary'],
  [/down.?(the)?.?hole.?hammer|rotary.?hammer/, 'downTheHoleHammer'],
  [/percussion/, 'percussion'],
];

/** The first method that is known; `other` where only others are named. */
export function methodIn(borehole: XmlElement): DrillingMethod | undefined {
  const named = childrenOf(borehole, 'bholeDrillingMethod').flatMap((one) => {
    const title = referenceIn(one);
    return title === undefined ? [] : [{ title, end: linkEnd(one.attributes['href'] ?? '') }];
  });
  for (const { title, end } of named) {
    const own = fromWords(drillingMethods, title);
    const concept = Object.entries(drillingConcept).find(([, name]) => name === end);
    const words = methodWords.find(([pattern]) => pattern.test(title.toLowerCase()));
    const method = own ?? concept?.[0] ?? words?.[1];
    if (method !== undefined) return method as DrillingMethod;
  }
  return named.length > 0 ? 'other' : undefined;
}
