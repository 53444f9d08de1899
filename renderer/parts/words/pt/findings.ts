import type { InterfaceWords } from '../catalogue.ts';

export const findings: InterfaceWords['findings'] = {
  title: 'Observações',
  none: 'Nenhuma, segundo o que está registado até agora.',
  count: (errors, warnings, notes) => `${errors} erradas, ${warnings} a rever, ${notes} a saber`,
  severity: { error: 'Errado', warning: 'A rever', note: 'A saber' },
  go: 'Ir ao campo',
};
