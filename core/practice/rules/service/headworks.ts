import type { Severity } from '../../../base/finding.ts';
import type { FigureId } from '../../figures.ts';
import type { Headworks } from '../../../record/headworks.ts';
import type { MissingWhat } from '../missing.ts';
import { figureOf, judged, type Rule } from '../rule.ts';
import { broken } from '../ruleCodes.ts';
import { askedOf } from './asked.ts';

type Measure = 'padThickness' | 'padLength' | 'padWidth' | 'drainLength' | 'drainSlope';

interface Least {
  readonly id: 'pad.thin' | 'pad.small' | 'drain.short' | 'drain.flat';
  readonly figure: FigureId;
  readonly what: MissingWhat;
  readonly severity: Severity;
  /** The smallest of these counts. */
  readonly measures: readonly [Measure, ...Measure[]];
}

function smallest(headworks: Headworks | undefined, measures: readonly Measure[]) {
  return measures
    .flatMap((measure) => {
      const value = headworks?.[measure];
      return value === undefined ? [] : [{ measure, value }];
    })
    .sort((a, b) => a.value - b.value)[0];
}

/** A measure of pad or drain that is to be at least as large as a figure of the practice. */
function atLeast({ id, figure, what, severity, measures }: Least): Rule {
  return {
    id,
    figures: [figure],
    judge(well) {
      const { record } = well;
      const least = figureOf(well, figure);
      const absent = measures.find((measure) => record.headworks?.[measure] === undefined);
      const missing = { what, path: `headworks.${absent ?? measures[0]}` };
      return askedOf(record, smallest(record.headworks, measures), missing, (found) => {
        if (found.value < least)
          return judged([
            broken(id, severity, `headworks.${found.measure}`, { built: found.value, least }),
          ]);
        return judged([], absent ? [missing] : []);
      });
    },
  };
}

/**
 * Pad and drain. How thick a pad is and how a drain falls is built once and cracks or ponds for
 * good; how wide and how long they should be is advice that varies, and so a note.
 */
export const headworksRules: readonly Rule[] = [
  atLeast({
    id: 'pad.thin',
    figure: 'padThicknessM',
    what: 'pad',
    severity: 'warning',
    measures: ['padThickness'],
  }),
  atLeast({
    id: 'pad.small',
    figure: 'padSideM',
    what: 'pad',
    severity: 'note',
    measures: ['padLength', 'padWidth'],
  }),
  atLeast({
    id: 'drain.short',
    figure: 'drainLengthM',
    what: 'drain',
    severity: 'note',
    measures: ['drainLength'],
  }),
  atLeast({
    id: 'drain.flat',
    figure: 'drainSlopePercent',
    what: 'drain',
    severity: 'warning',
    measures: ['drainSlope'],
  }),
];
