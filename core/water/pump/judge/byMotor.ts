import { pumpAssumptions } from '../assumptions.ts';
import { givenOrAssumed, type Known, type PumpBasis } from '../basis.ts';
import { hydraulicWatts, pipeFrictionM } from '../pipeFriction.ts';
import type { PumpKindData } from '../pumpKind.ts';
import type { Intake, PumpMissing, PumpQuantity } from '../ranking.ts';
import { pumpSources } from '../sources.ts';
import {
  assumed,
  fromQuantity,
  input,
  lacks,
  nothing,
  quantity,
  says,
  speaksAgainst,
  type Aspect,
} from './aspect.ts';
import { judgeHours, missingOfService, servedOf, type Supply } from './service.ts';

/** Hours that it runs a day: the sun's, or those that somebody may be there. */
function runsOf({ drive }: PumpKindData, { inputs }: PumpBasis): Known | undefined {
  if (drive === 'mains') return givenOrAssumed(inputs, 'hoursMost');
  const { sunHours } = inputs;
  return sunHours !== undefined && sunHours > 0
    ? { value: sunHours, from: { given: 'sunHours' } }
    : undefined;
}

/** The flow that gives what is needed in its hours, and no more than the well was tested for. */
function flowOf(need: PumpQuantity, runs: Known, safeRate: Known): PumpQuantity {
  return quantity(
    'flowM3h',
    Math.min(need.value / 1000 / runs.value, safeRate.value),
    'Q = min(V / (1000 · t), Qs)',
    [fromQuantity('V', need), input('t', runs, 'h/d'), input('Qs', safeRate, 'm³/h')],
    pumpSources.geometry,
  );
}

/** Head lost from the intake to the outlet, in riser and delivery pipe alike, with fittings. */
function frictionOf(flow: PumpQuantity, intakeM: number, { inputs }: PumpBasis): PumpQuantity {
  const [outlet, inside, delivery] = (['outletM', 'deliveryInsideMm', 'deliveryM'] as const).map(
    (id) => givenOrAssumed(inputs, id),
  ) as [Known, Known, Known];
  const lengthM = intakeM + outlet.value + delivery.value;
  const straightM = pipeFrictionM({
    flowM3h: flow.value,
    lengthM,
    insideMm: inside.value,
    roughnessMm: pumpAssumptions.roughnessMm.value,
    viscosityM2s: pumpAssumptions.viscosityM2s.value,
  });
  return quantity(
    'frictionM',
    straightM * (1 + pumpAssumptions.fittingsShare.value),
    'hf = (1 + z) · f · (i + a + l) / d · v² / 2g',
    [
      fromQuantity('Q', flow),
      { symbol: 'i', value: intakeM, unit: 'm', from: 'model' },
      input('a', outlet, 'm'),
      input('l', delivery, 'm'),
      input('d', inside, 'mm'),
      assumed('ε', 'roughnessMm'),
      assumed('ν', 'viscosityM2s'),
      assumed('z', 'fittingsShare'),
    ],
    pumpSources.swameeJain,
  );
}

interface Runs {
  readonly flow: PumpQuantity;
  readonly runs: Known;
}

/** Power and energy for a flow against a head; the sun’s panels where it runs by them. */
function powerOf(
  { drive }: PumpKindData,
  { flow, runs }: Runs,
  head: PumpQuantity,
): PumpQuantity[] {
  const { pumpEfficiency, panelDerating } = pumpAssumptions;
  const hydraulic = quantity(
    'hydraulicW',
    hydraulicWatts(flow.value, head.value),
    'Ph = 1000 · 9.81 · Q · Ht / 3600',
    [fromQuantity('Q', flow), fromQuantity('Ht', head)],
    pumpSources.geometry,
  );
  const electric = quantity(
    'electricW',
    hydraulic.value / pumpEfficiency.value,
    'Pe = Ph / η',
    [fromQuantity('Ph', hydraulic), assumed('η', 'pumpEfficiency')],
    pumpSources.solarBook,
  );
  const energy = quantity(
    'energyKwhDay',
    (electric.value * runs.value) / 1000,
    'E = Pe · t / 1000',
    [fromQuantity('Pe', electric), input('t', runs, 'h/d')],
    pumpSources.geometry,
  );
  if (drive !== 'sun') return [hydraulic, electric, energy];
  const panel = quantity(
    'panelW',
    electric.value / panelDerating.value,
    'Pp = Pe / k',
    [fromQuantity('Pe', electric), assumed('k', 'panelDerating')],
    pumpSources.solarBook,
  );
  return [hydraulic, electric, energy, panel];
}

function missingOf(kind: PumpKindData, basis: PumpBasis): PumpMissing[] {
  const { drive } = kind;
  const { mains } = basis.inputs;
  return [
    ...missingOfService(basis),
    ...(drive === 'sun' && !runsOf(kind, basis)
      ? [{ what: 'sunHours', given: 'sunHours' } as const]
      : []),
    ...(drive === 'mains' && mains === undefined
      ? [{ what: 'mains', given: 'mains' } as const]
      : []),
  ];
}

/** Head and power for the intake where it hangs; none where that is not known. */
function headAndPower(
  kind: PumpKindData,
  basis: PumpBasis,
  running: Runs,
  intake: Intake | undefined,
): PumpQuantity[] {
  const { lift } = basis;
  if (!lift || !intake?.hangsIn) return [];
  const friction = frictionOf(running.flow, intake.hangsIn.fromM, basis);
  const head = quantity(
    'totalHeadM',
    lift.value + friction.value,
    'Ht = H + hf',
    [fromQuantity('H', lift), fromQuantity('hf', friction)],
    pumpSources.geometry,
  );
  return [friction, head, ...powerOf(kind, running, head)];
}

/** How a submersible serves, what head it works against, and what power it takes. */
export function judgeByMotor(
  kind: PumpKindData,
  basis: PumpBasis,
  intake: Intake | undefined,
): Aspect {
  const { need, safeRate, inputs } = basis;
  if (kind.drive === 'mains' && inputs.mains === false)
    return says(speaksAgainst('noMains', 'rulesOut', {}, pumpSources.common));
  const missing = missingOf(kind, basis);
  const runs = runsOf(kind, basis);
  if (!need || !safeRate || !runs) return lacks(...missing);
  const flow = flowOf(need, runs, safeRate);
  const supply: Supply = { flow, safeRate, need };
  const ofAnyPump = givenOrAssumed(inputs, 'hoursMost').value;
  const source = kind.drive === 'sun' ? pumpSources.common : pumpAssumptions.hoursMost.source;
  const hours = quantity(
    'hoursDay',
    need.value / 1000 / flow.value,
    't = V / (1000 · Q)',
    [fromQuantity('V', need), fromQuantity('Q', flow)],
    pumpSources.geometry,
  );
  return {
    ...nothing,
    missing,
    reasons: judgeHours(hours, supply, { most: runs.value, ofAnyPump, source }),
    quantities: [
      flow,
      hours,
      servedOf(supply, kind, { ...basis, inputs: { ...inputs, hoursMost: runs.value } }),
      ...headAndPower(kind, basis, { flow, runs }, intake),
    ],
  };
}
