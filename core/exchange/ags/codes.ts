import type { FillKind } from '../../record/annulus.ts';
import type { DrillingMethod } from '../../record/bore.ts';
import type { Material } from '../../record/materials.ts';
import type { ComponentKind } from '../../record/strings.ts';
import { fillOfWords, inWords } from '../laid/words.ts';

/**
 * Codes of the abbreviations of AGS 4.1 and what the record calls them. Numbers and names:
 * "AGS 4.1 Dictionary" in github.com/asitha-sena/python-ags4 (Standard_dictionary_v4_1.ags). Where
 * the list has no word of the trade, a code of our own stands in capitals; the rules let a file
 * bring its own in its ABBR group (rule 16, from memory).
 */
export interface Code {
  readonly code: string;
  readonly says: string;
}

const plainCodes: Partial<Record<Material, Code>> = {
  topsoil: { code: '101', says: 'TOPSOIL' },
  madeGround: { code: '102', says: 'MADE GROUND' },
  clay: { code: '201', says: 'CLAY' },
  silt: { code: '301', says: 'SILT' },
  sand: { code: '401', says: 'SAND' },
  gravel: { code: '501', says: 'GRAVEL' },
  peat: { code: '601', says: 'PEAT' },
  cobbles: { code: '701', says: 'COBBLES' },
  boulders: { code: '730', says: 'BOULDERS' },
  mudstone: { code: '801', says: 'MUDSTONE' },
  siltstone: { code: '802', says: 'SILTSTONE' },
  sandstone: { code: '803', says: 'SANDSTONE' },
  limestone: { code: '804', says: 'LIMESTONE' },
  chalk: { code: '805', says: 'CHALK' },
  coal: { code: '806', says: 'COAL' },
  breccia: { code: '807', says: 'BRECCIA' },
  conglomerate: { code: '808', says: 'CONGLOMERATE' },
  shale: { code: '817', says: 'Shale' },
  slate: { code: '819', says: 'SLATE' },
  noSample: { code: '998', says: 'No Recovery' },
  cavity: { code: '999', says: 'Void' },
};

/** `silt+sand` under `clay`: a principal material with its seconds in the order of the list. */
const mixedCodes: Readonly<Record<string, Code>> = {
  'clay+silt': { code: '202', says: 'Silty CLAY' },
  'clay+sand': { code: '203', says: 'Sandy CLAY' },
  'clay+gravel': { code: '204', says: 'Gravelly CLAY' },
  'clay+silt+sand': { code: '207', says: 'Silty sandy CLAY' },
  'clay+silt+gravel': { code: '208', says: 'Silty gravelly CLAY' },
  'clay+silt+sand+gravel': { code: '211', says: 'Silty sandy gravelly CLAY' },
  'clay+sand+gravel': { code: '220', says: 'Sandy gravelly CLAY' },
  'silt+sand': { code: '303', says: 'Sandy SILT' },
  'silt+gravel': { code: '304', says: 'Gravelly SILT' },
  'silt+clay+sand': { code: '309', says: 'Clayey sandy SILT' },
  'silt+sand+gravel': { code: '310', says: 'Sandy gravelly SILT' },
  'sand+clay': { code: '402', says: 'Clayey SAND' },
  'sand+silt': { code: '403', says: 'Silty SAND' },
  'sand+gravel': { code: '404', says: 'Gravelly SAND' },
  'sand+clay+gravel': { code: '410', says: 'Clayey gravelly SAND' },
  'sand+silt+gravel': { code: '412', says: 'Silty gravelly SAND' },
  'gravel+clay': { code: '502', says: 'Clayey GRAVEL' },
  'gravel+silt': { code: '503', says: 'Silty GRAVEL' },
  'gravel+sand': { code: '504', says: 'Sandy GRAVEL' },
  'gravel+clay+sand': { code: '509', says: 'Clayey sandy GRAVEL' },
  'gravel+silt+sand': { code: '520', says: 'Silty sandy GRAVEL' },
};

const capitals = (word: string) => word.replace(/[A-Z]/g, '_$&').toUpperCase();
const small = (word: string) =>
  word.toLowerCase().replace(/_([a-z])/g, (_, letter: string) => letter.toUpperCase());

/** The code for a material with its seconds in the order in which they are told. */
export function groundCode(material: Material, seconds: readonly Material[]): Code {
  const key = [material, ...seconds].join('+');
  const found = seconds.length === 0 ? plainCodes[material] : mixedCodes[key];
  if (found) return found;
  const says = [material, ...seconds].map(inWords).join(' with ');
  return { code: [material, ...seconds].map(capitals).join('-'), says };
}

const listedCodes: ReadonlyMap<string, readonly Material[]> = new Map(
  Object.entries({ ...plainCodes, ...mixedCodes }).map(([key, { code }]) => [
    code,
    key.split('+') as Material[],
  ]),
);

/**
 * The materials of a code of ours or of the list, the principal one first; undefined for others.
 * A code of the list counts only where the file's own ABBR group does not say otherwise.
 */
export function groundOfCode(
  code: string,
  saidByFile: string | undefined,
  isMaterial: (word: string) => word is Material,
): readonly Material[] | undefined {
  const listed = listedCodes.get(code);
  const name = listed && groundCode(listed[0]!, listed.slice(1)).says.toLowerCase();
  if (listed && (saidByFile === undefined || saidByFile.toLowerCase() === name)) return listed;
  const own = code.split('-').map(small);
  return own.every(isMaterial) && capitals(own[0]!) === code.split('-')[0] ? own : undefined;
}

export const fillCodes: Readonly<Record<FillKind, Code>> = {
  gravelPack: { code: '902', says: 'Gravel backfill' },
  formationStabiliser: { code: 'STABILISER', says: 'Formation stabiliser' },
  claySeal: { code: 'CLAY', says: 'Clay seal' },
  bentonite: { code: '903', says: 'Bentonite' },
  cementGrout: { code: '904', says: 'Grout' },
  concrete: { code: '906', says: 'Concrete' },
  backfill: { code: '905', says: 'Arisings' },
  naturalCollapse: { code: 'COLLAPSE', says: 'Natural collapse' },
  open: { code: '999', says: 'Void' },
};

/** The fill that a code's description names; undefined where it names none, as a cover does. */
export function fillOf(code: string, saidByFile: string | undefined): FillKind | undefined {
  const own = Object.entries(fillCodes).find(([, one]) => one.code === code);
  return fillOfWords(saidByFile ?? own?.[1].says ?? '');
}

export const pieceCodes: Readonly<Record<ComponentKind, Code>> = {
  plain: { code: 'PLAIN', says: 'Plain' },
  screen: { code: 'SLOTTED', says: 'Slotted' },
  cap: { code: 'CAP', says: 'Cap' },
  sump: { code: 'SUMP', says: 'Sump' },
  reducer: { code: 'REDUCER', says: 'Reducer' },
};

const morePieces: readonly (readonly [RegExp, ComponentKind])[] = [
  [/slot|screen|perforat|response/, 'screen'],
  [/sump/, 'sump'],
  [/reduc/, 'reducer'],
  [/^(end )?cap/, 'cap'],
  [/plain|solid|blank|pipe/, 'plain'],
];

/** The kind of piece that a code, or else its description, names. */
export function pieceOfCode(
  code: string,
  saidByFile: string | undefined,
): ComponentKind | undefined {
  const own = Object.entries(pieceCodes).find(([, one]) => one.code === code.toUpperCase());
  if (own) return own[0] as ComponentKind;
  const words = (saidByFile ?? code).toLowerCase();
  return morePieces.find(([pattern]) => pattern.test(words))?.[1];
}

/** The nearest type of hole in the list; the method itself is written out beside it. */
export const methodCodes: Readonly<Record<DrillingMethod, Code>> = {
  handAuger: { code: 'HA', says: 'Hand Auger' },
  percussion: { code: 'CP', says: 'Cable percussion (shell and auger)' },
  sludging: { code: 'W', says: 'Wash boring' },
  jetting: { code: 'W', says: 'Wash boring' },
  rotaryJetting: { code: 'W', says: 'Wash boring' },
  mudRotary: { code: 'RO', says: 'Rotary open hole' },
  airRotary: { code: 'RO', says: 'Rotary open hole' },
  downTheHoleHammer: { code: 'RO', says: 'Rotary open hole' },
  cableTool: { code: 'CP', says: 'Cable percussion (shell and auger)' },
  handDug: { code: 'IP', says: 'Inspection pit' },
  other: { code: 'EH', says: 'Exploratory Hole' },
};

/** The method as a file writes it out, else by the types of hole that mean one method alone. */
export function methodOf(written: string | undefined, type: string | undefined) {
  const named = (Object.keys(methodCodes) as DrillingMethod[]).find(
    (method) => inWords(method) === written?.toLowerCase(),
  );
  if (named !== undefined) return named;
  if (type === 'HA') return 'handAuger';
  if (type === 'CP') return 'cableTool';
  return type === undefined ? undefined : 'other';
}

/** Samples as they were laid out: a type of our own. */
export const laidOut: Code = { code: 'CUT', says: 'Cuttings, laid out' };

/** How files leave a field open that must not be empty. */
export const leftOpen = ['-', '--', 'N/A', 'n/a', 'Undefined'];
