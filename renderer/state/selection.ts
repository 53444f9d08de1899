import type { RecordPath } from '../../core/base/recordPath.ts';

/** True when a path is a base or lies under it: `log[3].to` lies in `log[3]`, not in `log[31]`. */
export function liesIn(path: RecordPath | undefined, base: RecordPath): boolean {
  if (path === undefined) return false;
  if (base === '' || path === base) return true;
  return path.startsWith(base) && ['.', '['].includes(path[base.length] ?? '');
}
