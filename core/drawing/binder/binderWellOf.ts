import { known } from '../../base/known.ts';
import type { LonLat } from '../../base/geo/shapes.ts';
import { analyseTests } from '../../hydraulics/analyseTests.ts';
import { chosenWindows } from '../../hydraulics/chosenWindows.ts';
import { safeRate } from '../../hydraulics/safeRate/safeRate.ts';
import { latestRest } from '../../model/levels.ts';
import { resolveWell } from '../../model/resolveWell.ts';
import type { Stratum, WellModel } from '../../model/wellModel.ts';
import { practiceOf } from '../../practice/choosePractice.ts';
import type { Practice } from '../../practice/practice.ts';
import { safeRateInputs } from '../../practice/reading/safeRateInputs.ts';
import type { WellState } from '../../record/identity.ts';
import type { Material } from '../../record/materials.ts';
import type { WellRecord } from '../../record/schema.ts';
import { guidelinesOf } from '../../water/guidelines/chooseGuidelines.ts';
import type { GuidelineSet } from '../../water/guidelines/guidelineSet.ts';
import { hatchOf } from '../parts/ground.ts';
import type { BinderLayer, BinderRange, BinderWell, BinderYield, Outcome } from './binderWell.ts';
import { binderQualityOf } from './binderQualityOf.ts';

/** What the archive knows of a well besides its record. */
export interface BinderWellFacts {
  readonly id: string;
  readonly revision?: number;
  /** ISO 8601. */
  readonly changedAt: string;
  /** That of the record; resolved anew where absent. */
  readonly model?: WellModel;
  /** Whose margins the safe rate keeps; the record's own among the shipped ones where absent. */
  readonly practice?: Practice;
  /** What samples are compared with; the record's own among the shipped ones where absent. */
  readonly guidelines?: GuidelineSet;
}

const outcomes: Readonly<Partial<Record<WellState, Outcome>>> = { completed: 'water', dry: 'dry' };

function positionOf({ site }: WellRecord): LonLat | undefined {
  const { latitude, longitude } = site ?? {};
  return latitude === undefined || longitude === undefined ? undefined : [longitude, latitude];
}

/** Screens from the top down, those that meet as one. */
function screensOf({ strings }: WellModel): BinderRange[] {
  const pieces = strings
    .flatMap((string) => string.pieces)
    .filter(({ kind }) => kind === 'screen')
    .sort((a, b) => a.topM - b.topM);
  const found: { fromM: number; toM: number }[] = [];
  for (const { topM, bottomM } of pieces) {
    const last = found.at(-1);
    if (last && topM <= last.toM + 0.005) last.toM = Math.max(last.toM, bottomM);
    else found.push({ fromM: topM, toM: bottomM });
  }
  return found;
}

function layerOf(stratum: Stratum): BinderLayer {
  const { fromM, toM, interval } = stratum;
  return { fromM, toM, ...known({ material: interval.material, hatch: hatchOf(stratum) }) };
}

/** The material that takes up most metres of some ranges; of equals, the upper one. */
function mostOf(layers: readonly BinderLayer[], ranges: readonly BinderRange[]) {
  const metres = new Map<Material, number>();
  for (const { fromM, toM, material } of layers) {
    if (material === undefined || material === 'noSample') continue;
    const along = ranges.map((one) => Math.min(toM, one.toM) - Math.max(fromM, one.fromM));
    const sum = along.reduce((all, one) => all + Math.max(0, one), 0);
    metres.set(material, (metres.get(material) ?? 0) + sum);
  }
  const [most] = [...metres].filter(([, sum]) => sum > 0).sort(([, a], [, b]) => b - a);
  return most?.[0];
}

/**
 * The safe rate of the tests; where they do not tell it, the rate of the last constant-rate test;
 * else that of the pump in use.
 */
function yieldOf(record: WellRecord, model: WellModel, practice: Practice) {
  const inputs = safeRateInputs(record, model, practice);
  const safe = safeRate(record, model, inputs, { windows: chosenWindows(record) });
  const rates: readonly (readonly [BinderYield['basis'], number | undefined])[] = [
    ['safe', safe.known ? safe.value.safe.value : undefined],
    ['tested', record.tests?.findLast(({ kind }) => kind === 'constantRate')?.rate],
    ['pump', record.pump?.rate],
  ];
  const [first] = rates.flatMap(([basis, m3h]): BinderYield[] =>
    m3h !== undefined && m3h > 0 ? [{ basis, m3h }] : [],
  );
  return first;
}

function specificCapacityOf(record: WellRecord, model: WellModel): number | undefined {
  const estimates = analyseTests(record, model, { windows: chosenWindows(record) })
    .flatMap(({ results }) => results)
    .flatMap((result) => result.estimates);
  const value = estimates.findLast(({ id }) => id === 'specificCapacity')?.value;
  return value !== undefined && value > 0 ? value : undefined;
}

function yearOf(...days: readonly (string | undefined)[]): number | undefined {
  const [year] = days.flatMap((day) => /^\d{4}(?=-)/.exec(day ?? '') ?? []);
  return year === undefined ? undefined : Number(year);
}

/**
 * What the binder's own pages tell of a record. Never throws for field data: what contradicts
 * itself is left to the well's own papers.
 */
export function binderWellOf(record: WellRecord, facts: BinderWellFacts): BinderWell {
  const { id, revision, changedAt } = facts;
  const practice = facts.practice ?? practiceOf(record);
  const guidelines = facts.guidelines ?? guidelinesOf(record.identity?.guidelines);
  const model = facts.model ?? resolveWell(record);
  const { identity, site, bore, pump } = record;
  const layers = model.strata.map(layerOf);
  const screens = screensOf(model);
  const rest = latestRest(model.levels);
  const feet = model.strings.map(({ bottomM }) => bottomM);
  return {
    id,
    number: identity?.number ?? '',
    name: identity?.name ?? '',
    region: site?.region ?? '',
    district: site?.district ?? '',
    village: site?.village ?? '',
    programme: identity?.programme ?? '',
    state: identity?.state ?? '',
    outcome: (identity?.state && outcomes[identity.state]) ?? 'open',
    screens,
    layers,
    practice: { id: practice.id, version: practice.version, name: practice.name },
    changedAt,
    ...known({
      revision,
      year: yearOf(bore?.finishedOn, bore?.startedOn),
      startedOn: bore?.startedOn,
      finishedOn: bore?.finishedOn,
      method: bore?.method,
      position: positionOf(record),
      elevationM: site?.elevation,
      elevationDatum: site?.elevationDatum,
      drilledM: model.bore.depthM,
      casedM: feet.length === 0 ? undefined : Math.max(...feet),
      restM: rest?.depthM,
      restAt: rest?.at,
      yield: yieldOf(record, model, practice),
      specificCapacity: specificCapacityOf(record, model),
      pump: pump && known({ kind: pump.kind, intakeM: pump.intake }),
      aquifer: mostOf(layers, screens),
      geology: mostOf(layers, layers),
      quality: binderQualityOf(record, guidelines),
    }),
  };
}
