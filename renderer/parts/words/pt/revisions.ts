import type { InterfaceWords } from '../catalogue.ts';

export const revisions: InterfaceWords['revisions'] = {
  title: 'Revisões deste furo',
  open: 'Revisões',
  close: 'Fechar',
  author: 'O seu nome',
  authorHint: 'fica junto das revisões feitas neste computador',
  before: 'De',
  now: 'A',
  number: 'N.º',
  time: 'Feita',
  by: 'Por',
  reason: 'Motivo',
  reasonHint: 'porque deve valer de novo',
  compareFrom: (revision) => `Comparar a partir da revisão ${revision}`,
  compareTo: (revision) => `Comparar até à revisão ${revision}`,
  differences: (before, now) => `Da revisão ${before} à ${now}`,
  restore: (revision) => `Fazer da ${revision} uma nova revisão`,
  restoredReason: (revision) => `Retomada da revisão ${revision}`,
  restored: (revision, now) => `A revisão ${revision} vale de novo, como revisão ${now}.`,
};
