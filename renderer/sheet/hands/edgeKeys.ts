import { stepOf, steps } from '../../state/hands/snap.ts';

/** What a key asks of the edge that is chosen. */
export type Asked =
  | {
      readonly kind: 'nudge';
      readonly by: -1 | 1;
      readonly stepM: number;
      readonly apart: boolean;
    }
  | { readonly kind: 'walk'; readonly by: -1 | 1 }
  | { readonly kind: 'end'; readonly at: 'first' | 'last' }
  | { readonly kind: 'row' }
  | { readonly kind: 'back' };

type Key = Pick<KeyboardEvent, 'key' | 'shiftKey' | 'ctrlKey' | 'metaKey' | 'altKey'>;

const asks: Readonly<Record<string, Asked>> = {
  ArrowLeft: { kind: 'walk', by: -1 },
  ArrowRight: { kind: 'walk', by: 1 },
  Home: { kind: 'end', at: 'first' },
  End: { kind: 'end', at: 'last' },
  Enter: { kind: 'row' },
  Escape: { kind: 'back' },
};

/** Arrows move an edge the way it is seen to go: up is less deep. */
const ways: Readonly<Record<string, -1 | 1>> = {
  ArrowUp: -1,
  ArrowDown: 1,
  PageUp: -1,
  PageDown: 1,
};

/** What a key asks, or undefined where it is none of the edges' keys. */
export function askedBy(event: Key): Asked | undefined {
  const by = ways[event.key];
  if (by === undefined) return event.ctrlKey || event.metaKey ? undefined : asks[event.key];
  const stepM = event.key.startsWith('Page') ? steps.metre : stepOf(event);
  return { kind: 'nudge', by, stepM, apart: event.altKey };
}
