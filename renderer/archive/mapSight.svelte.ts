import {
  select,
  zoom,
  zoomIdentity,
  zoomTransform,
  type D3ZoomEvent,
  type Selection,
  type ZoomBehavior,
} from 'd3';
import type { Position } from '../../core/base/geo/ellipsoid.ts';
import { centreOf, extentOf } from '../../core/base/geo/extent.ts';
import { planeAt } from '../../core/base/geo/localPlane.ts';
import type { KeptSight } from '../state/wells.svelte.ts';
import { toScreen, type Sight } from './mapScene.ts';

/** Pixels a metre: from the whole globe in a small window to half a metre a pixel. */
const scales: [number, number] = [5e-6, 2];
/** Pixels left free round the outermost wells. */
const margin = 46;
/** A map of one well shows this much of its surroundings, metres. */
const leastM = 4000;

/** Zoom and pan of a map. Until somebody moves it, it keeps showing all that it was given. */
export class MapSight {
  seen = $state.raw<Sight>({
    plane: planeAt({ latitude: 0, longitude: 0 }),
    k: 1e-5,
    x: 0,
    y: 0,
    width: 0,
    height: 0,
  });
  readonly #root: Selection<SVGSVGElement, unknown, null, undefined>;
  readonly #behaviour: ZoomBehavior<SVGSVGElement, unknown>;
  readonly #watcher: ResizeObserver;
  readonly #keep: (sight: KeptSight | undefined) => void;
  #all: readonly Position[] = [];
  #moved: boolean;

  /** `keep` hears where the map was moved to, to begin there another time. */
  constructor(
    board: SVGSVGElement,
    kept: KeptSight | undefined,
    keep: (sight: KeptSight | undefined) => void,
  ) {
    this.#keep = keep;
    this.#moved = kept !== undefined;
    this.#root = select<SVGSVGElement, unknown>(board);
    this.#behaviour = zoom<SVGSVGElement, unknown>()
      .scaleExtent(scales)
      .extent(() => [
        [0, 0],
        [this.seen.width, this.seen.height],
      ])
      .on('zoom', (event: D3ZoomEvent<SVGSVGElement, unknown>) => this.#zoomed(event));
    this.#root.call(this.#behaviour).on('dblclick.zoom', null);
    if (kept) this.#begin(kept);
    this.#watcher = new ResizeObserver(() => this.#resized(board.clientWidth, board.clientHeight));
    this.#watcher.observe(board);
  }

  #begin({ centre, k, x, y }: KeptSight) {
    this.seen = { ...this.seen, plane: planeAt(centre) };
    this.#root.call(this.#behaviour.transform, zoomIdentity.translate(x, y).scale(k));
  }

  #zoomed({ transform: { k, x, y }, sourceEvent }: D3ZoomEvent<SVGSVGElement, unknown>) {
    this.seen = { ...this.seen, k, x, y };
    if (sourceEvent) this.#moved = true;
    if (this.#moved) this.#keep({ centre: this.seen.plane.centre, k, x, y });
  }

  #resized(width: number, height: number) {
    this.seen = { ...this.seen, width, height };
    if (!this.#moved) this.fit();
  }

  /** Takes what is to be shown; a map that nobody moved shows it at once. */
  show(all: readonly Position[]) {
    this.#all = all;
    if (!this.#moved) this.fit();
  }

  /** Shows all, on a plane about its middle. */
  fit() {
    const extent = extentOf(this.#all);
    const { width, height } = this.seen;
    if (!extent || width === 0 || height === 0) return;
    this.#moved = false;
    this.#keep(undefined);
    const plane = planeAt(centreOf(extent));
    const east = plane.toPlane({ latitude: extent.south, longitude: extent.east });
    const north = plane.toPlane({ latitude: extent.north, longitude: extent.west });
    const [wideM, highM] = [2 * Math.abs(east.eastM), 2 * Math.abs(north.northM)];
    const room = (pixels: number) => Math.max(pixels - 2 * margin, pixels / 2);
    const k = Math.min(
      room(width) / Math.max(wideM, leastM),
      room(height) / Math.max(highM, leastM),
    );
    this.seen = { ...this.seen, plane };
    const transform = zoomIdentity.translate(width / 2, height / 2).scale(k);
    this.#root.call(this.#behaviour.transform, transform);
  }

  zoomBy(factor: number) {
    this.#moved = true;
    this.#root.call(this.#behaviour.scaleBy, factor);
  }

  /** Moves the sight by shares of its own width and height. */
  panBy(right: number, down: number) {
    this.#moved = true;
    const { k, width, height } = this.seen;
    this.#root.call(this.#behaviour.translateBy, (-right * width) / k, (-down * height) / k);
  }

  /** Moves the sight so far that a position lies in it. */
  reveal(position: Position) {
    const { width, height } = this.seen;
    const { x, y } = toScreen(this.seen, position);
    if (width === 0 || (x > 0 && x < width && y > 0 && y < height)) return;
    this.#moved = true;
    const { k } = zoomTransform(this.#root.node()!);
    const to = [(width / 2 - x) / k, (height / 2 - y) / k] as const;
    this.#root.call(this.#behaviour.translateBy, to[0], to[1]);
  }

  stop() {
    this.#watcher.disconnect();
    this.#root.interrupt().on('.zoom', null);
  }
}
