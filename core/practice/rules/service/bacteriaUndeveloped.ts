import { judged, notApplicable, type Rule } from '../rule.ts';
import { broken } from '../ruleCodes.ts';
import { judgeBacteria } from './bacteria.ts';
import { isBefore, readable } from './days.ts';

/** Bacteria are looked for once development has ended. */
export const bacteriaUndeveloped: Rule = {
  id: 'bacteria.undeveloped',
  figures: [],
  judge(well) {
    return judgeBacteria(well, ({ path, takenAt }) => {
      const ends = (well.record.development ?? []).flatMap(
        ({ startedAt, endedAt }) => endedAt ?? startedAt ?? [],
      );
      if (ends.length === 0) return notApplicable;
      const after = ends.find((end) => isBefore(takenAt, end));
      if (after === undefined) return judged([]);
      const values = { takenOn: readable(takenAt), endedOn: readable(after) };
      return judged([broken('bacteria.undeveloped', 'warning', `${path}.takenAt`, values)]);
    });
  },
};
