import { minutesBetween } from '../../../record/moment.ts';
import { figureOf, judged, unjudged, type Rule } from '../rule.ts';
import { broken } from '../ruleCodes.ts';
import { judgeDevelopment, type DevelopmentRow } from './development.ts';

function minutesOf({ event: { startedAt, endedAt } }: DevelopmentRow): number | undefined {
  if (startedAt === undefined || endedAt === undefined) return undefined;
  return minutesBetween(startedAt, endedAt);
}

/** All hours of development together. */
export const developmentShort: Rule = {
  id: 'development.short',
  figures: ['developmentH'],
  judge(well) {
    return judgeDevelopment(well, (rows) => {
      const leastH = figureOf(well, 'developmentH');
      const hours = rows.reduce((sum, row) => sum + Math.max(0, minutesOf(row) ?? 0), 0) / 60;
      if (hours >= leastH) return judged([]);
      const untimed = rows.filter((row) => minutesOf(row) === undefined);
      if (untimed.length > 0)
        return unjudged(
          ...untimed.map(({ path }) => ({ what: 'dates' as const, path: `${path}.endedAt` })),
        );
      return judged([broken('development.short', 'warning', 'development', { hours, leastH })]);
    });
  },
};
