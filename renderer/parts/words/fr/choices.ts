import type { ChoiceWords } from '../catalogue.ts';

export const choices: ChoiceWords = {
  yesNo: { yes: 'oui', no: 'non' },
  surroundings: {
    latrine: 'latrine',
    septicTank: 'fosse septique',
    soakaway: 'puits perdu',
    livestock: 'bétail',
    graveyard: 'tombes',
    wasteDump: 'décharge',
    fuelOrChemicals: 'carburant ou produits chimiques',
    openWater: 'eau de surface',
    building: 'bâtiment',
    well: 'autre puits ou forage',
    other: 'autre',
  },
  slope: { uphill: 'en amont', level: 'à même hauteur', downhill: 'en aval' },
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
