import type { AttachmentWords } from './attachments.ts';

export const attachmentsEnglish: AttachmentWords = {
  title: 'Attachments',
  heads: {
    file: 'File',
    shows: 'What it shows',
    kind: 'Kind',
    size: 'Size',
    day: 'Day',
    why: 'Not shown',
    hash: 'SHA-256 begins',
  },
  document: 'a document',
  leftOut: 'left out of papers by hand',
  states: { absent: 'not in this archive', changed: 'changed outside the program' },
  filesSay:
    'Files listed here are kept with the record of the well in the archive. SHA-256: the first 16 digits, over the file as it was given.',
};
