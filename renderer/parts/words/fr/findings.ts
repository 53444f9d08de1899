import type { InterfaceWords } from '../catalogue.ts';

export const findings: InterfaceWords['findings'] = {
  title: 'Constats',
  none: 'Aucun, d’après ce qui est saisi jusqu’ici.',
  count: (errors, warnings, notes) => `${errors} faux, ${warnings} à revoir, ${notes} à savoir`,
  severity: { error: 'Faux', warning: 'À revoir', note: 'À savoir' },
  go: 'Aller au champ',
  source: (source) => `Source : ${source}`,
  missing: (n) => `Non jugé, faute de (${n})`,
  judgedBy: (name, version) => `Jugé selon : ${name}, ${version}.`,
  general:
    'La fiche ne nomme aucune règle de l’art : c’est la règle générale pour sa façon de forer.',
  unknownPractice: (id) =>
    `La fiche nomme la règle de l’art « ${id} », qui n’est pas ici : c’est la règle générale pour sa façon de forer.`,
};
