import type { ComponentKind } from '../../record/strings.ts';
import type { FillKind } from '../../record/annulus.ts';
import type { DrillingMethod } from '../../record/bore.ts';
import type { WellState } from '../../record/identity.ts';
import type { LevelState } from '../../record/water.ts';

type Lists<T extends string> = Readonly<Partial<Record<T, readonly string[]>>>;

/**
 * Words of cells for the closed lists of the record, in English, French and Portuguese, in small
 * letters without accents: common practice, and the cells of tests/data.
 */
const pieces: Lists<ComponentKind> = {
  screen: [
    ...['screen', 'slotted', 'slotted casing', 'screencomponent', 'crepine', 'tube crepine'],
    ...['filtre', 'filtro', 'tubo filtro', 'tubo ranhurado', 'filter', 's'],
  ],
  plain: [
    ...['plain', 'plain casing', 'casing', 'blank', 'blank casing', 'solid', 'casingcomponent'],
    ...['tube plein', 'plein', 'tubage plein', 'tubo liso', 'liso', 'tubo cego', 'stijgbuis'],
  ],
  sump: ['sump', 'decanteur', 'tube decanteur', 'decantador', 'smp'],
  cap: ['cap', 'bottom cap', 'end cap', 'bouchon', 'bouchon de fond', 'tampao', 'tampa de fundo'],
  reducer: ['reducer', 'reduction', 'reducao'],
};

const fills: Lists<FillKind> = {
  gravelPack: [
    ...['gravel pack', 'gravel', 'filter pack', 'gravier', 'massif filtrant', 'gravier filtre'],
    ...['pre filtro', 'cascalho', 'areao'],
  ],
  claySeal: ['clay', 'clay seal', 'argile', 'bouchon d argile', 'argila', 'selo de argila'],
  bentonite: ['bentonite', 'bentonita', 'bentonite seal'],
  cementGrout: [
    'grout',
    'cement',
    'cement grout',
    'ciment',
    'coulis',
    'cimentation',
    'cimento',
    'calda',
  ],
  concrete: ['concrete', 'beton', 'betao'],
  backfill: ['backfill', 'cuttings', 'tout venant', 'remblai', 'aterro', 'material de enchimento'],
  naturalCollapse: ['collapse', 'natural collapse', 'caved', 'eboulement', 'desmoronamento'],
};

const methods: Lists<DrillingMethod> = {
  handAuger: ['hand auger', 'tariere', 'tariere manuelle', 'trado manual'],
  percussion: ['percussion', 'percussao', 'battage'],
  sludging: ['sludging'],
  jetting: ['jetting', 'lancage'],
  mudRotary: ['mud rotary', 'rotary mud', 'rotary', 'rotary boue', 'rotativa com lama'],
  airRotary: ['air rotary', 'rotary air'],
  downTheHoleHammer: [
    ...['dth', 'dth hammer', 'down the hole hammer', 'marteau fond de trou', 'mft', 'hammer'],
    ...['martelo de fundo', 'rotopercussao'],
  ],
  cableTool: ['cable tool', 'cabo'],
  handDug: ['hand dug', 'dug', 'puits creuse', 'escavado a mao'],
};

const states: Lists<WellState> = {
  drilled: ['drilled', 'fore', 'perfurado'],
  completed: ['completed', 'complete', 'equipe', 'acheve', 'concluido', 'equipado'],
  dry: ['dry', 'sec', 'seco', 'negatif', 'negativo'],
  abandonedAndSealed: ['abandoned', 'sealed', 'abandonne', 'abandonado'],
  decommissioned: ['decommissioned'],
};

const levels: Lists<LevelState> = {
  static: ['static', 'rest', 'at rest', 'statique', 'repos', 'estatico', 'repouso', 'in rust'],
  pumping: ['pumping', 'dynamic', 'pompage', 'dynamique', 'bombagem', 'dinamico'],
  recovering: ['recovering', 'recovery', 'remontee', 'recuperacao'],
};

const gathered = (lists: Lists<string>) =>
  new Map(Object.entries(lists).flatMap(([to, from]) => (from ?? []).map((word) => [word, to])));

/** By kind of table and field: a cell's word to the record's. */
export const cellWords: ReadonlyMap<string, ReadonlyMap<string, string>> = new Map([
  ['pieces kind', gathered(pieces)],
  ['fills fill', gathered(fills)],
  ['wells bore.method', gathered(methods)],
  ['sections method', gathered(methods)],
  ['wells identity.state', gathered(states)],
  ['levels state', gathered(levels)],
]);
