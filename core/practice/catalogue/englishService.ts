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
  'samples.sparse': {
    title: 'Metres without a sample',
    sentence:
      '{bareM} m of the hole have no sample, the first of them from {fromM} m to {toM} m; one is asked for each {eachM} m.',
    why: 'A layer that nobody laid out may be missed, and screen and seals are set by the samples.',
    todo: 'Write the samples that were taken; where none came up, say so in the log, and set no screen or seal there by guess.',
  },
};
