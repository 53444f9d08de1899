import type { RecordPath } from '../../base/recordPath.ts';
import type { Metres } from '../../base/units.ts';
import type { Source } from '../../practice/practice.ts';
import type { AssumptionId } from '../assumptions.ts';
import { exactly, fromAssumption, fromRecord, reckoned } from '../reckon.ts';
import type { Interval } from '../interval.ts';
import type { Reckoned, ReckonedInput } from '../reckoned.ts';
import type { TravelTime } from '../results.ts';
import { sources } from '../sources.ts';
import { groundFigures, rockClasses, type GroundClass } from './groundClasses.ts';

/** What somebody knows better than a table: each replaces what is assumed. */
export interface KnownOfGround {
  /** Metres a day, as from a pumping test. */
  readonly conductivityMd?: Interval;
  /** Share of the ground that water flows through. */
  readonly porosity?: Interval;
  /** Fall of the water table, metres in a metre. */
  readonly gradient?: Interval;
}

/** Days that are named as limits; between them the risk falls, and never to nothing. */
const references: readonly { readonly days: number; readonly source: Source }[] = [
  { days: 25, source: sources.onSiteSanitation },
  { days: 50, source: sources.fiftyDays },
];

/** True of the way where any pore or slope lets water stand still. */
const simplifications: readonly AssumptionId[] = [
  'evenGround',
  'straightWay',
  'noWayDown',
  'noPumping',
];

function asked(symbol: string, value: Interval, unit: string): ReckonedInput {
  return { symbol, value, unit, from: 'asked' };
}

function assumed(symbol: string, value: Interval, unit: string, id: AssumptionId): ReckonedInput {
  return { symbol, value, unit, from: { assumed: id } };
}

function inputsFor(
  distanceM: Metres,
  path: RecordPath,
  ground: GroundClass | undefined,
  known: KnownOfGround,
): [ReckonedInput, ReckonedInput, ReckonedInput, ReckonedInput] | undefined {
  const { conductivityMd, porosity, gradient } = known;
  const table = ground && groundFigures[ground];
  const pores = ground && rockClasses.includes(ground) ? 'porosityOfRock' : 'porosityByGround';
  const k = conductivityMd
    ? asked('K', conductivityMd, 'm/d')
    : table && assumed('K', table.conductivityMd, 'm/d', 'conductivityByGround');
  const n = porosity
    ? asked('n', porosity, '1')
    : table && assumed('n', table.porosity, '1', pores);
  if (!k || !n) return undefined;
  const i = gradient ? asked('i', gradient, '1') : fromAssumption('i', 'gradient');
  return [fromRecord('d', exactly(distanceM), 'm', path), n, k, i];
}

/**
 * Days on the way, t = d · n / (K · i), from the fastest that all inputs allow to the slowest.
 * Undefined where the ground is not told and not enough is known instead, or where an input leaves
 * no flow at all. A wide interval is the honest answer: it says whether a distance may be far too
 * short, never that it is enough.
 */
export function travelDays(
  distanceM: Metres,
  path: RecordPath,
  ground: GroundClass | undefined,
  known: KnownOfGround = {},
): Reckoned | undefined {
  const inputs = inputsFor(distanceM, path, ground, known);
  if (!inputs) return undefined;
  const [d, n, k, i] = inputs.map(({ value }) => value) as [Interval, Interval, Interval, Interval];
  if (!(k.least > 0 && i.least > 0)) return undefined;
  const value = {
    least: (d.least * n.least) / (k.most * i.most),
    most: (d.most * n.most) / (k.least * i.least),
  };
  return reckoned('travelDays', value, 't = d · n / (K · i)', inputs, sources.darcy);
}

/** What was assumed beside what the inputs say of themselves. */
export function assumedIn({ inputs }: Reckoned): AssumptionId[] {
  const named = inputs.flatMap(({ from }) =>
    typeof from === 'object' && 'assumed' in from ? [from.assumed] : [],
  );
  return [...named, ...simplifications];
}

/** How the days stand to those that are named as limits. */
export function againstReferences({ value }: Reckoned): TravelTime['references'] {
  return references.map(({ days, source }) => {
    const stands = value.most < days ? 'shorter' : value.least >= days ? 'longer' : 'spans';
    return { days, stands, source };
  });
}
