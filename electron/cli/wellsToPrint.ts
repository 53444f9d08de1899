import path from 'node:path';
import type { Language } from '../../core/base/language.ts';
import { ok, type Result } from '../../core/base/result.ts';
import type { PhotoImages } from '../../core/drawing/parts/photos.ts';
import type { RevisionNote } from '../../core/drawing/parts/revisionNote.ts';
import type { PracticeFile } from '../../core/practice/practice.ts';
import type { Trouble } from '../../core/record/trouble.ts';
import type { WellRecord } from '../../core/record/schema.ts';
import type { GuidelineFile } from '../../core/water/guidelines/guidelineSet.ts';
import { ownGuidelineFiles } from '../service/ownGuidelines.ts';
import { ownPracticeFiles } from '../service/ownPractices.ts';
import { usualTemplate, type Headed } from '../service/ownTemplates.ts';
import { photoImages } from '../service/photoImages.ts';
import { revisionNotes } from '../service/revisionNotes.ts';
import { storedWell } from '../service/stored.ts';
import type { Archive } from '../archive/archive.ts';
import { misused, type World } from './command.ts';
import { openGiven } from './openGiven.ts';
import { isArchive, readFirstBytes, readRecordFile } from './readInput.ts';

/** A well and where it came from. */
export interface WellToPrint {
  readonly record: WellRecord;
  readonly troubles: readonly Trouble[];
  /** Absent for a record in a file of its own. */
  readonly revision?: number;
  /** What messages call it: its number, else the name of its file. */
  readonly calledBy: string;
  /** The pictures that papers show of it; absent for a record without its archive. */
  readonly pictures?: () => Result<PhotoImages>;
  /** What changed in its last revisions, in a language; absent without an archive. */
  readonly revisions?: (language: Language) => Result<readonly RevisionNote[]>;
}

/** Wells with what they lie in, which stays open until all is printed. */
export interface WellsToPrint {
  readonly wells: readonly WellToPrint[];
  /** Practices of the user in the archive; none beside a record in a file of its own. */
  readonly own: readonly PracticeFile[];
  /** The like of sets of guideline values. */
  readonly ownGuidelines: readonly GuidelineFile[];
  /** The archive's template, where none is named or forbidden. */
  readonly headed: Headed;
  close(): void;
}

export interface Choice {
  /** The well number asked for. */
  readonly number?: string;
  /** True where every well of an archive will do. */
  readonly all: boolean;
  /** What papers are to be made with, where that is not the archive's template. */
  readonly headed?: Headed | undefined;
}

const shownNumbers = 8;

function chooseOne(archive: Archive, all: readonly { number: string }[], choice: Choice) {
  const name = path.basename(archive.file);
  const numbers = all.map(({ number }) => number || 'without a number');
  const more = numbers.length > shownNumbers ? ', …' : '';
  const list = numbers.slice(0, shownNumbers).join(', ') + more;
  return choice.number === undefined
    ? misused(`${name} has ${numbers.length} wells: choose one with --well NUMBER (${list}).`)
    : misused(`${name} has no well with the number ${choice.number}; it has ${list}.`);
}

function sayOlder(calledBy: string, { revision }: { revision: number }, world: World): void {
  world.complain(
    `${calledBy}: the sheet shows revision ${revision}; what was typed later is not on it. Save the well in the program to make a revision of it.`,
  );
}

function openWells(archive: Archive, choice: Choice, world: World): Result<readonly WellToPrint[]> {
  const listed = archive.list();
  if (!listed.ok) return listed;
  const { number } = choice;
  const fitting = listed.value.filter((row) => number === undefined || row.number === number);
  if (fitting.length === 0 && listed.value.length === 0)
    return misused(`${path.basename(archive.file)} has no wells yet.`);
  if (fitting.length === 0 || (fitting.length > 1 && !choice.all))
    return chooseOne(archive, listed.value, choice);
  const wells: WellToPrint[] = [];
  for (const row of fitting) {
    const stored = archive.open(row.id);
    const well = stored.ok ? storedWell(stored.value) : stored;
    if (!well.ok) return well;
    const calledBy = row.number || row.id;
    if (row.unrevised) sayOlder(calledBy, row, world);
    const { id, record, revision } = well.value;
    wells.push({
      ...well.value,
      calledBy,
      pictures: () => photoImages(archive, record),
      revisions: (language) => revisionNotes(archive, id, revision, language),
    });
  }
  return ok(wells);
}

function wellInRecord(file: string, { headed = {} }: Choice, world: World): Result<WellsToPrint> {
  const read = readRecordFile(file, world);
  if (!read.ok) return read;
  const calledBy = path.basename(file);
  const wells = [{ ...read.value, calledBy }];
  return ok({ wells, own: [], ownGuidelines: [], headed, close: () => undefined });
}

/** The wells that a file holds, be it an archive or one record. */
export function wellsToPrint(file: string, choice: Choice, world: World): Result<WellsToPrint> {
  const first = readFirstBytes(file, world);
  if (!first.ok) return first;
  if (!isArchive(first.value)) return wellInRecord(file, choice, world);
  const opened = openGiven(file, world);
  if (!opened.ok) return opened;
  const archive = opened.value;
  const wells = openWells(archive, choice, world);
  const headed = choice.headed ? ok(choice.headed) : usualTemplate(archive.templates);
  const own = ownPracticeFiles(archive.practices);
  const ownGuidelines = ownGuidelineFiles(archive.guidelines);
  const close = () => archive.close();
  if (!wells.ok || !headed.ok) close();
  if (!wells.ok) return wells;
  if (!headed.ok) return headed;
  return ok({ wells: wells.value, own, ownGuidelines, headed: headed.value, close });
}
