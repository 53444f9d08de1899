import { seededRandom, type Random } from '../../../core/base/random.ts';
import { madeCompletion, madeWater } from './completion.ts';
import { clients, contractors, districts, people, type District } from './country.ts';
import { madeLog } from './ground.ts';
import { depths, drawnFrom, oneOf, rounded, weighed } from './spread.ts';

/** Common practice: most village wells serve, some stay dry or are closed. */
const states = { completed: 80, dry: 11, decommissioned: 3, abandonedAndSealed: 3, drilled: 3 };
const methods = {
  ...{ downTheHoleHammer: 40, mudRotary: 25, airRotary: 10, percussion: 8, rotaryJetting: 7 },
  ...{ sludging: 4, jetting: 3, handAuger: 3 },
};
const pumps = {
  ...{ deepwellLever: 45, ropeAndWasher: 15, directAction: 15, solarSubmersible: 12 },
  ...{ electricSubmersible: 8, suction: 5 },
};
const latrineRemarks = ['Two cabins', 'École, quatre cabines', 'Abandoned, not filled'];

function madeDay(random: Random): string {
  const two = (value: number) => String(value).padStart(2, '0');
  const year = 1990 + Math.floor(36 * random() ** 0.5);
  return `${year}-${two(1 + Math.floor(12 * random()))}-${two(1 + Math.floor(28 * random()))}`;
}

function madeSite({ region, name, villages, ...middle }: District, random: Random): object {
  const village = oneOf(villages, random);
  return {
    ...{ country: 'Tovalenga', region, district: name, village },
    spot: oneOf(['Market', 'École', 'Behind the mosque', 'Health post', 'Chief’s yard'], random),
    latitude: rounded(middle.latitude + 0.28 * (random() - 0.5), 5),
    longitude: rounded(middle.longitude + 0.28 * (random() - 0.5), 5),
    surroundings: Array.from({ length: 1 + Math.floor(3 * random()) }, () => ({
      ...{ kind: 'latrine', distance: 20 + Math.floor(80 * random()), slope: 'downhill' },
      remark: oneOf(latrineRemarks, random),
    })),
    committee: {
      name: `Comité de l’eau de ${village}`,
      chair: oneOf(people, random),
      caretaker: oneOf(people, random),
    },
    households: 20 + Math.floor(100 * random()),
    users: 120 + Math.floor(600 * random()),
  };
}

export interface MadeWell {
  readonly id: string;
  readonly document: object;
}

/**
 * The invented well of a place in the row: the same at every call, whatever was made before. Its
 * depth, log, ground, yield and screen follow the spreads of `spread.ts`.
 */
export function madeWell(at: number): MadeWell {
  const random = seededRandom(at + 1);
  const district = oneOf(districts, random);
  const [day, depth] = [madeDay(random), rounded(drawnFrom(depths, random), 1)];
  const id = `00000000-0000-4000-8000-${at.toString(16).padStart(12, '0')}`;
  const state = weighed(states, random);
  const number = `${district.name.slice(0, 2).toUpperCase()}-${day.slice(2, 4)}-${at}`;
  const wet = state !== 'dry';
  return {
    id,
    document: {
      schemaVersion: 1,
      identity: {
        ...{ id, number, state, programme: `Points d’eau ${day.slice(0, 4)}` },
        ...{ client: oneOf(clients, random), contractor: oneOf(contractors, random) },
        ...{ driller: oneOf(people, random), supervisor: oneOf(people, random) },
      },
      site: madeSite(district, random),
      bore: {
        ...{ method: weighed(methods, random), startedOn: day, finishedOn: day },
        sections: [{ from: 0, to: depth, diameter: 200 }],
        depthReached: depth,
      },
      log: madeLog(number, depth, random),
      ...(wet ? madeCompletion(depth, random) : {}),
      ...(wet ? madeWater(depth, day, random) : {}),
      ...(state === 'completed'
        ? { pump: { kind: weighed(pumps, random), intake: rounded(depth - 3, 1) } }
        : {}),
      notes: oneOf(['', 'Handed over in the rain.', 'Termite mound nearby.', 'À revoir.'], random),
    },
  };
}

/** So many wells, one after the other. */
export function* madeWells(count: number, from = 0): Generator<MadeWell> {
  for (let at = from; at < from + count; at += 1) yield madeWell(at);
}
