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
  'pad.thin': {
    title: 'Concrete pad too thin',
    sentence: 'The concrete pad is {built} m thick; at least {least} m is asked for.',
    why: 'A thin pad cracks, and spilled water runs down along the casing.',
    todo: 'Measure the thickness at an edge; where it is so, look for cracks and have the pad recast or thickened.',
  },
  'pad.small': {
    title: 'Concrete pad small',
    sentence: 'The shorter side of the concrete pad is {built} m; at least {least} m is advised.',
    why: 'Water spilled by the users falls beside a small pad and softens the ground round the casing.',
    todo: 'Measure both sides; where it is so, widen the pad or pave round it with a fall away from the well.',
  },
  'drain.short': {
    title: 'Drain short',
    sentence: 'The drain is {built} m long; at least {least} m is common.',
    why: 'A short drain leaves a pool beside the well, where animals drink and mosquitoes breed.',
    todo: 'Lead the water on to a soakaway or a garden, lower than the pad.',
  },
  'drain.flat': {
    title: 'Drain too flat',
    sentence: 'The drain falls by {built} %; at least {least} % is asked for.',
    why: 'Water stands in a flat drain, which fills with silt and overflows onto the pad.',
    todo: 'Check the fall with a level or by pouring water; have the drain relaid where water stands.',
  },
};
