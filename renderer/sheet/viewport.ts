import {
  select,
  zoom,
  zoomIdentity,
  zoomTransform,
  type D3ZoomEvent,
  type Selection,
  type ZoomBehavior,
} from 'd3';
import type { Box } from '../../core/drawing/items.ts';
import { fitted, inSight, scales, type Fit, type Size } from './fit.ts';

/** Milliseconds of a glide; none where the user asked the system for less motion. */
const glide = () => (matchMedia('(prefers-reduced-motion: reduce)').matches ? 0 : 160);

/** What has an edge under it, or is drawn over, is not for panning; the wheel zooms everywhere. */
function pans(event: MouseEvent | TouchEvent): boolean {
  if (event.type === 'wheel') return true;
  const held = event.target instanceof Element && event.target.closest('[data-grip]') !== null;
  return !held && !event.ctrlKey && !(event instanceof MouseEvent && event.button !== 0);
}

/**
 * Zoom and pan of a board (the svg that fills the window) over a world (its group, in
 * millimetres of paper). Until the user zooms, the page keeps fitting as the window changes.
 */
export class Viewport {
  readonly #board: SVGSVGElement;
  readonly #root: Selection<SVGSVGElement, unknown, null, undefined>;
  readonly #behaviour: ZoomBehavior<SVGSVGElement, unknown>;
  readonly #watcher: ResizeObserver;
  #page: Size = { width: 210, height: 297 };
  #fitting: Fit | undefined = 'page';

  /** `onScale` hears the pixels for a millimetre whenever they change. */
  constructor(board: SVGSVGElement, world: SVGGElement, onScale?: (k: number) => void) {
    this.#board = board;
    this.#root = select<SVGSVGElement, unknown>(board);
    this.#behaviour = zoom<SVGSVGElement, unknown>()
      .scaleExtent(scales)
      .filter(pans)
      .extent(() => [
        [0, 0],
        [this.#sight.width, this.#sight.height],
      ])
      .on('zoom', ({ transform, sourceEvent }: D3ZoomEvent<SVGSVGElement, unknown>) => {
        world.setAttribute('transform', transform.toString());
        onScale?.(transform.k);
        if (sourceEvent) this.#fitting = undefined;
      });
    // A double click would zoom away from the part that its first click chose.
    this.#root.call(this.#behaviour).on('dblclick.zoom', null);
    this.#watcher = new ResizeObserver(() => this.#fitAgain());
    this.#watcher.observe(board);
  }

  get #sight(): Size {
    return { width: this.#board.clientWidth, height: this.#board.clientHeight };
  }

  #fitAgain() {
    if (this.#fitting) this.fit(this.#fitting, 0);
  }

  #moving(milliseconds = glide()) {
    return this.#root.transition().duration(milliseconds);
  }

  /** Takes the size of the page in millimetres, and shows it by the last fit asked for. */
  setPage(page: Size) {
    this.#page = page;
    this.#behaviour.translateExtent([
      [-page.width, -page.height],
      [2 * page.width, 2 * page.height],
    ]);
    this.#fitAgain();
  }

  fit(how: Fit, milliseconds = glide()) {
    this.#fitting = how;
    const { k, x, y } = fitted(how, this.#page, this.#sight);
    const transform = zoomIdentity.translate(x, y).scale(k);
    if (milliseconds === 0) this.#root.call(this.#behaviour.transform, transform);
    else this.#moving(milliseconds).call(this.#behaviour.transform, transform);
  }

  zoomBy(factor: number) {
    this.#fitting = undefined;
    this.#moving().call(this.#behaviour.scaleBy, factor);
  }

  /** Moves the sight by shares of its own width and height. */
  panBy(right: number, down: number) {
    this.#fitting = undefined;
    const { k } = zoomTransform(this.#board);
    const { width, height } = this.#sight;
    this.#root.call(this.#behaviour.translateBy, (-right * width) / k, (-down * height) / k);
  }

  /** Glides to the first of some boxes (millimetres) unless one of them is in sight already. */
  reveal(boxes: readonly Box[]) {
    const [first] = boxes;
    const standing = zoomTransform(this.#board);
    if (!first || boxes.some((box) => inSight(box, standing, this.#sight))) return;
    this.#fitting = undefined;
    const [x, y] = [first.x + first.width / 2, first.y + first.height / 2];
    this.#moving().call(this.#behaviour.translateTo, x, y);
  }

  stop() {
    this.#watcher.disconnect();
    this.#root.interrupt().on('.zoom', null);
  }
}
