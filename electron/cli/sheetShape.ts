import { ok, type Result } from '../../core/base/result.ts';
import { orientations, type Orientation } from '../../core/drawing/paper.ts';
import { switchedColumns, type SwitchedColumn } from '../../core/drawing/parts/columnNames.ts';
import { misused, textOption, type Given } from './command.ts';

/**
 * How a sheet shall lie, which columns its log shall have, and whether its axis may be broken;
 * absent where nobody said.
 */
export interface SheetShape {
  readonly orientation?: Orientation;
  readonly columns?: readonly SwitchedColumn[];
  readonly brokenAxis?: boolean;
}

function readOrientation(given: Given): Result<Pick<SheetShape, 'orientation'>> {
  const wanted = textOption(given, 'orientation')?.toLowerCase();
  if (wanted === undefined) return ok({});
  const orientation = orientations.find((one) => one === wanted);
  if (orientation) return ok({ orientation });
  return misused(`No sheet lies ${wanted}: --orientation portrait or --orientation landscape.`);
}

/** A list with commas; `none` for a log without any of them. */
function readColumns(given: Given): Result<Pick<SheetShape, 'columns'>> {
  const list = textOption(given, 'columns')?.toLowerCase();
  if (list === undefined) return ok({});
  if (list.trim() === 'none') return ok({ columns: [] });
  const names = list.split(',').map((name) => name.trim());
  const wrong = names.find((name) => !switchedColumns.some((one) => one === name));
  if (wrong === undefined)
    return ok({ columns: switchedColumns.filter((one) => names.includes(one)) });
  return misused(
    `There is no column ${wrong || 'without a name'}: --columns takes some of ${switchedColumns.join(',')}, or none.`,
  );
}

/** The shape that a sheet shall have. */
export function readSheetShape(given: Given): Result<SheetShape> {
  const orientation = readOrientation(given);
  if (!orientation.ok) return orientation;
  const columns = readColumns(given);
  if (!columns.ok) return columns;
  const axis = given.options['whole-axis'] === true ? { brokenAxis: false } : {};
  return ok({ ...orientation.value, ...columns.value, ...axis });
}
