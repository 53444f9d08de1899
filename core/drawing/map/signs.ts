import type { WellState } from '../../record/identity.ts';

/** The sign of a well on a map, in a box of 2 by 2 about its middle; told apart by shape alone. */
export interface WellSign {
  /** Outline as SVG path data: moves, lines, arcs and closes. */
  readonly outline: string;
  readonly filled: boolean;
}

const circle = 'M-0.8 0A0.8 0.8 0 1 1 0.8 0A0.8 0.8 0 1 1 -0.8 0Z';
const square = 'M-0.72 -0.72H0.72V0.72H-0.72Z';
const cross = 'M-0.72 -0.72L0.72 0.72M0.72 -0.72L-0.72 0.72';

/** Signs by the well's state; `''` where no state was written. */
export const wellSigns: Readonly<Record<WellState | '', WellSign>> = {
  laidOut: { outline: 'M0 -0.9L0.85 0.65H-0.85Z', filled: false },
  drilled: { outline: circle, filled: false },
  completed: { outline: circle, filled: true },
  dry: { outline: cross, filled: false },
  abandonedAndSealed: { outline: square, filled: true },
  decommissioned: { outline: `${square}${cross}`, filled: false },
  '': { outline: 'M0 -0.9L0.9 0L0 0.9L-0.9 0Z', filled: false },
};
