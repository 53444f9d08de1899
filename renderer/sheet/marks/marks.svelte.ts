import type { Finding } from '../../../core/base/finding.ts';

/** A finding laid open beside its mark. */
export interface OpenMark {
  readonly finding: Finding;
  readonly element: SVGGElement;
  /** Where the mark stands in the sight, pixels. */
  readonly x: number;
  readonly y: number;
}

/** Whether findings are marked on the drawing, and which one is laid open. */
export class Marks {
  shown = $state(true);
  laid = $state.raw<OpenMark | undefined>();

  toggle() {
    this.shown = !this.shown;
    this.laid = undefined;
  }

  open(finding: Finding, element: SVGGElement) {
    const sight = element.closest('[data-sight]')?.getBoundingClientRect();
    const target = (element.querySelector('rect') ?? element).getBoundingClientRect();
    const x = target.right - (sight?.left ?? 0) + 6;
    this.laid = { finding, element, x, y: target.top - (sight?.top ?? 0) };
  }

  /** Closes what is laid open and gives the keyboard back to its mark. */
  close() {
    const element = this.laid?.element;
    this.laid = undefined;
    element?.focus();
  }
}
