import { cut } from '../../model/range.ts';
import { latestRest } from '../../model/levels.ts';
import type { WellModel } from '../../model/wellModel.ts';
import type { WellRecord } from '../../record/schema.ts';
import type { Surrounding } from '../../record/site.ts';
import type { AssumptionId } from '../assumptions.ts';
import type { MissingInput, TravelTime, TravelTimes } from '../results.ts';
import { groundFigures, type GroundClass } from './groundClasses.ts';
import { groundOf } from './groundOf.ts';
import type { MissingForEstimate } from './missing.ts';
import { againstReferences, assumedIn, travelDays, type KnownOfGround } from './travelTime.ts';

/** What sends germs into the ground. Fuel and chemicals go by other rules. */
const carriers: readonly Surrounding['kind'][] = [
  'latrine',
  'septicTank',
  'soakaway',
  'livestock',
  'graveyard',
  'wasteDump',
  'openWater',
];

interface Ground {
  readonly ground?: GroundClass;
  readonly channels: boolean;
  readonly assumptions: readonly AssumptionId[];
}

function quickness(ground: GroundClass): number {
  const { conductivityMd, porosity } = groundFigures[ground];
  return conductivityMd.most / porosity.least;
}

/** The ground under the rest level in which water may move fastest, by the log. */
function groundUnderWater({ strata, levels, bore }: WellModel): Ground {
  const restM = latestRest(levels)?.depthM;
  const footM = bore.depthM ?? Infinity;
  const told = strata
    .filter((stratum) => cut(stratum, restM ?? 0, footM) !== undefined)
    .flatMap(({ interval, others }) => [interval, ...others.map((one) => one.interval)])
    .flatMap((interval) => groundOf(interval) ?? []);
  const classes = told.filter((one) => one !== 'channels');
  const ground = classes.reduce<GroundClass | undefined>(
    (fastest, one) => (fastest && quickness(fastest) >= quickness(one) ? fastest : one),
    undefined,
  );
  return {
    ...(ground ? { ground } : {}),
    channels: told.includes('channels'),
    assumptions: ['fastestGround', ...(restM === undefined ? (['wholeHole'] as const) : [])],
  };
}

function timeOf(
  { kind, distance, slope }: Surrounding,
  path: string,
  under: Ground,
  known: KnownOfGround,
): TravelTime | MissingInput<MissingForEstimate> {
  if (distance === undefined) return { what: 'distance', path: `${path}.distance` };
  if (under.channels && !known.conductivityMd) return { what: 'channels', path: 'log' };
  const days = travelDays(distance, `${path}.distance`, under.ground, known);
  if (!days) return { what: 'ground', path: 'log' };
  const byLog = !known.conductivityMd || !known.porosity;
  return {
    path,
    kind,
    ...(byLog && under.ground ? { ground: under.ground } : {}),
    days,
    references: againstReferences(days),
    assumptions: [
      ...assumedIn(days),
      ...(byLog ? under.assumptions : []),
      ...(slope === 'downhill' ? (['downhillToo'] as const) : []),
    ],
  };
}

/**
 * For each surrounding that sends germs into the ground, how long water may be on its way to the
 * well. The log of the well stands for the ground between them.
 */
export function travelTimes(
  { site }: WellRecord,
  model: WellModel,
  known: KnownOfGround = {},
): TravelTimes {
  const under = groundUnderWater(model);
  const all = (site?.surroundings ?? [])
    .map((surrounding, at) => ({ surrounding, path: `site.surroundings[${at}]` }))
    .filter(({ surrounding }) => carriers.includes(surrounding.kind))
    .map(({ surrounding, path }) => timeOf(surrounding, path, under, known));
  return {
    times: all.filter((one) => 'days' in one),
    missing: all.filter((one) => 'what' in one),
  };
}
