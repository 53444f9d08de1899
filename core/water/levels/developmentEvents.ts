import { known } from '../../base/known.ts';
import type { RecordPath } from '../../base/recordPath.ts';
import type { Litres } from '../../base/units.ts';
import { minutesBetween } from '../../record/moment.ts';
import type { DevelopmentEvent } from '../../record/water.ts';

/** An event of development in its place along the hours worked. */
export interface DevelopmentStretch {
  readonly path: RecordPath;
  readonly method?: DevelopmentEvent['method'];
  readonly startedAt?: string;
  readonly endedAt?: string;
  /** How long it lasted; absent where a time was not written. */
  readonly hours?: number;
  /** Hours worked up to its start and its end; absent once some event before has no length. */
  readonly fromH?: number;
  readonly toH?: number;
  readonly rateM3h?: number;
  /** Pumped in it: rate times hours; absent where either is not known. */
  readonly litres?: Litres;
  /** At its end. */
  readonly turbidityNtu?: number;
  readonly sandMgL?: number;
}

function hoursOf({ startedAt, endedAt }: DevelopmentEvent): number | undefined {
  if (startedAt === undefined || endedAt === undefined) return undefined;
  const minutes = minutesBetween(startedAt, endedAt);
  return minutes === undefined ? undefined : Math.max(0, minutes) / 60;
}

interface Row {
  readonly event: DevelopmentEvent;
  readonly path: RecordPath;
}

function momentOf({ event: { startedAt, endedAt } }: Row): number | undefined {
  const at = endedAt ?? startedAt;
  return at === undefined ? undefined : Date.parse(at);
}

/** By time; a row without a moment stays after the one that it was written after. */
function inOrder(rows: readonly Row[]): Row[] {
  return rows.reduce<Row[]>((sorted, row) => {
    const own = momentOf(row);
    const later = sorted.findIndex(
      (one) => own !== undefined && (momentOf(one) ?? -Infinity) > own,
    );
    return later < 0 ? [...sorted, row] : sorted.toSpliced(later, 0, row);
  }, []);
}

/** The events of development in order of time, along the hours worked. */
export function developmentEvents(events: readonly DevelopmentEvent[]): DevelopmentStretch[] {
  const rows = events.map((event, at) => ({ event, path: `development[${at}]` }));
  let workedH: number | undefined = 0;
  return inOrder(rows).map(({ event, path }) => {
    const hours = hoursOf(event);
    const fromH = workedH;
    workedH = fromH === undefined || hours === undefined ? undefined : fromH + hours;
    const { rate, method, startedAt, endedAt, turbidity, sand } = event;
    return {
      path,
      ...known({
        method,
        startedAt,
        endedAt,
        hours,
        fromH,
        toH: workedH,
        rateM3h: rate,
        litres: rate === undefined || hours === undefined ? undefined : rate * hours * 1000,
        turbidityNtu: turbidity,
        sandMgL: sand,
      }),
    };
  });
}
