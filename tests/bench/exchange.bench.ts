import path from 'node:path';
import Database from 'better-sqlite3';
import type { WrittenFormat } from '../../core/exchange/writtenFormats.ts';
import type { WellFilter } from '../../core/record/wellFilter.ts';
import type { Archive } from '../../electron/archive/archive.ts';
import { openArchive } from '../../electron/archive/open.ts';
import { exportWells } from '../../electron/service/exportWells.ts';
import { comingOf, openFiles } from '../../electron/service/importing/openFiles.ts';
import { bringPlanned, planAll } from '../../electron/service/importing/planned.ts';
import { valueOf } from '../electron/archive/sample.ts';
import type { Asked } from './asked.ts';
import { shown } from './report.ts';
import { median } from './trial.ts';
import { districts } from './wells/country.ts';
import { madeCopy } from './wells/madeCopy.ts';
import { madeWells } from './wells/madeWell.ts';

const madeAt = '2026-01-15T08:00:00.000Z';
/** Wells that come in at a time. */
const coming = 1000;
const rounds = 3;
/** About a hundredth of the made wells. */
const filter: WellFilter = { districts: [districts[0]!.name] };

async function timeOf(run: () => unknown): Promise<number> {
  const start = performance.now();
  await run();
  return performance.now() - start;
}

const linesOf = (from: number) =>
  [...madeWells(coming, from)].map(({ document }) => JSON.stringify(document));

/** Looked at beside what is there, judged, listed, indexed and chained, in one transaction. */
async function takeIn(archive: Archive, lines: readonly string[]): Promise<void> {
  const bytes = new TextEncoder().encode(lines.join('\n'));
  const { wells } = comingOf(await openFiles([{ name: 'more.jsonl', bytes }]));
  const planned = valueOf(await planAll(archive, wells));
  const newId = () => crypto.randomUUID();
  const brought = valueOf(await bringPlanned(archive, planned, () => 'leave', { newId }));
  if (brought.created !== coming) throw new Error(`${brought.created} wells came in.`);
}

function putTexts(db: Database.Database, lines: readonly string[]): void {
  const insert = db.prepare('INSERT INTO kept VALUES (?)');
  db.transaction(() => lines.forEach((line) => insert.run(line)))();
}

/** Milliseconds of each well of a district that goes out. */
async function written(archive: Archive, into: WrittenFormat): Promise<number> {
  let wells = 0;
  const ms = await timeOf(async () => {
    const wish = { into, filter, name: 'wells', madeAt };
    wells = valueOf(await exportWells(archive, wish, () => undefined)).wells;
  });
  if (wells === 0) throw new Error('No well of the district went out.');
  return ms / wells;
}

async function rowOf(wells: number): Promise<string> {
  const copy = await madeCopy(wells);
  const archive = valueOf(openArchive(copy.file, { now: () => madeAt }));
  const db = new Database(path.join(copy.folder, 'kept.sqlite'));
  db.exec('CREATE TABLE kept (record TEXT NOT NULL)');
  const times = { put: [] as number[], taken: [] as number[] };
  for (let round = 0; round < rounds; round += 1) {
    const lines = linesOf(wells + round * coming);
    times.put.push(await timeOf(() => putTexts(db, lines)));
    times.taken.push(await timeOf(() => takeIn(archive, lines)));
  }
  const [put, taken] = [median(times.put), median(times.taken)];
  const each = [await written(archive, 'jsonl'), await written(archive, 'ags')];
  db.close();
  archive.close();
  copy.drop();
  return `| ${[wells, ...[taken / put, put, taken, ...each].map(shown)].join(' | ')} |`;
}

/** The part of the report, in Markdown. */
export async function part({ wells }: Asked): Promise<string> {
  const lines: string[] = [];
  for (const size of wells) lines.push(await rowOf(size));
  return [
    '## Wells into archives and out of them',
    '',
    `${coming} wells that come in as JSON lines, read, checked, set beside what is there, listed, indexed and chained in one transaction, beside SQLite putting their texts in a table; and the wells of one district going out, reading and losses with them. The middle of ${rounds} rounds; going out once.`,
    '',
    '| wells there | ratio | SQLite, ms | taken in, ms | out as JSON lines, ms a well | out as AGS 4, ms a well |',
    '|---|---|---|---|---|---|',
    ...lines,
  ].join('\n');
}
