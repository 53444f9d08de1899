import type { InterfaceWords } from '../catalogue.ts';

export const siting: InterfaceWords['siting'] = {
  title: 'Plan et temps de parcours',
  plan: (reach) => `Plan autour du forage, nord en haut, jusqu’à ${reach} de chaque côté`,
  reach: 'Le plan va jusqu’à',
  grid: (zone, east, north) =>
    `Dans la grille UTM (WGS 84) : fuseau ${zone}, ${east} m est, ${north} m nord`,
  well: 'Forage',
  north: 'N',
  number: 'N°',
  what: 'Quoi',
  distance: 'Distance',
  asked: 'Exigée',
  direction: 'Direction',
  lies: 'Situé',
  beyond: 'hors du plan',
  tooNear: 'plus près qu’exigé',
  noDirection: 'Pas sur le plan, car personne n’a noté la direction :',
  noDistance: 'Personne n’a noté la distance :',
  nothingPlaced: 'Rien n’a encore de distance et de direction : il n’y a pas de plan.',
  travel: 'Temps que les germes peuvent mettre',
  days: (figure) => `${figure} jours`,
  years: (figure) => `${figure} ans`,
  ground: (ground) => `à travers : ${ground}`,
  assumptions: 'Ce qui est supposé',
  missing: 'Pas d’estimation, faute de :',
};
