/** What our own statements in a PDF's metadata are named under. It is a name and no address. */
export const paperNamespace = {
  uri: 'urn:uuid:6f0d9c52-3b7e-4f0a-9a51-7c1e2d84b6a3#',
  prefix: 'bfpaper',
} as const;

/** Our own statements: what a paper shows, for programs that find it by itself. */
export const paperStatements = [
  { name: 'wellNumber', type: 'Text', says: 'Number of the well that the paper shows' },
  { name: 'revision', type: 'Integer', says: 'Revision of the well record, counted from 1' },
  { name: 'recordHash', type: 'Text', says: 'SHA-256 of the well record, hexadecimal' },
] as const;

export type PaperStatement = (typeof paperStatements)[number]['name'];
