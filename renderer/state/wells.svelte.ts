import type { Position } from '../../core/base/geo/ellipsoid.ts';
import type { Refusal } from '../../core/base/result.ts';
import type { PageHost } from '../../core/contract/host.ts';
import type { CallName, Gives, Takes } from '../../core/contract/calls.ts';
import type {
  FoundWells,
  ListChoices,
  ListOrder,
  ListRow,
  MappedWells,
  WellFilter,
} from '../../core/contract/listShape.ts';
import type { Backdrop } from '../../core/contract/backdropShape.ts';

/** Rows of one answer. */
const chunk = 100;
/** Milliseconds without a letter after which a search is asked for. */
const pause = 150;

/** Where a map was left: its centre, pixels a metre, and where the centre stands. */
export interface KeptSight {
  readonly centre: Position;
  readonly k: number;
  readonly x: number;
  readonly y: number;
}

/** The archive's list and map: what is wanted of it, and what of it is here. */
export class Wells {
  filter = $state.raw<WellFilter>({});
  order = $state.raw<ListOrder>({ by: 'number' });
  /** How many fit; absent until the first answer. */
  total = $state.raw<number | undefined>();
  /** Wells that are still to be gone through. */
  uncounted = $state.raw(0);
  map = $state.raw<MappedWells | undefined>();
  choices = $state.raw<ListChoices | undefined>();
  backdrops = $state.raw<readonly Backdrop[]>([]);
  /** Wells in the bin. */
  binned = $state.raw(0);
  /** The well that list and map have chosen. */
  chosen = $state.raw<string | undefined>();
  refusal = $state.raw<Refusal | undefined>();
  mapShown = $state(true);
  /** How far the list was scrolled, to be there again. */
  scrolled = 0;
  /** Where the map was moved to by hand; absent while it shows all wells. */
  sight: KeptSight | undefined;

  /** The rows that are here, by their place in the list. */
  #rows = $state.raw<Readonly<Record<number, ListRow>>>({});
  /** Chunks that were asked for. */
  #asked: number[] = [];
  /** Rises with every change of what is wanted; answers to what was wanted before are dropped. */
  #wanted = 0;
  /** The like for the map, which has no order, and for what belongs to the archive. */
  #finding = 0;
  #reading = 0;
  #timer: ReturnType<typeof setTimeout> | undefined;
  #going = false;
  readonly #host: PageHost;

  constructor(host: PageHost) {
    this.#host = host;
  }

  async #ask<N extends CallName>(name: N, args: Takes<N>): Promise<Gives<N> | undefined> {
    const answer = await this.#host.send(name, args);
    if (answer.ok) return answer.value;
    this.refusal = answer.error;
    return undefined;
  }

  row(at: number): ListRow | undefined {
    return this.#rows[at];
  }

  /** The chosen well, as far as list or map have it here. */
  get chosenWell(): { readonly id: string; readonly number: string } | undefined {
    const { chosen } = this;
    if (chosen === undefined) return undefined;
    const listed = Object.values(this.#rows).find(({ id }) => id === chosen);
    return listed ?? this.map?.wells.find(({ id }) => id === chosen);
  }

  get filtered(): boolean {
    return Object.keys(this.filter).length > 0;
  }

  /** Asks again for all that is shown; what is here stays until the answers come. */
  async read(): Promise<void> {
    await Promise.all([this.#find(), this.#readArchive()]);
    void this.#goThrough();
  }

  /** What fits the filter: its first rows, then its map. */
  async #find(): Promise<void> {
    const finding = (this.#finding += 1);
    await this.#list();
    if (finding !== this.#finding) return;
    const map = await this.#ask('list.map', { filter: this.filter });
    if (finding === this.#finding) this.map = map ?? this.map;
  }

  /** The first rows in the order that is wanted. */
  async #list(): Promise<void> {
    clearTimeout(this.#timer);
    this.#wanted += 1;
    this.#asked = [];
    this.refusal = undefined;
    await this.#load(Math.floor(this.#firstSeen / chunk), true);
  }

  /** What belongs to the archive, whatever the filter. */
  async #readArchive(): Promise<void> {
    const reading = (this.#reading += 1);
    const [choices, backdrops, bin] = await Promise.all([
      this.#ask('list.choices', {}),
      this.#ask('backdrops.list', {}),
      this.#ask('bin.list', {}),
    ]);
    if (reading !== this.#reading) return;
    this.choices = choices ?? this.choices;
    this.backdrops = backdrops ?? this.backdrops;
    this.binned = bin?.length ?? this.binned;
  }

  #firstSeen = 0;

  /** Sees to it that the rows from one to another are here or on their way. */
  need(first: number, last: number): void {
    this.#firstSeen = first;
    for (let at = Math.floor(first / chunk); at <= Math.floor(last / chunk); at += 1)
      void this.#load(at, false);
  }

  async #load(at: number, anew: boolean): Promise<void> {
    if (this.#asked.includes(at)) return;
    this.#asked.push(at);
    const wanted = this.#wanted;
    const { filter, order } = this;
    const from = at * chunk;
    const found = await this.#ask('list.find', { filter, order, from, limit: chunk });
    if (wanted === this.#wanted && found) this.#take(found, from, anew);
  }

  #take({ rows, total, uncounted }: FoundWells, from: number, anew: boolean): void {
    const got = Object.fromEntries(rows.map((row, at) => [from + at, row]));
    this.#rows = anew ? got : { ...this.#rows, ...got };
    this.total = total;
    this.uncounted = uncounted;
  }

  /** Has wells gone through, a few at a time, until none is left; then reads the list anew. */
  async #goThrough(): Promise<void> {
    if (this.uncounted === 0 || this.#going) return;
    this.#going = true;
    while (this.uncounted > 0) {
      const rest = await this.#ask('list.goThrough', {});
      if (!rest || rest.left >= this.uncounted) break;
      this.uncounted = rest.left;
    }
    this.#going = false;
    if (this.uncounted === 0) await this.read();
  }

  /** Changes parts of the filter; those without a value go. */
  want(parts: { readonly [K in keyof WellFilter]?: WellFilter[K] | undefined }): Promise<void> {
    const next = { ...this.filter, ...parts };
    this.filter = Object.fromEntries(
      Object.entries(next).filter(
        ([, value]) =>
          value !== undefined && value !== '' && !(Array.isArray(value) && value.length === 0),
      ),
    );
    this.#firstSeen = 0;
    this.scrolled = 0;
    return this.#find();
  }

  /** Searches once the hand rests. */
  search(text: string): void {
    clearTimeout(this.#timer);
    this.filter = { ...this.filter, search: text };
    this.#timer = setTimeout(
      () => void this.want({ search: text.trim() === '' ? undefined : text }),
      pause,
    );
  }

  clear(): Promise<void> {
    this.filter = {};
    return this.want({});
  }

  /** Puts the list in an order; the same one again turns it round. */
  async sort(by: ListOrder['by']): Promise<void> {
    const down = this.order.by === by && !this.order.down;
    this.order = { by, down };
    await this.#list();
  }

  /** Which row a well stands in now. */
  async rankOf(id: string): Promise<number | undefined> {
    const { filter, order } = this;
    return (await this.#ask('list.rank', { filter, order, id }))?.at;
  }
}
