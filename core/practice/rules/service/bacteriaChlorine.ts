import type { RecordPath } from '../../../base/recordPath.ts';
import { figureOf, judged, notApplicable, unjudged, type Rule } from '../rule.ts';
import { broken } from '../ruleCodes.ts';
import { doseBefore, judgeBacteria, type BacteriaSample } from './bacteria.ts';
import type { DoseRow } from './disinfections.ts';

interface Chlorine {
  readonly mgL: number;
  readonly path: RecordPath;
}

/** Chlorine, not chloride, as laboratories of the three languages write it. */
const chlorine = /chlorine|\bchlore\b|\bcloro\b/i;

/** Chlorine measured in the sample; one below its detection limit counts as the limit. */
function inSample({ sample, path }: BacteriaSample): Chlorine | undefined {
  const results = sample.results ?? [];
  const at = results.findIndex(
    ({ parameter, value, unit = 'mg/l' }) =>
      chlorine.test(parameter) && value !== undefined && /^mg\/l$/i.test(unit),
  );
  const mgL = results[at]?.value;
  return mgL === undefined ? undefined : { mgL, path: `${path}.results[${at}].value` };
}

function afterDose({ dose, path }: DoseRow): Chlorine | undefined {
  return dose.residual === undefined ? undefined : { mgL: dose.residual, path: `${path}.residual` };
}

/** Bacteria are looked for when the chlorine is gone: by the sample's own figure, else the dose's. */
export const bacteriaChlorine: Rule = {
  id: 'bacteria.chlorine',
  figures: ['sampleChlorineMgL'],
  judge(well) {
    return judgeBacteria(well, (sample) => {
      const before = doseBefore(well.record, sample);
      if (!before) return notApplicable;
      const found = inSample(sample) ?? afterDose(before);
      if (!found) return unjudged({ what: 'disinfection', path: `${before.path}.residual` });
      const mostMgL = figureOf(well, 'sampleChlorineMgL');
      if (found.mgL <= mostMgL) return judged([]);
      const values = { chlorineMgL: found.mgL, mostMgL };
      return judged([broken('bacteria.chlorine', 'warning', found.path, values)]);
    });
  },
};
