import { valueAt } from '../../core/base/recordPath.ts';

/** What a well is found by, column by column. */
export interface SearchText {
  readonly number: string;
  readonly name: string;
  readonly places: string;
  readonly people: string;
  readonly remarks: string;
  /** What the ground was called and described as. */
  readonly log: string;
}

const places = ['country', 'region', 'district', 'commune', 'village', 'spot'];
const people = ['client', 'contractor', 'driller', 'supervisor', 'programme'];
const committee = ['name', 'chair', 'caretaker'];
const remarkKeys = new Set(['remark', 'remarks', 'notes', 'words', 'caption']);

function textsAt(record: unknown, chapter: string, keys: readonly string[]): string[] {
  return keys
    .map((key) => valueAt(record, `${chapter}.${key}`))
    .filter((value): value is string => typeof value === 'string');
}

/** Texts under the keys of remarks, wherever in the record they stand. */
function remarksIn(value: unknown): string[] {
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, one]) =>
    typeof one === 'string' && remarkKeys.has(key) ? [one] : remarksIn(one),
  );
}

function signersOf(record: unknown): string[] {
  const marks = valueAt(record, 'marks');
  if (!Array.isArray(marks)) return [];
  return marks.flatMap((mark) => textsAt({ mark }, 'mark', ['name', 'organisation']));
}

function logWords(record: unknown): string[] {
  const log = valueAt(record, 'log');
  if (!Array.isArray(log)) return [];
  const described = log.flatMap((interval) => {
    const qualifiers = valueAt({ interval }, 'interval.qualifiers');
    const second = Array.isArray(qualifiers) ? qualifiers : [];
    return [
      ...textsAt({ interval }, 'interval', ['material', 'colour', 'consistency']),
      ...second.flatMap((qualifier) => textsAt({ qualifier }, 'qualifier', ['material'])),
    ];
  });
  return [...new Set(described)];
}

/** Gathers the words of a record in any condition. */
export function searchText(record: unknown): SearchText {
  const line = (texts: string[]) => texts.join('\n').normalize('NFC');
  return {
    number: line(textsAt(record, 'identity', ['number', 'contract', 'permit'])),
    name: line(textsAt(record, 'identity', ['name'])),
    places: line(textsAt(record, 'site', places)),
    people: line([
      ...textsAt(record, 'identity', people),
      ...textsAt(record, 'site.committee', committee),
      ...signersOf(record),
    ]),
    remarks: line(remarksIn(record)),
    log: line(logWords(record)),
  };
}

/**
 * What was typed as a full-text query: every word must begin a word of the well. Each is quoted,
 * so that no typed sign means anything to the query. Empty when nothing typed is a word.
 */
export function everyWord(typed: string): string {
  const words = typed.normalize('NFC').match(/[\p{L}\p{N}\p{M}]+/gu) ?? [];
  return words.map((word) => `"${word}"*`).join(' ');
}
