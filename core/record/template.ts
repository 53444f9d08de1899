import type { Component } from './strings.ts';
import type { WellRecord } from './schema.ts';

/**
 * What a new well takes over from another, chapter by chapter. Everything else belongs to the one
 * well: its id, number, name, permit and state; village, spot and position; days; depths and diameters; log,
 * fills, levels, strikes, development, tests, quality, disinfection, pump, headworks, photos,
 * marks and remarks; and keys that this version does not know.
 */
const taken = {
  identity: [
    'programme',
    'contract',
    'client',
    'contractor',
    'driller',
    'supervisor',
    'purpose',
    'practice',
    'guidelines',
  ],
  site: ['country', 'region', 'district', 'commune', 'positionMethod', 'elevationDatum'],
  bore: ['method', 'rig', 'fluid', 'additive'],
} as const;

/** What is known of a pipe before it is counted and set. */
const takenOfPiece = [
  'kind',
  'material',
  'outside',
  'wall',
  'inside',
  'upperOutside',
  'length',
  'joint',
  'insertion',
  'slotWidth',
  'slotSpacing',
  'slotRows',
  'openArea',
] as const satisfies readonly (keyof Component)[];

/** A part with some of its keys; undefined where it has none of them. */
function only(part: object | undefined, keys: readonly string[]): object | undefined {
  if (part === undefined) return undefined;
  const kept = Object.entries(part).filter(([key, value]) => keys.includes(key) && value !== '');
  return kept.length === 0 ? undefined : Object.fromEntries(kept);
}

function distinct<T>(list: readonly T[]): T[] {
  return [...new Map(list.map((one) => [JSON.stringify(one), one])).values()];
}

/** Each kind of piece once, in the order of the tally: how many go in is the new well's own. */
function stringsOf({ strings = [] }: WellRecord): object[] | undefined {
  const all = strings.map(({ name, components }) => ({
    ...(name ? { name } : {}),
    components: distinct(components.map((piece) => only(piece, takenOfPiece) ?? {})),
  }));
  return all.length === 0 ? undefined : all;
}

/** A document to begin a new well with; it may lack what has yet to be measured. */
export type Template = Readonly<Record<string, unknown>> & Pick<WellRecord, 'schemaVersion'>;

/** What a new well has in common with another one. */
export function templateOf(record: WellRecord): Template {
  const parts = {
    identity: only(record.identity, taken.identity),
    site: only(record.site, taken.site),
    bore: only(record.bore, taken.bore),
    strings: stringsOf(record),
  };
  const known = Object.entries(parts).filter(([, part]) => part !== undefined);
  return { schemaVersion: record.schemaVersion, ...Object.fromEntries(known) };
}
