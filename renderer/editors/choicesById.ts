import type { InLanguages } from '../../core/practice/practice.ts';
import { speech } from '../state/language.svelte.ts';
import type { Choices } from './fields/choice.ts';

interface Named {
  readonly id: string;
  readonly name: InLanguages;
}

/** Names to choose from, by id, in the order given. Names that are alike bear their id. */
export function choicesById(all: readonly Named[]): Choices {
  const nameOf = ({ name }: Named) => name[speech.language];
  return Object.fromEntries(
    all.map((file) => {
      const alone = all.filter((other) => nameOf(other) === nameOf(file)).length === 1;
      return [file.id, alone ? nameOf(file) : `${nameOf(file)} (${file.id})`];
    }),
  );
}
