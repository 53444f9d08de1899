import { symbol, symbolCircle, symbolSquare, symbolTimes, symbolTriangle } from 'd3';
import type { Shape, Stroke } from './plot.ts';

const types = {
  disc: symbolCircle,
  ring: symbolCircle,
  cross: symbolTimes,
  square: symbolSquare,
  triangle: symbolTriangle,
};

/** Square pixels of a mark. */
const size = 34;

/** Outline of a mark around nothing, as an SVG path. */
export const shapeOf = (shape: Shape): string => symbol(types[shape], size)() ?? '';

export const dashesOf: Readonly<Record<Stroke, string | undefined>> = {
  solid: undefined,
  dashed: '7 4',
  dotted: '2 3',
};
