import type { ColophonWords } from './colophon.ts';

export const colophonFrench: ColophonWords = {
  made: 'Fabrication',
  madeSays: 'Fait le {day} avec Borefolio {version}.',
  madeBy: 'Par {name}.',
  hash: 'SHA-256 des révisions prises : {hash}',
  noHash: 'Aucune empreinte de l’archive n’a été prise.',
  wells: 'Forages',
  filter: 'Demandés : {filter}.',
  allWells: 'Demandés : tous les forages de l’archive.',
  counts:
    'Forages dans ce classeur : {n}. Forages dont les documents n’ont pas pu être faits : {failed}.',
  revisions:
    'Chaque forage est montré selon sa dernière révision au moment où le classeur a été fait. Ce qui a été saisi plus tard n’y est pas.',
  practices: 'Pratiques selon lesquelles les forages ont été jugés',
  named: '{name}, version {version} : {wells}',
  guidelines: 'Valeurs guides auxquelles les analyses ont été comparées',
  noSamples: 'Aucun forage de ce classeur n’a d’analyse d’eau notée.',
  how: 'Comment il a été fait',
  howSays: [
    'Chaque page est dessinée d’après les seules fiches. Les mêmes fiches donnent les mêmes pages.',
    'Carte : équirectangulaire autour du milieu de chaque feuille, WGS 84 ; le nord est en haut. Son échelle est juste au milieu.',
    'Coupes : les distances sont des géodésiques sur WGS 84 de forage en forage, additionnées ; la ligne peut tourner à chaque forage.',
    'La médiane est la valeur du milieu ; d’un nombre pair, la moyenne des deux du milieu.',
    'Géologie d’un forage : le matériau de la plus grande partie de sa coupe. Aux crépines : le matériau le long de la plus grande partie des crépines.',
  ],
  sources: 'Sources des chiffres',
  sourcesSays: [
    'WGS 84 : NGA.STND.0036_1.0.0_WGS84.',
    'Longueurs des degrés : Snyder 1987, Map Projections, USGS Professional Paper 1395.',
    'Grille : Mercator transverse universelle, selon Krüger 1912.',
    'Géodésiques : Vincenty 1975, Survey Review 23 (176).',
    'Valeurs guides, limites et facteurs : les sources sont sur les documents de chaque forage.',
  ],
  failed: 'Forages dont les documents n’ont pas pu être faits',
};
