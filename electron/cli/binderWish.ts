import path from 'node:path';
import type { Language } from '../../core/base/language.ts';
import { ok, refused, type Result } from '../../core/base/result.ts';
import { binderWish } from '../../core/contract/binders.ts';
import {
  volumeBounds,
  type BinderPaper,
  type BinderWish,
} from '../../core/contract/binderShape.ts';
import { usualBinder } from '../../core/contract/usualBinder.ts';
import { boundPapers } from '../../core/drawing/binder/boundPapers.ts';
import type { WellFilter } from '../../core/record/wellFilter.ts';
import type { Archive } from '../archive/archive.ts';
import { misused, textOption, type Given, type World } from './command.ts';
import { parseJson, readBytes, textOf } from './readInput.ts';
import { readPaper } from './readPaper.ts';
import { readSheetLanguage } from './sheetLanguage.ts';

/** What a list of names with commas holds. */
const named = (list: string) => list.split(',').map((one) => one.trim());

function readWishFile(file: string, world: World): Result<BinderWish> {
  const bytes = readBytes(file, world);
  if (!bytes.ok) return bytes;
  const json = parseJson(textOf(bytes.value), file);
  if (!json.ok) return json;
  const read = binderWish.safeParse(json.value);
  if (read.success) return ok(read.data);
  const [first] = read.error.issues;
  const place = first!.path.join('.') || 'the whole';
  return refused('badWish', `${file} is no wish for a binder: ${place}: ${first!.message}.`);
}

function keptWish({ binders }: Archive, name: string): Result<BinderWish> {
  const kept = binders.list();
  if (!kept.ok) return kept;
  const found = kept.value.find((one) => one.name === name);
  const names = kept.value.map((one) => one.name).join(', ') || 'none yet';
  if (!found) return misused(`The archive keeps no binder ${name}; it keeps ${names}.`);
  return ok(JSON.parse(found.json) as BinderWish);
}

function readPapers(given: Given, language: Language): Result<readonly BinderPaper[] | undefined> {
  const list = textOption(given, 'papers');
  if (list === undefined) return ok(undefined);
  const names = named(list);
  const kinds = boundPapers.filter((kind) => names.includes(kind));
  if (kinds.length !== names.length)
    return misused(`--papers takes some of ${boundPapers.join(',')}, each once.`);
  return ok(
    kinds.map((kind) =>
      kind === 'committee' ? { kind, languages: [language] } : { kind, language },
    ),
  );
}

function readVolumePages(given: Given): Result<number | undefined> {
  const wanted = textOption(given, 'volume-pages');
  if (wanted === undefined) return ok(undefined);
  const { least, most } = volumeBounds;
  const pages = Number(wanted);
  if (Number.isInteger(pages) && pages >= least && pages <= most) return ok(pages);
  return misused(`--volume-pages ${wanted} is no whole number from ${least} to ${most}.`);
}

function filterOf(given: Given): WellFilter {
  const search = textOption(given, 'search');
  const [district, region] = [textOption(given, 'district'), textOption(given, 'region')];
  return {
    ...(search !== undefined && { search }),
    ...(district !== undefined && { districts: named(district) }),
    ...(region !== undefined && { regions: named(region) }),
  };
}

/** What a binder shall be where nobody kept or wrote a wish. */
function usualFor(given: Given, archive: Archive): Result<BinderWish> {
  const language = readSheetLanguage(given);
  if (!language.ok) return language;
  return ok(
    usualBinder(textOption(given, 'title') ?? path.parse(archive.file).name, language.value),
  );
}

function startingWish(given: Given, archive: Archive, world: World): Result<BinderWish> {
  const [name, file] = [textOption(given, 'name'), textOption(given, 'wish')];
  if (name !== undefined && file !== undefined)
    return misused('Name a kept binder with --name, or a file with --wish, not both.');
  if (name !== undefined) return keptWish(archive, name);
  return file === undefined ? usualFor(given, archive) : readWishFile(file, world);
}

/** The binder that was asked for: a kept one, a file's or the usual one, with what options change. */
export function readBinderWish(given: Given, archive: Archive, world: World): Result<BinderWish> {
  const start = startingWish(given, archive, world);
  if (!start.ok) return start;
  const papers = readPapers(given, start.value.language);
  if (!papers.ok) return papers;
  const mostPages = readVolumePages(given);
  if (!mostPages.ok) return mostPages;
  const size = given.options['paper'] === undefined ? undefined : readPaper(given);
  if (size && !size.ok) return size;
  const filter = filterOf(given);
  return ok({
    ...start.value,
    ...(papers.value && { papers: papers.value }),
    ...(mostPages.value !== undefined && { mostPages: mostPages.value }),
    ...(size && { paper: size.value }),
    ...(given.options['one-sided'] === true && { duplex: false }),
    ...(given.options['attachments'] === true && { attachments: true }),
    ...(given.options['with-issued'] === true && { withIssued: true }),
    ...(Object.keys(filter).length > 0 && { wells: { filter } }),
  });
}
