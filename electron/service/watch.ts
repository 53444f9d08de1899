import { ok } from '../../core/base/result.ts';
import type { HostEvent } from '../../core/contract/events.ts';
import type { Archive } from '../archive/archive.ts';

/**
 * Gives a look at the archive that tells of each well that another program changed since the last
 * look, of practices, of sets of guideline values, and of templates. What was changed here meanwhile may be told once more.
 */
export function watchArchive(archive: Archive, tell: (event: HostEvent) => void): () => void {
  const read = () => {
    const marks = archive.marks();
    return new Map(marks.ok ? marks.value.map((mark) => [mark.id, mark]) : []);
  };
  const readFiles = ({ list }: Archive['practices' | 'guidelines' | 'templates']) => {
    const kept = list();
    return JSON.stringify(kept.ok ? kept.value : []);
  };
  let touched = archive.touched();
  let known = read();
  let practices = readFiles(archive.practices);
  let guidelines = readFiles(archive.guidelines);
  let templates = readFiles(archive.templates);
  return () => {
    const now = archive.touched();
    if (!now.ok || now.value === (touched.ok ? touched.value : undefined)) return;
    touched = ok(now.value);
    const [practicesBefore, guidelinesBefore, templatesBefore] = [practices, guidelines, templates];
    practices = readFiles(archive.practices);
    if (practices !== practicesBefore) tell({ name: 'practices.changed', data: {} });
    guidelines = readFiles(archive.guidelines);
    if (guidelines !== guidelinesBefore) tell({ name: 'guidelines.changed', data: {} });
    templates = readFiles(archive.templates);
    if (templates !== templatesBefore) tell({ name: 'templates.changed', data: {} });
    const before = known;
    known = read();
    for (const [id, mark] of known)
      if (JSON.stringify(before.get(id)) !== JSON.stringify(mark))
        tell({ name: 'well.changed', data: mark });
  };
}
