import type { ArchiveState, OpenedWell, WellRow } from '../../core/contract/calls.ts';
import type { HostEvent } from '../../core/contract/events.ts';
import type { PageHost } from '../../core/contract/host.ts';
import type { WellRecord } from '../../core/record/schema.ts';
import { Folder } from './folder.svelte.ts';

/** Where the page is: at the archive's list, or in one well folder. */
export class Place {
  archive = $state.raw<ArchiveState | undefined>();
  rows = $state.raw<readonly WellRow[] | undefined>();
  search = $state('');
  folder = $state.raw<Folder | undefined>();
  /** Why the last thing asked for was not done. */
  refusal = $state<string | undefined>();

  readonly host: PageHost;
  #asked = 0;

  constructor(host: PageHost) {
    this.host = host;
    host.onEvent((event) => this.#heard(event));
  }

  #heard({ name, data }: HostEvent) {
    if (name === 'page.undo') this.folder?.undo();
    if (name === 'page.redo') this.folder?.redo();
    if (name !== 'well.changed') return;
    if (this.folder?.id === data.id) this.folder.saving.heard(data);
    if (!this.folder) void this.list();
  }

  /** Reads the list anew; an answer that was overtaken by a later one is dropped. */
  async list() {
    const asked = (this.#asked += 1);
    const search = this.search.trim();
    const answer = await this.host.send('wells.list', search === '' ? {} : { search });
    if (asked !== this.#asked) return;
    if (answer.ok) this.rows = answer.value;
    this.refusal = answer.ok ? undefined : answer.error.sentence;
  }

  async readArchive() {
    const answer = await this.host.send('archive.state', {});
    if (answer.ok) this.archive = answer.value;
  }

  async open(id: string) {
    const answer = await this.host.send('wells.open', { id });
    this.refusal = answer.ok ? undefined : answer.error.sentence;
    if (answer.ok) this.#lay(answer.value);
  }

  async create() {
    const record: WellRecord = { schemaVersion: 1 };
    const answer = await this.host.send('wells.create', { record });
    this.refusal = answer.ok ? undefined : answer.error.sentence;
    if (!answer.ok) return;
    this.#lay(answer.value);
    this.folder?.goTo('identity.number');
  }

  #lay(well: OpenedWell) {
    this.folder = new Folder(this.host, well, this.archive?.readOnly);
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
