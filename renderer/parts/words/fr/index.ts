import type { InterfaceWords } from '../catalogue.ts';
import { english } from '../en/index.ts';
import { saving } from './saving.ts';

/** Every text of the interface in French. */
export const french: InterfaceWords = {
  ...english,
  tag: 'fr-FR',
  itself: 'Français',
  saving,
};
