import { languages, type Language } from '../../core/base/language.ts';
import { ok, type Result } from '../../core/base/result.ts';
import { misused, textOption, type Given } from './command.ts';

/** The language that a sheet shall speak: English where none is asked for. */
export function readSheetLanguage(given: Given): Result<Language> {
  const wanted = (textOption(given, 'language') ?? 'en').toLowerCase();
  const language = languages.find((one) => one === wanted);
  if (language) return ok(language);
  return misused(`No sheet speaks ${wanted}: --language ${languages.join(', ')}.`);
}

/** One language or two, with a comma between: `fr` or `fr,en`. */
export function readSheetLanguages(given: Given): Result<readonly Language[]> {
  const wanted = (textOption(given, 'language') ?? 'en').toLowerCase().split(',');
  const found = wanted.flatMap((one) => languages.filter((known) => known === one.trim()));
  if (found.length === wanted.length && found.length <= 2 && new Set(found).size === found.length)
    return ok(found);
  return misused(
    `The sheet speaks one language or two of ${languages.join(', ')}: --language fr,en.`,
  );
}
