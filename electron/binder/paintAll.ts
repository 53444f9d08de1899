import path from 'node:path';
import type { BinderFile } from '../../core/contract/binderShape.ts';
import type { PaintedAnswer, WorkerSetup } from './messages.ts';
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

/** Paints one volume in a worker that ends with it; undefined where it was stopped. */
function paintOne(
  setup: WorkerSetup,
  volume: number,
  { fileOf, onPages, signal }: Painting,
): Promise<BinderFile | undefined> {
  const file = fileOf(volume);
  const worker = startWorker({ setup, work: { kind: 'paint', volume, file } });
  const stop = () => void worker.terminate();
  signal.addEventListener('abort', stop);
  let before = 0;
  let painted: BinderFile | undefined;
  return new Promise<BinderFile | undefined>((resolve, reject) => {
    worker.on('message', ({ pages, bytes }: PaintedAnswer) => {
      onPages(pages - before);
      before = pages;
      if (bytes !== undefined) painted = { fileName: path.basename(file), pages, bytes };
    });
    worker.once('error', reject);
    worker.once('exit', () => resolve(painted));
  }).finally(() => signal.removeEventListener('abort', stop));
}

/** Paints volumes by some workers, each of which paints one and ends. */
export async function paintAll(
  setup: WorkerSetup,
  volumes: number,
  painting: Painting,
): Promise<readonly BinderFile[]> {
  const files: BinderFile[] = [];
  let next = 1;
  const inTurn = async () => {
    while (next <= volumes && !painting.signal.aborted) {
      const volume = next++;
      const file = await paintOne(setup, volume, painting);
      if (file) files[volume - 1] = file;
    }
  };
  await Promise.all(Array.from({ length: Math.min(painting.workers, volumes) }, inTurn));
  return files;
}
