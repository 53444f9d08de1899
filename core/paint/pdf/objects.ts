import type { jsPDF } from 'jspdf';
import { beginObject, write } from './inside.ts';

/** PDF's way of writing a moment, always in universal time so that no machine's zone shows. */
export function pdfMoment(madeAt: string): string {
  const moment = new Date(madeAt);
  if (Number.isNaN(moment.getTime())) throw new Error(`${madeAt} is no ISO 8601 moment`);
  return `D:${moment.toISOString().slice(0, 19).replace(/\D/g, '')}+00'00'`;
}

/** A text string (ISO 32000-1, 7.9.2): UTF-16 in hexadecimal digits, which needs no escapes. */
export function textString(text: string): string {
  const digits = text.split('').map((letter) => letter.charCodeAt(0).toString(16).padStart(4, '0'));
  return `<feff${digits.join('')}>`;
}

/** Writes a dictionary as an object of its own and gives its number. */
export function writeDictionary(doc: jsPDF, entries: string): number {
  const number = beginObject(doc);
  for (const line of [`<<${entries}>>`, 'endobj']) write(doc, line);
  return number;
}

/** The like of a stream; `data` has one letter a byte, packed already where `entries` say so. */
export function writeStream(doc: jsPDF, entries: string, data: string): number {
  const number = beginObject(doc);
  const dictionary = `<<${entries} /Length ${data.length}>>`;
  for (const line of [dictionary, 'stream', data, 'endstream', 'endobj']) write(doc, line);
  return number;
}
