import type { PageHost } from '../../core/contract/host.ts';
import { numberedPhotos, type Photo } from '../../core/record/photos.ts';
import { say } from '../parts/words.ts';
import type { Desk } from '../state/desk.ts';
import { insertAt } from '../state/edit.ts';
import type { Folder } from '../state/folder.svelte.ts';
import { printCopiesOf } from '../state/printCopies.svelte.ts';
import { keepFile, type Step } from './keepFile.ts';

/** How far one of the files given is. */
export interface IntakeLine {
  readonly name: string;
  readonly state: 'waiting' | Step | 'added' | 'failed';
  readonly says: string;
}

function withPhoto(desk: Desk, photo: Photo): Desk {
  const count = desk.record.photos?.length ?? 0;
  return { ...desk, record: insertAt(desk.record, 'photos', count, photo) };
}

/** Takes files into an open folder, one after the other, and tells how each fares. */
export class Intake {
  lines = $state.raw<readonly IntakeLine[]>([]);

  readonly #host: PageHost;
  readonly #folder: Folder;
  #last: Promise<void> = Promise.resolve();

  constructor(host: PageHost, folder: Folder) {
    this.#host = host;
    this.#folder = folder;
  }

  get busy(): boolean {
    return this.lines.some(({ state }) => state !== 'added' && state !== 'failed');
  }

  /** Files given while others are under way wait for their turn. */
  take(files: readonly File[]): Promise<void> {
    if (!this.busy) this.lines = [];
    const first = this.lines.length;
    const waiting = files.map(({ name }) => ({ name, state: 'waiting', says: say.photos.waiting }));
    this.lines = [...this.lines, ...(waiting as IntakeLine[])];
    this.#last = this.#last.then(() => this.#takeAll(files, first));
    return this.#last;
  }

  async #takeAll(files: readonly File[], first: number) {
    for (const [at, file] of files.entries()) await this.#takeOne(file, first + at);
  }

  async #takeOne(file: File, at: number) {
    try {
      const kept = await keepFile(this.#host, file, (step) =>
        this.#tell(at, step, say.photos[step]),
      );
      if (!kept.ok) return this.#tell(at, 'failed', kept.error.sentence);
      const { photo, image } = kept.value;
      if (image) printCopiesOf(this.#host, this.#folder).put(photo.hash, image);
      this.#enter(photo, at);
    } catch (thrown) {
      // The browser lost the file, as when a card is pulled out while it is read.
      console.warn(thrown);
      this.#tell(at, 'failed', say.photos.unreadable(file.name));
    }
  }

  #enter(photo: Photo & { hash: string }, at: number) {
    const all = numberedPhotos(this.#folder.desk.record.photos);
    const same = all.find((one) => one.photo.hash === photo.hash);
    if (same) return this.#tell(at, 'failed', say.photos.already(same.at + 1));
    this.#folder.edit((desk) => withPhoto(desk, photo));
    const isDocument = photo.mediaType === 'application/pdf';
    this.#tell(at, 'added', isDocument ? say.photos.addedDocument : say.photos.added);
  }

  #tell(at: number, state: IntakeLine['state'], says: string) {
    this.lines = this.lines.with(at, { ...this.lines[at]!, state, says });
  }
}
