import { ok, refused, type Refusal, type Result } from '../../core/base/result.ts';
import { mostInBatch } from '../../core/contract/papersShape.ts';
import type { WellRecord } from '../../core/record/schema.ts';
import { templateOf } from '../../core/record/template.ts';
import { say } from '../parts/words.ts';
import { download } from '../sheet/download.ts';
import { speech } from '../state/language.svelte.ts';
import type { Place } from '../state/place.svelte.ts';
import { shownWell } from './shown.ts';

/** Largest file of a backdrop: it travels in one call. */
const mostBytes = 5_000_000;

/** What was done last, and what takes it back. */
export interface Done {
  readonly text: string;
  /** Id of the well to put back out of the bin. */
  readonly putBack?: { readonly id: string; readonly number: string };
}

interface WellName {
  readonly id: string;
  readonly number: string;
}

/** What can be done with the archive's wells from the list. */
export class Deeds {
  done = $state.raw<Done | undefined>();
  refusal = $state.raw<Refusal | undefined>();
  /** Sheets are being made. */
  busy = $state(false);
  readonly #place: Place;

  constructor(place: Place) {
    this.#place = place;
  }

  get frozen(): boolean {
    return this.#place.archive?.readOnly ?? false;
  }

  /** Makes a new well with what another one, as it lies on its desk, can give. */
  async duplicate(id: string): Promise<void> {
    if (this.frozen) return;
    const lying = await this.#place.host.send('wells.desk', { id });
    this.refusal = lying.ok ? undefined : lying.error;
    if (lying.ok) await this.#place.create(templateOf(lying.value.desk.record) as WellRecord);
  }

  /** Makes a new well like the one that was changed last; an empty one where there is none. */
  async newLikeLast(): Promise<void> {
    const order = { by: 'changed', down: true } as const;
    const found = await this.#place.host.send('list.find', { filter: {}, order, limit: 1 });
    this.refusal = found.ok ? undefined : found.error;
    if (!found.ok) return;
    const [last] = found.value.rows;
    await (last ? this.duplicate(last.id) : this.#place.create());
  }

  /** The as-built sheets of the wells that the list shows, in its order, in one PDF. */
  async sheets(): Promise<void> {
    if (this.busy) return;
    [this.busy, this.done] = [true, { text: say.sheet.exporting }];
    try {
      const made = await this.#sheets();
      this.refusal = made.ok ? undefined : made.error;
      this.done = made.ok ? { text: made.value } : undefined;
    } finally {
      this.busy = false;
    }
  }

  async #sheets(): Promise<Result<string>> {
    const { host, wells } = this.#place;
    const { filter, order } = wells;
    const found = await host.send('list.find', { filter, order, limit: mostInBatch });
    if (!found.ok) return found;
    const { rows, total } = found.value;
    const words = say.archive.deeds;
    if (total > mostInBatch) return refused('tooManyWells', words.tooMany(total, mostInBatch));
    const { language } = speech;
    const ids = rows.map(({ id }) => id);
    const made = await host.send('papers.batch', { ids, paper: 'A4', language });
    if (!made.ok) return made;
    const { fileName, pdf, unrevised } = made.value;
    download(fileName, pdf, 'application/pdf');
    const older = unrevised > 0 ? ` ${words.olderSheets(unrevised)}` : '';
    return ok(say.sheet.exported(fileName) + older);
  }

  async bin({ id, number }: WellName): Promise<void> {
    if (this.frozen) return;
    const answer = await this.#place.host.send('bin.put', { id });
    this.refusal = answer.ok ? undefined : answer.error;
    if (!answer.ok) return;
    const text = say.archive.bin.moved(shownWell({ number }));
    this.done = { text, putBack: { id, number } };
    await this.#place.list();
  }

  async putBack({ id, number }: WellName): Promise<void> {
    const answer = await this.#place.host.send('bin.putBack', { id });
    this.refusal = answer.ok ? undefined : answer.error;
    if (!answer.ok) return;
    this.done = { text: say.archive.bin.isBack(shownWell({ number })) };
    await this.#place.list();
  }

  /** Reads a file and lays it under the wells of the map. */
  async addBackdrop(file: File): Promise<void> {
    const { map } = say.archive;
    if (file.size > mostBytes) {
      this.refusal = { code: 'fileTooLarge', sentence: map.tooLarge(file.name) };
      return;
    }
    const args = { fileName: file.name, text: await file.text() };
    const answer = await this.#place.host.send('backdrops.add', args);
    this.refusal = answer.ok ? undefined : answer.error;
    if (!answer.ok) return;
    const { backdrop, pointsLeftOut } = answer.value;
    const added = map.added(backdrop.name, backdrop.shapes.length);
    const left = pointsLeftOut > 0 ? ` ${map.pointsLeftOut(pointsLeftOut)}` : '';
    this.done = { text: added + left };
    await this.#place.list();
  }

  async removeBackdrop(id: string, name: string): Promise<void> {
    const answer = await this.#place.host.send('backdrops.remove', { id });
    this.refusal = answer.ok ? undefined : answer.error;
    if (!answer.ok) return;
    this.done = { text: say.archive.map.removed(name) };
    await this.#place.list();
  }

  /** Takes wells out of the bin for good: those that were seen when it was agreed to. */
  async empty(ids: readonly string[]): Promise<void> {
    const answer = await this.#place.host.send('bin.empty', { ids });
    this.refusal = answer.ok ? undefined : answer.error;
    if (!answer.ok) return;
    this.done = { text: say.archive.bin.emptied(answer.value.wells) };
    await this.#place.list();
  }
}
