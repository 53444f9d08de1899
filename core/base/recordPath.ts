/**
 * Where in a record a value stands, written as a person reads it: `log[3].to`.
 * Indexes count from 0, as in the JSON document. The empty path is the whole record.
 */
export type RecordPath = string;

export type PathStep = string | number;

/** `['log', 3, 'to']` becomes `log[3].to`. */
export function writePath(steps: readonly PathStep[]): RecordPath {
  return steps
    .map((step, at) => (typeof step === 'number' ? `[${step}]` : at === 0 ? step : `.${step}`))
    .join('');
}

/** `log[3].to` becomes `['log', 3, 'to']`. */
export function readPath(path: RecordPath): PathStep[] {
  return [...path.matchAll(/([^.[\]]+)|\[(\d+)\]/g)].map(([, name, index]) =>
    name === undefined ? Number(index) : name,
  );
}

/** The value at a path, or undefined where the path leads nowhere. */
export function valueAt(document: unknown, path: RecordPath): unknown {
  return readPath(path).reduce<unknown>(
    (value, step) =>
      typeof value === 'object' && value !== null
        ? (value as Record<PathStep, unknown>)[step]
        : undefined,
    document,
  );
}
