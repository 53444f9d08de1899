import { same, sharing } from './sharing.ts';

interface Answer {
  readonly of: readonly unknown[];
  readonly gave: unknown;
}

/** Answers kept of one question; the one that was asked for longest ago gives way. */
const kept = 8;

function alike(a: readonly unknown[], b: readonly unknown[]): boolean {
  return a.length === b.length && a.every((one, at) => same(one, b[at]));
}

/**
 * What earlier runs of the same work answered, handed in by who runs it again and again. It only
 * saves time: work that is handed none answers the same.
 */
export class Memory {
  readonly #answers = new Map<string, Answer[]>();
  readonly #last = new Map<string, unknown>();

  /**
   * What `make` gives for its arguments: an earlier answer where they say the same. `make` must
   * look at nothing else, and nobody may change what it is given or gives. `question` keeps
   * answers of different works apart.
   */
  recall<A extends readonly unknown[], T>(question: string, make: (...of: A) => T, of: A): T {
    const answers = this.#answers.get(question) ?? [];
    const known = answers.find((answer) => alike(answer.of, of));
    const answer = known ?? { of, gave: make(...of) };
    const others = answers.filter((one) => one !== answer);
    if (answers[0] !== answer) this.#answers.set(question, [answer, ...others].slice(0, kept));
    return answer.gave as T;
  }

  /** Data that says the same as `now`, sharing with what was given under the name before. */
  share<T>(name: string, now: T): T {
    const shared = sharing(this.#last.get(name), now);
    this.#last.set(name, shared);
    return shared;
  }
}
