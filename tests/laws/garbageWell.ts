import fc from 'fast-check';
import { componentKinds } from '../../core/record/strings.ts';
import { fillKinds } from '../../core/record/annulus.ts';
import type { WellRecord } from '../../core/record/schema.ts';

/** Numbers of the right type and no sense: negative, huge, not whole, not finite. */
const wild = fc.oneof(
  fc.double(),
  fc.double({ min: -50, max: 100, noNaN: true }),
  fc.integer({ min: -20, max: 60 }),
  fc.constantFrom(0, -0, 1e300, -1e300, Number.MIN_VALUE, Infinity, -Infinity, NaN),
);

const some = <T>(shape: { [K in keyof T]: fc.Arbitrary<T[K]> }, needed: (keyof T)[]) =>
  fc.record(shape, { requiredKeys: needed });

const list = <T>(item: fc.Arbitrary<T>) => fc.array(item, { maxLength: 5 });

const component = some(
  {
    kind: fc.constantFrom(...componentKinds),
    count: wild,
    outside: wild,
    upperOutside: wild,
    wall: wild,
    length: wild,
    insertion: wild,
    centralisers: list(wild),
  },
  ['kind'],
);

const setting = fc.oneof(
  fc.record({ by: fc.constant('bottom' as const), depth: wild }),
  fc.record({ by: fc.constant('stickUp' as const), height: wild }),
);

const string = some(
  { components: list(component), set: setting, measuredDepth: wild, name: fc.string() },
  ['components'],
);

const fill = some(
  {
    from: wild,
    to: wild,
    fill: fc.constantFrom(...fillKinds),
    around: wild,
    insideHole: fc.boolean(),
    waterCement: wild,
    sacks: wild,
    sackMass: wild,
    litres: wild,
  },
  ['from', 'to', 'fill'],
);

const level = some(
  {
    at: fc.string(),
    reading: wild,
    datum: fc.constantFrom('ground' as const, 'casingTop' as const),
    state: fc.constantFrom('static' as const, 'pumping' as const),
  },
  ['reading', 'datum'],
);

const section = fc.record({ from: wild, to: wild, diameter: wild });

/** Records of the right types whose numbers mean nothing. */
export const garbageWell: fc.Arbitrary<WellRecord> = some(
  {
    schemaVersion: fc.constant(1 as const),
    bore: some({ sections: list(section), depthReached: wild, depthFound: wild }, []),
    samples: list(fc.record({ from: wild, to: wild })),
    log: list(fc.record({ from: wild, to: wild })),
    strings: list(string),
    annulus: list(fill),
    headworks: some({ casingAboveGround: wild }, []),
    levels: list(level),
    strikes: list(some({ depth: wild, rise: wild }, ['depth'])),
    pump: some({ intake: wild, cylinderTop: wild, bodyDiameter: wild }, []),
  },
  ['schemaVersion'],
) as fc.Arbitrary<WellRecord>;
