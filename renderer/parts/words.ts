import { english } from './words.en.ts';

type Spoken<T> = {
  readonly [K in keyof T]: T[K] extends string
    ? string
    : T[K] extends (...args: infer A) => string
      ? (...args: A) => string
      : Spoken<T[K]>;
};

/** What every language of the interface has to say. */
export type InterfaceWords = Spoken<typeof english>;

/** The interface's words in the language in use. */
export const say: InterfaceWords = english;
