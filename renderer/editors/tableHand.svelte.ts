import type { RecordPath } from '../../core/base/recordPath.ts';
import type { Folder } from '../state/folder.svelte.ts';
import { rangeOf, within, type RowRange } from '../state/rowEdits/range.ts';
import { rowPath, shownInRow, type Rows } from '../state/rows.ts';
import { liesIn } from '../state/selection.ts';
import { rowsOf, type TableShape } from './chapter.ts';
import { RowSights } from './rowSights.svelte.ts';

interface Held {
  readonly folder: Folder;
  readonly table: TableShape;
  readonly list: RecordPath;
}

/**
 * Where the hand is in a table and what it has marked. A position counts rows as they are shown;
 * an index is a row's in the record, that of the waiting row being one past the last.
 */
export class TableHand {
  /** Before which row the waiting row stands while one is inserted; at the end where undefined. */
  place = $state<number | undefined>();
  /** The row from which marking began. */
  anchor = $state<number | undefined>();
  readonly sights: RowSights;
  readonly #held: () => Held;

  /** To be made while a component starts, which it lives and ends with. */
  constructor(held: () => Held) {
    this.#held = held;
    this.sights = new RowSights(held);
  }

  get rows(): Rows {
    const { table, list } = this.#held();
    const rows = rowsOf(table, list);
    return this.place === undefined ? rows : { ...rows, place: this.place };
  }

  /** Rows of the record; the waiting row stands at this position unless it is inserted. */
  get count(): number {
    return this.sights.count;
  }

  get waiting(): number {
    return this.place ?? this.count;
  }

  indexAt(position: number): number {
    if (position === this.waiting) return this.count;
    return position < this.waiting ? position : position - 1;
  }

  positionOf(index: number): number {
    if (index >= this.count) return this.waiting;
    return index < this.waiting ? index : index + 1;
  }

  /** Position of the row that is chosen in the folder. */
  get chosen(): number | undefined {
    const { folder, list } = this.#held();
    for (let index = 0; index <= this.count; index += 1)
      if (liesIn(folder.selected, rowPath(list, index))) return this.positionOf(index);
    return undefined;
  }

  /** Rows that a deed is for, by their index: those marked, or the chosen one. */
  get range(): RowRange | undefined {
    const { chosen } = this;
    if (chosen === undefined) return undefined;
    const range = rangeOf(this.anchor ?? chosen, chosen);
    if (range.first === range.last) {
      const index = this.indexAt(chosen);
      return { first: index, last: index };
    }
    return within(range, this.count);
  }

  /** Rows that are marked together, by position; undefined while there is one at most. */
  get marked(): RowRange | undefined {
    const { chosen, anchor } = this;
    if (chosen === undefined || anchor === undefined || anchor === chosen) return undefined;
    return rangeOf(anchor, chosen);
  }

  /** Marks from where marking began, or from the chosen row, without moving the hand yet. */
  markFromHere() {
    this.place = undefined;
    this.anchor ??= this.chosen;
  }

  textAt(position: number, column: number): string {
    const { folder, table } = this.#held();
    const field = table.columns[column];
    return field ? shownInRow(folder.desk, this.rows, this.indexAt(position), field) : '';
  }

  /** Columns at which Enter stops. */
  get route(): number[] {
    const { columns } = this.#held().table;
    return [...columns.keys()].filter((column) => !columns[column]?.aside);
  }

  /** Where the waiting row goes on: behind what it starts with by itself. */
  get landing(): number {
    const { route } = this;
    return route.find((column) => this.textAt(this.waiting, column) === '') ?? route[0] ?? 0;
  }

  /** Nothing was typed in the waiting row so far. */
  get untouched(): boolean {
    const { folder, list } = this.#held();
    const base = rowPath(list, this.count);
    return !Object.keys(folder.desk.typed).some((key) => liesIn(key, base));
  }
}
