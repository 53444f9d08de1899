import { ok, refused, type Result } from '../../core/base/result.ts';
import type { BinderWish } from '../../core/contract/binderShape.ts';
import type { WellFilter } from '../../core/record/wellFilter.ts';
import type { Archive } from '../archive/archive.ts';
import type { SightedWell } from '../archive/tables/lists.ts';
import { sha256Hex } from '../seal/hash.ts';
import { usualTemplate, type Headed } from '../service/ownTemplates.ts';
import type { WellToLay } from './messages.ts';
import { programVersion } from './programVersion.ts';

export interface ChosenWells extends Headed {
  readonly wells: readonly WellToLay[];
  /** Which were asked for, in words; empty for all. */
  readonly filterSays: string;
  /** SHA-256 over the revisions that go in. */
  readonly archiveHash: string;
}

const most = Number.MAX_SAFE_INTEGER;

function sighted({ lists }: Archive, { filter = {}, ids }: BinderWish['wells']) {
  const found = lists.find(filter, { by: 'number' }, { from: 0, limit: most });
  if (!found.ok || !ids) return found;
  const wanted = new Set(ids);
  return ok(found.value.filter(({ id }) => wanted.has(id)));
}

/** What lies between two ends, one of which may be open; nothing where both are. */
const between = (from: number | undefined, to: number | undefined, unit = '') =>
  from === undefined && to === undefined ? [] : [`${from ?? ''}–${to ?? ''}${unit}`];

function saidOf(filter: WellFilter): string {
  const {
    search = '',
    yearFrom,
    yearTo,
    depthFrom,
    depthTo,
    yieldFrom,
    yieldTo,
    ...lists
  } = filter;
  const words = Object.values(lists).flat();
  const ranges = [
    ...between(yearFrom, yearTo),
    ...between(depthFrom, depthTo, ' m'),
    ...between(yieldFrom, yieldTo, ' m³/h'),
  ];
  return [search, ...words, ...ranges].filter((text) => text !== '').join(', ');
}

/** All that a well's papers are made from besides its record, as text. */
function madeWith(
  archive: Archive,
  { papers, paper, attachments, language }: BinderWish,
  madeAt: string,
  { template }: Headed,
): Result<string> {
  const practices = archive.practices.list();
  if (!practices.ok) return practices;
  const guidelines = archive.guidelines.list();
  if (!guidelines.ok) return guidelines;
  const own = [practices.value, guidelines.value];
  const headed = template ? [template] : [];
  const attached = attachments ? [language] : [];
  return ok(JSON.stringify([programVersion, papers, paper, madeAt, own, headed, attached]));
}

function hashOf(archive: Archive, id: string): Result<string> {
  const lines = archive.revisions(id);
  return lines.ok ? ok(lines.value.at(-1)?.hash ?? '') : lines;
}

function wellToLay(well: SightedWell, revision: string, made: string): WellToLay {
  const { id, number, name, region, district, village, revision: count, changedAt } = well;
  const key = sha256Hex(`${id} ${revision} ${made}`);
  return { id, key, number, name, region, district, village, revision: count, changedAt };
}

/** The wells of a wish. Refused where none fits, or where the archive's template cannot be read. */
export function chooseWells(
  archive: Archive,
  wish: BinderWish,
  madeAt: string,
): Result<ChosenWells> {
  const found = sighted(archive, wish.wells);
  if (!found.ok) return found;
  if (found.value.length === 0)
    return refused('noWellsToBind', 'No well fits the choice. Choose others, then bind again.');
  const headed = usualTemplate(archive.templates);
  if (!headed.ok) return headed;
  const made = madeWith(archive, wish, madeAt, headed.value);
  if (!made.ok) return made;
  const wells: WellToLay[] = [];
  const hashes: string[] = [];
  for (const well of found.value) {
    const hash = hashOf(archive, well.id);
    if (!hash.ok) return hash;
    hashes.push(`${well.id} ${hash.value}`);
    wells.push(wellToLay(well, hash.value, made.value));
  }
  const archiveHash = sha256Hex(hashes.sort().join('\n'));
  const filterSays = saidOf(wish.wells.filter ?? {});
  return ok({ wells, filterSays, archiveHash, ...headed.value });
}
