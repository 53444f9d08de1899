/** A plot as data: axes, what is drawn over them, and a stretch that is shaded. */

export interface Axis {
  readonly kind: 'linear' | 'log';
  readonly label: string;
  readonly from: number;
  readonly to: number;
  /** Larger values stand lower, as water levels do. */
  readonly down?: boolean;
}

export type Place = readonly [x: number, y: number];

export const shapes = ['disc', 'ring', 'cross', 'square', 'triangle'] as const;
export type Shape = (typeof shapes)[number];
export type Stroke = 'solid' | 'dashed' | 'dotted';

/** Points that are told apart by their shape. */
export interface Marks {
  readonly kind: 'marks';
  readonly label: string;
  readonly shape: Shape;
  readonly places: readonly Place[];
}

/** A line that is told apart by its dashes; without a label it is no entry of the key. */
export interface Trace {
  readonly kind: 'trace';
  readonly label?: string;
  readonly stroke: Stroke;
  readonly places: readonly Place[];
}

export type Layer = Marks | Trace;

/** A stretch along x. */
export interface Band {
  readonly from: number;
  readonly to: number;
}

export interface PlotSpec {
  readonly title: string;
  readonly x: Axis;
  readonly y: Axis;
  readonly layers: readonly Layer[];
  readonly band?: Band & { readonly label: string };
}

/** What the ends of a band may be moved to, and who hears of it. */
export interface Grips {
  /** Where an end can stand, rising. */
  readonly stops: readonly number[];
  readonly names: Readonly<Record<keyof Band, string>>;
  readonly say: (stop: number) => string;
  readonly onMove: (band: Band) => void;
  readonly onDone: () => void;
}
