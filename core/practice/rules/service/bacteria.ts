import type { WaterSample } from '../../../record/quality.ts';
import type { WellRecord } from '../../../record/schema.ts';
import { notApplicable, unjudged, type JudgedWell, type Missing, type Verdict } from '../rule.ts';
import { askedOf } from './asked.ts';
import { isBefore } from './days.ts';
import { dosesOf, type DoseRow } from './disinfections.ts';
import { stageOf } from '../stage.ts';

/** A water sample in which somebody looked for bacteria, with its row. */
export interface BacteriaSample {
  readonly sample: WaterSample;
  readonly path: string;
  readonly takenAt: string;
}

/** Names of bacteria and their groups, as laboratories of the three languages write them. */
const bacteria = /\bcoli|bact[eé]r|enteroco/i;

function isForBacteria({ results = [] }: WaterSample): boolean {
  return results.some(({ parameter }) => bacteria.test(parameter));
}

function later(one: BacteriaSample, other: BacteriaSample): BacteriaSample {
  return isBefore(other.takenAt, one.takenAt) ? one : other;
}

function missingSample({ quality = [] }: WellRecord): Missing {
  const path = quality.length === 0 ? 'quality' : `quality[${quality.length - 1}].results`;
  return { what: 'waterSample', path };
}

/**
 * Judges a well by the last water sample that was taken for bacteria: an earlier one that was
 * taken at the wrong time is made good by it.
 */
export function judgeBacteria(
  { record }: JudgedWell,
  judge: (sample: BacteriaSample) => Verdict,
): Verdict {
  if (stageOf(record) === 'coming') return notApplicable;
  const rows = (record.quality ?? [])
    .map((sample, at) => ({ sample, path: `quality[${at}]` }))
    .filter(({ sample }) => isForBacteria(sample));
  const told = rows.length === 0 ? undefined : rows;
  return askedOf(record, told, missingSample(record), (samples) => {
    const dated = samples.flatMap(({ sample, path }) =>
      sample.takenAt === undefined ? [] : [{ sample, path, takenAt: sample.takenAt }],
    );
    if (dated.length === 0)
      return unjudged(
        ...samples.map(({ path }) => ({ what: 'dates' as const, path: `${path}.takenAt` })),
      );
    return judge(dated.reduce(later));
  });
}

/** The disinfection that came last before a sample; those without a day are left out. */
export function doseBefore(record: WellRecord, { takenAt }: BacteriaSample): DoseRow | undefined {
  const begun = ({ dose }: DoseRow) => dose.at ?? dose.pumpedOffAt;
  return dosesOf(record)
    .filter((row) => {
      const at = begun(row);
      return at !== undefined && !isBefore(takenAt, at);
    })
    .reduce<DoseRow | undefined>((last, row) => {
      const [before, now] = [last && begun(last), begun(row)];
      return before !== undefined && now !== undefined && isBefore(now, before) ? last : row;
    }, undefined);
}
