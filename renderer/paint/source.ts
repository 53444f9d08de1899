import type { RecordPath } from '../../core/base/recordPath.ts';

/** Class of the elements that show the marked field. */
export const markedClass = 'marked';

/** Path of the field that the clicked place shows, from the innermost element that names one. */
export function pathAtPoint(event: Pick<Event, 'target'>): RecordPath | undefined {
  if (!(event.target instanceof Element)) return undefined;
  return event.target.closest('[data-path]')?.getAttribute('data-path') ?? undefined;
}

/** Whether a path is another or lies under it. All lies under the empty path, the whole record. */
function liesUnder(inner: RecordPath, outer: RecordPath): boolean {
  if (outer === '' || inner === outer) return true;
  return inner.startsWith(outer) && '.['.includes(inner.charAt(outer.length));
}

/**
 * Marks all elements that show a field or a part of it, and unmarks the others; without a path
 * none stays marked. To be called again after painting: new elements come unmarked.
 */
export function markSource(svg: SVGSVGElement, path: RecordPath | undefined): void {
  for (const element of svg.querySelectorAll('[data-path]')) {
    const own = element.getAttribute('data-path') ?? '';
    const marked = path !== undefined && liesUnder(own, path);
    if (element.classList.contains(markedClass) !== marked) element.classList.toggle(markedClass);
  }
}
