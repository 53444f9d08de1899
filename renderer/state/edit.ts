import { readPath, type PathStep, type RecordPath } from '../../core/base/recordPath.ts';
import { deepFreeze } from '../../core/record/freeze.ts';

/**
 * Edits of frozen documents by path. Each gives a new document that shares what did not change;
 * the old one stays as it was, which is what undo lives on.
 */

type Node = Readonly<Record<PathStep, unknown>> | readonly unknown[];

function emptyFor(step: PathStep): Node {
  return typeof step === 'number' ? [] : {};
}

function withItem(list: readonly unknown[], index: number, value: unknown): readonly unknown[] {
  if (index > list.length) throw new RangeError(`No place ${index} in a list of ${list.length}`);
  return Object.freeze(
    value === undefined ? list.toSpliced(index, 1) : list.toSpliced(index, 1, value),
  );
}

function withKey(node: Node, key: PathStep, value: unknown): Node {
  const copy: Record<PathStep, unknown> = { ...(node as Record<PathStep, unknown>) };
  if (value === undefined) delete copy[key];
  else copy[key] = value;
  return Object.freeze(copy);
}

function change(
  node: Node | undefined,
  steps: readonly PathStep[],
  make: (old: unknown) => unknown,
): unknown {
  const [step, ...rest] = steps;
  if (step === undefined) return deepFreeze(make(node));
  const here = node ?? emptyFor(step);
  const old = (here as Record<PathStep, unknown>)[step] as Node | undefined;
  const next = change(old, rest, make);
  if (next === old) return node;
  return typeof step === 'number' && Array.isArray(here)
    ? withItem(here, step, next)
    : withKey(here, step, next);
}

/**
 * The document with a value at a path. Missing chapters on the way are made; undefined takes the
 * field away, since absent means unknown. Throws RangeError past the end of a list.
 */
export function setAt<T>(document: T, path: RecordPath, value: unknown): T {
  return change(document as Node, readPath(path), () => value) as T;
}

function changeList<T>(
  document: T,
  path: RecordPath,
  make: (list: readonly unknown[]) => readonly unknown[],
): T {
  return change(document as Node, readPath(path), (old) =>
    make((old ?? []) as readonly unknown[]),
  ) as T;
}

/** Puts an item into the list at a path, before the item that stands at `index`. */
export function insertAt<T>(document: T, path: RecordPath, index: number, item: unknown): T {
  return changeList(document, path, (list) => list.toSpliced(index, 0, item));
}

/** Takes the item at `index` out of the list at a path. */
export function removeAt<T>(document: T, path: RecordPath, index: number): T {
  return changeList(document, path, (list) => list.toSpliced(index, 1));
}

/** Puts the list at a path into a new order: `order[k]` is where item k stood before. */
export function reorderAt<T>(document: T, path: RecordPath, order: readonly number[]): T {
  return changeList(document, path, (list) => order.map((from) => list[from]));
}
