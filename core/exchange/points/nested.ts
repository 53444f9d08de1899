import { readPath, type RecordPath } from '../../base/recordPath.ts';

/** An object of chapters out of values by their paths, none of which leads through a list. */
export function nested(values: readonly (readonly [RecordPath, unknown])[]): object {
  const root: Record<string, unknown> = {};
  for (const [path, value] of values) {
    const steps = readPath(path) as string[];
    let group = root;
    for (const step of steps.slice(0, -1)) group = (group[step] ??= {}) as Record<string, unknown>;
    group[steps.at(-1)!] = value;
  }
  return root;
}
