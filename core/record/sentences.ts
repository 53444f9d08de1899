import type { z } from 'zod';
import { valueAt, writePath, type PathStep } from '../base/recordPath.ts';
import { hintAt } from './fieldAt.ts';
import { nearest } from './spelling.ts';
import { troubleAt, type Trouble } from './trouble.ts';

type Issue = z.core.$ZodIssue;

const longestShown = 40;
const mostListed = 12;

/** What stands at a place, as a reader of the file would recognise it. */
export function shown(value: unknown): string {
  if (Array.isArray(value)) return `a list of ${value.length}`;
  if (typeof value === 'object' && value !== null) return 'a group of fields';
  const text = JSON.stringify(value);
  return text.length <= longestShown ? text : `${text.slice(0, longestShown)}…"`;
}

const nouns: Readonly<Record<string, string>> = {
  number: 'a number',
  int: 'a whole number',
  string: 'text',
  boolean: 'true or false',
  array: 'a list',
  tuple: 'a pair of numbers',
  object: 'a group of fields',
  date: 'a day of the calendar',
  datetime: 'a moment',
  uuid: 'an id (UUID)',
};

function noun(word: string): string {
  return nouns[word] ?? 'what belongs here';
}

type Fault<C extends Issue['code']> = (issue: Extract<Issue, { code: C }>) => string;

/** What is wrong with a value that stands there, by the schema library's code. */
const faults: { readonly [C in Issue['code']]?: Fault<C> } = {
  invalid_type: (issue) => `is not ${noun(issue.expected)}`,
  invalid_format: (issue) => `is not ${noun(issue.format)}`,
  invalid_value: () => 'is not a known word',
  invalid_union: (issue) => ('options' in issue ? 'is not a known word' : 'cannot be read'),
  too_small: (issue) =>
    issue.origin === 'array' ? 'is too short' : `is less than ${issue.minimum}`,
  too_big: (issue) => (issue.origin === 'array' ? 'is too long' : `is more than ${issue.maximum}`),
};

/** The words that would do, where the field takes one of a list. */
function wordsFor(issue: Issue): string[] | undefined {
  if (issue.code === 'invalid_value') return issue.values.map(String);
  if (issue.code === 'invalid_union' && 'options' in issue) return issue.options?.map(String);
  return undefined;
}

function chooseAmong(value: unknown, words: readonly string[]): string {
  const meant = typeof value === 'string' ? nearest(value, words) : undefined;
  if (meant !== undefined) return `did you mean "${meant}"?`;
  if (words.length <= mostListed) return `write one of ${words.join(', ')}`;
  return `write one of the ${words.length} known words, such as ${words.slice(0, 3).join(', ')}`;
}

function toWrite(issue: Issue, value: unknown): string {
  const words = wordsFor(issue);
  if (words) return chooseAmong(value, words);
  const hint = hintAt(issue.path as PathStep[]);
  return `write ${hint ?? (issue.code === 'invalid_type' ? noun(issue.expected) : 'another')}`;
}

function say(issue: Issue, value: unknown): string {
  if (value === undefined) return `nothing stands here; ${toWrite(issue, value)}`;
  if (value === null)
    return `null is no value; leave the field out where not known, or ${toWrite(issue, value)}`;
  const fault = faults[issue.code] as Fault<Issue['code']> | undefined;
  return `${shown(value)} ${fault?.(issue) ?? 'cannot be read'}; ${toWrite(issue, value)}`;
}

/** The schema library's issue as a sentence of our own about the document. */
export function sayIssue(written: unknown, issue: Issue): Trouble {
  const path = writePath(issue.path as PathStep[]);
  return troubleAt(path, say(issue, valueAt(written, path)));
}
