import type { Worker } from 'node:worker_threads';
import type { NextWell, WellToLay, WorkerSetup } from './messages.ts';
import { startWorker } from './startWorker.ts';

interface Laying {
  readonly workers: number;
  /** Is told of each well that is laid. */
  readonly onLaid: () => void;
  readonly signal: AbortSignal;
}

/** Resolves when the worker has nothing more to lay; with the well over which it broke, if it did. */
function layBy(
  worker: Worker,
  next: () => NextWell | undefined,
  onLaid: () => void,
): Promise<NextWell | undefined> {
  return new Promise((resolve, reject) => {
    let at: NextWell | undefined;
    worker.on('message', (laid: string | null) => {
      if (laid !== null) onLaid();
      at = next();
      worker.postMessage(at ?? null);
    });
    worker.once('error', (error: Error) => {
      if (at) resolve({ ...at, crashed: error.message });
      else reject(error);
    });
    worker.once('exit', () => resolve(undefined));
  });
}

/** Lays one after the other until none is left; over a well that breaks a worker, by another one. */
async function layInTurn(
  setup: WorkerSetup,
  waiting: NextWell[],
  { onLaid, signal }: Laying,
): Promise<void> {
  while (!signal.aborted && waiting.length > 0) {
    const worker = startWorker({ setup, work: { kind: 'lay' } });
    const stop = () => void worker.terminate();
    signal.addEventListener('abort', stop);
    const broken = await layBy(worker, () => waiting.shift(), onLaid);
    signal.removeEventListener('abort', stop);
    if (broken && !signal.aborted) waiting.unshift(broken);
  }
}

/** Lays wells by some workers, each of which takes the next well as soon as it has laid one. */
export async function layAll(
  setup: WorkerSetup,
  wells: readonly WellToLay[],
  laying: Laying,
): Promise<void> {
  const waiting: NextWell[] = wells.map((well) => ({ well }));
  const workers = Math.min(laying.workers, waiting.length);
  await Promise.all(Array.from({ length: workers }, () => layInTurn(setup, waiting, laying)));
}
