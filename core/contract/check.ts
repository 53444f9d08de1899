import type { z } from 'zod';
import { writePath, type PathStep } from '../base/recordPath.ts';
import { ok, refused, type Result } from '../base/result.ts';
import { archiveArguments } from './archive.ts';
import { attachmentsArguments } from './attachments.ts';
import { backdropsArguments } from './backdrops.ts';
import { binArguments } from './bin.ts';
import { bindersArguments } from './binders.ts';
import type { CallName, Takes } from './calls.ts';
import { copiesArguments } from './copies.ts';
import { exportArguments } from './export.ts';
import { guidelinesArguments } from './guidelines.ts';
import { importsArguments } from './imports.ts';
import { identitiesArguments, issuesArguments, sealsArguments } from './issues.ts';
import { listArguments } from './list.ts';
import { papersArguments } from './papers.ts';
import { practicesArguments } from './practices.ts';
import { printingArguments } from './printing.ts';
import { settingsArguments } from './settings.ts';
import { templatesArguments } from './templates.ts';
import { wellsArguments } from './wells.ts';

/** A call whose arguments were looked at. */
export type CheckedCall = {
  [N in CallName]: { readonly name: N; readonly args: Takes<N> };
}[CallName];

/**
 * Joins the areas' lists of names into one.
 * @throws when two areas use one name: the later would silently take the earlier one's calls.
 */
export function joinAreas<T>(areas: readonly Readonly<Record<string, T>>[]): Map<string, T> {
  const joined = new Map<string, T>();
  for (const [name, one] of areas.flatMap((area) => Object.entries(area))) {
    if (joined.has(name)) throw new Error(`two areas have a call named ${name}`);
    joined.set(name, one);
  }
  return joined;
}

const schemas = joinAreas<z.ZodType>([
  archiveArguments,
  wellsArguments,
  listArguments,
  binArguments,
  copiesArguments,
  bindersArguments,
  backdropsArguments,
  attachmentsArguments,
  importsArguments,
  exportArguments,
  papersArguments,
  practicesArguments,
  guidelinesArguments,
  templatesArguments,
  issuesArguments,
  identitiesArguments,
  sealsArguments,
  printingArguments,
  settingsArguments,
]);

/** Every call's name, in the order of the areas. */
export const callNames = [...schemas.keys()] as readonly CallName[];

function sentenceOf(name: string, error: z.ZodError): string {
  const said = error.issues.map(({ path, message }) => {
    const place = writePath(path as PathStep[]);
    return place === '' ? message : `${place}: ${message}`;
  });
  return `The arguments of ${name} were not taken. ${said.join('; ')}. Send them as the call expects.`;
}

/**
 * Judges a call that came from outside, before anything is done with it. The arguments that come
 * back are those that were given, with their keys in the order given.
 */
export function checkCall(name: string, args: unknown): Result<CheckedCall> {
  const schema = schemas.get(name);
  if (!schema)
    return refused('unknownCall', `There is no call named ${name}. Use one of the listed calls.`);
  const read = schema.safeParse(args);
  if (!read.success) return refused('badArguments', sentenceOf(name, read.error));
  return ok({ name, args } as CheckedCall);
}
