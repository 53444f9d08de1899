import type { InterfaceWords } from '../catalogue.ts';
import { english } from '../en/index.ts';
import { codes } from './codes.ts';
import { entry } from './entry.ts';
import { saving } from './saving.ts';

/** Every text of the interface in French. */
export const french: InterfaceWords = {
  ...english,
  tag: 'fr-FR',
  itself: 'Français',
  entry,
  codes,
  saving,
};
