import { known } from '../../base/known.ts';
import type { RecordPath } from '../../base/recordPath.ts';
import type { Litres } from '../../base/units.ts';
import type { WellModel } from '../../model/wellModel.ts';
import type { HeldFigure, Practice } from '../../practice/practice.ts';
import type { WellRecord } from '../../record/schema.ts';
import { developmentEvents, type DevelopmentStretch } from './developmentEvents.ts';
import { standingWater, type StandingMissing } from './standingWater.ts';

/** Measured at the end of an event, that many hours after the work began. */
export interface DevelopmentPoint {
  readonly hours: number;
  readonly value: number;
  readonly path: RecordPath;
}

export const criterionIds = ['developmentH', 'turbidityNtu', 'sandMgL'] as const;
export type CriterionId = (typeof criterionIds)[number];

export type CriterionState = 'met' | 'notMet' | 'cantSay';

/** What the practice asks for at the end of development, and how the well stands to it. */
export interface EndCriterion {
  readonly id: CriterionId;
  readonly state: CriterionState;
  readonly limit: HeldFigure;
  /** Hours worked at least, or the last measured; absent where not known. */
  readonly value?: number;
  readonly path?: RecordPath;
}

/** What totals and criteria lack. */
export type DevelopmentMissing =
  StandingMissing | 'development' | 'times' | 'rates' | 'turbidityOrSand';

export interface DevelopmentSeries {
  readonly events: readonly DevelopmentStretch[];
  /** For a plot over the hours worked; what cannot be placed on them is left out. */
  readonly turbidity: readonly DevelopmentPoint[];
  readonly sand: readonly DevelopmentPoint[];
  /** Hours that are told; `hoursAtLeast` where some event has no length. */
  readonly hours: number;
  readonly hoursAtLeast: boolean;
  /** Pumped in the events with rate and times; `litresAtLeast` where some have not. */
  readonly litres: Litres;
  readonly litresAtLeast: boolean;
  /** The hole under water, and how many times as much was pumped. */
  readonly boreLitres?: Litres;
  readonly boreVolumes?: number;
  readonly criteria: readonly EndCriterion[];
  /** All together: hours, and turbidity or sand; both of these where both were measured. */
  readonly end: CriterionState;
  readonly missing: readonly DevelopmentMissing[];
}

type Measure = 'turbidityNtu' | 'sandMgL';

function pointsOf(events: readonly DevelopmentStretch[], measure: Measure): DevelopmentPoint[] {
  return events.flatMap(({ toH, path, [measure]: value }) =>
    toH === undefined || value === undefined ? [] : [{ hours: toH, value, path }],
  );
}

function sum(values: readonly (number | undefined)[]): number {
  return values.reduce<number>((total, value) => total + (value ?? 0), 0);
}

function hoursCriterion(
  events: readonly DevelopmentStretch[],
  hours: number,
  limit: HeldFigure,
): EndCriterion {
  const told = events.every((event) => event.hours !== undefined);
  const short = told && events.length > 0 ? 'notMet' : 'cantSay';
  const state = hours >= limit.value ? 'met' : short;
  return {
    id: 'developmentH',
    state,
    limit,
    ...(events.length > 0 ? { value: hours, path: 'development' } : {}),
  };
}

/** By what was measured at the end of the last event; an earlier reading tells nothing of the end. */
function clearCriterion(
  id: Measure,
  last: DevelopmentStretch | undefined,
  limit: HeldFigure,
): EndCriterion {
  const value = last?.[id];
  if (!last || value === undefined) return { id, state: 'cantSay', limit };
  return { id, state: value <= limit.value ? 'met' : 'notMet', limit, value, path: last.path };
}

/** The worst of the hours and of what was measured; either of turbidity and sand is enough. */
function endOf([hours, turbidity, sand]: readonly EndCriterion[]): CriterionState {
  const measured = [turbidity, sand].filter((one) => one?.value !== undefined);
  const states = [hours, ...measured].map((one) => one?.state ?? 'cantSay');
  if (states.includes('notMet')) return 'notMet';
  return measured.length === 0 || states.includes('cantSay') ? 'cantSay' : 'met';
}

function missingOf(
  events: readonly DevelopmentStretch[],
  criteria: readonly EndCriterion[],
): DevelopmentMissing[] {
  if (events.length === 0) return ['development'];
  const [, turbidity, sand] = criteria;
  const clear = turbidity?.value !== undefined || sand?.value !== undefined;
  return [
    ...(events.some(({ hours }) => hours === undefined) ? ['times' as const] : []),
    ...(events.some(({ rateM3h }) => rateM3h === undefined) ? ['rates' as const] : []),
    ...(clear ? [] : ['turbidityOrSand' as const]),
  ];
}

/**
 * Development as a series: events along the hours worked, water pumped against the hole under
 * water, turbidity and sand for a plot, and whether it may end by the practice.
 */
export function developmentSeries(
  record: WellRecord,
  model: WellModel,
  { figures }: Practice,
): DevelopmentSeries {
  const events = developmentEvents(record.development ?? []);
  const hours = sum(events.map((event) => event.hours));
  const litres = sum(events.map((event) => event.litres));
  const standing = standingWater(model);
  const last = events.at(-1);
  const criteria = [
    hoursCriterion(events, hours, figures.developmentH),
    clearCriterion('turbidityNtu', last, figures.turbidityNtu),
    clearCriterion('sandMgL', last, figures.sandMgL),
  ];
  const boreLitres = standing.litres;
  const pumped = events.some((event) => event.litres !== undefined);
  return {
    events,
    turbidity: pointsOf(events, 'turbidityNtu'),
    sand: pointsOf(events, 'sandMgL'),
    hours,
    hoursAtLeast: events.some((event) => event.hours === undefined),
    litres,
    litresAtLeast: events.some((event) => event.litres === undefined),
    ...known({
      boreLitres,
      boreVolumes: boreLitres && pumped ? litres / boreLitres : undefined,
    }),
    criteria,
    end: endOf(criteria),
    missing: [...missingOf(events, criteria), ...standing.missing],
  };
}
