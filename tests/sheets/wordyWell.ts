import fc from 'fast-check';
import { materials } from '../../core/record/materials.ts';
import type { WellRecord } from '../../core/record/schema.ts';
import { randomWell } from '../laws/randomWell.ts';

const words = fc
  .array(
    fc.constantFrom('sand', 'Ɓirassolé', 'in', 'beds', 'medium', 'water-bearing', '12.50', 'clay;'),
    { minLength: 1, maxLength: 60 },
  )
  .map((all) => all.join(' '));

const name = fc.oneof(
  words,
  fc.string({ maxLength: 40 }),
  fc.string({ unit: 'grapheme', maxLength: 80 }),
  fc.constant(''),
);

const maybe = <T>(value: fc.Arbitrary<T>) => fc.option(value, { nil: undefined });

/** An object's keys, each there or not; absent ones are left out as in a record that was read. */
function some<T extends object>(shape: { [K in keyof T]: fc.Arbitrary<T[K]> }) {
  return fc.record(shape, { requiredKeys: [] }) as fc.Arbitrary<Partial<T>>;
}

const said = some({
  colour: name,
  consistency: name,
  remarks: name,
  words,
  sampled: fc.boolean(),
  fractured: fc.boolean(),
  minutesPerMetre: fc.double({ min: 0, max: 300, noNaN: true }),
  boundary: fc.constantFrom('sharp' as const, 'gradual' as const, 'uncertain' as const),
  qualifiers: fc.array(fc.record({ material: fc.constantFrom(...materials) }), { maxLength: 3 }),
});

const identity = some({
  number: name,
  name,
  programme: name,
  client: name,
  contract: name,
  contractor: name,
  supervisor: name,
  state: fc.constantFrom('laidOut' as const, 'completed' as const, 'decommissioned' as const),
});

const site = some({
  village: name,
  spot: name,
  district: name,
  region: name,
  latitude: fc.double({ min: -90, max: 90, noNaN: true }),
  longitude: fc.double({ min: -180, max: 180, noNaN: true }),
  elevation: fc.double({ min: -400, max: 5000, noNaN: true }),
  users: fc.nat({ max: 1e7 }),
});

const marks = fc.array(
  fc.record({
    role: fc.constantFrom('supervisor' as const, 'contractor' as const, 'client' as const),
    name,
    organisation: name,
    strokes: fc.array(
      fc.array(
        fc.tuple(
          fc.double({ min: 0, max: 100, noNaN: true }),
          fc.double({ min: 0, max: 40, noNaN: true }),
        ),
      ),
      { maxLength: 3 },
    ),
  }),
  { maxLength: 4 },
);

/** Strikes anywhere in a well, near each other or not, their water risen to above ground or not. */
function strikesIn(depthM: number) {
  const centimetres = (from: number) =>
    fc.integer({ min: from, max: Math.floor(depthM * 100) }).map((cm) => cm / 100);
  return fc
    .array(fc.record({ depth: centimetres(0), by: centimetres(0) }), { maxLength: 6 })
    .map((all) => all.map(({ depth, by }) => ({ depth, rise: Math.max(-3, depth - by) })));
}

/** A realistic well in every measure, with all that people write beside the measures. */
export const wordyWell: fc.Arbitrary<WellRecord> = randomWell.chain((well) =>
  fc
    .record({
      said: fc.array(said, { minLength: 8, maxLength: 8 }),
      identity: maybe(identity),
      site: maybe(site),
      marks: maybe(marks),
      strikes: strikesIn(well.bore!.depthReached!),
      notes: maybe(name),
    })
    .map(({ said, strikes, ...rest }) => {
      const given = Object.entries(rest).filter(([, value]) => value !== undefined);
      const log = well.log!.map((one, at) => ({ ...one, ...said[at] }));
      return { ...well, ...Object.fromEntries(given), strikes, log } as WellRecord;
    }),
);

/** The same with each interval of the log split into up to `most` beds, as a careful hand writes. */
export function beddedWell(most: number): fc.Arbitrary<WellRecord> {
  return fc
    .tuple(
      wordyWell,
      fc.array(said, { minLength: 20, maxLength: 20 }),
      fc.array(fc.integer({ min: 1, max: most }), { minLength: 8, maxLength: 8 }),
    )
    .map(([well, words, counts]) => {
      const beds = well.log!.flatMap(({ from = 0, to = 0, material }, at) => {
        const count = Math.min(counts[at % counts.length]!, Math.floor((to - from) * 5) || 1);
        const edge = (n: number) =>
          n === count ? to : from + Math.round(((to - from) * n * 100) / count) / 100;
        return Array.from({ length: count }, (_, n) => ({
          from: edge(n),
          to: edge(n + 1),
          material,
        }));
      });
      const log = beds.map((bed, at) => ({ ...bed, ...words[at % words.length] }));
      return { ...well, log } as WellRecord;
    });
}
