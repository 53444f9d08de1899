import type { DevelopmentEvent } from '../../../record/water.ts';
import { notApplicable, type JudgedWell, type Verdict } from '../rule.ts';
import { askedOf } from './asked.ts';
import { isBefore } from './days.ts';
import { stageOf } from '../stage.ts';

/** An event of development with its row. */
export interface DevelopmentRow {
  readonly event: DevelopmentEvent;
  readonly path: string;
}

/** Judges a well by its development; while a well is still being made, it may well go on. */
export function judgeDevelopment(
  { record }: JudgedWell,
  judge: (rows: readonly DevelopmentRow[]) => Verdict,
): Verdict {
  if (stageOf(record) === 'coming') return notApplicable;
  const rows = (record.development ?? []).map((event, at) => ({
    event,
    path: `development[${at}]`,
  }));
  const missing = { what: 'development', path: 'development' } as const;
  return askedOf(record, rows.length === 0 ? undefined : rows, missing, judge);
}

function momentOf({ event: { startedAt, endedAt } }: DevelopmentRow): string | undefined {
  return endedAt ?? startedAt;
}

/** The event that development ended with; of those without a moment, the last in the list. */
export function lastOf(rows: readonly DevelopmentRow[]): DevelopmentRow | undefined {
  return rows.reduce<DevelopmentRow | undefined>((last, row) => {
    const [before, now] = [last && momentOf(last), momentOf(row)];
    return before !== undefined && now !== undefined && isBefore(now, before) ? last : row;
  }, undefined);
}
