import { writeAttachment, type Attachment } from './attachment.ts';
import { utf8 } from './bytes.ts';
import { srgbProfile } from './icc.ts';
import { onCatalog, onResourcesWritten, write } from './inside.ts';
import { pdfMoment, writeStream } from './objects.ts';
import { creator, producer } from './properties.ts';
import type { Book } from './sheet.ts';
import { xmpPacket } from './xmp.ts';

/**
 * What all colours of the document mean: sRGB. ISO 19005-2, 6.2.3; greys and red, green and blue
 * need no more than this one.
 */
function writeOutputIntent({ doc, deflate }: Book): string {
  const entries = '/N 3 /Alternate /DeviceRGB /Filter /FlateDecode';
  const profile = writeStream(doc, entries, deflate(srgbProfile()));
  const name = '(sRGB IEC61966-2.1)';
  const condition = `/OutputConditionIdentifier ${name} /Info ${name}`;
  const intent = `/Type /OutputIntent /S /GTS_PDFA1 ${condition}`;
  return `/OutputIntents [<<${intent} /DestOutputProfile ${profile} 0 R>>]`;
}

/** The packet lies open, so that programs that know nothing of PDF find it (ISO 19005-2, 6.6.2). */
function writeMetadata({ doc }: Book, packet: string): string {
  return `/Metadata ${writeStream(doc, '/Type /Metadata /Subtype /XML', packet)} 0 R`;
}

/**
 * Has the parts written that make the document one to keep: what its colours mean, what it says of
 * itself, and the file that it carries. All is made ready now: what is thrown while jsPDF writes,
 * jsPDF keeps to itself.
 */
export function writeArchivalParts(book: Book, attachment?: Attachment): void {
  const { doc, about, againstArchival } = book;
  const part = againstArchival.size > 0 ? {} : { part: attachment ? (3 as const) : (2 as const) };
  const packet = utf8(xmpPacket(about, { creator, producer, ...part }));
  if (attachment) pdfMoment(attachment.changedAt);
  let entries: readonly string[] = [];
  onResourcesWritten(doc, () => {
    entries = [writeOutputIntent(book), writeMetadata(book, packet)];
    if (attachment) entries = [...entries, writeAttachment(book, attachment)];
  });
  onCatalog(doc, () => entries.forEach((entry) => write(doc, entry)));
}
