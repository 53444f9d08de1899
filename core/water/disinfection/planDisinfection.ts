import type { WellModel } from '../../model/wellModel.ts';
import type { Practice } from '../../practice/practice.ts';
import type { WellRecord } from '../../record/schema.ts';
import type { AssumptionId } from '../assumptions.ts';
import { counted, fromReckoned, reckoned, sumOf } from '../reckon.ts';
import type { Interval } from '../interval.ts';
import type { Reckoned, ReckonedInput } from '../reckoned.ts';
import type { DisinfectionPlan, MissingForDosing, MissingInput } from '../results.ts';
import { sources } from '../sources.ts';
import { cautionCodes } from './cautions.ts';
import { amountOf, askedOr, spoonsFor, stockFor, washFor, type Dosing } from './product.ts';
import { pumpOffLitres, pumpOffMinutes } from './pumpOff.ts';
import { standingWater, type DosedParts } from './standingWater.ts';

/** What somebody chose; the rest is customary, and named as assumed. */
export interface AskedDisinfection extends DosedParts {
  readonly product?: 'granules' | 'liquid';
  /** Available chlorine in the water, mg/l. */
  readonly doseMgL?: number;
  /** Available chlorine in the product, per cent: by mass, of a liquid in 100 ml. */
  readonly strengthPercent?: number;
}

/** Hours that are advised for drilled wells (from memory: AWWA C654; ICRC). */
const advisedContactH: Interval = { least: 12, most: 24 };

function advisedAbove(leastH: number): Interval {
  const { least, most } = advisedContactH;
  return { least: Math.max(least, leastH), most: Math.max(most, leastH) };
}

/** No dose is above nothing; one that is not is as good as not asked. */
function above(value: number | undefined, most: number): number | undefined {
  return value !== undefined && value > 0 && value <= most ? value : undefined;
}

function dosingOf({ product = 'granules', doseMgL, strengthPercent }: AskedDisinfection): Dosing {
  const usual = product === 'granules' ? 'strength' : 'liquidStrength';
  return {
    product,
    dose: askedOr('c', above(doseMgL, Infinity), 'mg/l', 'dose'),
    strength: askedOr('s', above(strengthPercent, 100), '%', usual),
  };
}

function waterInAll(volumes: readonly Reckoned[]): Reckoned {
  return reckoned(
    'waterLitres',
    sumOf(volumes.map(({ value }) => value)),
    'V = Σ Vᵢ',
    volumes.map((one, at) => fromReckoned(counted('V', at + 1), one)),
    sources.geometry,
  );
}

function assumedIn(all: readonly Reckoned[]): AssumptionId[] {
  const named = all.flatMap(({ inputs }) =>
    inputs.flatMap(({ from }: ReckonedInput) =>
      typeof from === 'object' && 'assumed' in from ? [from.assumed] : [],
    ),
  );
  const riser = all.some(({ id }) => id === 'riserWaterLitres')
    ? (['riserAsOutside'] as const)
    : [];
  return [...new Set([...named, ...riser])];
}

interface Steps {
  readonly reckoned: readonly Reckoned[];
  readonly missing: readonly MissingInput<MissingForDosing>[];
}

/** A dose for part of the water would be too weak: nothing is reckoned unless all parts are known. */
function stepsOf(record: WellRecord, model: WellModel, asked: AskedDisinfection): Steps {
  const { volumes, missing } = standingWater(record, model, asked);
  if (missing.length > 0 || volumes.length === 0) return { reckoned: volumes, missing };
  const dosing = dosingOf(asked);
  const water = waterInAll(volumes);
  const amount = amountOf(water, dosing);
  const off = pumpOffLitres(water);
  const minutes = pumpOffMinutes(record, off);
  const steps = [
    ...volumes,
    water,
    amount,
    ...spoonsFor(amount),
    stockFor(water, dosing),
    ...washFor(dosing),
    off,
  ];
  return minutes
    ? { reckoned: [...steps, minutes], missing: [] }
    : { reckoned: steps, missing: [{ what: 'rate', path: 'layingOut.rate' }] };
}

/**
 * A disinfection with chlorine: the water that stands in the well, the product for it by weight
 * and by spoons, how long it stands, what is pumped off, and when bacteria are sampled. Contact
 * time and sampling are the practice's. It reckons a dose; it says nothing of the water after.
 */
export function planDisinfection(
  record: WellRecord,
  model: WellModel,
  practice: Practice,
  asked: AskedDisinfection = {},
): DisinfectionPlan {
  const { product, dose, strength } = dosingOf(asked);
  const steps = stepsOf(record, model, asked);
  const { contactH, sampleWaitDays, sampleChlorineMgL } = practice.figures;
  return {
    product,
    doseMgL: dose.value.most,
    strengthPercent: strength.value.most,
    ...steps,
    contactH: { least: contactH, advised: advisedAbove(contactH.value) },
    resample: { waitDays: sampleWaitDays, chlorineMgL: sampleChlorineMgL },
    assumptions: assumedIn(steps.reckoned),
    cautions: cautionCodes,
  };
}
