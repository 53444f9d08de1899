import { english as details } from '../../../../core/drawing/parts/details/words/en.ts';
/** Words to choose from; those that sheets print too are the sheets'. */
export const choices = {
  yesNo: { yes: 'yes', no: 'no' },
  surroundings: details.kinds,
  slope: details.slopes,
  boundary: { sharp: 'sharp', gradual: 'gradual', uncertain: 'uncertain' },
  grainScheme: { iso14688: 'ISO 14688', wentworth: 'Wentworth' },
  datum: { ground: 'ground', casingTop: 'casing top' },
  levelState: { static: 'at rest', pumping: 'pumping', recovering: 'recovering' },
  development: {
    surging: 'surging',
    bailing: 'bailing',
    airLift: 'air lift',
    jetting: 'jetting',
    overpumping: 'overpumping',
    backwashing: 'backwashing',
    other: 'other',
  },
  test: { step: 'step test', constantRate: 'constant rate', recovery: 'recovery' },
  where: { field: 'field', laboratory: 'laboratory' },
};
