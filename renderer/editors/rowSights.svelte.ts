import { untrack } from 'svelte';
import type { Finding } from '../../core/base/finding.ts';
import type { RecordPath } from '../../core/base/recordPath.ts';
import { typedWithin, type Desk } from '../state/desk.ts';
import type { Folder } from '../state/folder.svelte.ts';
import { rowPath, rowsAt } from '../state/rows.ts';
import { liesIn } from '../state/selection.ts';
import type { RowLook, TableLooks, TableShape } from './chapter.ts';
import { findingsAt, type SaidFinding } from './rowFindings.ts';

interface Held {
  readonly folder: Folder;
  readonly table: TableShape;
  readonly list: RecordPath;
}

/** What one row shows. */
class RowSight {
  /** The desk as of the last change that this row shows. */
  desk: Desk;
  /** What was found on the row, the gravest first. */
  found: readonly SaidFinding[];
  /** What the program makes of the row. */
  looks: readonly RowLook[];
  /** Text of the column that is computed. */
  computed: string;

  constructor(
    desk: Desk,
    found: readonly SaidFinding[],
    looks: readonly RowLook[],
    computed: string,
  ) {
    this.desk = $state.raw(desk);
    this.found = $state.raw(found);
    this.looks = $state.raw(looks);
    this.computed = $state(computed);
  }
}

/** One and the same list, so that a row of which nothing is said is seen not to have changed. */
const nothing: readonly RowLook[] = [];

const isSame = (one: readonly RowLook[], other: readonly RowLook[]) =>
  one === other || JSON.stringify(one) === JSON.stringify(other);

/**
 * What the rows of a table show, each apart: a letter in one row must not make all the cells of
 * the others ask whether they changed. So rows do not hear of the desk by themselves. They are told
 * when something of their own became another.
 */
export class RowSights {
  /** How many rows the record has; the one that waits to be filled is not among them. */
  count: number;
  /** What the program makes of the rows as a whole. */
  whole: readonly RowLook[];
  readonly #held: () => Held;
  /** By index, as rows asked for them. */
  readonly #sights: RowSight[] = [];
  #desk: Desk;
  /** Something was found on the table when it was last looked at. */
  #hadFindings = true;
  #looks: TableLooks['rows'] | undefined;

  /** To be made while a component starts, which it lives and ends with. */
  constructor(held: () => Held) {
    const { folder, list } = untrack(held);
    this.#held = held;
    this.#desk = untrack(() => folder.desk);
    this.count = $state(rowsAt(this.#desk, list).length);
    const end = folder.onDesk((desk) => this.#take(desk));
    $effect(() => end);
    this.whole = $state.raw(nothing);
    $effect.pre(() => this.#judge(held().folder.findings));
    $effect.pre(() => this.#look());
  }

  /** What the row with an index shows; the waiting row's is one past the last. */
  at(index: number): RowSight {
    const known = this.#sights[index];
    if (known) return known;
    const { folder, list } = this.#held();
    const made = untrack(() => {
      const found = findingsAt(folder.findings, rowPath(list, index));
      const looks = this.#looks?.get(index) ?? nothing;
      return new RowSight(this.#desk, found, looks, this.#computedAt(index));
    });
    this.#sights[index] = made;
    return made;
  }

  /** The waiting row starts with what stands in others: it changes with any of them. */
  #take(desk: Desk) {
    const { list } = this.#held();
    const before = this.#desk;
    const [rows, rowsBefore] = [rowsAt(desk, list), rowsAt(before, list)];
    this.#desk = desk;
    this.count = rows.length;
    if (rows === rowsBefore && desk.typed === before.typed) return;
    this.#sights.forEach((sight, index) => {
      const base = rowPath(list, index);
      const changed =
        index >= rows.length ||
        rows[index] !== rowsBefore[index] ||
        typedWithin(desk, base) !== typedWithin(sight.desk, base);
      if (changed) sight.desk = desk;
    });
  }

  /** Looks at what is known of the rows only once the model was made anew. */
  #judge(findings: readonly Finding[]) {
    const { list, table } = this.#held();
    const here = findings.filter(({ path }) => liesIn(path, list));
    if (here.length > 0 || this.#hadFindings)
      this.#sights.forEach((sight, index) => {
        const found = findingsAt(here, rowPath(list, index));
        if (
          !isSame(
            found,
            untrack(() => sight.found),
          )
        )
          sight.found = found;
      });
    this.#hadFindings = here.length > 0;
    if (table.computed)
      this.#sights.forEach((sight, index) => (sight.computed = this.#computedAt(index)));
  }

  /** Asks the table's own look at the rows whenever the model was made anew. */
  #look() {
    const { folder, table, list } = this.#held();
    if (!table.looks) return;
    const { rows, whole } = table.looks(folder.desk.record, folder.model, list);
    this.#looks = rows;
    untrack(() => {
      if (!isSame(whole, this.whole)) this.whole = whole;
      this.#sights.forEach((sight, index) => {
        const looks = rows.get(index) ?? nothing;
        if (!isSame(looks, sight.looks)) sight.looks = looks;
      });
    });
  }

  #computedAt(index: number): string {
    const { folder, table, list } = this.#held();
    return table.computed?.text(folder.model, rowPath(list, index)) ?? '';
  }
}
