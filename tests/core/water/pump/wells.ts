import { practiceOf } from '../../../../core/practice/choosePractice.ts';
import { resolveWell } from '../../../../core/model/resolveWell.ts';
import type { WellRecord } from '../../../../core/record/schema.ts';
import type { RankedKind } from '../../../../core/water/pump/pumpKind.ts';
import type {
  KindJudgement,
  PumpInputs,
  PumpRanking,
} from '../../../../core/water/pump/ranking.ts';
import { rankPumps } from '../../../../core/water/pump/rankPumps.ts';
import { record } from '../../model/well.ts';

/**
 * A well of 40 m, cased in pipe of 110 × 4.2 mm (101.6 mm inside), with plain pipe to 30 m, screen
 * to 38 m and a sump, whose water stands at a depth in the dry season.
 */
export function wellWithDryLevel(drySeasonLevel: number): WellRecord {
  const size = { outside: 110, wall: 4.2 };
  return record({
    identity: { practice: 'handDrilled', state: 'completed' },
    site: { users: 200 },
    bore: { sections: [{ from: 0, to: 40, diameter: 200 }], depthReached: 40 },
    strings: [
      {
        set: { by: 'bottom', depth: 39 },
        components: [
          { kind: 'cap' },
          { kind: 'sump', length: 1, ...size },
          { kind: 'screen', length: 8, ...size },
          { kind: 'plain', length: 30.5, ...size },
        ],
      },
    ],
    layingOut: { drySeasonLevel, drawdown: 2 },
  });
}

/** All that a ranking asks for beside the record. */
export const allGiven: PumpInputs = {
  safeRateM3h: 2,
  ph: 7,
  repair: 'workshop',
  mains: true,
  sunHours: 5,
};

/** All but one of them. */
export function allGivenBut(id: keyof PumpInputs): PumpInputs {
  return Object.fromEntries(Object.entries(allGiven).filter(([key]) => key !== id));
}

export function ranked(well: WellRecord, inputs: PumpInputs = allGiven): PumpRanking {
  return rankPumps(well, resolveWell(well), practiceOf(well), inputs);
}

export function judged(
  kind: RankedKind,
  well: WellRecord,
  inputs: PumpInputs = allGiven,
): KindJudgement {
  return ranked(well, inputs).kinds.find((one) => one.kind === kind)!;
}

export function codes({ reasons }: KindJudgement): string[] {
  return reasons.map(({ code }) => code);
}

export function valueOf({ quantities }: Pick<KindJudgement, 'quantities'>, id: string) {
  return quantities.find((one) => one.id === id)?.value;
}
