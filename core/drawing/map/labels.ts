import { Ground, type GroundBox } from './ground.ts';

/** A sign on a map and the size of what may be written beside it, in one unit of length. */
export interface Named {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** Top left corner of a label. */
export interface LabelPlace {
  readonly x: number;
  readonly y: number;
}

function isInside(
  { x, y, width, height }: GroundBox,
  frame?: { width: number; height: number },
): boolean {
  return !frame || (x >= 0 && y >= 0 && x + width <= frame.width && y + height <= frame.height);
}

/** To the right first, as people read; then left, above and below. */
function wishes({ x, y, width, height }: Named, gap: number): GroundBox[] {
  const size = { width, height };
  return [
    { x: x + gap, y: y - height / 2, ...size },
    { x: x - gap - width, y: y - height / 2, ...size },
    { x: x - width / 2, y: y - gap - height, ...size },
    { x: x - width / 2, y: y + gap, ...size },
  ];
}

/** How labels stand: as far from the signs as `gap`, in a frame from (0, 0) where one is given. */
export interface LabelRoom {
  /** From a sign's middle to its label; half of it is kept free round every sign. */
  readonly gap: number;
  readonly frame?: { readonly width: number; readonly height: number } | undefined;
}

function groundOf(signs: readonly Named[], gap: number): Ground {
  const ground = new Ground(8 * gap);
  for (const { x, y } of signs)
    ground.take({ x: x - gap / 2, y: y - gap / 2, width: gap, height: gap });
  return ground;
}

function placeBeside(
  ground: Ground,
  signs: readonly Named[],
  { gap, frame }: LabelRoom,
): (LabelPlace | undefined)[] {
  return signs.map((sign) => {
    const box = wishes(sign, gap).find((wish) => isInside(wish, frame) && ground.isFree(wish));
    if (!box) return undefined;
    ground.take(box);
    return { x: box.x, y: box.y };
  });
}

/**
 * Places labels beside their signs so that none lies on another or on any sign; the first named
 * come first. Undefined where there is no room: such a label is left out.
 */
export function placeLabels(
  signs: readonly Named[],
  gap: number,
  frame?: LabelRoom['frame'],
): (LabelPlace | undefined)[] {
  return placeBeside(groundOf(signs, gap), signs, { gap, frame });
}

/** Where a label stands off its sign, and where the line to it begins and ends. */
export interface LedPlace extends LabelPlace {
  readonly leader?: readonly [from: LedPoint, to: LedPoint];
}
type LedPoint = readonly [x: number, y: number];

/** Ways to the label, turned from the right; and how far off it may stand, in gaps. */
const ways = [0, 8, 4, 12, 1, 15, 7, 9, 2, 14, 6, 10, 3, 13, 5, 11].map((at) => (at * Math.PI) / 8);
const reaches = [1.2, 2, 3, 4, 5, 6, 8] as const;
/** Between two places of a leader that are looked at, and what is kept free round it, in gaps. */
const step = 0.25;
const clear = 0.15;

/** From the corner or the middle of a side at which a leader ends to the box's top left corner. */
function before(share: number, size: number): number {
  if (Math.abs(share) < 0.38) return size / 2;
  return share > 0 ? 0 : size;
}

/** Boxes along a leader; the sign itself has the first of its length. */
function leaderBoxes([x, y]: LedPoint, way: number, gap: number, reach: number): GroundBox[] {
  const side = clear * gap;
  const steps = Math.floor((reach - 0.75) / step);
  return Array.from({ length: steps }, (_, at) => {
    const off = (0.75 + at * step) * gap;
    const [cx, cy] = [x + off * Math.cos(way), y + off * Math.sin(way)];
    return { x: cx - side / 2, y: cy - side / 2, width: side, height: side };
  });
}

function ledOff(ground: Ground, sign: Named, { gap, frame }: LabelRoom): LedPlace | undefined {
  const { x, y, width, height } = sign;
  for (const reach of reaches)
    for (const way of ways) {
      const [across, down] = [Math.cos(way), Math.sin(way)];
      const to = [x + reach * gap * across, y + reach * gap * down] as const;
      const left = to[0] - before(across, width);
      const box = { x: left, y: to[1] - before(down, height), width, height };
      const line = leaderBoxes([x, y], way, gap, reach);
      if (!isInside(box, frame) || ![box, ...line].every((one) => ground.isFree(one))) continue;
      for (const one of [box, ...line]) ground.take(one);
      const from = [x + 0.6 * gap * across, y + 0.6 * gap * down] as const;
      return { x: box.x, y: box.y, leader: [from, to] };
    }
  return undefined;
}

/** How often those without room are let go first, and most of them for which that may help. */
const mostRounds = 8;
const mostMissing = 0.15;

/** Labels in an order: beside their signs first, then off them. By the place of each sign. */
function placedIn(
  order: readonly number[],
  signs: readonly Named[],
  room: LabelRoom,
): { readonly places: (LedPlace | undefined)[]; readonly ground: Ground } {
  const ground = groundOf(signs, room.gap);
  const places: (LedPlace | undefined)[] = signs.map(() => undefined);
  const inOrder = order.map((at) => signs[at]!);
  placeBeside(ground, inOrder, room).forEach((place, turn) => (places[order[turn]!] = place));
  for (const at of order) places[at] ??= ledOff(ground, signs[at]!, room);
  return { places, ground };
}

/**
 * Labels beside their signs as far as there is room; others stand off theirs, tied by a leader that
 * crosses no label, no sign and no other leader. The first signs, as many as `own`, come first in
 * all of this; the others are named where there is room beside them. Undefined without room.
 */
export function placeLedLabels(
  signs: readonly Named[],
  room: LabelRoom,
  own: number = signs.length,
): (LedPlace | undefined)[] {
  let order = Array.from({ length: own }, (_, at) => at);
  const missing = ({ places }: typeof best) => order.filter((at) => !places[at]);
  let best = placedIn(order, signs, room);
  let last = best;
  const few = (count: number) => count > 0 && count <= own * mostMissing;
  for (let round = 1; round < mostRounds && few(missing(best).length); round += 1) {
    order = [...missing(last), ...order.filter((at) => last.places[at])];
    last = placedIn(order, signs, room);
    if (missing(last).length < missing(best).length) best = last;
  }
  return [...best.places.slice(0, own), ...placeBeside(best.ground, signs.slice(own), room)];
}
