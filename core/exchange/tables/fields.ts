import { fillKinds } from '../../record/annulus.ts';
import { drillingMethods } from '../../record/bore.ts';
import { wellStates } from '../../record/identity.ts';
import { grainClasses } from '../../record/log.ts';
import { materials } from '../../record/materials.ts';
import { componentKinds } from '../../record/strings.ts';
import { levelDatums, levelStates } from '../../record/water.ts';

export const tableKinds = [
  'wells',
  'log',
  'sections',
  'pieces',
  'fills',
  'levels',
  'strikes',
] as const;

export type TableKind = (typeof tableKinds)[number];

/** How the text of a cell becomes a value of the record. */
export type FieldType =
  'text' | 'day' | 'moment' | 'number' | 'count' | 'metres' | 'millimetres' | 'word' | 'materials';

export interface Field {
  readonly type: FieldType;
  readonly required?: boolean;
  /** The closed list that a word must come from. */
  readonly words?: readonly string[];
  /** What an unknown word becomes; without it the row is left out. */
  readonly fallback?: string;
}

const text: Field = { type: 'text' };
const day: Field = { type: 'day' };
const number: Field = { type: 'number' };
const count: Field = { type: 'count' };
const metres: Field = { type: 'metres' };
const millimetres: Field = { type: 'millimetres' };
const needed = (field: Field): Field => ({ ...field, required: true });
const word = (words: readonly string[], fallback?: string): Field => ({
  type: 'word',
  words,
  ...(fallback === undefined ? {} : { fallback }),
});

/** One row a well; a field is named by its path in the record. */
const wells: Record<string, Field> = {
  'identity.number': text,
  'identity.name': text,
  'identity.programme': text,
  'identity.contract': text,
  'identity.permit': text,
  'identity.client': text,
  'identity.contractor': text,
  'identity.driller': text,
  'identity.supervisor': text,
  'identity.purpose': text,
  'identity.state': word(wellStates),
  'site.country': text,
  'site.region': text,
  'site.district': text,
  'site.commune': text,
  'site.village': text,
  'site.spot': text,
  'site.latitude': number,
  'site.longitude': number,
  'site.positionMethod': text,
  'site.positionAccuracy': metres,
  'site.elevation': metres,
  'site.elevationDatum': text,
  'site.agreedOn': day,
  'site.households': count,
  'site.users': number,
  'bore.method': word(drillingMethods, 'other'),
  'bore.rig': text,
  'bore.startedOn': day,
  'bore.finishedOn': day,
  'bore.fluid': text,
  'bore.additive': text,
  'bore.depthReached': metres,
  'bore.depthFound': metres,
  'bore.remark': text,
  'headworks.casingAboveGround': metres,
  notes: text,
};

const log: Record<string, Field> = {
  from: needed(metres),
  to: needed(metres),
  material: word(materials, 'other'),
  qualifiers: { type: 'materials', words: materials },
  grain: word(grainClasses),
  grainScheme: word(['iso14688', 'wentworth']),
  colour: text,
  consistency: text,
  weathering: word(['fresh', 'slightly', 'moderately', 'highly', 'completely']),
  moisture: word(['dry', 'moist', 'wet', 'waterBearing']),
  boundary: word(['sharp', 'gradual', 'uncertain']),
  sampleLabel: text,
  minutesPerMetre: number,
  remarks: text,
  words: text,
};

/** Without `from`, a section begins where the one above it ends, the first at the ground. */
const sections: Record<string, Field> = {
  from: metres,
  to: needed(metres),
  diameter: needed(millimetres),
  method: word(drillingMethods, 'other'),
};

/** `diameter` is for sources that do not say whether they mean inside or outside. */
const pieces: Record<string, Field> = {
  from: needed(metres),
  to: needed(metres),
  kind: needed(word(componentKinds)),
  string: text,
  material: text,
  outside: millimetres,
  inside: millimetres,
  diameter: millimetres,
  wall: millimetres,
  joint: text,
  slotWidth: millimetres,
  slotSpacing: millimetres,
  openArea: number,
  remark: text,
};

/** `string` or `aroundDiameter` says which string the fill surrounds. */
const fills: Record<string, Field> = {
  from: needed(metres),
  to: needed(metres),
  fill: needed(word(fillKinds)),
  string: text,
  aroundDiameter: millimetres,
  grainMin: millimetres,
  grainMax: millimetres,
  waterCement: number,
  sacks: number,
  sackMass: number,
  litres: number,
  placed: text,
  remark: text,
};

const levels: Record<string, Field> = {
  at: { type: 'moment' },
  reading: needed(metres),
  datum: needed(word(levelDatums)),
  state: word(levelStates),
  rate: number,
  minutesPumped: number,
  remark: text,
};

const strikes: Record<string, Field> = {
  depth: needed(metres),
  at: { type: 'moment' },
  rise: metres,
  afterMinutes: number,
  flow: number,
  remark: text,
};

/** The fields that each kind of table can fill. */
export const fieldsOf: Readonly<Record<TableKind, Readonly<Record<string, Field>>>> = {
  wells,
  log,
  sections,
  pieces,
  fills,
  levels,
  strikes,
};
