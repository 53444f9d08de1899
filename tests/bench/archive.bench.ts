import path from 'node:path';
import Database from 'better-sqlite3';
import type { WellFilter } from '../../core/record/wellFilter.ts';
import type { Archive } from '../../electron/archive/archive.ts';
import { openArchive } from '../../electron/archive/open.ts';
import { listHandlers } from '../../electron/service/list.ts';
import { valueOf } from '../electron/archive/sample.ts';
import type { Asked } from './asked.ts';
import { centile, shown } from './report.ts';
import { runTrial, type Trial } from './trial.ts';
import { madeCopy } from './wells/madeCopy.ts';
import { madeWell } from './wells/madeWell.ts';

const world = { now: () => '2026-01-15T08:00:00.000Z' };
/** Rows of one page of the list. */
const rows = 100;

function connect(file: string): Database.Database {
  const db = new Database(file);
  db.pragma('journal_mode = WAL');
  db.pragma('synchronous = FULL');
  return db;
}

/** The archive's own query for a page of the list, beside a count and a page in SQL. */
function listed(
  title: string,
  [archive, db]: readonly [Archive, Database.Database],
  filter: WellFilter,
  condition: string,
): Trial {
  const find = listHandlers({ archive })['list.find'];
  const fits = `FROM well WHERE binned_at IS NULL AND ${condition}`;
  const count = db.prepare(`SELECT count(*) ${fits}`);
  const page = db.prepare(`SELECT * ${fits} ORDER BY number_key, number, seq LIMIT ${rows}`);
  return {
    title,
    says: '',
    rivals: [
      { name: 'SQLite', run: () => [count.get(), page.all()] },
      { name: 'archive', run: () => find.run({ filter, limit: rows }) },
    ],
  };
}

function opened(file: string): Trial {
  const raw = () => {
    const db = connect(file);
    db.prepare('SELECT count(*) FROM well WHERE binned_at IS NULL').get();
    db.close();
  };
  const own = () => {
    const archive = valueOf(openArchive(file, world));
    valueOf(archive.count());
    archive.close();
  };
  return {
    title: 'open, count, close',
    says: '',
    rivals: [
      { name: 'SQLite', run: raw },
      { name: 'archive', run: own },
    ],
  };
}

/** A new well: checked, listed, indexed and chained, beside its text in a table of its own. */
function saved(archive: Archive, file: string, wells: number): Trial {
  const db = connect(file);
  db.exec('CREATE TABLE kept (id TEXT PRIMARY KEY, record TEXT NOT NULL)');
  const insert = db.prepare('INSERT INTO kept VALUES (?, ?)');
  let [raw, own] = [wells, wells];
  const create = () => {
    const { id, document } = madeWell(own++);
    return valueOf(archive.create(id, document));
  };
  const put = () => {
    const { id, document } = madeWell(raw++);
    return insert.run(id, JSON.stringify(document));
  };
  return {
    title: 'save a new well',
    says: '',
    rivals: [
      { name: 'SQLite', run: put },
      { name: 'archive', run: create },
    ],
  };
}

const matching = (words: string) =>
  `seq IN (SELECT rowid FROM well_search WHERE well_search MATCH '${words}')`;

/** What hands have typed of a search when it is asked for: letters, beginnings, words, several. */
const typed = [
  ...['s', 'm', '2', 'sa', 'te', 'kv', 'san', 'ter', 'sable', 'termite', 'arenito', 'school'],
  ...['école termite', 'pump s', 's l', 'sand termite mound'],
];

/** Milliseconds of the service for every text that was typed, the middle and 95 % within. */
function searched(archive: Archive, wells: number, rounds: number): string {
  const find = listHandlers({ archive })['list.find'];
  const times = Array.from({ length: rounds }, () => typed).flatMap((texts) =>
    texts.map((search) => {
      const from = performance.now();
      find.run({ filter: { search }, limit: rows });
      return performance.now() - from;
    }),
  );
  const within = (share: number) => shown(centile(times, share));
  return `| ${[wells, within(0.5), within(0.95), within(1)].join(' | ')} |`;
}

interface Lines {
  readonly beside: readonly string[];
  readonly searches: string;
}

async function linesOf(wells: number, rounds: number): Promise<Lines> {
  const { folder, file, drop } = await madeCopy(wells);
  const archive = valueOf(openArchive(file, world));
  const db = connect(file);
  const both = [archive, db] as const;
  const filter = { states: ['completed'], yearFrom: 2000, depthTo: 40 } as const;
  const condition = `state = 'completed' AND year >= 2000 AND depth_m <= 40`;
  const found = `${condition} AND ${matching('"termite"*')}`;
  const trials = [
    opened(file),
    listed('first page', both, {}, '1'),
    listed('filter', both, filter, condition),
    listed('find a word', both, { search: 'termite' }, matching('"termite"*')),
    listed('find two words', both, { search: 'école termite' }, matching('"ecole"* "termite"*')),
    listed('find a material', both, { search: 'arenito' }, matching('"arenito"* OR "sandstone"')),
    listed('find a letter', both, { search: 's' }, matching('"s"*')),
    listed('find two letters', both, { search: 's l' }, matching('"s"* "l"*')),
    listed('find a word among filters', both, { ...filter, search: 'termite' }, found),
    saved(archive, path.join(folder, 'kept.sqlite'), wells),
  ];
  const beside = trials.map((trial) => {
    const [raw, own] = runTrial(trial, rounds, () => performance.now());
    const figures = [own!.ratio, raw!.medianMs, own!.medianMs].map(shown);
    return `| ${[wells, trial.title, ...figures].join(' | ')} |`;
  });
  const searches = searched(archive, wells, rounds);
  db.close();
  archive.close();
  drop();
  return { beside, searches };
}

/** The part of the report, in Markdown. */
export async function part({ wells, rounds }: Asked): Promise<string> {
  const lines: Lines[] = [];
  for (const size of wells) lines.push(await linesOf(size, rounds));
  return [
    '## Archives',
    '',
    `Archives of made wells, beside SQLite alone asking the same of the same file. Opening holds the look through every page of a file up to 100 MB for faults. A list is the count of what fits and its first ${rows} rows; the archive says besides where a word stands that no column shows, out of the records. A saved well is checked, listed, indexed and chained by the archive; SQLite puts its text in a table. Either outlives a pulled plug.`,
    '',
    '| wells | | ratio | SQLite, ms | archive, ms |',
    '|---|---|---|---|---|',
    ...lines.flatMap(({ beside }) => beside),
    '',
    `Searches as they are typed, ${typed.length} texts of one to three words or beginnings, in the service:`,
    '',
    '| wells | median, ms | 95 % within | all within |',
    '|---|---|---|---|',
    ...lines.map(({ searches }) => searches),
  ].join('\n');
}
