import type { InterfaceWords } from '../catalogue.ts';

export const pumpChoice: InterfaceWords['pumpChoice'] = {
  title: 'Quelle pompe convient',
  inputs: 'Ce qui compte pour le choix, en plus des autres chapitres',
  repair: {
    caretaker: 'gardien',
    areaMechanic: 'artisan réparateur',
    workshop: 'atelier électrique',
  },
  noPump: 'Un forage sec ou comblé ne reçoit pas de pompe.',
  rateBy: {
    analysed: 'Le débit du forage est le débit d’exploitation selon ses essais de pompage.',
    tested: 'Le débit du forage est celui de son dernier essai à débit constant.',
    laidOut: 'Aucun essai ne donne le débit du forage : le débit prévu au plan en tient lieu.',
    pumpInUse:
      'Aucun essai ne donne le débit du forage : le débit de la pompe en service en tient lieu.',
  },
  missing: 'Il manque encore :',
  speaksFor: 'Pour',
  against: 'Contre',
  effects: { rulesOut: 'l’exclut', doubts: 'un doute', notes: 'une remarque' },
  intake: 'Où la prise d’eau peut se placer',
  levels: (level, foot) => `Eau en pompage en saison sèche à ${level}, fond du forage à ${foot} :`,
  margins: (under, above) =>
    `${under} sous ce niveau et ${above} au-dessus du fond sont laissés libres.`,
  parts: 'Ce qui mène de la prise d’eau à la surface',
  pieces: (count, each, long) => `${count} de ${each} pour ${long}`,
  spaced: (count, each) => `${count}, une tous les ${each}`,
  quantities: 'Chiffres',
  cautions: 'À observer',
  named: (what, which) => `${what} : ${which}`,
  formula: 'Formule',
  source: 'Source',
  go: 'Aller au champ',
  ofKind: 'publié pour ce type',
  ofWell: 'd’après les niveaux et le tubage',
  assumed: 'supposé',
};
