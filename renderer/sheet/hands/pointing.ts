import type { RecordPath } from '../../../core/base/recordPath.ts';
import type { PaperMm } from '../../../core/base/units.ts';
import { pathAtPoint } from '../../paint/source.ts';

type Point = Pick<MouseEvent, 'clientX' | 'clientY'>;

/** Pixels that a press may tremble before it is a drag. */
export const trembling = 3;

/** Where a pointer is in a layer's own millimetres. */
export function inLayer(layer: SVGGraphicsElement, { clientX, clientY }: Point) {
  const toPaper = layer.getScreenCTM()?.inverse();
  const { x, y } = new DOMPoint(clientX, clientY).matrixTransform(toPaper ?? new DOMMatrix());
  return { x, y } satisfies Record<string, PaperMm>;
}

/** What the drawing shows at a point, under what is laid over it. */
export function pathUnder({ clientX, clientY }: Point): RecordPath | undefined {
  for (const target of document.elementsFromPoint(clientX, clientY)) {
    const path = pathAtPoint({ target });
    if (path !== undefined) return path;
  }
  return undefined;
}

/** Index of the string that a path lies in, as in `strings[1].components[3]`. */
export function stringIn(path: RecordPath | undefined): number | undefined {
  const index = /^strings\[(\d+)\]/.exec(path ?? '')?.[1];
  return index === undefined ? undefined : Number(index);
}
