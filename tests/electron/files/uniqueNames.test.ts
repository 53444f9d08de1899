import { expect, it } from 'vitest';
import { uniqueNames } from '../../../electron/files/uniqueNames.ts';

it('files of one name do not overwrite each other, whatever the case of their letters', () => {
  expect(uniqueNames(['a.pdf', 'A.pdf', 'b.pdf', 'a.pdf', 'a (2).pdf'])).toEqual([
    'a.pdf',
    'A (2).pdf',
    'b.pdf',
    'a (3).pdf',
    'a (2) (2).pdf',
  ]);
});
