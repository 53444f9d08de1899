import type { InterfaceWords } from '../catalogue.ts';

export const revisions: InterfaceWords['revisions'] = {
  title: 'Révisions de ce forage',
  open: 'Révisions',
  close: 'Fermer',
  author: 'Votre nom',
  authorHint: 'figure à côté des révisions faites sur cet ordinateur',
  before: 'De',
  now: 'À',
  number: 'N°',
  time: 'Faite',
  by: 'Par',
  reason: 'Raison',
  reasonHint: 'pourquoi elle doit valoir de nouveau',
  compareFrom: (revision) => `Comparer à partir de la révision ${revision}`,
  compareTo: (revision) => `Comparer jusqu’à la révision ${revision}`,
  differences: (before, now) => `De la révision ${before} à la ${now}`,
  restore: (revision) => `Faire de la ${revision} une nouvelle révision`,
  restoredReason: (revision) => `Reprise de la révision ${revision}`,
  restored: (revision, now) => `La révision ${revision} vaut de nouveau, comme révision ${now}.`,
};
