import type { WellRecord } from '../record/schema.ts';
import { resolveAnnulus } from './annulus.ts';
import { impliedDepth, resolveBore, resolveSections, writtenDepth } from './bore.ts';
import { checkClearance } from './clearance.ts';
import { cutColumn, type WellCell } from './column.ts';
import { resolveContents } from './contents.ts';
import { checkFill, readFills } from './fills.ts';
import type { Resolved } from './findings.ts';
import { checkFittings } from './fittings.ts';
import { latestRest, resolveLevels } from './levels.ts';
import { resolvePump } from './pump.ts';
import { boundsOf } from './range.ts';
import { resolveSamples } from './samples.ts';
import { checkPlacing, stringLabel } from './setting.ts';
import { checkStrata, resolveStrata } from './strata.ts';
import { resolveStrikes } from './strikes.ts';
import { resolveStrings } from './tally.ts';
import { resolveTotals } from './volumes.ts';
import type { BoreModel, StringModel, Stratum, WellModel } from './wellModel.ts';

/** The parts that the rest is measured against. */
interface Frame {
  readonly bore: BoreModel;
  readonly strata: readonly Stratum[];
  readonly strings: readonly StringModel[];
}

/**
 * Hole, log and strings. The hole's depth comes first from its own chapter, since a string may
 * have to stand on it; where that is silent, log and strings imply it.
 */
function resolveFrame(record: WellRecord): Resolved<Frame> {
  const sections = resolveSections(record.bore);
  const strata = resolveStrata(record.log ?? []);
  const written = writtenDepth(record.bore, sections.value);
  const strings = resolveStrings(record, written ?? impliedDepth(strata.value));
  const feet = strings.value.map(({ topM, bottomM }) => ({ fromM: topM, toM: bottomM }));
  const implied = impliedDepth([...strata.value, ...feet]);
  const bore = resolveBore(record.bore, sections.value, implied);
  return {
    value: { bore: bore.value, strata: strata.value, strings: strings.value },
    findings: [sections, bore, strata, strings].flatMap(({ findings }) => findings),
  };
}

function belowGround(cells: readonly WellCell[], { depthM = Infinity }: BoreModel): WellCell[] {
  return cells.filter(({ fromM, toM }) => fromM >= 0 && toM <= depthM);
}

/**
 * A record as resolved geometry. The same record gives the same model; field data that
 * contradict themselves never throw: what can be resolved is, and the rest stands in `findings`.
 */
export function resolveWell(record: WellRecord): WellModel {
  const frame = resolveFrame(record);
  const { bore, strata, strings } = frame.value;
  const label = (index: number) => stringLabel(record.strings?.[index], index);
  const levels = resolveLevels(record, strings, bore.depthM);
  const restM = latestRest(levels.value)?.depthM;
  const fills = readFills(record.annulus ?? [], bore.depthM);
  const column = cutColumn(bore, strings, boundsOf(fills.value));
  const hole = belowGround(column, bore);
  const annulus = resolveAnnulus(fills.value, hole, strings, label);
  const wetted = restM === undefined ? column : cutColumn(bore, strings, [restM]);
  const samples = resolveSamples(record.samples ?? [], bore.depthM);
  const strikes = resolveStrikes(record.strikes ?? [], bore.depthM);
  const pump = resolvePump(record.pump, strings, bore.depthM, label);
  return {
    bore,
    strata,
    samples: samples.value,
    strings,
    annulus: annulus.value,
    contents: resolveContents(wetted, strings, restM),
    levels: levels.value,
    strikes: strikes.value,
    ...(pump.value ? { pump: pump.value } : {}),
    totals: resolveTotals(hole, annulus.value, strings),
    findings: [
      ...frame.findings,
      ...samples.findings,
      ...checkStrata(strata, bore.depthM),
      ...strings.flatMap((string) => checkPlacing(record, string)),
      ...strings.flatMap((string) =>
        checkFittings(string, strata, bore.depthM, label(string.index)),
      ),
      ...checkClearance(hole, label),
      ...fills.findings,
      ...fills.value.flatMap((fill) => checkFill(fill, hole, strings, label)),
      ...annulus.findings,
      ...levels.findings,
      ...strikes.findings,
      ...pump.findings,
    ],
  };
}
