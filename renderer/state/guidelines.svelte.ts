import type { Refusal } from '../../core/base/result.ts';
import type { OwnGuidelines, UnreadGuidelines } from '../../core/contract/guidelinesShape.ts';
import type { PageHost } from '../../core/contract/host.ts';
import type { GuidelineFile } from '../../core/water/guidelines/guidelineSet.ts';

/** The user's sets of guideline values that the archive keeps. */
export class Guidelines {
  kept = $state.raw<readonly OwnGuidelines[]>([]);
  /** Those that this version cannot read. */
  unread = $state.raw<readonly UnreadGuidelines[]>([]);
  /** Why the last thing asked for was not done. */
  refusal = $state.raw<Refusal | undefined>();

  readonly #files = $derived(this.kept.map(({ file }) => file));
  readonly #host: PageHost;

  constructor(host: PageHost) {
    this.#host = host;
  }

  get files(): readonly GuidelineFile[] {
    return this.#files;
  }

  async read() {
    const answer = await this.#host.send('guidelines.list', {});
    if (!answer.ok) return;
    this.kept = answer.value.sets;
    this.unread = answer.value.unread;
  }

  /** Keeps a set in place of the one with its id; gives whether it was taken. */
  async put(set: object): Promise<boolean> {
    const answer = await this.#host.send('guidelines.put', { set });
    this.refusal = answer.ok ? undefined : answer.error;
    if (answer.ok) await this.read();
    return answer.ok;
  }

  async remove(id: string): Promise<boolean> {
    const answer = await this.#host.send('guidelines.remove', { id });
    this.refusal = answer.ok ? undefined : answer.error;
    if (answer.ok) await this.read();
    return answer.ok;
  }
}
