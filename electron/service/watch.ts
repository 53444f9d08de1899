import { ok } from '../../core/base/result.ts';
import type { HostEvent } from '../../core/contract/events.ts';
import type { Archive } from '../archive/archive.ts';

/**
 * Gives a look at the archive that tells of each well that another program changed since the last
 * look. Wells that were changed here meanwhile may be told once more.
 */
export function watchArchive(archive: Archive, tell: (event: HostEvent) => void): () => void {
  const read = () => {
    const marks = archive.marks();
    return new Map(marks.ok ? marks.value.map((mark) => [mark.id, mark]) : []);
  };
  let touched = archive.touched();
  let known = read();
  return () => {
    const now = archive.touched();
    if (!now.ok || now.value === (touched.ok ? touched.value : undefined)) return;
    touched = ok(now.value);
    const before = known;
    known = read();
    for (const [id, mark] of known)
      if (JSON.stringify(before.get(id)) !== JSON.stringify(mark))
        tell({ name: 'well.changed', data: mark });
  };
}
