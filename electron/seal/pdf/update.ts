import { createHash } from 'node:crypto';
import { valueAt, type PdfDocument } from './document.ts';
import { membersOf } from './scan.ts';

/** Objects by number, each as it is written between `obj` and `endobj`, one letter a byte. */
export type Objects = ReadonlyMap<number, string>;

/** First number that no object has. */
export function nextNumber(document: PdfDocument): number {
  const size = document.trailer.get('Size');
  const highest = [...document.offsets.keys()].reduce((most, one) => Math.max(most, one), 0);
  return Math.max(size ? Number(valueAt(document, size)) : 0, highest + 1);
}

/** Numbers that follow each other, gathered. */
function stretches(numbers: readonly number[]): number[][] {
  const found: number[][] = [];
  for (const number of numbers) {
    const last = found.at(-1);
    if (last?.at(-1) === number - 1) last.push(number);
    else found.push([number]);
  }
  return found;
}

function tableOf(offsets: ReadonlyMap<number, number>): string {
  const line = (number: number) => `${String(offsets.get(number)).padStart(10, '0')} 00000 n \n`;
  return stretches([...offsets.keys()])
    .map((numbers) => `${numbers[0]} ${numbers.length}\n${numbers.map(line).join('')}`)
    .join('');
}

/** The first half names the document, the second this state of it (ISO 32000-1, 14.4). */
function idOf(document: PdfDocument): string {
  const id = document.trailer.get('ID');
  if (!id) return '';
  const [first] = membersOf(document.text, id.start);
  if (!first) return '';
  const state = createHash('sha256').update(document.bytes).digest('hex').slice(0, 32);
  return `/ID [${valueAt(document, first)} <${state}>]\n`;
}

function trailerOf(document: PdfDocument, size: number): string {
  const kept = ['Root', 'Info'].flatMap((key) => {
    const span = document.trailer.get(key);
    return span ? [`/${key} ${valueAt(document, span)}\n`] : [];
  });
  return `<<\n/Size ${size}\n${kept.join('')}${idOf(document)}/Prev ${document.tableAt}\n>>`;
}

/**
 * What is written behind a PDF so that objects are new or replaced in it (ISO 32000-1, 7.5.6),
 * one letter a byte. No byte before it changes.
 */
export function updateOf(document: PdfDocument, objects: Objects): string {
  const numbers = [...objects.keys()].sort((a, b) => a - b);
  const offsets = new Map<number, number>();
  let written = document.text.endsWith('\n') ? '' : '\n';
  for (const number of numbers) {
    offsets.set(number, document.text.length + written.length);
    written += `${number} 0 obj\n${objects.get(number)}\nendobj\n`;
  }
  const tableAt = document.text.length + written.length;
  const size = Math.max(nextNumber(document), numbers.at(-1)! + 1);
  return `${written}xref\n${tableOf(offsets)}trailer\n${trailerOf(document, size)}\nstartxref\n${tableAt}\n%%EOF\n`;
}
