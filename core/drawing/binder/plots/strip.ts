import { filled } from '../../../base/text/filled.ts';
import { sayUnit } from '../../../base/sayUnit.ts';
import type { PaperMm } from '../../../base/units.ts';
import { waterWords } from '../../../water/sayWater.ts';
import { plainFigure } from '../../figures.ts';
import type { Box, Item } from '../../items.ts';
import { baseline, letter, lettered, widthOf, wrapped } from '../../letters.ts';
import { black, dashed, lineHeight, solid, white } from '../../pens.ts';
import { circle, group, line } from '../../shapes.ts';
import type { Piece } from '../../parts/flow/flow.ts';
import { linearAxis, logAxis, placeAt, ticksOf, type Axis } from '../../parts/plots/axis.ts';
import type { BinderKit } from '../binder.ts';
import type { BinderLimit, BinderResult } from '../binderWell.ts';

/** One parameter over the wells in which it was looked for, by one set of values. */
export interface Strip {
  readonly results: readonly BinderResult[];
}

const dot: PaperMm = 0.55;
const binWidth: PaperMm = 1.3;
const dotsHigh: PaperMm = 8;
const labelPitch = lineHeight('small');
/** Beyond this spread small values would all lie on the left end of a linear axis. */
const widestLinear = 30;

type Placed = BinderLimit & { readonly value: number };

function limitsOf({ results }: Strip): Placed[] {
  const all = results[0]!.limits;
  return all.filter((limit): limit is Placed => limit.value !== undefined);
}

function valuesOf({ results }: Strip): { value: number; below: boolean }[] {
  return results.flatMap(({ value, below }) => (value === undefined ? [] : { value, below }));
}

/** From nothing up; by powers of ten where the largest is far above a guideline value or the rest. */
function axisOf(strip: Strip): Axis {
  const values = [...valuesOf(strip), ...limitsOf(strip)].map(({ value }) => value);
  const above = values.filter((value) => value > 0);
  if (above.length === 0) return linearAxis([...values, 1]);
  const [least, most] = [Math.min(...above), Math.max(...above)];
  if (most / least <= widestLinear) return linearAxis(values);
  // Three decades under the largest show where values lie; smaller ones stand at the left end.
  return logAxis(above.filter((value) => value >= most / 2000));
}

interface Stacked {
  readonly x: PaperMm;
  readonly high: number;
  readonly below: boolean;
}

/** Dots over each other where they would stand on each other; those below a limit on top. */
function stacked(strip: Strip, axis: Axis, box: Box): Stacked[] {
  const high = new Map<number, number>();
  const sorted = valuesOf(strip).sort((a, b) => Number(a.below) - Number(b.below));
  return sorted.map(({ value, below }) => {
    const inside = Math.min(axis.to, Math.max(axis.from, value));
    const x = placeAt(axis, inside, box.x, box.width);
    const bin = Math.round((x - box.x) / binWidth);
    const at = high.get(bin) ?? 0;
    high.set(bin, at + 1);
    return { x: box.x + bin * binWidth, high: at, below };
  });
}

function drawDots(strip: Strip, axis: Axis, box: Box): Item[] {
  const dots = stacked(strip, axis, box);
  const most = dots.reduce((a, { high }) => Math.max(a, high), 0);
  const pitch = Math.min(2 * dot + 0.15, (box.height - 2 * dot) / Math.max(1, most));
  const foot = box.y + box.height - dot - 0.3;
  return dots.map(({ x, high, below }) =>
    circle(
      [x, foot - high * pitch],
      dot,
      below ? { stroke: solid('hair'), fill: white } : { fill: black },
    ),
  );
}

/** A guideline value as it is written beside its line. */
function limitSays(kit: BinderKit, { bound, value, basis }: Placed): string {
  const sign = bound === 'most' ? '≤' : '≥';
  const { bases } = waterWords(kit.words.language).quality;
  return `${sign} ${plainFigure(kit, value, 6)} ${bases[basis]}`;
}

interface LimitLabel {
  readonly limit: Placed;
  readonly x: PaperMm;
  readonly left: PaperMm;
  readonly lane: number;
}

/** Labels of values over the strip, those that would meet in lanes over each other. */
function limitLabels(
  kit: BinderKit,
  limits: readonly Placed[],
  axis: Axis,
  box: Box,
): LimitLabel[] {
  const ends: PaperMm[] = [];
  const sorted = [...limits].sort((a, b) => a.value - b.value);
  return sorted.map((limit) => {
    const x = placeAt(axis, limit.value, box.x, box.width);
    const width = widthOf(kit, limitSays(kit, limit));
    const fits = x + 0.8 + width <= box.x + box.width;
    const left = Math.max(box.x, fits ? x + 0.8 : x - 0.8 - width);
    const free = ends.findIndex((end) => end + 1.5 <= left);
    const lane = free < 0 ? ends.length : free;
    ends[lane] = left + width;
    return { limit, x, left, lane };
  });
}

const isHealth = ({ basis }: Placed) => basis === 'health' || basis === 'provisional';

/** Counts of one value: past it, and not told. Nothing is said of the rest. */
function countSays(kit: BinderKit, strip: Strip, limit: Placed): string {
  const states = strip.results.flatMap(({ limits }) =>
    limits.filter(({ key }) => key === limit.key).map(({ state }) => state),
  );
  const past = states.filter((state) => state === 'above' || state === 'below').length;
  const untold = states.filter((state) => state !== 'within').length - past;
  const { plots } = kit.own;
  const sign = limit.bound === 'most' ? plots.above : plots.under;
  const says = filled(sign, {
    value: plainFigure(kit, limit.value, 6),
    n: String(past),
    of: String(states.length),
  });
  return untold === 0 ? says : `${says}; ${filled(plots.untold, { n: String(untold) })}`;
}

/** Name and unit at the left, the strip, and counts against each value at the right. */
export function stripPiece(kit: BinderKit, strip: Strip, width: PaperMm): Piece {
  const first = strip.results[0]!;
  const [nameWidth, saysWidth] = [width * 0.19, width * 0.29];
  const unit = first.unit === '1' ? '' : ` (${sayUnit(first.unit, kit.words.language)})`;
  const name = wrapped(kit, `${first.name[kit.words.language]}${unit}`, nameWidth - 2, {
    face: 'bold',
  });
  const limits = limitsOf(strip);
  const counts = filled(kit.own.plots.results, { n: String(strip.results.length) });
  const says = [counts, ...limits.map((limit) => countSays(kit, strip, limit))].flatMap((one) =>
    wrapped(kit, one, saysWidth - 2),
  );
  const stripWidth = width - nameWidth - saysWidth - 5;
  const axis = axisOf(strip);
  const labels = limitLabels(kit, limits, axis, { x: 0, y: 0, width: stripWidth, height: 0 });
  const lanes = labels.reduce((a, { lane }) => Math.max(a, lane + 1), 0);
  const inner = lanes * labelPitch + dotsHigh + 1.6 + lineHeight('small');
  const height = Math.max(inner, name.length * labelPitch, says.length * labelPitch) + 3.5;
  return {
    height,
    draw: (x, y) => {
      const box = {
        x: x + nameWidth + 1,
        y: y + lanes * labelPitch,
        width: stripWidth,
        height: dotsHigh,
      };
      const foot = box.y + box.height;
      const ticks = ticksOf(kit, axis, 6).flatMap(({ value, label }): Item[] => {
        const at = placeAt(axis, value, box.x, box.width);
        return [
          line([at, foot], [at, foot + (label === undefined ? 0.7 : 1.3)], solid('thin')),
          ...letter(kit, label ?? '', at, foot + 1.5 + baseline('small'), { anchor: 'middle' }),
        ];
      });
      const marks = labels.flatMap(({ limit, x: at, left, lane }): Item[] => {
        const top = y + (lanes - 1 - lane) * labelPitch;
        const stroke = isHealth(limit) ? solid('wide') : dashed('medium');
        return [
          line([box.x + at, box.y - 0.6], [box.x + at, foot], stroke),
          ...letter(kit, limitSays(kit, limit), box.x + left, top + baseline('small') - 0.2),
        ];
      });
      return [
        group('strip', [
          ...lettered(kit, name, x, box.y, { face: 'bold' }),
          ...drawDots(strip, axis, box),
          line([box.x, foot], [box.x + box.width, foot], solid('narrow')),
          ...ticks,
          ...marks,
          ...lettered(kit, says, x + width - saysWidth, y),
        ]),
      ];
    },
  };
}
