import type { Refusal } from '../../core/base/result.ts';
import type { ArchiveState, OpenedWell } from '../../core/contract/calls.ts';
import type { HostEvent } from '../../core/contract/events.ts';
import type { PageHost } from '../../core/contract/host.ts';
import type { WellRecord } from '../../core/record/schema.ts';
import { Folder } from './folder.svelte.ts';
import { Guidelines } from './guidelines.svelte.ts';
import { Practices } from './practices.svelte.ts';
import { Templates } from './templates.svelte.ts';
import { Wells } from './wells.svelte.ts';

/** Where the page is: at the archive's list, or in one well folder. */
export class Place {
  archive = $state.raw<ArchiveState | undefined>();
  folder = $state.raw<Folder | undefined>();
  /** Why the last thing asked for was not done. */
  refusal = $state.raw<Refusal | undefined>();

  readonly host: PageHost;
  /** The list and the map, as they were left. */
  readonly wells: Wells;
  /** The practices of the user. */
  readonly practices: Practices;
  /** The user's sets of guideline values. */
  readonly guidelines: Guidelines;
  /** Templates of organisations that head papers. */
  readonly templates: Templates;

  constructor(host: PageHost) {
    this.host = host;
    this.wells = new Wells(host);
    this.practices = new Practices(host);
    this.guidelines = new Guidelines(host);
    this.templates = new Templates(host);
    host.onEvent((event) => this.#heard(event));
  }

  #heard({ name, data }: HostEvent) {
    if (name === 'practices.changed') void this.#readPractices();
    if (name === 'guidelines.changed') void this.guidelines.read();
    if (name === 'templates.changed') void this.templates.read();
    if (name === 'page.undo') this.folder?.undo();
    if (name === 'page.redo') this.folder?.redo();
    if (name === 'well.changed' && this.folder?.id === data.id) this.folder.saving.heard(data);
    if ((name === 'well.changed' || name === 'list.changed') && !this.folder) void this.list();
  }

  /** What the list counts follows from the practices. */
  async #readPractices() {
    await this.practices.read();
    if (!this.folder) await this.list();
  }

  /** Reads the list and the map anew. */
  async list() {
    await this.wells.read();
  }

  async readArchive() {
    const answer = await this.host.send('archive.state', {});
    if (answer.ok) this.archive = answer.value;
  }

  async open(id: string) {
    const answer = await this.host.send('wells.open', { id });
    this.refusal = answer.ok ? undefined : answer.error;
    if (answer.ok) this.#lay(answer.value);
  }

  /** Makes a new well of a record and opens it at its number. */
  async create(record: WellRecord = { schemaVersion: 1 }) {
    const answer = await this.host.send('wells.create', { record });
    this.refusal = answer.ok ? undefined : answer.error;
    if (!answer.ok) return;
    this.#lay(answer.value);
    this.folder?.goTo('identity.number');
  }

  #lay(well: OpenedWell) {
    const own = () => this.practices.files;
    const guidelines = () => this.guidelines.files;
    this.folder = new Folder(this.host, well, this.archive?.readOnly, own, guidelines);
  }

  /**
   * Back to the list as soon as a revision was made of what was typed; where that is refused the
   * folder stays open, unless leaving is insisted on. Gives whether it was left.
   */
  async leave(insist = false): Promise<boolean> {
    const { folder } = this;
    if (folder && !folder.readOnly) {
      const left = await folder.saving.leave();
      if (!left && !insist) return false;
    }
    folder?.saving.stop();
    this.folder = undefined;
    await this.list();
    return true;
  }
}
