import type { InterfaceWords } from '../catalogue.ts';

export const look: InterfaceWords['look'] = {
  title: 'Langue et aspect',
  language: 'Langue',
  contrast: 'Contraste',
  highContrast: 'Contraste élevé',
};
