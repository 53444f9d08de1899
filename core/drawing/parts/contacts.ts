import type { RecordPath } from '../../base/recordPath.ts';
import type { PaperMm } from '../../base/units.ts';
import type { Stratum } from '../../model/wellModel.ts';
import type { LogInterval } from '../../record/log.ts';
import type { Item, Stroke } from '../items.ts';
import type { Kit } from '../kit.ts';
import { letter } from '../letters.ts';
import { dashed, letterings, lineHeight, solid, white } from '../pens.ts';
import { yAt } from '../scale.ts';
import { group, line, type Point } from '../shapes.ts';
import { figureRoom, type View } from './columns.ts';

/**
 * Contacts between strata: a full line where sharp, a zone of slanted strokes on a clear
 * band where gradual, a dashed line with a question mark where uncertain (broken lines for gradual
 * and uncertain contacts: geological practice, from memory).
 */
export type Boundary = NonNullable<LogInterval['boundary']>;

/** Room that the sign of a doubtful contact takes, across and down. */
const doubtWidth: PaperMm = 1.6;
const doubtHeight: PaperMm = lineHeight('small');

/** Distance of the strokes of a gradual contact, and how far each leans over. */
const stroke = { pitch: 1.4, lean: 0.9 } as const;

/** The clear band of a gradual contact, in beds that are thick enough to spare it. */
const bands = [
  { width: 1.4, leastBed: 4 },
  { width: 1, leastBed: 2.5 },
] as const;

const clear = (width: PaperMm): Stroke => ({ ink: white, width });

/** Strokes that lean over across a clear band; a dashed line where the beds spare no band. */
function gradualSign([x, y]: Point, width: PaperMm, bed: PaperMm, source?: RecordPath): Item[] {
  const band = bands.find(({ leastBed }) => bed >= leastBed);
  if (!band) return [line([x, y], [x + width, y], dashed('narrow'), source)];
  const half = band.width / 2;
  const count = Math.floor((width - stroke.lean) / stroke.pitch);
  const start = x + (width - (count - 1) * stroke.pitch - stroke.lean) / 2;
  return [
    line([x, y], [x + width, y], clear(band.width), source),
    ...Array.from({ length: count }, (_, at) => {
      const left = start + at * stroke.pitch;
      return line([left, y + half], [left + stroke.lean, y - half], solid('narrow'), source);
    }),
  ];
}

/** A dashed line, and beside its right end a question mark that nothing shows through. */
function doubtSign(
  kit: Kit,
  [x, y]: Point,
  width: PaperMm,
  sign: { from: PaperMm; middle: PaperMm },
  source?: RecordPath,
): Item[] {
  const left = x + width - sign.from;
  return [
    line([x, y], [x + width, y], clear(0.7), source),
    line([x, y], [x + width, y], dashed('medium'), source),
    line([left, sign.middle], [left + doubtWidth - 0.2, sign.middle], clear(2), source),
    ...letter(kit, '?', left + 0.2, sign.middle + letterings.small / 2, { source }),
  ];
}

/** A contact of one kind over a width; `bed` is the thickness of the thinner bed beside it. */
export function contactSign(
  kit: Kit,
  boundary: Boundary | undefined,
  at: Point,
  width: PaperMm,
  bed: PaperMm,
  source?: RecordPath,
): Item[] {
  if (boundary === 'gradual') return gradualSign(at, width, bed, source);
  if (boundary === 'uncertain') {
    const sign = { from: doubtWidth + 0.6, middle: at[1] };
    return doubtSign(kit, at, width, sign, source);
  }
  return [line(at, [at[0] + width, at[1]], solid('narrow'), source)];
}

/**
 * How far from the right the sign of each doubtful contact begins: farther where the contact above
 * is too near for signs under each other. One that finds no room has none.
 */
function doubtPlaces(strata: readonly Stratum[], view: View): Map<Stratum, PaperMm> {
  const places = new Map<Stratum, PaperMm>();
  let [lastY, place] = [-Infinity, 0];
  for (const stratum of strata) {
    if (stratum.interval.boundary !== 'uncertain') continue;
    const y = yAt(view.axis, stratum.toM);
    place = y - lastY < doubtHeight ? place + 1 : 0;
    lastY = y;
    const from = (place + 1) * doubtWidth + 0.6;
    if (from < view.columns.ground.width) places.set(stratum, from);
  }
  return places;
}

/** The thickness on paper of the thinner of the beds that meet at a contact. */
function thinnerBed(view: View, stratum: Stratum, below: Stratum | undefined): PaperMm {
  const high = ({ fromM, toM }: Stratum) => yAt(view.axis, toM) - yAt(view.axis, fromM);
  return Math.min(high(stratum), below ? high(below) : Infinity);
}

/** A sign stands on its contact, but for one at the edge of the body or at a match line. */
function insideBody(view: View, y: PaperMm): PaperMm {
  const { top, foot } = figureRoom(view);
  return Math.min(Math.max(y, top), foot);
}

/** The contacts at the feet of the strata that a page shows to their foot. */
export function drawContacts(kit: Kit, strata: readonly Stratum[], view: View): Item[] {
  const { x, width } = view.columns.ground;
  const ended = strata.filter(({ toM }) => toM <= view.axis.toM);
  const doubts = doubtPlaces(ended, view);
  return ended.map((stratum) => {
    const { path: source, interval, toM } = stratum;
    const at: Point = [x, yAt(view.axis, toM)];
    const from = doubts.get(stratum);
    const bed = thinnerBed(view, stratum, strata[strata.indexOf(stratum) + 1]);
    const items =
      from === undefined
        ? contactSign(kit, interval.boundary, at, width, bed, source)
        : doubtSign(kit, at, width, { from, middle: insideBody(view, at[1]) }, source);
    return group('contact', items, { source });
  });
}
