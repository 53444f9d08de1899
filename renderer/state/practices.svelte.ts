import type { Refusal } from '../../core/base/result.ts';
import type { PageHost } from '../../core/contract/host.ts';
import type { OwnPractice, UnreadPractice } from '../../core/contract/practicesShape.ts';
import type { PracticeFile } from '../../core/practice/practice.ts';

/** The practices of the user that the archive keeps, and whether their page lies open. */
export class Practices {
  kept = $state.raw<readonly OwnPractice[]>([]);
  /** Those that this version cannot read. */
  unread = $state.raw<readonly UnreadPractice[]>([]);
  shown = $state(false);
  /** Why the last thing asked for was not done. */
  refusal = $state.raw<Refusal | undefined>();

  readonly #files = $derived(this.kept.map(({ file }) => file));
  readonly #host: PageHost;

  constructor(host: PageHost) {
    this.#host = host;
  }

  get files(): readonly PracticeFile[] {
    return this.#files;
  }

  async read() {
    const answer = await this.#host.send('practices.list', {});
    if (!answer.ok) return;
    this.kept = answer.value.practices;
    this.unread = answer.value.unread;
  }

  /** Keeps a practice in place of the one with its id; gives it as it was taken. */
  async put(practice: object): Promise<OwnPractice | undefined> {
    const answer = await this.#host.send('practices.put', { practice });
    this.refusal = answer.ok ? undefined : answer.error;
    if (!answer.ok) return undefined;
    await this.read();
    return answer.value;
  }

  async remove(id: string): Promise<boolean> {
    const answer = await this.#host.send('practices.remove', { id });
    this.refusal = answer.ok ? undefined : answer.error;
    if (answer.ok) await this.read();
    return answer.ok;
  }
}
