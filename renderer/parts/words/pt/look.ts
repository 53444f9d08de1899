import type { InterfaceWords } from '../catalogue.ts';

export const look: InterfaceWords['look'] = {
  title: 'Língua e aspeto',
  language: 'Língua',
  contrast: 'Contraste',
  highContrast: 'Contraste elevado',
};
