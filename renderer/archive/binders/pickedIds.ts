/** Ids with those that are not yet among them, at most so many in all. */
export function withAdded(
  ids: readonly string[],
  more: readonly string[],
  most: number,
): readonly string[] {
  return [...new Set([...ids, ...more])].slice(0, Math.max(ids.length, most));
}

/** Ids with one of them a place sooner or later; the same ones where it stands at that end. */
export function withMoved(ids: readonly string[], at: number, by: -1 | 1): readonly string[] {
  const to = at + by;
  if (to < 0 || to >= ids.length) return ids;
  const rest = ids.toSpliced(at, 1);
  return rest.toSpliced(to, 0, ids[at]!);
}
