import type { z } from 'zod';
import { valueAt, writePath, type PathStep } from '../base/recordPath.ts';
import { hintAt } from './fieldAt.ts';
import { phrase, type Phrase, type PhraseCode } from './phrases/phrase.ts';
import { nearest } from './spelling.ts';
import { troubleAt, type Trouble } from './trouble.ts';

type Issue = z.core.$ZodIssue;

const longestShown = 40;
const mostListed = 12;

/** What stands at a place, as a reader of the file would recognise it. */
export function shown(value: unknown): string | Phrase {
  if (Array.isArray(value)) return phrase('list', { count: value.length });
  if (typeof value === 'object' && value !== null) return phrase('group');
  const text = JSON.stringify(value);
  return text.length <= longestShown ? text : `${text.slice(0, longestShown)}…"`;
}

const kinds: Readonly<Record<string, PhraseCode>> = {
  number: 'kindNumber',
  int: 'kindInt',
  string: 'kindString',
  boolean: 'kindBoolean',
  array: 'kindArray',
  tuple: 'kindTuple',
  object: 'kindObject',
  date: 'kindDate',
  datetime: 'kindDatetime',
  uuid: 'kindUuid',
};

function kindOf(word: string): Phrase {
  return phrase(kinds[word] ?? 'kindOther');
}

type Fault<C extends Issue['code']> = (issue: Extract<Issue, { code: C }>) => Phrase;

/** What is wrong with a value that stands there, by the schema library's code. */
const faults: { readonly [C in Issue['code']]?: Fault<C> } = {
  invalid_type: ({ expected }) => phrase('wrongKind', { kind: kindOf(expected) }),
  invalid_format: ({ format }) => phrase('wrongKind', { kind: kindOf(format) }),
  invalid_value: () => phrase('unknownWord'),
  invalid_union: (issue) => phrase('options' in issue ? 'unknownWord' : 'unreadable'),
  too_small: ({ origin, minimum }) =>
    origin === 'array' ? phrase('tooShort') : phrase('tooSmall', { limit: Number(minimum) }),
  too_big: ({ origin, maximum }) =>
    origin === 'array' ? phrase('tooLong') : phrase('tooBig', { limit: Number(maximum) }),
};

/** The words that would do, where the field takes one of a list. */
function wordsFor(issue: Issue): string[] | undefined {
  if (issue.code === 'invalid_value') return issue.values.map(String);
  if (issue.code === 'invalid_union' && 'options' in issue) return issue.options?.map(String);
  return undefined;
}

function chooseAmong(value: unknown, words: readonly string[]): Phrase {
  const meant = typeof value === 'string' ? nearest(value, words) : undefined;
  if (meant !== undefined) return phrase('meantWord', { meant });
  if (words.length <= mostListed) return phrase('oneOf', { words: words.join(', ') });
  return phrase('oneOfMany', { count: words.length, words: words.slice(0, 3).join(', ') });
}

function toWrite(issue: Issue, value: unknown): Phrase {
  const words = wordsFor(issue);
  if (words) return chooseAmong(value, words);
  const hint = hintAt(issue.path as PathStep[]);
  const kind = issue.code === 'invalid_type' ? kindOf(issue.expected) : phrase('another');
  return phrase('write', { what: hint ?? kind });
}

function faultOf(issue: Issue, value: unknown): Phrase {
  const remedy = toWrite(issue, value);
  if (value === undefined) return phrase('missing', { remedy });
  if (value === null) return phrase('null', { remedy });
  const fault = faults[issue.code] as Fault<Issue['code']> | undefined;
  const { code, values } = fault?.(issue) ?? phrase('unreadable');
  return phrase(code, { found: shown(value), ...values, remedy });
}

/** The schema library's issue as a trouble of our own about the document. */
export function sayIssue(written: unknown, issue: Issue): Trouble {
  const path = writePath(issue.path as PathStep[]);
  return troubleAt(path, faultOf(issue, valueAt(written, path)));
}
