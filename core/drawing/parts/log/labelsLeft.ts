/** How far two texts begin alike. */
function alike(one: string, other: string): number {
  let at = 0;
  while (at < one.length && one[at] === other[at]) at += 1;
  return at;
}

/**
 * What of labels tells them apart: what all begin with, up to the last sign that is neither letter
 * nor figure, is left out. `KV-25/01`, `KV-25/02` become `01`, `02`.
 */
export function labelsLeft(labels: readonly string[]): string[] {
  const written = labels.filter((one) => one !== '');
  const [first, ...others] = written;
  if (first === undefined || others.length === 0) return [...labels];
  const shared = Math.min(...others.map((one) => alike(first, one)));
  const parted = /^.*[^\p{L}\p{N}]/u.exec(first.slice(0, shared))?.[0].length ?? 0;
  return labels.map((one) => one.slice(parted));
}
