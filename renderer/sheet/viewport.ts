import {
  select,
  zoom,
  zoomIdentity,
  zoomTransform,
  type D3ZoomEvent,
  type ZoomTransform,
} from 'd3';

/** Pixels for a millimetre of paper. */
type Scale = number;

export type Fit = 'page' | 'width';

interface Size {
  readonly width: number;
  readonly height: number;
}

export interface Viewport {
  /** Takes the size of the page in millimetres, and shows it by the last fit asked for. */
  setPage(page: Size): void;
  fit(how: Fit): void;
  zoomBy(factor: number): void;
  /** Moves the sight by shares of its own width and height. */
  panBy(right: number, down: number): void;
  stop(): void;
}

/** Pixels left free round a fitted page. */
const rim = 12;
const scales: [Scale, Scale] = [0.5, 60];
/** Milliseconds of a glide; none where the user asked the system for less motion. */
const glide = () => (matchMedia('(prefers-reduced-motion: reduce)').matches ? 0 : 160);

/** Where a page of some size stands when it fits a window of some size. */
export function fitted(how: Fit, page: Size, sight: Size): { k: Scale; x: number; y: number } {
  const wide = (sight.width - 2 * rim) / page.width;
  const high = (sight.height - 2 * rim) / page.height;
  const k = Math.max(scales[0], how === 'width' ? wide : Math.min(wide, high));
  return {
    k,
    x: (sight.width - k * page.width) / 2,
    y: Math.max(rim, (sight.height - k * page.height) / 2),
  };
}

/**
 * Zoom and pan of a board (the svg that fills the window) over a world (its group, in
 * millimetres of paper). Until the user zooms, the page keeps fitting as the window changes.
 */
export function openViewport(board: SVGSVGElement, world: SVGGElement): Viewport {
  let page: Size = { width: 210, height: 297 };
  let fitting: Fit | undefined = 'page';
  const root = select<SVGSVGElement, unknown>(board);
  const sight = (): Size => ({ width: board.clientWidth, height: board.clientHeight });

  const behaviour = zoom<SVGSVGElement, unknown>()
    .scaleExtent(scales)
    .extent(() => [
      [0, 0],
      [board.clientWidth, board.clientHeight],
    ])
    .on('zoom', ({ transform, sourceEvent }: D3ZoomEvent<SVGSVGElement, unknown>) => {
      world.setAttribute('transform', transform.toString());
      if (sourceEvent) fitting = undefined;
    });
  root.call(behaviour).on('dblclick.zoom', null);

  const moving = (milliseconds: number) => root.transition().duration(milliseconds);

  const fit = (how: Fit, milliseconds = glide()) => {
    fitting = how;
    const { k, x, y } = fitted(how, page, sight());
    const transform: ZoomTransform = zoomIdentity.translate(x, y).scale(k);
    if (milliseconds === 0) root.call(behaviour.transform, transform);
    else moving(milliseconds).call(behaviour.transform, transform);
  };

  const watcher = new ResizeObserver(() => fitting && fit(fitting, 0));
  watcher.observe(board);

  return {
    setPage(next) {
      page = next;
      behaviour.translateExtent([
        [-page.width, -page.height],
        [2 * page.width, 2 * page.height],
      ]);
      if (fitting) fit(fitting, 0);
    },
    fit: (how) => fit(how),
    zoomBy(factor) {
      fitting = undefined;
      moving(glide()).call(behaviour.scaleBy, factor);
    },
    panBy(right, down) {
      fitting = undefined;
      const { k } = zoomTransform(board);
      const { width, height } = sight();
      root.call(behaviour.translateBy, (-right * width) / k, (-down * height) / k);
    },
    stop() {
      watcher.disconnect();
      root.interrupt().on('.zoom', null);
    },
  };
}
