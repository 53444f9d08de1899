import type { InterfaceWords } from '../catalogue.ts';
import { english } from '../en/index.ts';
import { saving } from './saving.ts';

/** Every text of the interface in Portuguese. */
export const portuguese: InterfaceWords = {
  ...english,
  tag: 'pt-PT',
  itself: 'Português',
  saving,
};
