import type { serviceCodes } from '../rules/service/codes.ts';
import type { FindingText } from './texts.ts';

/** The site, the work and the handover. */
export const englishService: Readonly<Record<keyof typeof serviceCodes, FindingText>> = {
  'dates.order': {
    title: 'Dates out of order',
    sentence: '{later} ({laterOn}) stands before {earlier} ({earlierOn}).',
    why: 'A well is agreed, drilled and finished in that order, and only a finished hole is developed, tested and signed for; one of the two dates is wrong.',
    todo: 'Compare both dates with the field log and correct the one that is wrong.',
  },
};
