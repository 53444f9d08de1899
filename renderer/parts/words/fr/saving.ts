import type { InterfaceWords } from '../catalogue.ts';

export const saving: InterfaceWords['saving'] = {
  revised: (time, revision) => `Révision ${revision} enregistrée à ${time}`,
  kept: (time) => `Sur le disque à ${time}`,
  ahead: (time, revision) => `Sur le disque à ${time}, après la révision ${revision}`,
  waiting: 'Pas encore sur le disque',
  saving: 'Écriture sur le disque …',
  refused: (sentence) => `Pas sur le disque : ${sentence}`,
  reason: 'Raison de la prochaine révision, au besoin',
  reasonHint:
    'Elle figure à côté de la révision que fera le prochain enregistrement ; Entrée enregistre',
  unread: (n) =>
    n === 1
      ? 'Une saisie ne peut pas encore être lue. Elle est gardée, mais ne fait pas partie de la fiche.'
      : `${n} saisies ne peuvent pas encore être lues. Elles sont gardées, mais ne font pas partie de la fiche.`,
  parted:
    'Une autre fenêtre a modifié le même endroit. Choisissez ce qui y reste ; l’autre version revient avec Annuler.',
  takeTheirs: 'Prendre celle de l’autre fenêtre',
  keepMine: 'Garder la mienne',
  again: 'Réessayer',
  leave: 'Quitter sans elle',
  stays: 'Cette fenêtre reste ouverte : tout ce qui a été saisi n’est pas encore sur le disque.',
  close: 'Fermer quand même',
  troubles: (n) => (n === 1 ? 'Un problème dans la fiche :' : `${n} problèmes dans la fiche :`),
  paperIsOlder: (revision) => `Il montre la révision ${revision}, sans ce qui a été saisi depuis.`,
};
