import { ok, refused } from '../../core/base/result.ts';
import { admitGuidelines } from '../../core/water/guidelines/admitGuidelines.ts';
import { readGuidelines } from '../../core/water/guidelines/readGuidelines.ts';
import { reads, writes, type Handlers, type ServiceParts } from './handlers.ts';
import { ownGuidelineFiles, ownGuidelines } from './ownGuidelines.ts';

/** Calls about the user's sets of guideline values that the archive keeps. */
export function guidelinesHandlers({ archive, tell }: ServiceParts): Handlers<'guidelines'> {
  const { guidelines } = archive;
  const changed = () => tell({ name: 'guidelines.changed', data: {} });
  return {
    'guidelines.list': reads(() => ownGuidelines(guidelines)),
    'guidelines.put': writes(({ set }) => {
      const read = readGuidelines(set);
      if (!read.ok) return read;
      const admitted = admitGuidelines(read.value, ownGuidelineFiles(guidelines));
      if (!admitted.ok) return admitted;
      const kept = guidelines.put(read.value.id, JSON.stringify(read.value));
      if (!kept.ok) return kept;
      changed();
      return ok({ file: read.value, changedAt: kept.value.changedAt });
    }),
    'guidelines.remove': writes(({ id }) => {
      const based = ownGuidelineFiles(guidelines).filter(({ basedOn }) => basedOn === id);
      if (based.length > 0)
        return refused(
          'guidelinesInUse',
          `${based.map(({ name }) => `“${name.en}”`).join(', ')} is based on this set. Base it on another one first.`,
        );
      const gone = guidelines.remove(id);
      if (!gone.ok) return gone;
      changed();
      return ok(null);
    }),
  };
}
