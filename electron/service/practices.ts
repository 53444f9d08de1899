import { ok, refused } from '../../core/base/result.ts';
import { admitPractice } from '../../core/practice/admitPractice.ts';
import { readPractice } from '../../core/practice/readPractice.ts';
import { reads, writes, type Handlers, type ServiceParts } from './handlers.ts';
import { ownPracticeFiles, ownPractices } from './ownPractices.ts';

/** Calls about the practices of the user that the archive keeps. */
export function practicesHandlers({ archive, tell }: ServiceParts): Handlers<'practices'> {
  const { practices } = archive;
  const changed = () => tell({ name: 'practices.changed', data: {} });
  return {
    'practices.list': reads(() => ownPractices(practices)),
    'practices.put': writes(({ practice }) => {
      const read = readPractice(practice);
      if (!read.ok) return read;
      const admitted = admitPractice(read.value, ownPracticeFiles(practices));
      if (!admitted.ok) return admitted;
      const kept = practices.put(read.value.id, JSON.stringify(read.value));
      if (!kept.ok) return kept;
      changed();
      return ok({ file: read.value, changedAt: kept.value.changedAt });
    }),
    'practices.remove': writes(({ id }) => {
      const based = ownPracticeFiles(practices).filter(({ basedOn }) => basedOn === id);
      if (based.length > 0)
        return refused(
          'practiceInUse',
          `${based.map(({ name }) => `“${name.en}”`).join(', ')} is based on this practice. Base it on another one first.`,
        );
      const gone = practices.remove(id);
      if (!gone.ok) return gone;
      changed();
      return ok(null);
    }),
  };
}
