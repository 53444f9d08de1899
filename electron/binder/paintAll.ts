import path from 'node:path';
import type { Worker } from 'node:worker_threads';
import type { BinderFile } from '../../core/contract/binderShape.ts';
import type { NextVolume, PaintedAnswer, WorkerSetup } from './messages.ts';
import { startWorker } from './startWorker.ts';

interface Painting {
  /** At once. */
  readonly workers: number;
  /** Where a volume goes, counted from 1. */
  readonly fileOf: (volume: number) => string;
  /** Is told how many pages more are painted. */
  readonly onPages: (more: number) => void;
  readonly signal: AbortSignal;
}

/** Resolves when nothing is left to paint, or the worker was stopped. Rejects with what broke it. */
function paintBy(
  worker: Worker,
  next: () => NextVolume | undefined,
  onAnswer: (of: NextVolume, answer: PaintedAnswer) => void,
): Promise<void> {
  return new Promise((resolve, reject) => {
    let at: NextVolume | undefined;
    worker.on('message', (answer: PaintedAnswer | null) => {
      if (at && answer) onAnswer(at, answer);
      if (answer && answer.bytes === undefined) return;
      at = next();
      worker.postMessage(at ?? null);
    });
    worker.once('error', reject);
    worker.once('exit', () => resolve());
  });
}

/** Paints volumes by some workers, each of which takes the next one as soon as it has painted one. */
export async function paintAll(
  setup: WorkerSetup,
  volumes: number,
  { workers, fileOf, onPages, signal }: Painting,
): Promise<readonly BinderFile[]> {
  const files: BinderFile[] = [];
  const pagesOf = new Map<number, number>();
  let painted = 0;
  const next = (): NextVolume | undefined => {
    if (painted === volumes || signal.aborted) return undefined;
    painted += 1;
    return { volume: painted, file: fileOf(painted) };
  };
  const onAnswer = ({ volume, file }: NextVolume, { pages, bytes }: PaintedAnswer) => {
    onPages(pages - (pagesOf.get(volume) ?? 0));
    pagesOf.set(volume, pages);
    if (bytes !== undefined) files[volume - 1] = { fileName: path.basename(file), pages, bytes };
  };
  const inTurn = async () => {
    const worker = startWorker({ setup, work: { kind: 'paint' } });
    const stop = () => void worker.terminate();
    signal.addEventListener('abort', stop);
    await paintBy(worker, next, onAnswer).finally(() => signal.removeEventListener('abort', stop));
  };
  await Promise.all(Array.from({ length: Math.min(workers, volumes) }, inTurn));
  return files;
}
