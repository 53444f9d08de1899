import { sortKey } from '../../base/text/sortKey.ts';
import type { BinderWell } from './binderWell.ts';

type Sorted = Pick<BinderWell, 'id' | 'district' | 'village' | 'number' | 'name'>;
type Key = (well: Sorted) => readonly string[];

/** What is not known comes last. */
function keyOf(text: string): string {
  return text === '' ? '\u{10FFFF}' : sortKey(text);
}

/** Wells by some texts in turn, each once read; the same ones always in the same order. */
export function inOrder<W extends Sorted>(wells: readonly W[], keysOf: Key): W[] {
  const keyed = wells.map((well) => ({ well, keys: [...keysOf(well).map(keyOf), well.id] }));
  keyed.sort(({ keys: a }, { keys: b }) => {
    const at = a.findIndex((one, n) => one !== b[n]);
    if (at < 0) return 0;
    return a[at]! < b[at]! ? -1 : 1;
  });
  return keyed.map(({ well }) => well);
}

/** The order of a binder: district, village, number as people count. */
export function inBinderOrder<W extends Sorted>(wells: readonly W[]): W[] {
  return inOrder(wells, ({ district, village, number, name }) => [district, village, number, name]);
}

export interface District<W = BinderWell> {
  /** Empty of wells of which nobody wrote the district. */
  readonly name: string;
  readonly wells: readonly W[];
}

/** Wells in the binder's order, district by district. */
export function districtsOf<W extends Sorted>(wells: readonly W[]): District<W>[] {
  const found = new Map<string, W[]>();
  for (const well of wells) {
    const there = found.get(well.district);
    if (there) there.push(well);
    else found.set(well.district, [well]);
  }
  return [...found].map(([name, own]) => ({ name, wells: own }));
}
