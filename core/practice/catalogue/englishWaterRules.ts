import type { waterCodes } from '../rules/water/codes.ts';
import type { FindingText } from './texts.ts';

/** Results of water samples, the kind of pump, the rate. */
export const englishWaterRules: Readonly<Record<keyof typeof waterCodes, FindingText>> = {
  'quality.aboveHealth': {
    title: 'Above a health-based value: {parameter}',
    sentence:
      '{parameter}: the last reading is {reading} {unit}, above the health-based value of {allowed} {unit}.',
    why: 'Such water can make people ill who drink it, at once or after years.',
    todo: 'Stop its use for drinking until the health authority has decided; take another sample and have it analysed.',
  },
  'quality.untested': {
    title: 'Not tested before handover: {parameter}',
    sentence: '{parameter}: no sample was tested for it, and it is asked for before handover.',
    why: 'What nobody looked for is not known; clear water without taste tells nothing of it.',
    todo: 'Have it tested, or write the result that there is; look up what the local rules ask for.',
  },
  'suits.lift': {
    title: 'Lift beyond this kind of pump',
    sentence:
      'The water is to be lifted {liftM} m or more; a pump of this kind lifts {mostM} m at most.',
    why: 'Beyond its lift a pump gives little water or none, and its parts wear fast and break.',
    todo: 'Check the water levels and the kind of pump; where both are right, choose a kind for that lift.',
  },
  'suits.casing': {
    title: 'Well too narrow for this kind of pump',
    sentence:
      'The well is {insideMm} mm wide inside where the pump passes; a pump of this kind takes {leastMm} mm at least.',
    why: 'A pump in a narrow casing sticks on its way, or does not come up again for repair.',
    todo: 'Check the size of the pipes and the kind of pump; where both are right, choose a slimmer kind.',
  },
  'suits.flow': {
    title: 'Pump gives less than the users need',
    sentence: 'For what the users need, a pump of this kind would have to run {hours} h a day.',
    why: 'A day does not have the hours: people wait, or go back to other water.',
    todo: 'Check the number of users; where it is right, choose a kind that gives more, or plan a second water point.',
  },
  'rate.untested': {
    title: 'Rate above what was tested',
    sentence: '{rate} m³/h is to be pumped; no pumping test went above {tested} m³/h.',
    why: 'Above the tested rate nobody knows how far the water falls: the pump may run dry or draw sand.',
    todo: 'Test the well at that rate, or pump no more than was tested.',
  },
};
