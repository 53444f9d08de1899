import type { InterfaceWords } from '../catalogue.ts';

export const reading: InterfaceWords['reading'] = {
  number: (text) => `« ${text} » n’est pas un nombre. Écrivez par exemple 12,5 ou 12.5.`,
  twoMarks: (text) =>
    `« ${text} » a plus d’une virgule. Écrivez par exemple 1250,5, sans signe pour les milliers.`,
  whole: (text) => `« ${text} » n’est pas un nombre entier. Écrivez par exemple 3.`,
  least: (text, least) => `${text} est trop petit : il faut au moins ${least} ici.`,
  most: (text, most) => `${text} est trop grand : il faut au plus ${most} ici.`,
  choice: (text) => `« ${text} » n’est pas dans la liste. Choisissez un des mots proposés.`,
  several: (text, words) => `« ${text} » peut être ${words}. Écrivez le mot en entier.`,
  day: (text) => `« ${text} » n’est pas un jour. Écrivez par exemple 2025-03-09, l’année d’abord.`,
  moment: (text) =>
    `« ${text} » n’est pas une date avec une heure. Écrivez par exemple 2025-03-09 14:05.`,
  list: (text) =>
    `« ${text} » n’est pas une liste de nombres. Écrivez par exemple 0,5 ; 2,0, avec des points-virgules.`,
  needed: 'Ce champ ne peut pas rester vide. Écrivez une valeur, ou supprimez la ligne.',
  at: (label, sentence) => `${label} : ${sentence}`,
};
