import { rulerOf } from '../ruler.ts';
import { mm, type Law } from './law.ts';

const exact = 1e-6;

/** Between any two figures of a ruler lie as many millimetres as the stated scale makes them. */
export const rulerTrue: Law = ({ drawing }) =>
  drawing.pages.flatMap((page, at) => {
    const ruler = rulerOf(page);
    if (!ruler) return [];
    return ruler.figures
      .filter(({ depthM, y }) => Math.abs(ruler.yAt(depthM) - y) > exact)
      .map(({ depthM, y }) => `page ${at + 1}: ${depthM} m stands at ${mm(y)}`);
  });

/** Ticks stand at even distances but over a break, and on round depths. */
export const ticksEven: Law = ({ drawing }) =>
  drawing.pages.flatMap((page, at) => {
    const ruler = rulerOf(page);
    if (!ruler || ruler.ticks.length < 2) return [];
    const step = ruler.depthAt(ruler.ticks[1]!) - ruler.depthAt(ruler.ticks[0]!);
    const parts = ruler.ticks.map((tick) => ruler.depthAt(tick) / step);
    const broken = (n: number) => {
      const [above, below] = [parts[n - 1]! * step, parts[n]! * step];
      return ruler.leftOut.some(({ fromM, toM }) => above <= fromM + 1e-4 && below >= toM - 1e-4);
    };
    const odd = parts.filter((part, n) => {
      if (Math.abs(part - Math.round(part)) > 1e-4) return true;
      return n > 0 && !broken(n) && Math.abs(part - parts[n - 1]! - 1) > 1e-4;
    });
    return odd.map((part) => `page ${at + 1}: a tick at ${part * step} m`);
  });
