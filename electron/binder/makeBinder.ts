import path from 'node:path';
import { ok, refused, type Result } from '../../core/base/result.ts';
import type {
  BinderProgress,
  BinderWish,
  FinishedBinder,
} from '../../core/contract/binderShape.ts';
import type { Archive } from '../archive/archive.ts';
import { sha256Hex } from '../seal/hash.ts';
import { chooseWells, type ChosenWells } from './chooseWells.ts';
import { layAll } from './layAll.ts';
import type { PlannedAnswer, Work, WorkerSetup } from './messages.ts';
import { paintAll } from './paintAll.ts';
import { programVersion } from './programVersion.ts';
import { onlyAnswer, startWorker } from './startWorker.ts';
import { workFolder } from './workFolder.ts';

export interface BinderJob {
  readonly archive: Archive;
  readonly wish: BinderWish;
  /** ISO 8601 moment that the binder says it was made; of a stopped run that goes on, the earlier. */
  readonly madeAt: string;
  /** Where what is done lies until all is done; of this binder alone. */
  readonly folder: string;
  /** Workers at once. */
  readonly workers: 1 | 2;
  /** File of a volume, from 1, of so many. */
  readonly fileOf: (volume: number, of: number) => string;
  /** Where issued papers go, if the wish has them copied. */
  readonly issuedFolder: string;
  readonly onProgress: (progress: BinderProgress) => void;
  /** Stops the work; what is laid stays for the next run. */
  readonly signal: AbortSignal;
}

const stopped = () =>
  refused(
    'binderStopped',
    'The binder was stopped. What is done is kept: started again, it goes on from there.',
  );

async function lay(setup: WorkerSetup, { wells }: ChosenWells, job: BinderJob): Promise<void> {
  const { isLaid } = workFolder(setup.folder);
  const left = wells.filter(({ key }) => !isLaid(key));
  let done = wells.length - left.length;
  const tell = () => job.onProgress({ stage: 'lay', done, of: wells.length });
  const onLaid = () => {
    done += 1;
    tell();
  };
  tell();
  await layAll(setup, left, { workers: job.workers, onLaid, signal: job.signal });
}

/** What a worker answers that does one thing; undefined where it was stopped. */
async function ask<T>(setup: WorkerSetup, work: Work, signal: AbortSignal): Promise<T | undefined> {
  const worker = startWorker({ setup, work });
  const stop = () => void worker.terminate();
  signal.addEventListener('abort', stop);
  try {
    return await onlyAnswer<T>(worker);
  } catch (error) {
    if (signal.aborted) return undefined;
    throw error;
  } finally {
    signal.removeEventListener('abort', stop);
  }
}

function plan(setup: WorkerSetup, chosen: ChosenWells, { onProgress, ...job }: BinderJob) {
  onProgress({ stage: 'plan', done: 0, of: 1 });
  const folder = setup.wish.withIssued && { issuedFolder: path.basename(job.issuedFolder) };
  return ask<PlannedAnswer>(setup, { kind: 'plan', ...chosen, ...folder }, job.signal);
}

/** Copies issued papers beside the volumes where that is asked for. */
async function copyIssued(
  setup: WorkerSetup,
  { wells }: ChosenWells,
  { onProgress, issuedFolder: folder, signal }: BinderJob,
): Promise<FinishedBinder['issued']> {
  if (!setup.wish.withIssued) return undefined;
  onProgress({ stage: 'copy', done: 0, of: 1 });
  const files = await ask<number>(setup, { kind: 'copyIssued', wells, folder }, signal);
  return files === undefined ? undefined : { folder: path.basename(folder), files };
}

function paint(setup: WorkerSetup, { volumes }: PlannedAnswer, job: BinderJob) {
  const of = volumes.reduce((sum, pages) => sum + pages, 0);
  let done = 0;
  const onPages = (more: number) => {
    done += more;
    job.onProgress({ stage: 'paint', done, of });
  };
  onPages(0);
  const fileOf = (volume: number) => job.fileOf(volume, volumes.length);
  const { workers, signal } = job;
  return paintAll(setup, volumes.length, { workers, fileOf, onPages, signal });
}

/**
 * Makes a binder: lays the papers of its wells by workers, plans its volumes, and paints them by
 * workers, each of which makes one at a time. What is laid stands in the folder until all is done, so that a run that was
 * stopped goes on. Throws what the disk says, and where a worker breaks over what is no well's.
 */
export async function makeBinder(job: BinderJob): Promise<Result<FinishedBinder>> {
  const { archive, wish, folder, signal } = job;
  const work = workFolder(folder);
  const wishHash = sha256Hex(JSON.stringify([programVersion, archive.file, wish]));
  const madeAt = work.begin(wishHash, job.madeAt);
  const chosen = chooseWells(archive, wish, madeAt);
  if (!chosen.ok) return chosen;
  const setup = { archiveFile: archive.file, folder, wish, madeAt, programVersion };
  await lay(setup, chosen.value, job);
  if (signal.aborted) return stopped();
  const planned = await plan(setup, chosen.value, job);
  if (!planned) return stopped();
  const files = await paint(setup, planned, job);
  if (signal.aborted) return stopped();
  const issued = await copyIssued(setup, chosen.value, job);
  if (signal.aborted) return stopped();
  work.remove();
  const pages = planned.volumes.reduce((sum, own) => sum + own, 0);
  const { failed } = planned;
  const { length: wells } = chosen.value.wells;
  return ok({ files, pages, wells, failed, ...(issued && { issued }) });
}
