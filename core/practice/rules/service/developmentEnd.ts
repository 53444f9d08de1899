import type { FigureId } from '../../figures.ts';
import { figureOf, judged, notApplicable, unjudged, type Rule } from '../rule.ts';
import { broken } from '../ruleCodes.ts';
import { judgeDevelopment, lastOf } from './development.ts';

interface End {
  readonly id: 'development.turbid' | 'development.sandy';
  readonly figure: FigureId;
  readonly measure: 'turbidity' | 'sand';
  readonly instead: 'turbidity' | 'sand';
}

/**
 * How the water was when development ended. Either of turbidity and sand tells that it was clear
 * enough; where both were measured, both have to.
 */
function endsWith({ id, figure, measure, instead }: End): Rule {
  return {
    id,
    figures: [figure],
    judge(well) {
      return judgeDevelopment(well, (rows) => {
        const last = lastOf(rows);
        const value = last?.event[measure];
        if (value === undefined) {
          if (last?.event[instead] !== undefined) return notApplicable;
          const path = `${last?.path ?? 'development'}.${measure}`;
          return unjudged({ what: 'turbidityOrSand', path });
        }
        const most = figureOf(well, figure);
        if (value <= most) return judged([]);
        return judged([broken(id, 'warning', `${last?.path}.${measure}`, { value, most })]);
      });
    },
  };
}

export const developmentTurbid = endsWith({
  id: 'development.turbid',
  figure: 'turbidityNtu',
  measure: 'turbidity',
  instead: 'sand',
});

export const developmentSandy = endsWith({
  id: 'development.sandy',
  figure: 'sandMgL',
  measure: 'sand',
  instead: 'turbidity',
});
