import { mkdirSync, readFileSync } from 'node:fs';
import { availableParallelism } from 'node:os';
import path from 'node:path';
import { ok, refused, type Result } from '../../core/base/result.ts';
import type { BinderState, FinishedBinder } from '../../core/contract/binderShape.ts';
import type { Archive } from '../archive/archive.ts';
import type { Binding, BindingJob } from '../service/binding.ts';
import { makeBinder } from './makeBinder.ts';
import { fileNameOf, issuedFolderName, volumeFileName } from './volumeFileName.ts';

/** Binders lie in a folder beside their archive. */
export function bindersBeside({ file }: Archive): string {
  const { dir, name } = path.parse(file);
  return path.join(dir, `${name} binders`);
}

/** What came of it, as the page is told. */
function ended(name: string, made: Result<FinishedBinder>): BinderState {
  if (made.ok) return { state: 'done', name, binder: made.value };
  if (made.error.code === 'binderStopped') return { state: 'stopped', name };
  return { state: 'refused', name, sentence: made.error.sentence };
}

/** What the disk refuses, or a worker broke over, is told and never ends the program. */
async function make(job: BindingJob, folder: string, signal: AbortSignal): Promise<BinderState> {
  const { archive, name, wish, madeAt, onState } = job;
  const called = fileNameOf(name);
  try {
    mkdirSync(folder, { recursive: true });
    const made = await makeBinder({
      ...{ archive, wish, madeAt, signal },
      folder: path.join(folder, `.${called}.binding`),
      workers: availableParallelism() > 1 ? 2 : 1,
      issuedFolder: path.join(folder, issuedFolderName(called)),
      fileOf: (volume, of) => path.join(folder, volumeFileName(called, volume, of)),
      onProgress: (progress) => onState({ state: 'running', name, progress }),
    });
    return ended(name, made);
  } catch (thrown) {
    const why = thrown instanceof Error ? thrown.message : String(thrown);
    const sentence = `The binder could not be made: ${why}. Check that there is room in ${folder}.`;
    return { state: 'refused', name, sentence };
  }
}

/** Makes binders by workers, one binder at a time, into a folder beside the archive. */
export function bindingDesk(): Binding {
  let state: BinderState = { state: 'none' };
  let folder = '';
  let stopping = new AbortController();
  let running: Promise<void> = Promise.resolve();
  return {
    start(job) {
      if (state.state === 'running')
        return refused(
          'binderRuns',
          `The binder ${state.name} is being made. Wait until it is done, or stop it.`,
        );
      folder = bindersBeside(job.archive);
      stopping = new AbortController();
      const told = (next: BinderState) => {
        state = next;
        job.onState(next);
      };
      told({ state: 'running', name: job.name, progress: { stage: 'lay', done: 0, of: 0 } });
      running = make({ ...job, onState: told }, folder, stopping.signal).then(told);
      return ok(state);
    },
    async stop() {
      stopping.abort();
      await running;
      return state;
    },
    state: () => state,
    file(fileName) {
      const files = state.state === 'done' ? state.binder.files : [];
      if (!files.some((file) => file.fileName === fileName))
        return refused(
          'noSuchFile',
          `There is no file ${fileName} of a finished binder. Make the binder again.`,
        );
      return ok(new Uint8Array(readFileSync(path.join(folder, fileName))));
    },
  };
}
