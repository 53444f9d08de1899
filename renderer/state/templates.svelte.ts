import type { Refusal } from '../../core/base/result.ts';
import type { PageHost } from '../../core/contract/host.ts';
import type { LogoFile, OwnTemplate, UnreadTemplate } from '../../core/contract/templatesShape.ts';
import type { Template } from '../../core/drawing/parts/headStrip.ts';

/** The templates of organisations that the archive keeps. */
export class Templates {
  kept = $state.raw<readonly OwnTemplate[]>([]);
  /** Those that this version cannot read. */
  unread = $state.raw<readonly UnreadTemplate[]>([]);

  readonly #usual = $derived(this.kept.find(({ usual }) => usual)?.template);
  readonly #host: PageHost;

  constructor(host: PageHost) {
    this.#host = host;
  }

  /** What papers are made with; the same object until templates are read anew. */
  get usual(): Template | undefined {
    return this.#usual;
  }

  async read() {
    const answer = await this.#host.send('templates.list', {});
    if (!answer.ok) return;
    this.kept = answer.value.templates;
    this.unread = answer.value.unread;
  }

  /** Keeps a template in place of the one with its name; gives why not. */
  async put(
    name: string,
    template: object,
    logos: readonly LogoFile[],
  ): Promise<Refusal | undefined> {
    return this.#done(await this.#host.send('templates.put', { name, template, logos }));
  }

  /** Has papers made with a template, or with none without a name; gives why not. */
  async choose(name: string | undefined): Promise<Refusal | undefined> {
    const named = name === undefined ? {} : { name };
    return this.#done(await this.#host.send('templates.choose', named));
  }

  /** Takes a template away; gives why not. */
  async remove(name: string): Promise<Refusal | undefined> {
    return this.#done(await this.#host.send('templates.remove', { name }));
  }

  async #done(answer: { ok: true } | { ok: false; error: Refusal }): Promise<Refusal | undefined> {
    await this.read();
    return answer.ok ? undefined : answer.error;
  }
}
