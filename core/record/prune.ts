import { readPath, writePath, type PathStep, type RecordPath } from '../base/recordPath.ts';

/**
 * For each list of a pruned record that lost entries: where its entries stand in the document.
 * Keyed by the list's path in the record. Lists that lost none are absent.
 */
export type Places = Readonly<Record<RecordPath, readonly number[]>>;

export interface Pruned {
  readonly value: unknown;
  readonly places: Places;
}

/** What stands in for a part that cannot be left out, since others point at it by its place. */
export type StandIns = Readonly<Record<string, unknown>>;

interface Cut {
  /** Paths to leave out, and every path on the way to one. */
  readonly out: ReadonlySet<RecordPath>;
  readonly onTheWay: ReadonlySet<RecordPath>;
  readonly standIns: StandIns;
  readonly places: Record<RecordPath, readonly number[]>;
}

/** `strings[2].components` is of the kind `strings[].components`. */
export function kindOfPlace(path: RecordPath): string {
  return path.replace(/\[\d+\]/g, '[]');
}

function waysTo(out: Iterable<RecordPath>): Set<RecordPath> {
  const ways = new Set<RecordPath>();
  for (const path of out) {
    const steps = readPath(path);
    for (let length = 0; length < steps.length; length++)
      ways.add(writePath(steps.slice(0, length)));
  }
  return ways;
}

function cutList(list: readonly unknown[], from: PathStep[], to: PathStep[], cut: Cut): unknown[] {
  const kept: unknown[] = [];
  const places: number[] = [];
  list.forEach((entry, at) => {
    const part = cutPart(entry, [...from, at], [...to, kept.length], cut);
    if (part === undefined) return;
    kept.push(part);
    places.push(at);
  });
  if (kept.length < list.length) cut.places[writePath(to)] = places;
  return kept;
}

function cutGroup(group: object, from: PathStep[], to: PathStep[], cut: Cut): unknown {
  const stoodIn = [...cut.out]
    .map((path) => readPath(path))
    .filter((steps) => writePath(steps.slice(0, -1)) === writePath(from))
    .map((steps) => [steps.at(-1)!, undefined] as const);
  const entries = [...stoodIn, ...Object.entries(group)].flatMap(([key, value]) => {
    const part = cutPart(value, [...from, key], [...to, key], cut);
    return part === undefined ? [] : [[key, part] as const];
  });
  return Object.fromEntries(entries);
}

/** A part of the document as it goes into the record; undefined where it is left out. */
function cutPart(value: unknown, from: PathStep[], to: PathStep[], cut: Cut): unknown {
  const path = writePath(from);
  if (cut.out.has(path)) return cut.standIns[kindOfPlace(path)];
  if (!cut.onTheWay.has(path) || typeof value !== 'object' || value === null) return value;
  return Array.isArray(value) ? cutList(value, from, to, cut) : cutGroup(value, from, to, cut);
}

/**
 * A copy of a document without the parts at some paths. Parts that stay are shared with the
 * document. Entries of a list close up; `places` tells where they came from.
 */
export function leaveOut(
  written: unknown,
  out: ReadonlySet<RecordPath>,
  standIns: StandIns = {},
): Pruned {
  const places: Record<RecordPath, readonly number[]> = {};
  const cut = { out, onTheWay: waysTo(out), standIns, places };
  return { value: cutPart(written, [], [], cut), places };
}

/** Where in the document a part of the record stands. */
export function placeInDocument(places: Places, path: RecordPath): RecordPath {
  const steps = readPath(path);
  const found = steps.map((step, at) => {
    if (typeof step !== 'number') return step;
    return places[writePath(steps.slice(0, at))]?.[step] ?? step;
  });
  return writePath(found);
}
