import type { PathStep } from './recordPath.ts';

/**
 * What changed between two JSON documents, as data that travels and can be kept. Documents are
 * never changed: applying gives a new one that shares what stayed.
 */

/** One place that changed: what stands there now, or nothing where it was taken away. */
export interface Change {
  /** Steps from the top; no step is the whole document. Indexes count from 0. */
  readonly at: readonly PathStep[];
  /** JSON; the key is absent where the place is gone. */
  readonly to?: unknown;
}

/** In any order: no place of a patch lies within another. */
export type Patch = readonly Change[];

type Group = Readonly<Record<string, unknown>>;

function isList(value: unknown): value is readonly unknown[] {
  return Array.isArray(value);
}

function isGroup(value: unknown): value is Group {
  return typeof value === 'object' && value !== null && !isList(value);
}

/** Whether two JSON values say the same, in whatever order their keys stand. */
export function isSame(one: unknown, other: unknown): boolean {
  if (one === other) return true;
  if (isList(one) && isList(other))
    return one.length === other.length && one.every((item, index) => isSame(item, other[index]));
  if (!isGroup(one) || !isGroup(other)) return false;
  const keys = Object.keys(one);
  return (
    keys.length === Object.keys(other).length &&
    keys.every((key) => Object.hasOwn(other, key) && isSame(one[key], other[key]))
  );
}

/** An item of the new list that stood elsewhere in the old one. */
function isMoved(item: unknown, index: number, before: readonly unknown[]): boolean {
  if (!isGroup(item) || isSame(item, before[index])) return false;
  return before.some((other, at) => at !== index && isSame(item, other));
}

/**
 * A list that got longer or shorter, or whose items changed places, is replaced whole, so that
 * another's change of one item can never be laid into the item that took its place.
 */
function* changesOfList(
  before: readonly unknown[],
  after: readonly unknown[],
  at: readonly PathStep[],
): Generator<Change> {
  const whole =
    before.length !== after.length || after.some((item, index) => isMoved(item, index, before));
  if (whole) yield { at, to: after };
  else
    for (const [index, item] of after.entries())
      yield* changes(before[index], item, [...at, index]);
}

function* changesOfGroup(before: Group, after: Group, at: readonly PathStep[]): Generator<Change> {
  for (const key of Object.keys(before)) if (!Object.hasOwn(after, key)) yield { at: [...at, key] };
  for (const [key, value] of Object.entries(after)) {
    if (Object.hasOwn(before, key)) yield* changes(before[key], value, [...at, key]);
    else yield { at: [...at, key], to: value };
  }
}

function* changes(before: unknown, after: unknown, at: readonly PathStep[]): Generator<Change> {
  if (before === after) return;
  if (isList(before) && isList(after)) yield* changesOfList(before, after, at);
  else if (isGroup(before) && isGroup(after)) yield* changesOfGroup(before, after, at);
  else yield { at, to: after };
}

/** What leads from one document to another; parts that both share are not looked into. */
export function diff(before: unknown, after: unknown): Patch {
  return [...changes(before, after, [])];
}

function lost(step: PathStep): never {
  throw new RangeError(`The patch is of another document: there is no place ${step}`);
}

function withItem(list: readonly unknown[], step: PathStep, rest: Change): unknown {
  const within = typeof step === 'number' && step < list.length;
  return within ? list.with(step, placed(list[step], rest)) : lost(step);
}

function withKey(group: Group, key: string, rest: Change): unknown {
  if (rest.at.length > 0 && !Object.hasOwn(group, key)) return lost(key);
  if (rest.at.length > 0 || 'to' in rest)
    return { ...group, [key]: placed(rest.at.length > 0 ? group[key] : undefined, rest) };
  return Object.fromEntries(Object.entries(group).filter(([other]) => other !== key));
}

function placed(document: unknown, change: Change): unknown {
  const [step, ...at] = change.at;
  if (step === undefined) return change.to;
  const rest = { ...change, at };
  if (isList(document)) return withItem(document, step, rest);
  return isGroup(document) ? withKey(document, String(step), rest) : lost(step);
}

/**
 * The document after a patch. What was frozen stays so; what is new is not frozen yet.
 * @throws RangeError where the patch was made of a document of another shape.
 */
export function applyPatch<T>(document: T, patch: Patch): T {
  return patch.reduce<unknown>(placed, document) as T;
}

function liesOver(one: Change, other: Change): boolean {
  return one.at.every((step, index) => step === other.at[index]);
}

/** Whether two changes of one document are of one place, or of a place within the other's. */
export function meets(one: Change, other: Change): boolean {
  return liesOver(one, other) || liesOver(other, one);
}
