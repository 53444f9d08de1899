import type { PaperMm } from '../../../base/units.ts';
import type { Range } from '../../../model/range.ts';
import { again, type Kit } from '../../kit.ts';
import { calloutsWidth } from '../../labels/callout.ts';
import type { Paper } from '../../paper.ts';
import { switchedColumns, type SwitchedColumn } from '../../parts/columnNames.ts';
import { layColumns, usualWidths, type AskedWidths, type Columns } from '../../parts/layColumns.ts';
import { builtOf, type Built } from '../../parts/section/built.ts';
import { casingCallouts } from '../../parts/section/casingCallouts.ts';
import { fillCallouts } from '../../parts/section/fillCallouts.ts';
import { extentOf } from './extent.ts';
import { drawingWidth } from './foot.ts';
import { loggedOf, logWidths, type LoggedParts } from './logColumns.ts';
import type { SheetInput } from './sheetInput.ts';

/** Which columns a record brings by itself, the first to have room first. */
const byImportance: readonly SwitchedColumn[] = [
  'description',
  'strikes',
  'samples',
  'rate',
  'grain',
  'sieve',
  'colour',
  'moisture',
];

/** Descriptions narrower than this are read badly; no column that nobody chose makes them so. */
const goodDescription: PaperMm = 42;

/** Words beside the section want no more than this. */
const mostCalls: PaperMm = 42;

const { depth, ground, casing, section, fill } = usualWidths;
const always = { depth, ground, casing, section, fill } as const;

/** Of the columns with data, as many as leave the others their room. */
function fitting(kit: Kit, parts: LoggedParts, paper: Paper): SwitchedColumn[] {
  const widths = logWidths(kit, parts);
  const fixed = Object.values(always).reduce((sum, { wanted }) => sum + wanted, 0);
  let left = drawingWidth(paper) - fixed;
  const kept = byImportance.filter((name) => {
    const needs = name === 'description' ? goodDescription : widths[name].wanted;
    const keeps = parts[name].length > 0 && needs <= left;
    if (keeps) left -= needs;
    return keeps;
  });
  return switchedColumns.filter((name) => kept.includes(name));
}

/** The switched columns of a sheet: those that a person chose, else what the record brings. */
export function shownColumns(
  input: Omit<SheetInput, 'columns'>,
  chosen: readonly SwitchedColumn[] | undefined,
): readonly SwitchedColumn[] {
  if (chosen) return switchedColumns.filter((name) => chosen.includes(name));
  return fitting(input.kit, loggedOf(input), input.paper);
}

/** Widths that hold the words beside the section on one line, within limits. */
function callWidths(kit: Kit, well: Built, { fromM, toM }: Range) {
  const columns = layColumns(0, 180, always);
  const body = { x: 0, y: 0, width: 180, height: 1e4 };
  const axis = { fromM, toM, scale: 1000, top: 0 };
  const view = { axis, columns, body, widthScale: 10, first: true, last: true };
  const wide = (width: PaperMm) => Math.min(mostCalls, width);
  return {
    casing: wide(calloutsWidth(kit, casingCallouts(kit, well, view))),
    fill: wide(calloutsWidth(kit, fillCallouts(kit, well, view))),
  };
}

/** The columns of a sheet over the width of its drawing, as wide as what they show asks. */
export function columnsOf(input: SheetInput): Columns {
  const { kit, model, paper } = input;
  const widths = logWidths(kit, loggedOf(input));
  const shown = input.columns.map((name) => [name, widths[name]] as const);
  const asked: AskedWidths = { ...always, ...Object.fromEntries(shown) };
  const { fromM, toM } = extentOf(model);
  const calls = again(kit, 'call widths', callWidths, builtOf(model), { fromM, toM });
  return layColumns(paper.frame.x, drawingWidth(paper), asked, calls);
}
