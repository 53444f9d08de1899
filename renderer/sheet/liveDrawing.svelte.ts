import { untrack } from 'svelte';
import type { Language } from '../../core/base/language.ts';
import { Memory } from '../../core/base/memory.ts';
import type { Drawing } from '../../core/drawing/items.ts';
import {
  drawAsBuilt,
  planAsBuilt,
  type AsBuiltOptions,
} from '../../core/drawing/papers/asBuilt.ts';
import { drawCommittee } from '../../core/drawing/papers/committee.ts';
import { drawLayingOut } from '../../core/drawing/papers/layingOut.ts';
import type { Template } from '../../core/drawing/parts/headStrip.ts';
import type { PaperChoice } from '../state/exportPaper.ts';
import type { Folder } from '../state/folder.svelte.ts';
import { speech } from '../state/language.svelte.ts';
import { preferences } from '../state/preferences.svelte.ts';
import type { NewestRevision } from './newestRevision.svelte.ts';
import type { PrintCopies } from '../state/printCopies.svelte.ts';
import type { Templates } from '../state/templates.svelte.ts';
import { fonts } from './fonts.ts';

/** Milliseconds of rest after a letter before a sheet that takes long is drawn anew. */
const pause = 40;
/** Milliseconds that drawing may take of the frame that shows the letter. */
const shareOfFrame = 6;
/** A sheet on screen is no paper that was made: it has no number of its own. */
const paperId = '0'.repeat(32);

/** Does something before the next frame is painted; gives what takes it back. */
function withNextFrame(run: () => void): () => void {
  const frame = requestAnimationFrame(run);
  return () => cancelAnimationFrame(frame);
}

function after(milliseconds: number, run: () => void): () => void {
  const timer = setTimeout(run, milliseconds);
  return () => clearTimeout(timer);
}

/** The chosen sheet of an open folder, drawn anew as its record changes. */
export class LiveDrawing {
  paper = $state<PaperChoice>('A4');
  /** What was chosen for the sheet; until then it speaks as the interface does. */
  chosenLanguage = $state<Language | undefined>();
  /** Of the sheet for the committee, where it shall speak two. */
  chosenSecond = $state<Language | undefined>();
  drawing = $state.raw<Drawing | undefined>();
  /** The program could not draw the record: what is shown is the drawing of before. */
  broken = $state(false);

  /** Pages and scale while an edge is held: they may not jump under the hand. */
  #held: AsBuiltOptions['plan'] | undefined;

  /** Milliseconds that the last drawing took. */
  #took = Infinity;
  #memory = new Memory();
  /** What the memory's drawings were made with: what they remember has its labels. */
  #headed: Template | undefined;

  readonly #folder: Folder;
  readonly #copies: Pick<PrintCopies, 'imagesFor'>;
  readonly #newest: Pick<NewestRevision, 'in'>;
  readonly #templates: Pick<Templates, 'usual'>;
  /** ISO 8601. */
  readonly #madeAt: string;

  /** To be made while a component starts, which it lives and ends with. */
  constructor(
    folder: Folder,
    madeAt: string,
    copies: Pick<PrintCopies, 'imagesFor'>,
    newest: Pick<NewestRevision, 'in'>,
    templates: Pick<Templates, 'usual'>,
  ) {
    this.#folder = folder;
    this.#copies = copies;
    this.#newest = newest;
    this.#templates = templates;
    this.#madeAt = madeAt;
    $effect(() => this.#plan());
  }

  get language(): Language {
    return this.chosenLanguage ?? speech.language;
  }

  /** Another than the first. */
  get second(): Language | undefined {
    return this.chosenSecond === this.language ? undefined : this.chosenSecond;
  }

  /** Keeps pages and scale as they are now, until they are let go. */
  hold() {
    if (this.paper !== 'A4' && this.paper !== 'A3') return;
    const { desk, model, judgement, guidelines } = this.#folder;
    try {
      this.#held = planAsBuilt(desk.record, model, {
        paper: this.paper,
        ...preferences.sheetShape,
        fonts,
        language: this.language,
        judgement,
        guidelines,
        ...this.#head(),
      });
    } catch {
      // What cannot be drawn is said by the drawing itself.
      this.#held = undefined;
    }
  }

  /** Chooses pages and scale anew with what is drawn next. */
  letGo() {
    this.#held = undefined;
    this.#draw(this.#folder.desk.record, this.#folder.model);
  }

  /**
   * The sheet changes in the frame that shows the letter as long as drawing is quick; else letters
   * come first, and the sheet in the pause after them.
   */
  #plan() {
    const { desk, model, judgement, guidelines, saving } = this.#folder;
    void [
      judgement,
      guidelines,
      this.paper,
      this.language,
      this.second,
      preferences.sheetShape,
      saving.shownRevision,
      this.#templates.usual,
      this.#newest.in(this.language),
      this.#copies.imagesFor(desk.record),
    ];
    const draw = () => this.#draw(desk.record, model);
    const drawn = untrack(() => this.drawing) !== undefined;
    return drawn && this.#took <= shareOfFrame
      ? withNextFrame(draw)
      : after(drawn && !this.#held ? pause : 0, draw);
  }

  #draw(record: Folder['desk']['record'], model: Folder['model']) {
    const { judgement } = this.#folder;
    const head = this.#head();
    const plan = this.#held && { plan: this.#held };
    const images = this.#copies.imagesFor(record);
    const { language } = this;
    const made = {
      judgement,
      language,
      madeAt: this.#madeAt,
      paperId,
      images,
      ...this.#standing(),
      ...head,
      ...plan,
    };
    const options = { ...made, fonts, memory: this.#memory };
    const start = performance.now();
    try {
      this.drawing = this.#drawn(record, model, options);
      this.#took = performance.now() - start;
      this.broken = false;
    } catch (thrown) {
      console.error(thrown);
      this.broken = true;
    }
  }

  /** What organisation heads the sheet; another one than before begins a new memory. */
  #head(): Pick<AsBuiltOptions, 'template'> {
    const { usual } = this.#templates;
    if (usual !== this.#headed) this.#memory = new Memory();
    this.#headed = usual;
    return usual ? { template: usual } : {};
  }

  /** Which revision is shown, with its hash as its paper has it; else that it is a draft. */
  #standing(): Pick<AsBuiltOptions, 'revision' | 'recordHash' | 'revisions' | 'draft'> {
    const { isLifted, saving } = this.#folder;
    const revision = isLifted ? undefined : saving.shownRevision;
    const newest = this.#newest.in(this.language);
    const told = newest && { revisions: newest.revisions };
    if (revision === undefined) return { ...told, draft: true };
    const { recordHash } = newest?.revision === revision ? newest : {};
    return { ...told, revision, ...(recordHash !== undefined && { recordHash }) };
  }

  /** The chosen sheet of a record. */
  #drawn(
    record: Folder['desk']['record'],
    model: Folder['model'],
    options: Omit<AsBuiltOptions, 'paper'>,
  ): Drawing {
    const { judgement, guidelines } = this.#folder;
    const { practice } = judgement;
    const { paper, language, second } = this;
    if (paper === 'layingOut') return drawLayingOut(record, model, { ...options, practice });
    if (paper === 'committee') {
      const languages = second === undefined ? [language] : [language, second];
      return drawCommittee(record, model, { ...options, practice, guidelines, languages });
    }
    return drawAsBuilt(record, model, { ...options, ...preferences.sheetShape, guidelines, paper });
  }
}
