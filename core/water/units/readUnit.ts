import { readForm } from './readForm.ts';

/** What units of one kind have in common; those of different kinds are converted by substance. */
export type UnitKind =
  | 'mass'
  | 'amount'
  | 'charge'
  | 'hardness'
  | 'turbidity'
  | 'count'
  | 'conductivity'
  | 'temperature'
  | 'colour'
  | 'plain';

/** A unit as it was read: a value in it, times `toBase`, stands in the kind's base unit. */
export interface ReadUnit {
  readonly kind: UnitKind;
  /** To mg/l, mmol/l, meq/l, mg/l as CaCO3, NTU, a count in 100 ml, µS/cm, °C, mg/l Pt, 1. */
  readonly toBase: number;
  /** Form that was written with it, as in `mg/l N`. */
  readonly as?: string;
  readonly taken?: 'fnuAsNtu' | 'mpnAsCount' | 'ppmAsMgL';
}

/** One spelling for all: small letters, no blanks, µ as u, a litre as l, a quotient with a stroke. */
function plainUnit(written: string): string {
  return written
    .normalize('NFKC')
    .toLowerCase()
    .replace(/[µμ]/g, 'u')
    .replace(/mcg/g, 'ug')
    .replace(/dm3/g, 'l')
    .replace(/[·.*\s]*\b(l|m|cm)(?:\^?[-−]1)(?!\d)/g, '/$1')
    .replace(/lit(er|re|ro)s?/g, 'l')
    .replace(/\s+/g, '');
}

type Factors = Readonly<Record<string, number>>;

/** Degrees as CaCO3: German, French, English, American (from memory: trade tables). */
const hardnessUnits: Factors = {
  '°dh': 17.848,
  dh: 17.848,
  '°d': 17.848,
  '°f': 10,
  '°fh': 10,
  '°th': 10,
  '°e': 14.254,
  '°clark': 14.254,
  gpg: 17.118,
};

const factors: Readonly<Record<Exclude<UnitKind, 'count'>, Factors>> = {
  mass: {
    'kg/m3': 1000,
    'g/l': 1000,
    'mg/l': 1,
    'g/m3': 1,
    'ug/l': 1e-3,
    'mg/m3': 1e-3,
    'ng/l': 1e-6,
    ppm: 1,
    ppb: 1e-3,
  },
  amount: { 'mol/l': 1000, 'mmol/l': 1, 'umol/l': 1e-3 },
  charge: { 'eq/l': 1000, 'meq/l': 1, 'mval/l': 1, 'ueq/l': 1e-3 },
  hardness: hardnessUnits,
  turbidity: { ntu: 1, utn: 1, unt: 1, fnu: 1, ftu: 1 },
  conductivity: {
    'us/cm': 1,
    'umho/cm': 1,
    'umhos/cm': 1,
    'ms/cm': 1000,
    'ds/m': 1000,
    'ms/m': 10,
    's/m': 1e4,
  },
  temperature: { '°c': 1, c: 1, degc: 1 },
  colour: { tcu: 1, hazen: 1, ucv: 1, uh: 1, 'mg/lpt': 1, 'mg/lpt-co': 1, 'mgpt/l': 1, 'pt-co': 1 },
  plain: {
    '': 1,
    '-': 1,
    '–': 1,
    '1': 1,
    ph: 1,
    phunits: 1,
    units: 1,
    unitésph: 1,
    unitésdeph: 1,
    unidadesdeph: 1,
  },
};

const kinds = Object.entries(factors) as [keyof typeof factors, Factors][];

/** What counts are called in three languages; of the second list a likely number is told. */
const counted = ['', 'cfu', 'ufc', 'n', 'no', 'no.', 'n°', 'nb', 'col', 'colonies', 'colónias'];
const likely = ['mpn', 'npp', 'nmp'];

function countUnit(unit: string): ReadUnit | undefined {
  const [, what, amount, volume] = /^(.*?)(?:\/|per|par|por)(\d*)(ml|l)$/.exec(unit) ?? [];
  if (what === undefined || ![...counted, ...likely].includes(what)) return undefined;
  const ml = (amount === '' ? 1 : Number(amount)) * (volume === 'l' ? 1000 : 1);
  if (ml === 0) return undefined;
  const read = { kind: 'count', toBase: 100 / ml } as const;
  return likely.includes(what) ? { ...read, taken: 'mpnAsCount' } : read;
}

/** Formazin units are one size with nephelometric ones; a share is a mass in a litre of a kilogram. */
function takenFor(unit: string): Pick<ReadUnit, 'taken'> {
  if (['fnu', 'ftu'].includes(unit)) return { taken: 'fnuAsNtu' };
  return ['ppm', 'ppb'].includes(unit) ? { taken: 'ppmAsMgL' } : {};
}

function knownUnit(unit: string): ReadUnit | undefined {
  const [kind, list] = kinds.find(([, units]) => Object.hasOwn(units, unit)) ?? [];
  return kind && list ? { kind, toBase: list[unit]!, ...takenFor(unit) } : countUnit(unit);
}

/** Parts a unit from the form that stands in or behind it, as in `mg NO3/l` and `mg/l as N`. */
function partForm(unit: string): { unit: string; form: string } | undefined {
  const inside = /^(mg|ug|g|mmol|meq)([a-z].*)\/(l|m3)$/.exec(unit);
  if (inside) return { unit: `${inside[1]}/${inside[3]}`, form: inside[2]! };
  const behind = /^((?:mg|ug|g|mmol|meq)\/(?:l|m3)|ppm|ppb)(.+)$/.exec(unit);
  return behind ? { unit: behind[1]!, form: behind[2]! } : undefined;
}

/** A unit as laboratories of the three languages write it; undefined where it is none that is known. */
export function readUnit(written: string): ReadUnit | undefined {
  const whole = plainUnit(written);
  const read = knownUnit(whole);
  if (read) return read;
  const parts = partForm(whole);
  const as =
    parts && (readForm(parts.form) ?? readForm(parts.form.replace(/^(as|en|como|em)/, '')));
  const bare = as === undefined ? undefined : knownUnit(parts!.unit);
  return bare && as !== undefined ? { ...bare, as } : undefined;
}
