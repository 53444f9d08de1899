import path from 'node:path';
import type { Database } from 'better-sqlite3';
import { ok, refused, type Result } from '../../core/base/result.ts';
import {
  attach,
  openAttachment,
  openPrintCopy,
  type Attachment,
  type GivenFile,
  type PrintCopy,
} from './attachments.ts';
import { backdropsOf, type Backdrops } from './backdrops.ts';
import { beingBrought, bringWells, type BringOptions, type Brought, type Wells } from './bring.ts';
import { binOf, type Bin } from './bin.ts';
import { bindersOf, type Binders } from './binders.ts';
import { checkChains, type ChainCheck } from './check.ts';
import { editWell, leaveWell, type EditChange, type KeptEdit } from './edit.ts';
import { issuesIn, type Issues } from './issues.ts';
import { guidelinesIn, type Guidelines } from './guidelines.ts';
import type { WriteHandle } from './handles.ts';
import { listsOf, type Access, type Lists } from './lists.ts';
import { mappingsOf, type Mappings } from './mappings.ts';
import { mergingOf, type Merging } from './merge/merge.ts';
import { practicesOf, type Practices } from './practices.ts';
import {
  noWell,
  openRevision,
  openWell,
  revisionsOf,
  type RevisionLine,
  type StoredDocument,
} from './read.ts';
import { revertWell } from './revert.ts';
import { findMark, listMarks, type WellMark } from './tables/marks.ts';
import { countWells, idsNumbered, isListed, listWells, type ListedWell } from './tables/wells.ts';
import { templatesIn, type Templates } from './templates.ts';
import { guarded } from './trouble.ts';
import { openWorking, type WorkingCopy } from './working.ts';
import type { ArchiveWorld } from './world.ts';
import { createWell, saveWell, type Sayings } from './write.ts';

/** One file that holds a programme's wells. */
export interface Archive {
  readonly file: string;
  /** The file's name without its ending. */
  readonly name: string;
  /** Why nothing can be saved; absent when it can. */
  readonly readOnly?: string;
  readonly lists: Lists;
  readonly bin: Bin;
  readonly binders: Binders;
  readonly backdrops: Backdrops;
  readonly practices: Practices;
  readonly guidelines: Guidelines;
  readonly templates: Templates;
  readonly issues: Issues;
  readonly mappings: Mappings;
  readonly merging: Merging;
  count(): Result<number>;
  list(search?: string): Result<readonly ListedWell[]>;
  /** Whether a well is there, outside the bin. */
  isListed(id: string): Result<boolean>;
  /** Ids of the wells outside the bin that have a number. */
  numbered(number: string): Result<readonly string[]>;
  /** The newest revision. */
  open(id: string): Result<StoredDocument>;
  openRevision(id: string, revision: number): Result<StoredDocument>;
  revisions(id: string): Result<readonly RevisionLine[]>;
  /** The well as it is being worked on. */
  working(id: string): Result<WorkingCopy>;
  create(id: string, document: unknown, said?: Sayings): Result<StoredDocument>;
  /** Puts many wells in, all or nothing; see `bringWells`. */
  bring(wells: Wells, options?: BringOptions): Promise<Result<Brought>>;
  /** Edits the working copy. Refused as `staleEdit` when `upon` is not its newest edit. */
  edit(id: string, change: Pick<EditChange, 'upon' | 'moves'>): Result<KeptEdit>;
  /** Makes a revision of the working copy. Refused as `staleEdit` like an edit. */
  save(id: string, upon: number, said?: Sayings): Result<StoredDocument>;
  /** Makes an older revision's record the next one; see `revertWell`. */
  revert(id: string, revision: number, said?: Sayings): Result<StoredDocument>;
  /** The next opening starts from the working copy as it is. */
  leave(id: string, upon: number): Result<void>;
  /** How far a well is. */
  mark(id: string): Result<WellMark>;
  /** How far each well is. */
  marks(): Result<readonly WellMark[]>;
  /** A number that is another one after another program changed the file. */
  touched(): Result<number>;
  /** Keeps a file and gives the SHA-256 that records name it by; the same bytes are kept once. */
  attach(file: GivenFile): Result<string>;
  attachment(hash: string): Result<Attachment>;
  /** What papers show of a file. */
  printCopy(hash: string): Result<PrintCopy>;
  check(): Result<ChainCheck>;
  /** A copy in one file, made while work goes on. */
  copyTo(target: string): Promise<void>;
  close(): void;
}

export interface Handles {
  readonly reader: Database;
  readonly writer?: WriteHandle;
  readonly readOnly?: string;
}

/** Names the archive's queries on an open file. */
export function archiveOf(file: string, handles: Handles, world: ArchiveWorld): Archive {
  const { reader, writer, readOnly } = handles;
  const reading = <T>(query: () => Result<T>) => guarded(file, query);
  let bringing = false;
  const writing = <T>(change: (db: WriteHandle) => Result<T>): Result<T> => {
    if (bringing) return beingBrought();
    return guarded(file, () => (writer ? change(writer) : refused('readOnly', readOnly ?? '')));
  };
  const bring: Archive['bring'] = async (wells, options = {}) => {
    if (!writer) return refused('readOnly', readOnly ?? '');
    if (bringing) return beingBrought();
    bringing = true;
    try {
      return await bringWells(file, wells, world.now(), options);
    } finally {
      bringing = false;
    }
  };
  const access: Access = { reading: (query) => reading(() => query(reader)), writing };
  return {
    file,
    name: path.parse(file).name,
    ...(readOnly === undefined ? {} : { readOnly }),
    lists: listsOf(access),
    bin: binOf(access, world.now),
    binders: bindersOf(access, world.now),
    backdrops: backdropsOf(access, world.now),
    practices: practicesOf(access, world.now),
    guidelines: guidelinesIn(access, world.now),
    templates: templatesIn(access, world.now),
    issues: issuesIn(access, world.now),
    mappings: mappingsOf(access, world.now),
    merging: mergingOf(access, file, world),
    count: () => reading(() => ok(countWells(reader))),
    list: (search) => reading(() => ok(listWells(reader, search))),
    isListed: (id) => reading(() => ok(isListed(reader, id))),
    numbered: (number) => reading(() => ok(idsNumbered(reader, number))),
    open: (id) => reading(() => openWell(reader, id)),
    openRevision: (id, revision) => reading(() => openRevision(reader, id, revision)),
    revisions: (id) => reading(() => revisionsOf(reader, id)),
    working: (id) => reading(() => openWorking(reader, id)),
    create: (id, document, said = {}) =>
      writing((db) => createWell(db, { id, document, changedAt: world.now(), said })),
    bring,
    edit: (id, change) => writing((db) => editWell(db, { id, ...change, changedAt: world.now() })),
    save: (id, upon, said = {}) =>
      writing((db) => saveWell(db, { id, upon, changedAt: world.now(), said })),
    revert: (id, revision, said = {}) =>
      writing((db) => revertWell(db, { id, revision, changedAt: world.now(), said })),
    leave: (id, upon) => writing((db) => leaveWell(db, id, upon)),
    mark: (id) =>
      reading(() => {
        const mark = findMark(reader, id);
        return mark ? ok(mark) : noWell(id);
      }),
    marks: () => reading(() => ok(listMarks(reader))),
    touched: () => reading(() => ok(reader.pragma('data_version', { simple: true }) as number)),
    attach: (given) => writing((db) => attach(db, given, world.now())),
    attachment: (hash) => reading(() => openAttachment(reader, hash)),
    printCopy: (hash) => reading(() => openPrintCopy(reader, hash)),
    check: () => reading(() => ok(checkChains(reader))),
    copyTo: async (target) => void (await reader.backup(target)),
    close: () => void reader.close(),
  };
}
