import type { entry as english } from '../en/entry.ts';

export const entry: typeof english = {
  kinds: {
    length: 'une longueur',
    flow: 'un débit',
    volume: 'un volume',
    mass: 'une masse',
    time: 'une durée',
  },
  wrongKind: (text, kind, unit) =>
    `« ${text} » est ${kind}, et ce champ est en ${unit}. Écrivez en ${unit}, ou dans une autre unité de ce genre.`,
  unknownUnit: (text, name, unit) =>
    `« ${text} » n’est pas un nombre. Écrivez par exemple 12,5 ou 12.5. L’unité « ${name} » n’est pas connue ici ; sans unité, c’est en ${unit}.`,
  onlyUnit: (text, unit) =>
    `« ${text} » porte une unité qui n’est pas admise ici. Écrivez en ${unit}.`,
  asTyped: (text) => `Saisi : ${text}`,
  tools: 'Lignes',
  insert: 'Insérer',
  duplicate: 'Dupliquer',
  split: 'Couper',
  splitAt: 'Couper à (m)',
  splitOutside: (text, from, to) =>
    `« ${text} » n’est pas dans l’intervalle. Écrivez une profondeur entre ${from} et ${to}.`,
  join: 'Réunir avec la suivante',
  fillDown: 'Recopier vers le bas',
  up: 'Monter',
  down: 'Descendre',
  remove: (n) => (n === 1 ? 'Supprimer la ligne' : `Supprimer ${n} lignes`),
  selected: (n) => `${n} lignes sélectionnées`,
  isSelected: 'sélectionnée',
  copied: (n) => (n === 1 ? '1 ligne copiée' : `${n} lignes copiées`),
  keysTitle: 'Touches',
  keys: 'Entrée passe à la suite, Maj+Entrée revient ; sur une ligne suivante où rien n’est saisi, Entrée mène au tableau ou au formulaire suivant, et du dernier au chapitre suivant. Ctrl+flèche bas ou haut y va aussitôt, Alt+1 à 7 et Alt+Page suivante ou précédente tournent les chapitres. Maj+flèche sélectionne des lignes, Ctrl+C, X et V les copient, coupent et collent, aussi avec un tableur. Ctrl+D recopie vers le bas, Inser ajoute une ligne avant celle-ci, Ctrl+Maj+D duplique, Alt+S coupe un intervalle, Alt+J le réunit avec le suivant, Alt+flèche déplace, Ctrl+Suppr supprime. Ctrl+Entrée ouvre le reste de la ligne, Échap ramène.',
  options: (label) => `Mots pour ${label}`,
  code: (code) => `code ${code}`,
  samples: 'Échantillons du terrain',
  makeLog: 'Établir la coupe à partir des échantillons',
  replaceLog: (n) =>
    n === 1
      ? 'La coupe a un intervalle. Le remplacer ?'
      : `La coupe a ${n} intervalles. Les remplacer ?`,
  replace: 'Remplacer',
  keep: 'Garder la coupe',
  logMade: (n) =>
    n === 1 ? 'La coupe a maintenant un intervalle.' : `La coupe a maintenant ${n} intervalles.`,
  why: 'Pourquoi c’est important',
  show: 'Afficher',
  hiddenFindings: (n) => (n === 1 ? 'Une autre est masquée.' : `${n} autres sont masquées.`),
};
