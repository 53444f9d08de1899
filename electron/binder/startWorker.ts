import path from 'node:path';
import { Worker } from 'node:worker_threads';
import type { WorkerData } from './messages.ts';

/** Beside the sources, or beside the bundle that this is part of. */
const script = import.meta.filename.endsWith('.ts') ? 'worker.ts' : 'binderWorker.js';

/** Most megabytes of a worker's heap: with two of them and the program under one gibibyte. */
const mostMegabytes = 320;

/** Starts a worker of a binder. */
export function startWorker(workerData: WorkerData): Worker {
  return new Worker(path.join(import.meta.dirname, script), {
    workerData,
    resourceLimits: { maxOldGenerationSizeMb: mostMegabytes, maxYoungGenerationSizeMb: 32 },
  });
}

/** The first word of a worker that says one thing and ends. Rejects with what broke it. */
export function onlyAnswer<T>(worker: Worker): Promise<T> {
  return new Promise((resolve, reject) => {
    worker.once('message', resolve);
    worker.once('error', reject);
    worker.once('exit', () => reject(new Error('A worker ended before its work was done')));
  });
}
