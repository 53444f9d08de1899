import type { RecordPath } from '../../base/recordPath.ts';
import type { Losing } from '../losses.ts';
import { writtenGroups } from './groups.ts';

/** The fields of a row by their headings; absent ones are written empty. */
export type RowFields = Readonly<Record<string, string | undefined>>;

const quoted = (text: string) => `"${text.replaceAll('"', '""')}"`;

/** A line of quoted fields, ended as the standard asks. */
export function lineOf(fields: readonly string[]): string {
  return `${fields.map(quoted).join(',')}\r\n`;
}

/** A DATA row of a group. */
export function dataLine(group: string, fields: RowFields): string {
  const headings = writtenGroups[group]!;
  return lineOf(['DATA', ...headings.map(([heading]) => fields[heading] ?? '')]);
}

/** The lines that open a group. */
export function headLines(group: string): string {
  const headings = writtenGroups[group]!;
  return [
    lineOf(['GROUP', group]),
    lineOf(['HEADING', ...headings.map(([heading]) => heading)]),
    lineOf(['UNIT', ...headings.map(([, unit]) => unit)]),
    lineOf(['TYPE', ...headings.map(([, , type]) => type)]),
  ].join('');
}

/** Values of a record as fields; what does not go in as it is, is told. */
export interface FieldsOf {
  text(path: RecordPath, value: string | undefined): string | undefined;
  decimals(path: RecordPath, value: number | undefined, places: number): string | undefined;
  moment(path: RecordPath, value: string | undefined): string | undefined;
}

/** A field is one line and has no blanks at its ends. */
export const onOneLine = (text: string) =>
  // eslint-disable-next-line no-control-regex -- control characters are what is taken out
  text.replace(/[\s\u0000-\u001f]+/g, ' ').trim();

/** A number with so many decimals; nothing is below zero that is written as zero. */
export function fixed(value: number, places: number): string {
  return value.toFixed(places).replace(/^-(?=[0.]+$)/, '');
}

/** Whole seconds; a day without a time stands at midnight without an offset. */
function momentText(written: string): string {
  if (!written.includes('T')) return `${written}T00:00:00`;
  return written
    .replace(/\.\d+/, '')
    .replace(/T(\d\d:\d\d)(?=Z|[+-])/, 'T$1:00')
    .replace(/Z$/, '+00:00');
}

export function fieldsOf({ lose }: Losing): FieldsOf {
  return {
    text(path, value) {
      if (value === undefined) return undefined;
      const text = onOneLine(value);
      if (text !== value || text === '')
        lose(path, 'A field of AGS 4 is one line without blanks at its ends.');
      return text;
    },
    decimals(path, value, places) {
      if (value === undefined) return undefined;
      const text = fixed(value, places);
      if (Number(text) !== value) lose(path, `It is rounded to ${places} decimals.`);
      return text;
    },
    moment(path, value) {
      if (value === undefined) return undefined;
      if (value.includes('.')) lose(path, 'It is cut to whole seconds.');
      return momentText(value);
    },
  };
}
