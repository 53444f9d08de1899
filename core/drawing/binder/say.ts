import { filled } from '../../base/text/filled.ts';
import type { BinderKit } from './binder.ts';
import type { BinderWell } from './binderWell.ts';
import type { Count } from './words/words.ts';

/** So many of something, in words. */
export function counted({ one, more }: Count, n: number): string {
  return filled(n === 1 ? one : more, { n: String(n) });
}

/** Texts that were written, each once, in the order in which they come. */
export function distinct(texts: readonly string[]): string[] {
  return [...new Set(texts.filter((text) => text !== ''))];
}

export function sayDistrict({ own }: BinderKit, district: string): string {
  return district === '' ? own.noDistrict : district;
}

export function sayVillage({ own }: BinderKit, village: string): string {
  return village === '' ? own.noVillage : village;
}

export function sayNumber({ own }: BinderKit, { number }: Pick<BinderWell, 'number'>): string {
  return number === '' ? own.noNumber : number;
}

export function sayState({ words, own }: BinderKit, state: BinderWell['state']): string {
  return state === '' ? own.noState : words.states[state];
}

/** The name of a well beside its village's, which most names begin with. */
export function spotOf({ name, village }: Pick<BinderWell, 'name' | 'village'>): string {
  if (village === '' || !name.startsWith(village)) return name;
  return name.slice(village.length).replace(/^[\s,–-]+/, '');
}
