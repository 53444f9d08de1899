import { extentOf, spanOf, type ReadPage } from './page.ts';

/** A figure of the depth ruler with the height of its long tick. */
export interface Tick {
  readonly depthM: number;
  readonly y: number;
}

/** Depths of the ruler with their heights, as pdfjs sees figures and the long ticks beside them. */
export function ticksOn({ texts, paths }: ReadPage): Tick[] {
  const long = paths.filter((path) => path.stroked && Math.abs(spanOf(path) - 3) < 0.01);
  const level = long.map(extentOf).filter(([, top, right, foot]) => top === foot && right < 30);
  const ticks = texts.flatMap(({ text, x, y }) => {
    const tick = level.find(
      ([left, at]) => x < left && left - x < 6 && Math.abs(y - 0.9 - at) < 0.05,
    );
    return tick && /^[\d.]+$/.test(text) ? [{ depthM: Number(text), y: tick[1] }] : [];
  });
  return ticks.sort((a, b) => a.depthM - b.depthM);
}

export function statedScale({ texts }: ReadPage): number | undefined {
  const says = texts.map(({ text }) => /^depths 1:(\d+)$/.exec(text)?.[1]);
  const found = says.find((one) => one !== undefined);
  return found === undefined ? undefined : Number(found);
}

/** The figures of each stretch of an axis, parted where the page says that depths are not drawn. */
export function stretchesOn(page: ReadPage): Tick[][] {
  const starts = page.texts.flatMap(({ text }) => {
    const [, , to] = /^([\d.]+)–([\d.]+) m not drawn$/.exec(text) ?? [];
    return to === undefined ? [] : [Number(to)];
  });
  const stretches = new Map<number, Tick[]>();
  for (const tick of ticksOn(page)) {
    const at = starts.filter((start) => start <= tick.depthM).length;
    stretches.set(at, [...(stretches.get(at) ?? []), tick]);
  }
  return [...stretches.values()];
}

/** How far the outermost figures of a stretch stand from where the scale puts them, millimetres. */
export function offScale(ticks: readonly Tick[], scale: number): number {
  const [first, last] = [ticks[0]!, ticks.at(-1)!];
  return Math.abs(last.y - first.y - ((last.depthM - first.depthM) * 1000) / scale);
}
