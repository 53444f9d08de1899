import { byteString } from './bytes.ts';
import { pdfMoment, textString, writeDictionary, writeStream } from './objects.ts';
import type { Book } from './sheet.ts';

/** A file within the document: what the paper was made from. */
export interface Attachment {
  readonly fileName: string;
  readonly bytes: Uint8Array;
  /** As `application/json`. */
  readonly mediaType: string;
  /** What it is, for people. */
  readonly says: string;
  /** ISO 8601 moment of its last change. */
  readonly changedAt: string;
}

/** What stands in a name as it is; all else is `#` and two digits (ISO 32000-1, 7.3.5). */
function nameOf(text: string): string {
  const inName = (sign: string) => `#${sign.charCodeAt(0).toString(16).padStart(2, '0')}`;
  return `/${text.replace(/[^A-Za-z0-9.+-]/g, inName)}`;
}

/**
 * Writes the file and its specification, and gives what the catalogue says of it. ISO 19005-3,
 * 6.8 (from memory): media type, name by /F and /UF, what the file is to the document, and a
 * mention in /AF of the catalogue. Its name and its sentence are texts of any letters.
 */
export function writeAttachment({ doc, deflate }: Book, attachment: Attachment): string {
  const { fileName, bytes, mediaType, says, changedAt } = attachment;
  const params = `/Params <</ModDate (${pdfMoment(changedAt)}) /Size ${bytes.length}>>`;
  const kind = `/Type /EmbeddedFile /Subtype ${nameOf(mediaType)} ${params} /Filter /FlateDecode`;
  const file = writeStream(doc, kind, deflate(byteString(bytes)));
  const name = textString(fileName);
  const names = `/F ${name} /UF ${name} /EF <</F ${file} 0 R /UF ${file} 0 R>>`;
  const told = `/AFRelationship /Source /Desc ${textString(says)}`;
  const specification = writeDictionary(doc, `/Type /Filespec ${names} ${told}`);
  const tree = `/Names <</EmbeddedFiles <</Names [${name} ${specification} 0 R]>>>>`;
  return `${tree} /AF [${specification} 0 R]`;
}
