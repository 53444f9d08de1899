import path from 'node:path';
import { ok, type Result } from '../../core/base/result.ts';
import type { Trouble } from '../../core/record/trouble.ts';
import type { WellRecord } from '../../core/record/schema.ts';
import { storedWell } from '../service/stored.ts';
import type { Archive } from '../archive/archive.ts';
import { openArchive } from '../archive/open.ts';
import { misused, type World } from './command.ts';
import { isArchive, readBytes, recordFrom } from './readInput.ts';

/** A well and where it came from. */
export interface WellToPrint {
  readonly record: WellRecord;
  readonly troubles: readonly Trouble[];
  /** Absent for a record in a file of its own. */
  readonly revision?: number;
  /** What messages call it: its number, else the name of its file. */
  readonly calledBy: string;
}

export interface Choice {
  /** The well number asked for. */
  readonly number?: string;
  /** True where every well of an archive will do. */
  readonly all: boolean;
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
    wells.push({ ...well.value, calledBy });
  }
  return ok(wells);
}

/** The wells that a file holds, be it an archive or one record. */
export function wellsToPrint(
  file: string,
  choice: Choice,
  world: World,
): Result<readonly WellToPrint[]> {
  const bytes = readBytes(file, world);
  if (!bytes.ok) return bytes;
  if (!isArchive(bytes.value)) {
    const read = recordFrom(bytes.value, file);
    return read.ok ? ok([{ ...read.value, calledBy: path.basename(file) }]) : read;
  }
  const opened = openArchive(path.resolve(world.folder, file), { now: world.now, mustExist: true });
  if (!opened.ok) return opened;
  try {
    return openWells(opened.value, choice, world);
  } finally {
    opened.value.close();
  }
}
