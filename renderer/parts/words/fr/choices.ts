import { french as details } from '../../../../core/drawing/parts/details/words/fr.ts';
import type { ChoiceWords } from '../catalogue.ts';

export const choices: ChoiceWords = {
  yesNo: { yes: 'oui', no: 'non' },
  surroundings: details.kinds,
  slope: details.slopes,
  boundary: { sharp: 'nette', gradual: 'progressive', uncertain: 'incertaine' },
  grainScheme: { iso14688: 'ISO 14688', wentworth: 'Wentworth' },
  datum: { ground: 'sol', casingTop: 'haut du tubage' },
  levelState: { static: 'au repos', pumping: 'en pompage', recovering: 'en remontée' },
  development: {
    surging: 'pistonnage',
    bailing: 'soupapage',
    airLift: 'air-lift',
    jetting: 'jets d’eau',
    overpumping: 'surpompage',
    backwashing: 'lavage à contre-courant',
    other: 'autre',
  },
  test: { step: 'par paliers', constantRate: 'à débit constant', recovery: 'remontée' },
  where: { field: 'terrain', laboratory: 'laboratoire' },
};
