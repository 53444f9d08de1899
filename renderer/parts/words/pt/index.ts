import type { InterfaceWords } from '../catalogue.ts';
import { english } from '../en/index.ts';
import { codes } from './codes.ts';
import { entry } from './entry.ts';
import { saving } from './saving.ts';

/** Every text of the interface in Portuguese. */
export const portuguese: InterfaceWords = {
  ...english,
  tag: 'pt-PT',
  itself: 'Português',
  entry,
  codes,
  saving,
};
