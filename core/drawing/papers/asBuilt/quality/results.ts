import type { PaperMm } from '../../../../base/units.ts';
import type { Basis } from '../../../../water/guidelines/guidelineSet.ts';
import type {
  Comparison,
  ParameterResult,
  QualityResult,
  ValueState,
} from '../../../../water/results.ts';
import { tablePieces, type FlowColumn, type FlowRow } from '../../../parts/flow/table.ts';
import type { Piece } from '../../../parts/flow/part.ts';
import { gapPiece, titlePiece } from '../../../parts/flow/pieces.ts';
import {
  convertedFigure,
  limitFigure,
  namedParameter,
  valueFigure,
  writtenFigure,
  type QualityKit,
} from './figures.ts';

const healthBases: readonly Basis[] = ['health', 'provisional'];

/** States that ask for something to be done stand in bold, but for values on a condition. */
const pressing: readonly ValueState[] = ['above', 'below'];
const stateColumn = 7;

function columnsOf({ own: { columns } }: QualityKit, width: PaperMm): FlowColumn[] {
  return [
    { title: columns.parameter, width: width - 146 },
    { title: columns.sample, width: 7 },
    { title: columns.written, width: 22 },
    { title: columns.converted, width: 21 },
    { title: columns.limit, width: 26 },
    { title: columns.guideline, width: 20 },
    { title: columns.basis, width: 23 },
    { title: columns.state, width: 27 },
  ];
}

function basisOf({ own, water }: QualityKit, { value }: Comparison): string {
  const { basis, purpose, when } = value;
  if (when !== undefined) return own.conditions[when];
  const ofHealth = healthBases.includes(basis);
  return purpose === undefined || ofHealth ? water.bases[basis] : own.purposes[purpose];
}

/** What was found of a parameter: number of its sample, as written, converted, detection limit. */
function foundCells(kit: QualityKit, result: ParameterResult): string[] {
  const { last } = result;
  if (!last) return ['', '–', '', ''];
  return [
    String(last.sample + 1),
    writtenFigure(kit, result, last),
    convertedFigure(kit, result, last),
    limitFigure(kit, last),
  ];
}

/** A row for each value of a parameter; what was found stands in the first. */
function rowsOf(
  kit: QualityKit,
  result: ParameterResult,
  comparisons: readonly Comparison[],
): FlowRow[] {
  const source = result.last?.path ?? 'quality';
  const found = [namedParameter(kit, result), ...foundCells(kit, result)];
  const presses = ({ state, value }: Comparison) =>
    value.when === undefined && pressing.includes(state);
  const named = comparisons.some(presses) ? [0] : [];
  return comparisons.map((one, at) => ({
    cells: [
      ...(at === 0 ? found : found.map(() => '')),
      valueFigure(kit, result, one),
      basisOf(kit, one),
      kit.water.states[one.state],
    ],
    bold: [...named, ...(presses(one) ? [stateColumn] : [])],
    source,
    goesOn: at < comparisons.length - 1,
  }));
}

/** Tested, or asked for before handover: others are named in one line under the tables. */
export function isShown({ last, missingBeforeHandover }: ParameterResult): boolean {
  return last !== undefined || missingBeforeHandover;
}

function titled(
  kit: QualityKit,
  title: string,
  rows: readonly FlowRow[],
  width: PaperMm,
  columns = columnsOf(kit, width),
): Piece[] {
  if (rows.length === 0) return [];
  return [titlePiece(kit, title, width), ...tablePieces(kit, columns, rows), gapPiece(2.4)];
}

/** The tables of results: values that rest on health, those for use, and what has no value. */
export function resultPieces(
  kit: QualityKit,
  { parameters }: QualityResult,
  width: PaperMm,
): Piece[] {
  const { tables } = kit.own;
  const shown = parameters.filter(isShown);
  const by = (health: boolean) =>
    shown.flatMap((result) => {
      const own = result.comparisons.filter(
        ({ value }) => healthBases.includes(value.basis) === health,
      );
      return rowsOf(kit, result, own);
    });
  const bare = shown
    .filter(({ comparisons, last }) => comparisons.length === 0 && last !== undefined)
    .map((result) => ({
      cells: [namedParameter(kit, result), ...foundCells(kit, result)],
      source: result.last?.path,
    }));
  return [
    ...titled(kit, tables.health, by(true), width),
    ...titled(kit, tables.use, by(false), width),
    ...titled(kit, tables.noValue, bare, width, columnsOf(kit, width).slice(0, 5)),
  ];
}
