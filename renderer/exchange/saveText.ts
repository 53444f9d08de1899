import type { Language } from '../../core/base/language.ts';
import type { TableTrouble } from '../../core/contract/importsShape.ts';
import { sayTableTrouble } from '../../core/exchange/tables/trouble.ts';
import { sayRefusal } from '../parts/refusals.ts';
import { download } from '../sheet/download.ts';

/** Base64 of a text in UTF-8. */
function base64Of(text: string): string {
  const bytes = new TextEncoder().encode(text);
  return btoa(Array.from(bytes, (byte) => String.fromCharCode(byte)).join(''));
}

export function saveText(fileName: string, text: string, type: string): void {
  download(fileName, base64Of(text), type);
}

/** A cell that no spreadsheet runs as a formula. */
function cell(text: string | number): string {
  const plain = String(text);
  const safe = /^[=+\-@\t\r]/.test(plain) ? `'${plain}` : plain;
  return `"${safe.replaceAll('"', '""')}"`;
}

/** What does not come, as a table of text that spreadsheets open. */
export function troubleList(troubles: readonly TableTrouble[], language: Language): string {
  const rows = troubles.map((one) => [
    one.file,
    one.line,
    one.column,
    sayTableTrouble(one, language, sayRefusal),
  ]);
  return `\uFEFF${rows.map((row) => row.map(cell).join(',')).join('\r\n')}\r\n`;
}
