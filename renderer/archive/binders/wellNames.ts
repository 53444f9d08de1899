import { SvelteMap } from 'svelte/reactivity';
import type { Refusal } from '../../../core/base/result.ts';
import type { PageHost } from '../../../core/contract/host.ts';
import { mostRows, type NamedWell } from '../../../core/contract/listShape.ts';
import { say } from '../../parts/words.ts';
import { shownWell } from '../shown.ts';

/** What wells are called of which a page has the ids. */
export class WellNames {
  readonly #host: PageHost;
  readonly #known = new SvelteMap<string, NamedWell | undefined>();

  constructor(host: PageHost) {
    this.#host = host;
  }

  add(wells: readonly NamedWell[]): void {
    for (const well of wells) this.#known.set(well.id, well);
  }

  /** Asks the archive for those that are not known yet; gives why it did not tell them. */
  async need(ids: readonly string[]): Promise<Refusal | undefined> {
    const unknown = [...new Set(ids)].filter((id) => !this.#known.has(id));
    for (let at = 0; at < unknown.length; at += mostRows) {
      const some = unknown.slice(at, at + mostRows);
      const answer = await this.#host.send('list.named', { ids: some });
      if (!answer.ok) return answer.error;
      for (const id of some) this.#known.set(id, undefined);
      this.add(answer.value);
    }
    return undefined;
  }

  /** Its number, for what is done to it. */
  short(id: string): string {
    const well = this.#known.get(id);
    return well ? shownWell(well) : say.binders.picking.gone;
  }

  /** Number, name and village, where the name does not begin with it. */
  whole(id: string): string {
    const well = this.#known.get(id);
    if (!well) return this.#known.has(id) ? say.binders.picking.gone : '…';
    const { name, village } = well;
    const place = name.startsWith(village) ? '' : village;
    return [shownWell(well), name, place].filter((text) => text !== '').join(' · ');
  }
}
