import type { IssuedWords } from './issued.ts';

export const issuedEnglish: IssuedWords = {
  heads: {
    number: 'Number',
    name: 'Name',
    paper: 'Paper',
    revision: 'Revision',
    day: 'Issued',
    signers: 'Signed by',
    hash: 'SHA-256 begins',
    page: 'Page',
  },
  newer: '{n} (now {newest})',
  unsigned: 'not signed',
  noName: 'name not readable',
  states: {
    addedTo: 'something was added after it',
    changed: 'does not hold: the file was changed',
    unreadable: 'cannot be checked',
  },
  beside: 'The papers themselves lie beside this binder in the folder {folder}.',
  notBound:
    'Papers listed here were issued: they are kept as they were then. They are not bound in, since a PDF that is changed in any way breaks its seals; the binder shows the newest revision of each well, drawn anew. Where a well has a newer one than a paper shows, it stands behind it as “now”.',
  hashSays:
    'SHA-256: the first 16 digits, over the whole file with all its signatures, as the archive kept it when this binder was made. A file that has other digits is not the same.',
  sealSays:
    'A signature without a remark held when this binder was made. Whether a certificate belongs to whom it names is for the reader to find out by its fingerprint.',
};
