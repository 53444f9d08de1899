import { writePath, type RecordPath } from '../base/recordPath.ts';
import type { WellModel } from '../model/wellModel.ts';
import type { WellRecord } from '../record/schema.ts';
import { testInWell } from './analyseTests.ts';
import type { SeriesNoteCode } from './codes.ts';
import { limits } from './limits.ts';
import type { ReducedTest } from './reduce/reduceTest.ts';
import type { LeftOut, Said } from './results.ts';

/** What is said of a row of readings, or of a series as a whole, and at which field. */
export interface SeriesNote extends Said<SeriesNoteCode> {
  readonly path: RecordPath;
}

export interface SeriesNotes {
  /** By the row's index in the series, in the order of its fields. */
  readonly rows: ReadonlyMap<number, readonly SeriesNote[]>;
  readonly whole: readonly SeriesNote[];
}

const none: SeriesNotes = { rows: new Map(), whole: [] };

/** The field of a row that a reason to leave it out speaks of. */
const fieldOf = {
  noMinutes: 'minutes',
  notAfterStart: 'minutes',
  outOfOrder: 'minutes',
  noReading: 'reading',
  aboveRest: 'reading',
  belowIntake: 'reading',
  noRate: 'rate',
} as const satisfies Record<LeftOut['why'], string>;

const note = (
  path: RecordPath,
  code: SeriesNoteCode,
  values: Readonly<Record<string, number | undefined>> = {},
): SeriesNote => ({
  path,
  code,
  values: Object.fromEntries(
    Object.entries(values).filter((entry): entry is [string, number] => entry[1] !== undefined),
  ),
});

/** Why a row is not used; at 0 min nothing is drawn down yet, which is nothing to speak of. */
function leftOutNote(
  { test, restReadM }: ReducedTest,
  { path, why, minutes }: LeftOut,
  readM: number | undefined,
): SeriesNote[] {
  if (why === 'notAfterStart' && minutes === 0) return [];
  const code = why === 'aboveRest' && readM === restReadM ? 'atRest' : why;
  const values = { minutes, readM, restM: restReadM, intakeM: test.pumpIntake };
  return [note(`${path}.${fieldOf[why]}`, code, values)];
}

/** What a rate of nil is taken for, where the pump should run. */
function rateNilCode(why: LeftOut['why'] | undefined, stands: boolean): SeriesNoteCode {
  if (why === 'notAfterStart') return 'rateNilBefore';
  return stands ? 'rateNilStands' : 'rateNil';
}

function notesOfRows(reduced: ReducedTest): Map<number, readonly SeriesNote[]> {
  const { test, index } = reduced;
  const left = new Map(reduced.leftOut.map((one) => [one.path, one]));
  const standing = new Set(
    reduced.readings.filter(({ rateM3d }) => rateM3d === 0).map(({ path }) => path),
  );
  const rows = (test.series ?? []).map(({ reading, rate }, at) => {
    const path = writePath(['tests', index, 'series', at]);
    const out = left.get(path);
    const isNil = rate === 0 && test.kind !== 'recovery';
    const explained = isNil && (out?.why === 'notAfterStart' || out?.why === 'noRate');
    return [
      ...(out && !explained ? leftOutNote(reduced, out, reading) : []),
      ...(isNil ? [note(`${path}.rate`, rateNilCode(out?.why, standing.has(path)))] : []),
    ];
  });
  return new Map([...rows.entries()].filter(([, notes]) => notes.length > 0));
}

const lacks = {
  restLevel: 'lacksRestLevel',
  rate: 'lacksRate',
  minutesPumped: 'lacksMinutesPumped',
} as const;

/** Too few readings or steps for what the test is made for. */
function fewOf({ test, path, readings }: ReducedTest): SeriesNote[] {
  const at = `${path}.series`;
  if (test.kind === 'step') {
    const count = new Set(readings.map(({ step }) => step?.number)).size;
    return count < limits.steps ? [note(at, 'fewSteps', { count, least: limits.steps })] : [];
  }
  const count = readings.filter(({ rateM3d = 0 }) => rateM3d > 0).length;
  const { lineReadings: line, curveReadings: curve } = limits;
  if (count < line) return [note(at, 'fewForLine', { count, least: line })];
  const isCurve = test.kind === 'constantRate' && count < curve;
  return isCurve ? [note(at, 'fewForCurve', { count, least: curve })] : [];
}

function notesOfWhole(reduced: ReducedTest): SeriesNote[] {
  const lacking = reduced.missing.flatMap(({ what, path }) =>
    what in lacks ? [note(path, lacks[what as keyof typeof lacks])] : [],
  );
  return lacking.length > 0 ? lacking : fewOf(reduced);
}

/**
 * What is to be said at the rows of a test's series, so that a slip of the pen is seen where it
 * stands: why a row is left out, what a rate of nil is taken for, and what the series as a whole
 * lacks. Nothing is said of a series without rows. Never throws.
 */
export function seriesNotes(record: WellRecord, model: WellModel, index: number): SeriesNotes {
  if ((record.tests?.[index]?.series ?? []).length === 0) return none;
  const { reduced } = testInWell(record, model, index, {});
  return { rows: notesOfRows(reduced), whole: notesOfWhole(reduced) };
}
