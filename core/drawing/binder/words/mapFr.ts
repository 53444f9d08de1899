import type { MapWords } from './map.ts';

export const mapFrench: MapWords = {
  overview: 'Carte de situation : vue d’ensemble des feuilles',
  sheet: 'Carte de situation : feuille {n} sur {of}',
  without: 'Forages sans position',
  datum: 'WGS 84, degrés aux bords haut et gauche.',
  grid: 'Croix : UTM zone {zone}, tous les {step} km, aux bords bas et droit.',
  backdrop: 'Tirets et points : contours du fond ; traits pleins : ses autres lignes.',
  unnamed: '{n} signes sont trop serrés pour un numéro.',
  elsewhere: 'Signes dont le numéro se trouve sur une autre feuille : {n}.',
  led: 'Un trait fin relie un numéro à son signe.',
};
