import type { InterfaceWords } from '../catalogue.ts';

export const findings: InterfaceWords['findings'] = {
  title: 'Constats',
  none: 'Aucun, d’après ce qui est saisi jusqu’ici.',
  count: (errors, warnings, notes) => `${errors} faux, ${warnings} à revoir, ${notes} à savoir`,
  severity: { error: 'Faux', warning: 'À revoir', note: 'À savoir' },
  go: 'Aller au champ',
};
