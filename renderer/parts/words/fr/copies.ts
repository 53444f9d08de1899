import type { copies as english } from '../en/copies.ts';

export const copies: typeof english = {
  title: 'Copies',
  backups: 'Copies de sécurité',
  about:
    'Une fois par jour, une copie de l’archive est mise dans un dossier à côté d’elle et relue ; les cinq dernières sont gardées. Celles que vous faites restent jusqu’à ce que vous les effaciez.',
  make: 'Faire une copie maintenant',
  noBackups: 'Il n’y a pas encore de copie.',
  beside: 'Autres archives de ce dossier',
  aboutBeside:
    'Pour reprendre une autre archive, mettez son fichier dans le dossier de celle-ci. Il reste tel quel.',
  noBeside: 'Il n’y a pas d’autre archive dans ce dossier.',
  columns: {
    file: 'Fichier',
    made: 'Écrit',
    wells: 'Forages',
    size: 'Taille',
    entry: 'Donnée',
  },
  unreadable: 'illisible',
  megabytes: (figure) => `${figure} Mo`,
  restore: 'Remettre',
  look: 'Reprendre …',
  working: 'En cours …',
  made: (file) => `La copie ${file} a été faite et relue entièrement.`,
  restored: (file, aside) =>
    `L’archive contient de nouveau ce que contient ${file}. Ce qu’elle contenait est mis de côté sous ${aside}.`,
  askTitle: 'Remettre cette copie ?',
  ask: (file, moment, wells) =>
    `L’archive contiendra ce que contient ${file} : ${wells} forages, état du ${moment}.`,
  askAside:
    'Ce qu’elle contient maintenant est d’abord mis de côté, comme une copie à part. Pour retrouver quelques forages seulement, reprenez plutôt la copie.',
  keep: 'Laisser tel quel',
  toCopies: 'Retour aux copies',
  takeTitle: (file) => `Reprendre ${file}`,
  known: (known, binned) =>
    `De ${known} de ses forages, tout est déjà ici ; ${binned} sont dans sa corbeille et y restent.`,
  kinds: {
    new: (n) => (n === 1 ? '1 forage nouveau' : `${n} forages nouveaux`),
    later: (n) => (n === 1 ? '1 forage continué là-bas' : `${n} forages continués là-bas`),
    typing: (n) =>
      n === 1
        ? '1 forage attend : une saisie faite ici n’est dans aucune révision'
        : `${n} forages attendent : une saisie faite ici n’est dans aucune révision`,
    apart: (n) =>
      n === 1 ? '1 forage continué des deux côtés' : `${n} forages continués des deux côtés`,
    alike: (n) =>
      n === 1
        ? '1 forage a le numéro et le lieu d’un autre ici'
        : `${n} forages ont le numéro et le lieu d’autres ici`,
  },
  choices: {
    ours: 'Un seul forage ; la fiche d’ici vient en dernier',
    theirs: 'Un seul forage ; l’autre fiche vient en dernier',
    two: 'Deux forages',
  },
  compare: 'Côte à côte',
  here: (revision, moment) => `Ici : révision ${revision}, ${moment}`,
  there: (revision, moment) => `Là-bas : révision ${revision}, ${moment}`,
  noDifference: 'Les fiches disent la même chose.',
  more: (n) => `et ${n} de plus`,
  waiting: (n) =>
    n === 1
      ? '1 forage est sans choix et sera laissé.'
      : `${n} forages sont sans choix et seront laissés.`,
  nothingLost: 'Quel que soit le choix, toutes les fiches des deux restent parmi les révisions.',
  take: 'Reprendre',
  taken: (added, continued, joined) =>
    `Ajoutés : ${added}. Continués : ${continued}. Réunis : ${joined}.`,
  left: (n) => (n === 1 ? '1 forage a été laissé.' : `${n} forages ont été laissés.`),
  differing: (ids) => `Ceci est différent là-bas, et ce qui est ici a été laissé : ${ids}.`,
};
