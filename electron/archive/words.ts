import { searchWords } from '../../core/base/text/searchWords.ts';
import { materialsNamed } from '../../core/drawing/words/materialsNamed.ts';

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

function field(value: unknown, key: string): unknown {
  if (typeof value !== 'object' || value === null) return undefined;
  return (value as Readonly<Record<string, unknown>>)[key];
}

function textsOf(value: unknown, keys: readonly string[]): string[] {
  return keys
    .map((key) => field(value, key))
    .filter((text): text is string => typeof text === 'string');
}

/** Adds the texts under the keys of remarks, wherever in the record they stand. */
function addRemarks(value: unknown, remarks: string[]): void {
  if (typeof value !== 'object' || value === null) return;
  for (const key of Object.keys(value)) {
    const one = field(value, key);
    if (typeof one !== 'string') addRemarks(one, remarks);
    else if (remarkKeys.has(key)) remarks.push(one);
  }
}

function remarksIn(record: unknown): string[] {
  const remarks: string[] = [];
  addRemarks(record, remarks);
  return remarks;
}

function signersOf(record: unknown): string[] {
  const marks = field(record, 'marks');
  if (!Array.isArray(marks)) return [];
  return marks.flatMap((mark) => textsOf(mark, ['name', 'organisation']));
}

function logWords(record: unknown): string[] {
  const log = field(record, 'log');
  if (!Array.isArray(log)) return [];
  const described = log.flatMap((interval) => {
    const qualifiers = field(interval, 'qualifiers');
    const second = Array.isArray(qualifiers) ? qualifiers : [];
    return [
      ...textsOf(interval, ['material', 'colour', 'consistency']),
      ...second.flatMap((qualifier) => textsOf(qualifier, ['material'])),
    ];
  });
  return [...new Set(described)];
}

/** Gathers the words of a record in any condition. */
export function searchText(record: unknown): SearchText {
  const line = (texts: string[]) => texts.join('\n').normalize('NFC');
  const [identity, site] = [field(record, 'identity'), field(record, 'site')];
  return {
    number: line(textsOf(identity, ['number', 'contract', 'permit'])),
    name: line(textsOf(identity, ['name'])),
    places: line(textsOf(site, places)),
    people: line([
      ...textsOf(identity, people),
      ...textsOf(field(site, 'committee'), committee),
      ...signersOf(record),
    ]),
    remarks: line(remarksIn(record)),
    log: line(logWords(record)),
  };
}

/** The words of a record in any condition as the index holds them: plain, each once. */
export function wordsOf(record: unknown): string {
  const texts = Object.values(searchText(record)) as string[];
  return [...new Set(texts.flatMap(searchWords))].join(' ');
}

/** A word as a full-text query: what begins so, or a material that is called so. */
function oneWord(word: string): string {
  const codes = materialsNamed(word).map(({ material }) => `"${material.toLowerCase()}"`);
  const any = [`"${word}"*`, ...codes].join(' OR ');
  return codes.length > 0 ? `(${any})` : any;
}

/**
 * What was typed as a full-text query: every word must begin a word of the well, or name a material
 * of its log in one of the page's languages. Each is plain and quoted, so that no typed sign means
 * anything to the query. Empty when nothing typed is a word.
 */
export function everyWord(typed: string): string {
  return searchWords(typed).map(oneWord).join(' AND ');
}
