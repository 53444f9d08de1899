import type { Language } from '../../core/base/language.ts';
import type { Gives } from '../../core/contract/calls.ts';
import type { PageHost } from '../../core/contract/host.ts';
import type { Folder } from '../state/folder.svelte.ts';

type Newest = Gives<'papers.newest'>;

/** What papers say of the newest revision of a folder, fetched once for each and each language. */
export class NewestRevision {
  readonly #host: PageHost;
  readonly #folder: Pick<Folder, 'id' | 'saving'>;
  #held = $state.raw<(Newest & { readonly language: Language }) | undefined>();
  /** What was asked for last; nothing shows it. */
  #asked = '';

  constructor(host: PageHost, folder: Pick<Folder, 'id' | 'saving'>) {
    this.#host = host;
    this.#folder = folder;
  }

  /**
   * In a language; of the revision before while the newest is fetched, which a look begins, and
   * undefined while nothing is here.
   */
  in(language: Language): Newest | undefined {
    const { revision } = this.#folder.saving;
    const asked = `${language} ${revision}`;
    if (asked !== this.#asked) void this.#fetch(language, asked);
    return this.#held?.language === language ? this.#held : undefined;
  }

  async #fetch(language: Language, asked: string) {
    this.#asked = asked;
    const answer = await this.#host.send('papers.newest', { id: this.#folder.id, language });
    if (this.#asked !== asked) return;
    if (answer.ok) this.#held = { ...answer.value, language };
    // Nobody answered: the next look asks again.
    else this.#asked = '';
  }
}
