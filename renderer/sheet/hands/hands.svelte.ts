import type { DepthM, Metres } from '../../../core/base/units.ts';
import type { Folder } from '../../state/folder.svelte.ts';
import { dragged } from '../../state/hands/dragged.ts';
import { findHandle, type Handle } from '../../state/hands/handle.ts';
import { handlesOf } from '../../state/hands/handlesOf.ts';
import { nudged, snapped } from '../../state/hands/snap.ts';
import type { LiveDrawing } from '../liveDrawing.svelte.ts';

/** An edge under the hand, and where it would come to stand. */
export interface Held {
  readonly handle: Handle;
  readonly depthM: DepthM;
  readonly apart: boolean;
}

/** The edges of an open well: which one is chosen, which is held, and what moving it does. */
export class Hands {
  /** The edge that the keyboard acts on. */
  chosen = $state<string | undefined>();
  held = $state.raw<Held | undefined>();
  /** An edge was tried that is computed and cannot be moved. */
  refused = $state(false);
  /** What was dropped just now is no click on what lies there. */
  justDropped = false;
  /** While an edge is held, those of before: what the hand holds may not vanish under it. */
  #still = $state.raw<readonly Handle[] | undefined>();
  readonly all: readonly Handle[] = $derived.by(
    () => this.#still ?? handlesOf(this.#folder.desk.record, this.#folder.model, this.chosen),
  );

  readonly #folder: Folder;
  readonly #live: Pick<LiveDrawing, 'hold' | 'letGo'>;
  /** Counts runs of nudges: the nudges of one run are one step for undo. */
  #run = 0;
  /** The folder's turn at the last nudge of a run: undo by other hands ends the run. */
  #nudgedAt: number | undefined;

  constructor(folder: Folder, live: Pick<LiveDrawing, 'hold' | 'letGo'>) {
    this.#folder = folder;
    this.#live = live;
  }

  /** Takes hold of an edge; gives whether it can be moved. */
  take(handle: Handle): boolean {
    this.settle();
    this.chosen = handle.id;
    this.refused = handle.writes.length === 0;
    if (this.refused) return false;
    this.#still = this.all;
    this.held = { handle, depthM: handle.depthM, apart: false };
    this.#live.hold();
    return true;
  }

  /** Moves what is held to the nearest step; the sheet shows it, and nothing is written yet. */
  move(depthM: DepthM, stepM: Metres, apart: boolean) {
    if (!this.held) return;
    const { handle } = this.held;
    const toM = snapped(handle, depthM, stepM);
    if (toM === this.held.depthM && apart === this.held.apart) return;
    this.held = { handle, depthM: toM, apart };
    this.#folder.lift((desk) => dragged(desk, handle, toM, apart));
  }

  /** Lets go where the edge stands now: one step for undo, or none where it stays. */
  drop() {
    if (!this.held) return;
    const { handle, depthM, apart } = this.held;
    this.#folder.lift();
    this.#folder.edit((desk) => dragged(desk, handle, depthM, apart));
    this.#release();
    this.#follow(handle, depthM);
  }

  /** Gives the edge back: all is as before. */
  cancel() {
    this.#folder.lift();
    this.#release();
  }

  #release() {
    this.held = undefined;
    this.#still = undefined;
    this.#live.letGo();
    this.justDropped = true;
    setTimeout(() => (this.justDropped = false));
  }

  /** An edge that parted from its neighbour, or met one, goes on under the same hand. */
  #follow(handle: Handle, depthM: DepthM) {
    const paths = handle.writes.map(({ path }) => path);
    const there = this.all.filter((one) => one.depthM === depthM);
    const next = findHandle(there, handle.id, paths) ?? findHandle(this.all, handle.id, paths);
    this.chosen = next?.id ?? handle.id;
  }

  /** Moves an edge a step up (-1) or down (+1). */
  nudge(handle: Handle, by: -1 | 1, stepM: Metres, apart: boolean) {
    this.refused = handle.writes.length === 0;
    if (this.refused) return;
    const toM = nudged(handle, by, stepM);
    if (toM === handle.depthM) return;
    this.#folder.edit((desk) => dragged(desk, handle, toM, apart), `nudge ${this.#run}`);
    this.#nudgedAt = this.#folder.turn;
    this.#follow(handle, toM);
  }

  /** Takes the nudges since the edge was chosen back; gives whether there were any. */
  takeBack(): boolean {
    const any = this.#nudgedAt === this.#folder.turn;
    this.settle();
    if (any) this.#folder.undo();
    return any;
  }

  /** Ends a run of nudges: the next one is a step of its own. */
  settle() {
    this.refused = false;
    if (this.#nudgedAt === undefined) return;
    this.#nudgedAt = undefined;
    this.#run += 1;
    this.#folder.settle();
  }
}
