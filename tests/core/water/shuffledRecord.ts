import type { Random } from '../../../core/base/random.ts';
import type { WellRecord } from '../../../core/record/schema.ts';
import type { HeldParameter } from '../../../core/water/guidelines/guidelineSet.ts';

const units = ['mg/l', 'µg/l', 'meq/l', 'mmol/l', 'NTU', 'CFU/100 ml', '°fH', 'µS/cm', 'mS/m', '?'];
const forms = ['N', 'NO3', 'NO2', 'CaCO3', 'gold'];
const kinds = ['latrine', 'livestock', 'graveyard', 'building', 'openWater', 'other'] as const;
const materials = ['sand', 'gravel', 'clay', 'granite', 'saprolite', 'limestone', 'soil'] as const;
const days = ['2026-01-05', '2026-02-01T07:30Z', '2026-02-01T15:00Z', '2026-03-09'];

function pick<T>(random: Random, list: readonly T[]): T {
  return list[Math.floor(random() * list.length)]!;
}

/** A value, or nothing now and then. */
function maybe<K extends string, V>(random: Random, key: K, value: V): { [Key in K]?: V } {
  return random() < 0.7 ? ({ [key]: value } as { [Key in K]?: V }) : {};
}

function many<T>(random: Random, most: number, make: () => T): T[] {
  return Array.from({ length: Math.floor(random() * (most + 1)) }, make);
}

function result(random: Random, parameters: readonly HeldParameter[]) {
  const { names, aliases, unit } = pick(random, parameters);
  return {
    parameter: pick(random, [names.en, names.fr, names.pt, ...aliases, 'mystery']),
    ...maybe(random, 'value', pick(random, [0, 0.01, 1, 7, 60, 1000])),
    ...maybe(random, 'unit', random() < 0.7 ? unit : pick(random, units)),
    ...(random() < 0.2 ? { as: pick(random, forms) } : {}),
    ...maybe(random, 'below', random() < 0.3),
    ...maybe(random, 'where', pick(random, ['field', 'laboratory'] as const)),
  };
}

/** A record of samples, surroundings, a hole and a string, each with gaps. */
export function shuffledRecord(random: Random, parameters: readonly HeldParameter[]): WellRecord {
  const depth = 10 + Math.floor(random() * 60);
  return {
    schemaVersion: 1,
    quality: many(random, 4, () => ({
      ...maybe(random, 'takenAt', pick(random, days)),
      ...maybe(random, 'receivedAt', pick(random, days)),
      results: many(random, 25, () => result(random, parameters)),
    })),
    site: {
      surroundings: many(random, 6, () => ({
        kind: pick(random, kinds),
        ...maybe(random, 'distance', Math.floor(random() * 200)),
        ...maybe(random, 'direction', Math.floor(random() * 360)),
        ...maybe(random, 'slope', pick(random, ['uphill', 'downhill'] as const)),
      })),
    },
    log: many(random, 5, () => {
      const from = Math.floor(random() * depth);
      return { from, to: from + 1 + Math.floor(random() * 10), material: pick(random, materials) };
    }),
    bore: { sections: [{ from: 0, to: depth, ...maybe(random, 'diameter', 165) }] },
    strings: many(random, 1, () => ({
      components: [
        {
          kind: 'plain' as const,
          length: depth * random(),
          ...maybe(random, 'outside', 110),
          ...maybe(random, 'wall', 4.2),
        },
      ],
    })),
    annulus: many(random, 2, () => {
      const from = Math.floor(random() * depth);
      return {
        from,
        to: from + 1 + Math.floor(random() * 10),
        fill: pick(random, ['gravelPack', 'backfill', 'cementGrout'] as const),
      };
    }),
    levels: many(random, 2, () => ({
      reading: random() * depth,
      datum: 'ground' as const,
      state: 'static' as const,
    })),
    pump: { ...maybe(random, 'rate', random() * 3), ...maybe(random, 'riserDiameter', 42) },
  } as WellRecord;
}
