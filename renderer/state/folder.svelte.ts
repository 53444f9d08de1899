import type { RecordPath } from '../../core/base/recordPath.ts';
import type { StoredWell } from '../../core/contract/calls.ts';
import type { PageHost } from '../../core/contract/host.ts';
import { resolveWell } from '../../core/model/resolveWell.ts';
import { deepFreeze } from '../../core/record/freeze.ts';
import type { WellModel } from '../../core/model/wellModel.ts';
import type { WellRecord } from '../../core/record/schema.ts';
import type { Desk } from './desk.ts';
import { begin, push, redo, settle, undo, type History } from './history.ts';
import { Saving } from './saving.svelte.ts';

/** How a folder lies open besides its record. */
interface Lying {
  readonly typed: Desk['typed'];
  readonly readOnly: boolean;
}

/** One well as it lies open: its desk with undo, what is selected, and how saving goes. */
export class Folder {
  readonly id: string;
  /** Nothing can be changed: the archive can only be read. */
  readonly readOnly: boolean;
  readonly saving: Saving;
  selected = $state<RecordPath | undefined>();
  /** The field that was asked for: it takes the typing hand as soon as it is shown. */
  goal = $state.raw<{ readonly path: RecordPath } | undefined>();
  /** The field under the typing hand: nothing is said of it until the hand leaves it. */
  writing = $state<RecordPath | undefined>();
  /** Counts what replaces texts under the typing hand: undo, redo, another revision. */
  turn = $state(0);
  #history: History<Desk>;
  /** What is shown while an edge is held: no step yet, and nothing of it is saved. */
  #lifted = $state.raw<Desk | undefined>();

  #good: WellModel = resolveWell({ schemaVersion: 1 });
  readonly #resolved;

  constructor(host: PageHost, stored: StoredWell, { typed, readOnly }: Lying) {
    const record = deepFreeze(stored.record);
    this.id = stored.id;
    this.saving = new Saving(host, { ...stored, record });
    this.#history = $state.raw(begin<Desk>({ record, typed }));
    this.readOnly = readOnly;
    this.#resolved = $derived(this.#resolve(this.desk.record));
  }

  get desk(): Desk {
    return this.#lifted ?? this.#history.present;
  }

  /** The record as geometry with its findings. */
  get model(): WellModel {
    return this.#resolved.model;
  }

  /** Set when the program could not resolve the record: the model is that of before. */
  get defect(): string | undefined {
    return this.#resolved.defect;
  }

  get canUndo(): boolean {
    return this.#history.past.length > 0;
  }

  get canRedo(): boolean {
    return this.#history.future.length > 0;
  }

  /** Makes a step; steps with the same key in a row are one for undo. */
  edit(change: (desk: Desk) => Desk, key?: string) {
    if (!this.readOnly) this.#move(push(this.#history, change(this.#history.present), key));
  }

  /** Shows what a change would make of the last step; without a change, that step again. */
  lift(change?: (desk: Desk) => Desk) {
    this.#lifted = change && !this.readOnly ? change(this.#history.present) : undefined;
  }

  /** Ends a run of steps that count as one. */
  settle() {
    this.#history = settle(this.#history);
  }

  undo() {
    this.#jump(undo(this.#history));
  }

  redo() {
    this.#jump(redo(this.#history));
  }

  /** Selects a place and asks its field to take the typing hand. */
  goTo(path: RecordPath) {
    this.selected = path;
    this.goal = { path };
  }

  /** Opens the newest revision; what was typed here stays one undo away. */
  async loadNewest() {
    const record = await this.saving.takeNewest();
    if (record) this.#jump(push(this.#history, { record, typed: {} }));
  }

  /** A defect in resolving must not take the page away from somebody who types. */
  #resolve(record: WellRecord): { model: WellModel; defect?: string } {
    try {
      this.#good = resolveWell(record);
      return { model: this.#good };
    } catch (thrown) {
      return { model: this.#good, defect: String(thrown) };
    }
  }

  #jump(next: History<Desk>) {
    this.#move(next);
    this.turn += 1;
  }

  #move(next: History<Desk>) {
    this.#history = next;
    this.#lifted = undefined;
    this.saving.changed(next.present.record);
  }
}
