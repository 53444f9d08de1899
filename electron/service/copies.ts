import { existsSync, readdirSync } from 'node:fs';
import path from 'node:path';
import { changesBetween, type Change } from '../../core/changes/changesBetween.ts';
import { changeWordsIn } from '../../core/changes/words/languages.ts';
import type { Language } from '../../core/base/language.ts';
import { ok, refused, type Result } from '../../core/base/result.ts';
import type {
  Beside,
  CopyName,
  OtherSight,
  RecordsBeside,
} from '../../core/contract/copiesShape.ts';
import type { Archive } from '../archive/archive.ts';
import { backUpNow } from '../archive/backup.ts';
import { listBackupFiles, listCopyFiles } from '../archive/backupFiles.ts';
import type { BothRecords, MergeSight } from '../archive/merge/merge.ts';
import { restoreBackup } from '../archive/restore.ts';
import { backupFolder } from '../archive/trouble.ts';
import { reads, writes, type Handlers, type ServiceParts } from './handlers.ts';
import { readDocument } from './stored.ts';

/** Other archives in the folder of this one. */
function besideOf(file: string) {
  const own = path.basename(file);
  return listCopyFiles(path.dirname(file), path.extname(file)).filter(
    ({ fileName }) => fileName !== own,
  );
}

/** A file that a page may name: one of the two folders alone. */
function placeOf(archive: Archive, { place, fileName }: CopyName): Result<string> {
  const folder = place === 'backups' ? backupFolder(archive.file) : path.dirname(archive.file);
  const found = existsSync(folder) && readdirSync(folder).includes(fileName);
  if (found) return ok(path.join(folder, fileName));
  return refused(
    'noFile',
    `There is no archive ${fileName} there any more. Look at the list again.`,
  );
}

function sightOf({ steps, wells, known, binned }: MergeSight): OtherSight {
  const taken = steps.map(({ id, kind }) => ({ id, kind, ...wells[id]! }));
  return { wells: taken, known, binned };
}

function besideEachOther(change: Change, language: Language): Beside {
  const words = changeWordsIn(language);
  const chapter = words.chapters[change.chapter];
  if (change.kind === 'other') return { chapter, what: '…', ours: '', theirs: '' };
  const { before = '', now = '' } = change as { before?: string; now?: string };
  return { chapter, what: change.what, ours: before, theirs: now };
}

function recordsBeside({ ours, theirs }: BothRecords, language: Language): Result<RecordsBeside> {
  const [here, there] = [readDocument(ours.document), readDocument(theirs.document)];
  if (!here.ok) return here;
  if (!there.ok) return there;
  const changes = changesBetween(here.value.record, there.value.record, language);
  const said = ({ revision, changedAt }: BothRecords['ours']) => ({ revision, changedAt });
  return ok({
    ours: said(ours),
    theirs: said(theirs),
    differences: changes.map((change) => besideEachOther(change, language)),
  });
}

/** Calls about copies of the archive, and other archives that are taken in. */
export function copiesHandlers({ archive, clock, tell }: ServiceParts): Handlers<'copies'> {
  const changed = <T>(done: Result<T>): Result<T> => {
    if (done.ok) tell({ name: 'list.changed', data: {} });
    return done;
  };
  return {
    'copies.list': reads(() =>
      ok({ backups: listBackupFiles(archive.file), beside: besideOf(archive.file) }),
    ),
    'copies.make': writes(async () => {
      const made = await backUpNow(archive, clock);
      return made.ok ? ok({ fileName: path.basename(made.value) }) : made;
    }),
    'copies.restore': writes(async ({ fileName }) => {
      const restored = await restoreBackup(archive, fileName, { now: clock });
      return changed(restored.ok ? ok({ aside: restored.value }) : restored);
    }),
    'copies.look': reads((named) => {
      const place = placeOf(archive, named);
      const sight = place.ok ? archive.merging.look(place.value) : place;
      return sight.ok ? ok(sightOf(sight.value)) : sight;
    }),
    'copies.compare': reads(({ id, language, ...named }) => {
      const place = placeOf(archive, named);
      const both = place.ok ? archive.merging.both(place.value, id) : place;
      return both.ok ? recordsBeside(both.value, language) : both;
    }),
    'copies.take': writes(({ choices, ...named }) => {
      const place = placeOf(archive, named);
      if (!place.ok) return place;
      const said = { author: '', name: path.parse(named.fileName).name };
      const done = archive.merging.take(place.value, choices, said);
      if (!done.ok) return done;
      const { left, added, continued, joined, differing } = done.value;
      return changed(ok({ added, continued, joined, differing, left: left.length }));
    }),
  };
}
