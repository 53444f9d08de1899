import type { casingCodes } from '../rules/casing/codes.ts';
import type { FindingText } from './texts.ts';

/** Pipes and screens. */
export const englishCasing: Readonly<Record<keyof typeof casingCodes, FindingText>> = {
  'sump.length': {
    title: 'Sump of unusual length',
    sentence:
      'String {string}: {sumpM} m of plain pipe stand under the lowest screen; {leastM} m to {mostM} m is asked for.',
    why: 'Sand that comes in settles there: in a short sump it soon covers the screen, a long one only costs pipe and hole.',
    todo: 'Check the tally; before setting, put a pipe of that length under the screen.',
  },
};
