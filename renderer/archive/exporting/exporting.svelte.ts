import type { Refusal } from '../../../core/base/result.ts';
import type { Gives } from '../../../core/contract/calls.ts';
import type { WrittenFormat } from '../../../core/contract/exportShape.ts';
import { download } from '../../sheet/download.ts';
import type { Place } from '../../state/place.svelte.ts';

/** What was written, without its bytes. */
export type WrittenFile = Omit<Gives<'export.make'>, 'bytes'>;

/** What a person chose of how wells go out. */
export interface ExportChoice {
  readonly into: WrittenFormat;
  /** True for all of the archive, else those that the list shows. */
  readonly all: boolean;
  readonly bom: boolean;
}

/** Media type of any file, since a ZIP and eight formats are handed over in the same way. */
const anyFile = 'application/octet-stream';

/** Writes wells in another format and hands the file over. */
export class Exporting {
  busy = $state(false);
  written = $state.raw<WrittenFile | undefined>();
  refusal = $state.raw<Refusal | undefined>();
  readonly #place: Place;

  constructor(place: Place) {
    this.#place = place;
  }

  async write({ into, all, bom }: ExportChoice): Promise<void> {
    if (this.busy) return;
    [this.busy, this.written, this.refusal] = [true, undefined, undefined];
    try {
      const filter = all ? {} : this.#place.wells.filter;
      const marked = into === 'csv' && bom ? { bom } : {};
      const made = await this.#place.host.send('export.make', { filter, into, ...marked });
      if (made.ok) this.#take(made.value);
      else this.refusal = made.error;
    } finally {
      this.busy = false;
    }
  }

  #take({ bytes, ...file }: Gives<'export.make'>): void {
    download(file.fileName, bytes, anyFile);
    this.written = file;
  }
}
