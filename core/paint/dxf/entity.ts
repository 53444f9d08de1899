import type { Ink, TextItem } from '../../drawing/items.ts';
import type { Chain } from './flatten.ts';

/** What the file holds of a page, still in millimetres of paper. */
export type Entity = LineEntity | FillEntity | TextEntity;

interface Common {
  readonly layer: string;
  readonly ink: Ink;
}

export interface LineEntity extends Common {
  readonly kind: 'line';
  readonly chain: Chain;
  readonly widthMm: number;
  readonly dash?: readonly number[];
}

export interface FillEntity extends Common {
  readonly kind: 'fill';
  readonly chains: readonly Chain[];
}

export interface TextEntity extends Common {
  readonly kind: 'text';
  readonly text: TextItem;
}
