import type { RecordPath } from '../../../base/recordPath.ts';
import type { Stratum } from '../../../model/wellModel.ts';
import type { LogInterval } from '../../../record/log.ts';

/** What the first row of a stratum that tells a field says of it, and where. */
export function saidOf<K extends keyof LogInterval & string>(
  { interval, path, others }: Stratum,
  field: K,
): { value: NonNullable<LogInterval[K]>; source: RecordPath } | undefined {
  const rows = [{ interval, path }, ...others];
  const telling = rows.find(
    (row) => row.interval[field] !== undefined && row.interval[field] !== '',
  );
  if (!telling) return undefined;
  return {
    value: telling.interval[field] as NonNullable<LogInterval[K]>,
    source: `${telling.path}.${field}`,
  };
}
