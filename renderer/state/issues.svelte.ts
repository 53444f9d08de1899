import type { Refusal, Result } from '../../core/base/result.ts';
import type { Takes } from '../../core/contract/calls.ts';
import type { PageHost } from '../../core/contract/host.ts';
import type { IdentityRow, IssueRow } from '../../core/contract/issuesShape.ts';
import type { PaperWish } from '../../core/contract/papersShape.ts';
import type { Folder } from './folder.svelte.ts';

/** The papers of one well that were issued, and the certificates that can sign them. */
export class Issues {
  lines = $state.raw<readonly IssueRow[]>([]);
  identities = $state.raw<readonly IdentityRow[]>([]);
  /** Why the last thing asked for was not done. */
  refusal = $state.raw<Refusal | undefined>();
  busy = $state(false);

  readonly #host: PageHost;
  readonly #folder: Folder;

  constructor(host: PageHost, folder: Folder) {
    this.#host = host;
    this.#folder = folder;
  }

  async read() {
    const [lines, identities] = await Promise.all([
      this.#host.send('issues.list', { id: this.#folder.id }),
      this.#host.send('identities.list', {}),
    ]);
    if (lines.ok) this.lines = lines.value;
    if (identities.ok) this.identities = identities.value;
  }

  /** Reads again when another window, or this one, issued or signed; gives what ends that. */
  listen(): () => void {
    return this.#host.onEvent(({ name }) => {
      if (name === 'issues.changed' || name === 'identities.changed') void this.read();
    });
  }

  /** Freezes a paper of what lies open: a revision is made of it first. */
  async issue(paper: PaperWish): Promise<IssueRow | undefined> {
    if (!this.#folder.readOnly) await this.#folder.saving.revise();
    return this.#ask(() => this.#host.send('issues.make', { id: this.#folder.id, paper }));
  }

  async sign(call: Omit<Takes<'issues.seal'>, 'id'>): Promise<IssueRow | undefined> {
    return this.#ask(() => this.#host.send('issues.seal', { id: this.#folder.id, ...call }));
  }

  async pdf(number: number) {
    return this.#ask(() => this.#host.send('issues.pdf', { id: this.#folder.id, number }));
  }

  async make(wish: Takes<'identities.make'>): Promise<IdentityRow | undefined> {
    return this.#ask(() => this.#host.send('identities.make', wish));
  }

  /** Takes in a signer's own PKCS#12 file, base64. */
  async take(given: Takes<'identities.take'>): Promise<IdentityRow | undefined> {
    return this.#ask(() => this.#host.send('identities.take', given));
  }

  async remove(fingerprint: string) {
    return this.#ask(() => this.#host.send('identities.remove', { fingerprint }));
  }

  /** What a PDF says of itself, base64. */
  async check(pdf: string) {
    return this.#ask(() => this.#host.send('seals.read', { pdf }));
  }

  async #ask<T>(send: () => Promise<Result<T>>): Promise<T | undefined> {
    this.busy = true;
    try {
      const answer = await send();
      this.refusal = answer.ok ? undefined : answer.error;
      if (answer.ok) await this.read();
      return answer.ok ? answer.value : undefined;
    } finally {
      this.busy = false;
    }
  }
}
