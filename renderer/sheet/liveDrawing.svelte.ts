import { untrack } from 'svelte';
import type { Drawing } from '../../core/drawing/items.ts';
import { drawAsBuilt } from '../../core/drawing/papers/asBuilt.ts';
import type { PaperSize } from '../state/exportPaper.ts';
import type { Folder } from '../state/folder.svelte.ts';
import { fonts } from './fonts.ts';

/** Milliseconds of rest after a letter before the sheet is drawn anew. */
const pause = 40;
/** A sheet on screen is no paper that was made: it has no number of its own. */
const paperId = '0'.repeat(32);

/** The as-built sheet of an open folder, drawn anew as its record changes. */
export class LiveDrawing {
  size = $state<PaperSize>('A4');
  drawing = $state.raw<Drawing | undefined>();
  /** The program could not draw the record: what is shown is the drawing of before. */
  broken = $state(false);

  readonly #folder: Folder;
  /** ISO 8601. */
  readonly #madeAt: string;

  /** To be made while a component starts, which it lives and ends with. */
  constructor(folder: Folder, madeAt: string) {
    this.#folder = folder;
    this.#madeAt = madeAt;
    $effect(() => this.#plan());
  }

  /** Typing may be faster than drawing: letters come first, the sheet in the pause after them. */
  #plan() {
    const { desk, model, saving } = this.#folder;
    void [this.size, saving.revision];
    const rest = untrack(() => this.drawing) ? pause : 0;
    const timer = setTimeout(() => this.#draw(desk.record, model), rest);
    return () => clearTimeout(timer);
  }

  #draw(record: Folder['desk']['record'], model: Folder['model']) {
    const { revision } = this.#folder.saving;
    const made = { madeAt: this.#madeAt, paperId, revision };
    try {
      this.drawing = drawAsBuilt(record, model, { paper: this.size, fonts, ...made });
      this.broken = false;
    } catch (thrown) {
      console.error(thrown);
      this.broken = true;
    }
  }
}
