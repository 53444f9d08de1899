import type { Refusal } from '../../core/base/result.ts';
import type {
  ImportPlan,
  ImportProgress,
  OpenedImport,
  ShownRow,
  TableMapping,
  UnknownWords,
  WellChoice,
} from '../../core/contract/importsShape.ts';
import type { Place } from '../state/place.svelte.ts';
import { fileBase64 } from '../parts/fileBase64.ts';
import { mappingOf, matchesOf, type Layout, type Match } from './matching.ts';
import { withWord, wordOf } from './wordMatching.ts';

/** Files on their way into the archive. */
export class Importing {
  opened = $state.raw<OpenedImport | undefined>();
  matches = $state.raw<readonly Match[]>([]);
  /** First rows of each table as it is read now. */
  rows = $state.raw<readonly (readonly ShownRow[])[]>([]);
  plan = $state.raw<ImportPlan | undefined>();
  /** Words that were not known when it was last looked; they stay while they are chosen for. */
  words = $state.raw<readonly UnknownWords[]>([]);
  known = $state<WellChoice>('leave');
  single = $state.raw<Readonly<Record<string, WellChoice>>>({});
  /** Wells looked at or brought in so far, of how many. */
  progress = $state.raw<ImportProgress | undefined>();
  brought = $state.raw<{ created: number; revised: number; left: number } | undefined>();
  busy = $state(false);
  refusal = $state.raw<Refusal | undefined>();

  readonly #place: Place;
  readonly stopHearing: () => void;

  constructor(place: Place) {
    this.#place = place;
    this.stopHearing = place.host.onEvent(({ name, data }) => {
      if (name === 'import.progress' && this.busy) this.progress = data;
    });
  }

  get mapping(): TableMapping | undefined {
    return mappingOf(this.matches);
  }

  /** Tables of which rows are matched, and no column yet says which well they belong to. */
  get unnamed(): readonly Match[] {
    return this.matches.filter(({ well, kinds }) => well === '' && kinds.length > 0);
  }

  async #during<T>(work: () => Promise<T>): Promise<T> {
    [this.busy, this.refusal] = [true, undefined];
    try {
      return await work();
    } finally {
      [this.busy, this.progress] = [false, undefined];
    }
  }

  async open(files: readonly File[]) {
    await this.#during(async () => {
      const given = await Promise.all(
        files.map(async (file) => ({ name: file.name, data: await fileBase64(file) })),
      );
      const answer = await this.#place.host.send('imports.open', { files: given });
      if (!answer.ok) {
        this.refusal = answer.error;
        return;
      }
      this.opened = answer.value;
      this.rows = answer.value.tables.map(({ rows }) => rows);
      [this.plan, this.brought, this.words] = [undefined, undefined, []];
      this.use(answer.value.mapping);
    });
  }

  /** Takes a mapping for all tables. */
  use(mapping: TableMapping | undefined) {
    if (this.opened) this.matches = matchesOf(this.opened, mapping);
    [this.plan, this.words] = [undefined, []];
  }

  set(at: number, match: Match) {
    this.matches = this.matches.with(at, match);
    this.plan = undefined;
  }

  /** What was chosen for a word; null where it says nothing, undefined where nothing was chosen. */
  wordFor(unknown: UnknownWords, text: string): string | null | undefined {
    return wordOf(this.matches, unknown, text);
  }

  nameWord(unknown: UnknownWords, text: string, word: string | null | undefined) {
    this.matches = withWord(this.matches, unknown, { text, word });
    this.plan = undefined;
  }

  /** Reads a table in another way; its columns are matched anew where its headings changed. */
  async layOut(at: number, changed: Partial<Layout>) {
    const match = this.matches[at]!;
    const layout = { ...match.layout, ...changed };
    this.set(at, { ...match, layout });
    if (changed.encoding === undefined && changed.delimiter === undefined) return;
    const { encoding, delimiter } = layout;
    const answer = await this.#place.host.send('imports.rows', {
      table: at,
      ...(encoding ? { encoding } : {}),
      ...(delimiter ? { delimiter } : {}),
    });
    if (answer.ok) this.rows = this.rows.with(at, answer.value.rows);
    else this.refusal = answer.error;
  }

  #asked() {
    const { mapping } = this;
    return mapping ? { mapping } : {};
  }

  async look() {
    await this.#during(async () => {
      const answer = await this.#place.host.send('imports.look', this.#asked());
      if (answer.ok) [this.plan, this.words] = [answer.value, answer.value.words];
      else this.refusal = answer.error;
    });
    this.single = {};
  }

  async bring(reason: string) {
    await this.#during(async () => {
      const choices = { known: this.known, single: this.single };
      const said = reason.trim() === '' ? {} : { reason: reason.trim() };
      const asked = { ...this.#asked(), choices, ...said };
      const answer = await this.#place.host.send('imports.bring', asked);
      if (answer.ok) [this.brought, this.plan] = [answer.value, undefined];
      else this.refusal = answer.error;
    });
  }

  async stop() {
    await this.#place.host.send('imports.stop', {});
  }

  async keep(name: string): Promise<boolean> {
    const { mapping } = this;
    if (!mapping) return false;
    const answer = await this.#place.host.send('imports.keepMapping', { name, mapping });
    this.refusal = answer.ok ? undefined : answer.error;
    return answer.ok;
  }

  async close() {
    this.stopHearing();
    await this.#place.host.send('imports.close', {});
  }
}
