import type { Finding } from '../../core/base/finding.ts';
import { diff } from '../../core/base/patch.ts';
import { writePath, type RecordPath } from '../../core/base/recordPath.ts';
import type { Move, OpenedWell } from '../../core/contract/calls.ts';
import type { PageHost } from '../../core/contract/host.ts';
import { resolveWell } from '../../core/model/resolveWell.ts';
import type { WellModel } from '../../core/model/wellModel.ts';
import type { Judgement } from '../../core/practice/judgeWell.ts';
import type { Practice, PracticeFile } from '../../core/practice/practice.ts';
import type { WellRecord } from '../../core/record/schema.ts';
import { guidelinesOf } from '../../core/water/guidelines/chooseGuidelines.ts';
import type { GuidelineFile, GuidelineSet } from '../../core/water/guidelines/guidelineSet.ts';
import type { Desk } from './desk.ts';
import { joins, push, redo, settle, undo, type History } from './history.ts';
import { Judging } from './judging.svelte.ts';
import { placeOf } from './merge.ts';
import { replay } from './replay.ts';
import { Saving } from './saving.svelte.ts';
import { liesIn } from './selection.ts';

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
  /** Counts what replaces texts under the typing hand: undo, redo, another window. */
  turn = $state(0);
  #history: History<Desk>;
  /** What is shown while an edge is held: no step yet, and nothing of it is saved. */
  #lifted = $state.raw<Desk | undefined>();

  #hearers: readonly ((desk: Desk) => void)[] = [];
  #good: WellModel = resolveWell({ schemaVersion: 1 });
  readonly #resolved;
  readonly #judging: Judging;
  readonly #findings;
  readonly #own: () => readonly PracticeFile[];
  readonly #ownGuidelines: () => readonly GuidelineFile[];
  readonly #guidelines: GuidelineSet;

  /** `own`, `ownGuidelines`: practices and guideline values of the user, that the record may name. */
  constructor(
    host: PageHost,
    well: OpenedWell,
    readOnly = false,
    own: () => readonly PracticeFile[] = () => [],
    ownGuidelines: () => readonly GuidelineFile[] = () => [],
  ) {
    const { base, moves } = well.working;
    this.id = well.id;
    this.#history = $state.raw(replay(base, moves));
    this.saving = new Saving(host, well, this.#history.present, (desk) => this.#takeIn(desk));
    this.readOnly = readOnly;
    this.#resolved = $derived(this.#resolve(this.desk.record));
    this.#own = own;
    this.#ownGuidelines = ownGuidelines;
    const named = $derived(this.desk.record.identity?.guidelines);
    this.#guidelines = $derived(guidelinesOf(named, ownGuidelines()));
    this.#judging = new Judging(
      () => ({ record: this.desk.record, model: this.model, guidelines: this.guidelines }),
      own,
    );
    this.#findings = $derived([...this.model.findings, ...this.judgement.findings]);
  }

  get desk(): Desk {
    return this.#lifted ?? this.#history.present;
  }

  /** What lies here is shown while an edge is held, and is no step yet. */
  get isLifted(): boolean {
    return this.#lifted !== undefined;
  }

  /** The record as geometry with its findings. */
  get model(): WellModel {
    return this.#resolved.model;
  }

  /** The practice that the well is judged by, which may not be the one that its record names. */
  get practice(): Practice {
    return this.#judging.practice;
  }

  /** The well judged by its practice. */
  get judgement(): Judgement {
    return this.#judging.judgement;
  }

  /** What is said of the well: the model's findings, and those of the rules. */
  get findings(): readonly Finding[] {
    return this.#findings;
  }

  /** The practices of the user, that the record may name. */
  get own(): readonly PracticeFile[] {
    return this.#own();
  }

  /** The set that samples are compared with, which may not be the one that its record names. */
  get guidelines(): GuidelineSet {
    return this.#guidelines;
  }

  /** The user's sets of guideline values, that the record may name. */
  get ownGuidelines(): readonly GuidelineFile[] {
    return this.#ownGuidelines();
  }

  /** Set when the program could not resolve or judge the record: what is shown is of before. */
  get defect(): string | undefined {
    return this.#resolved.defect ?? this.#judging.defect;
  }

  /**
   * Calls each time that another desk lies here, before anything is shown of it; gives what ends
   * that. Who shows parts of the desk learns so which of them to show anew.
   */
  onDesk(hearer: (desk: Desk) => void): () => void {
    this.#hearers = [...this.#hearers, hearer];
    return () => (this.#hearers = this.#hearers.filter((other) => other !== hearer));
  }

  get canUndo(): boolean {
    return this.#history.past !== undefined;
  }

  get canRedo(): boolean {
    return this.#history.future !== undefined;
  }

  /** Makes a step; steps with the same key in a row are one for undo. */
  edit(change: (desk: Desk) => Desk, key?: string) {
    if (this.readOnly) return;
    const kind = joins(this.#history, key) ? 'amend' : 'edit';
    this.#move(kind, push(this.#history, change(this.#history.present), key));
  }

  /** Shows what a change would make of the last step; without a change, that step again. */
  lift(change?: (desk: Desk) => Desk) {
    this.#lay(this.#history, change && !this.readOnly ? change(this.#history.present) : undefined);
  }

  /** Ends a run of steps that count as one. */
  settle() {
    this.#history = settle(this.#history);
  }

  undo() {
    this.#jump('undo', undo(this.#history));
  }

  redo() {
    this.#jump('redo', redo(this.#history));
  }

  /** Selects a place and asks its field to take the typing hand. */
  goTo(path: RecordPath) {
    this.selected = path;
    this.goal = { path };
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

  #lay(history: History<Desk>, lifted?: Desk) {
    this.#history = history;
    this.#lifted = lifted;
    for (const hearer of this.#hearers) hearer(this.desk);
  }

  #jump(kind: Move['kind'], next: History<Desk>) {
    this.#move(kind, next);
    this.turn += 1;
  }

  #move(kind: Move['kind'], next: History<Desk>) {
    const before = this.#history.present;
    this.#lay(next);
    if (next.present !== before) this.saving.moved(kind, before, next.present);
  }

  /** Another window's work is a step here too; the text under the hand stays unless that changed. */
  #takeIn(desk: Desk) {
    const changes = diff(this.#history.present, desk);
    this.#lay(push(this.#history, desk));
    if (changes.some((one) => liesIn(this.writing, writePath(placeOf(one))))) this.turn += 1;
  }
}
