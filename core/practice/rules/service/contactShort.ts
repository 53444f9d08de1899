import { minutesBetween } from '../../../record/moment.ts';
import { figureOf, judged, notApplicable, type Rule } from '../rule.ts';
import { broken } from '../ruleCodes.ts';
import { askedOf } from './asked.ts';
import { dosesOf, type Dose } from './disinfections.ts';
import { stageOf } from '../stage.ts';

/** Hours that the chlorine stood in the well: as written, else from dosing to pumping off. */
function contactOf({ contactHours, at, pumpedOffAt }: Dose): number | undefined {
  if (contactHours !== undefined) return contactHours;
  if (at === undefined || pumpedOffAt === undefined) return undefined;
  const minutes = minutesBetween(at, pumpedOffAt);
  return minutes === undefined ? undefined : minutes / 60;
}

/** How long the chlorine of each disinfection stood in the well. */
export const contactShort: Rule = {
  id: 'contact.short',
  figures: ['contactH'],
  judge(well) {
    const { record } = well;
    if (stageOf(record) === 'coming') return notApplicable;
    const doses = dosesOf(record);
    const missing = { what: 'disinfection', path: 'disinfection' } as const;
    return askedOf(record, doses.length === 0 ? undefined : doses, missing, (rows) => {
      const leastH = figureOf(well, 'contactH');
      const timed = rows.map(({ dose, path }) => ({
        hours: contactOf(dose),
        path: `${path}.contactHours`,
      }));
      return judged(
        timed.flatMap(({ hours, path }) =>
          hours === undefined || hours >= leastH
            ? []
            : [broken('contact.short', 'warning', path, { hours, leastH })],
        ),
        timed
          .filter(({ hours }) => hours === undefined)
          .map(({ path }) => ({ what: 'disinfection', path })),
      );
    });
  },
};
