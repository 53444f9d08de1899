import { reason, type Reason } from '../reasons/reason.ts';
import { convertLength, lengthUnitOf } from '../tables/units.ts';
import { told, type TableTrouble } from '../tables/trouble.ts';
import type { AgsGroup, AgsRow } from './readGroups.ts';

/** A time as AGS writes it: the day alone stands where no offset from UTC was written. */
export interface AgsTime {
  readonly at: string;
  /** The time as it stands in the file, where the record cannot hold it without an offset. */
  readonly asWritten?: string;
}

/** The fields of one row as values. A field that says nothing, or no number, is absent. */
export interface Cells {
  readonly line: number;
  text(heading: string): string | undefined;
  number(heading: string): number | undefined;
  /** A length in the unit of the group's UNIT row, in metres; metres where the row names none. */
  metres(heading: string): number | undefined;
  /** The same in millimetres; millimetres where the row names none. */
  millimetres(heading: string): number | undefined;
  day(heading: string): string | undefined;
  time(heading: string): AgsTime | undefined;
  tell(heading: string, says: Reason, kept: boolean): void;
}

const numeral = /^[+-]?(\d+\.?\d*|\.\d+)(e[+-]?\d+)?$/i;
const iso =
  /^(\d{4}-\d\d-\d\d)(?:T(\d\d:\d\d)(:\d\d)?(?:\.\d+)?(Z|[+-]\d\d:\d\d|\([+-]\d\d:\d\d\))?)?$/;

/** Midnight without an offset is how a day alone is written under a unit that has a time. */
function timeOf(written: string): AgsTime | undefined {
  const found = iso.exec(written.replace(/Z\(([+-]\d\d:\d\d)\)$/, '$1'));
  if (!found) return undefined;
  const [, day, minute, second = '', offset] = found;
  if (minute === undefined) return { at: day! };
  if (offset !== undefined) {
    const seconds = second === ':00' ? '' : second;
    return { at: `${day}T${minute}${seconds}${offset.replace(/[()]/g, '')}` };
  }
  const isMidnight = minute === '00:00' && (second === '' || second === ':00');
  return isMidnight ? { at: day! } : { at: day!, asWritten: written };
}

/** Reads the fields of a row; what is wrong with one goes to `troubles`. */
export function cellsOf(
  file: string,
  group: AgsGroup,
  row: AgsRow,
  troubles: TableTrouble[],
): Cells {
  const tell = (heading: string, says: Reason, kept: boolean) =>
    void troubles.push({ file, line: row.line, column: heading, ...told(says), kept });
  const text = (heading: string) => row.cells.get(heading) || undefined;
  const number = (heading: string) => {
    const written = text(heading);
    if (written === undefined) return undefined;
    if (numeral.test(written)) return Number(written);
    tell(heading, reason('notNumberOut', { text: written }), true);
    return undefined;
  };
  const length = (heading: string, to: 'm' | 'mm') => {
    const value = number(heading);
    if (value === undefined) return undefined;
    const written = group.units.get(heading) || to;
    const unit = lengthUnitOf(written);
    if (unit !== undefined) return convertLength(value, unit, to);
    tell(heading, reason('noLength', { unit: written, value }), true);
    return undefined;
  };
  const time = (heading: string) => {
    const written = text(heading);
    const found = written === undefined ? undefined : timeOf(written);
    if (written !== undefined && !found)
      tell(heading, reason('notTimeOut', { text: written }), true);
    return found;
  };
  return {
    line: row.line,
    text,
    number,
    metres: (heading) => length(heading, 'm'),
    millimetres: (heading) => length(heading, 'mm'),
    day: (heading) => time(heading)?.at.slice(0, 10),
    time,
    tell,
  };
}
