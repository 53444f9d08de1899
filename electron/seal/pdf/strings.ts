import { Unparsed } from './scan.ts';

/** Signs that mean themselves in a string of letters. */
const plain = /^[ -'*-[\]-~]*$/;

/** A text as a PDF string: as letters where it has no others, else as UTF-16. */
export function writeString(text: string): string {
  if (plain.test(text)) return `(${text})`;
  const wide = Buffer.from(text, 'utf16le').swap16().toString('hex');
  return `<feff${wide}>`;
}

const escaped: Readonly<Record<string, string>> = {
  n: '\n',
  r: '\r',
  t: '\t',
  b: '\b',
  f: '\f',
};

/** ISO 32000-1, 7.3.4.2. */
function unescape(letters: string): string {
  return letters.replace(/\\([0-7]{1,3}|\r\n|[^])/g, (_, sign: string) => {
    if (/^[0-7]/.test(sign)) return String.fromCharCode(Number.parseInt(sign, 8) & 0xff);
    return /^[\r\n]/.test(sign) ? '' : (escaped[sign] ?? sign);
  });
}

function bytesOf(value: string): Buffer {
  if (value.startsWith('(')) return Buffer.from(unescape(value.slice(1, -1)), 'latin1');
  if (!value.startsWith('<') || value.startsWith('<<')) throw new Unparsed();
  return Buffer.from(value.slice(1, -1).replace(/\s/g, ''), 'hex');
}

/** The text of a PDF string, with its brackets. Throws `Unparsed` for another value. */
export function readString(value: string): string {
  const bytes = bytesOf(value);
  const mark = bytes.subarray(0, 2).toString('hex');
  if (mark !== 'feff') return bytes.toString('latin1');
  return Buffer.from(bytes.subarray(2, bytes.length - (bytes.length % 2)))
    .swap16()
    .toString('utf16le');
}

/** A moment (ISO 8601) as PDF writes it, in universal time. */
export function writeMoment(at: string): string {
  return `(D:${new Date(at).toISOString().slice(0, 19).replace(/\D/g, '')}+00'00')`;
}

/** The moment in a PDF string, as ISO 8601 in universal time; undefined where it is none. */
export function readMoment(value: string): string | undefined {
  const form = /^D:(\d{4})(\d\d)(\d\d)(\d\d)(\d\d)(\d\d)(?:Z|([+-])(\d\d)'?(\d\d)?'?)?/;
  const found = form.exec(readString(value));
  if (!found) return undefined;
  const [, year, month, day, hour, minute, second, sign, hours, minutes] = found;
  const zone = sign ? `${sign}${hours}:${minutes ?? '00'}` : 'Z';
  const moment = new Date(`${year}-${month}-${day}T${hour}:${minute}:${second}${zone}`);
  return Number.isNaN(moment.getTime()) ? undefined : moment.toISOString();
}
