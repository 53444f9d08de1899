import { resolveWell } from '../../../core/model/resolveWell.ts';
import { practiceOf } from '../../../core/practice/choosePractice.ts';
import type { FigureId } from '../../../core/practice/figures.ts';
import type { Practice } from '../../../core/practice/practice.ts';
import type {
  GroupId,
  Missing,
  Quantities,
  Quantity,
  QuantityId,
} from '../../../core/quantities/quantity.ts';
import { reckonQuantities } from '../../../core/quantities/reckonQuantities.ts';
import type { AnnulusFill } from '../../../core/record/annulus.ts';
import type { WellRecord } from '../../../core/record/schema.ts';
import { record } from '../model/well.ts';

export type Chapters = Omit<WellRecord, 'schemaVersion'>;

/** The general practice, with other values for some figures. */
export function practiceWith(values: Partial<Record<FigureId, number>> = {}): Practice {
  const general = practiceOf(record({}));
  const changed = Object.entries(values).map(([id, value]) => [
    id,
    { ...general.figures[id as FigureId], value },
  ]);
  return { ...general, figures: { ...general.figures, ...Object.fromEntries(changed) } };
}

export function reckon(
  chapters: Chapters,
  values: Partial<Record<FigureId, number>> = {},
): Quantities {
  const one = record(chapters);
  return reckonQuantities(one, resolveWell(one), practiceWith(values));
}

export function all({ groups }: Quantities): Quantity[] {
  return groups.flatMap(({ quantities }) => quantities);
}

export function those(quantities: Quantities, id: QuantityId): Quantity[] {
  return all(quantities).filter((one) => one.id === id);
}

/** The value of the first quantity of an id; undefined where there is none. */
export function valueOf(quantities: Quantities, id: QuantityId): number | undefined {
  return those(quantities, id)[0]?.value;
}

export function missingOf({ groups }: Quantities, id: GroupId): readonly Missing[] {
  return groups.find((group) => group.id === id)!.missing;
}

/** A hole of one diameter cased over its length, with one fill or several. */
export function cased(
  holeMm: number,
  outsideMm: number,
  lengthM: number,
  ...annulus: AnnulusFill[]
): Chapters {
  return {
    bore: {
      method: 'mudRotary',
      depthReached: lengthM,
      sections: [{ from: 0, to: lengthM, diameter: holeMm }],
    },
    strings: [
      {
        set: { by: 'bottom', depth: lengthM },
        components: [
          { kind: 'plain', outside: outsideMm, wall: 4.2, length: lengthM, material: 'uPVC' },
        ],
      },
    ],
    annulus,
  };
}

/** How far a value is from an expected one, as a share of it. */
export function off(value: number | undefined, expected: number): number {
  return Math.abs((value ?? NaN) / expected - 1);
}
