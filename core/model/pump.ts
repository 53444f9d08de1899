import type { Finding } from '../base/finding.ts';
import { known } from '../base/known.ts';
import type { DepthM, Millimetres } from '../base/units.ts';
import type { Pump } from '../record/headworks.ts';
import { nestStrings } from './column.ts';
import { found, type Resolved } from './findings.ts';
import type { PumpModel, StringModel } from './wellModel.ts';

type Label = (index: number) => string | number;

function checkIntake(
  intakeM: DepthM,
  string: StringModel | undefined,
  holeM: DepthM | undefined,
  label: Label,
): Finding[] {
  const [path, at] = ['pump.intake', { fromM: intakeM }];
  if (intakeM < 0) return [found('pump.aboveGround', path, { heightM: -intakeM }, at)];
  if (holeM !== undefined && intakeM > holeM)
    return [found('pump.belowHole', path, { intakeM, depthM: holeM }, at)];
  if (!string) return [];
  const { bottomM, capPath, index, pieces } = string;
  if (intakeM > bottomM)
    return capPath === undefined
      ? [found('pump.inOpenHole', path, { intakeM, bottomM }, at)]
      : [found('pump.belowString', path, { intakeM, bottomM, string: label(index) }, at)];
  const inSump = pieces.some(
    (piece) => piece.kind === 'sump' && piece.topM < intakeM && intakeM <= piece.bottomM,
  );
  return inSump ? [found('pump.inSump', path, { intakeM }, at)] : [];
}

/** The narrowest pipe that the pump passes on its way down, or that it stands in. */
function narrowestMm(string: StringModel, intakeM: DepthM): Millimetres | undefined {
  const passed = string.pieces.filter(({ topM, kind }) => topM < intakeM && kind !== 'cap');
  const told = passed.flatMap(({ insideMm }) => insideMm ?? []);
  return told.length === 0 ? undefined : Math.min(...told);
}

function checkWidth(
  bodyMm: Millimetres,
  intakeM: DepthM,
  strings: readonly StringModel[],
  label: Label,
): Finding[] {
  return strings.flatMap((string) => {
    const insideMm = narrowestMm(string, intakeM);
    if (insideMm === undefined || bodyMm <= insideMm) return [];
    const values = { bodyMm, insideMm, string: label(string.index) };
    return [found('pump.widerThanCasing', 'pump.bodyDiameter', values, { fromM: intakeM })];
  });
}

function checkPump(
  { intakeM, cylinderTopM, bodyMm }: PumpModel,
  strings: readonly StringModel[],
  holeM: DepthM | undefined,
  label: Label,
): Finding[] {
  const innermost = nestStrings(strings).at(-1);
  const lowestM = intakeM ?? cylinderTopM;
  const findings = intakeM === undefined ? [] : checkIntake(intakeM, innermost, holeM, label);
  if (intakeM !== undefined && cylinderTopM !== undefined && cylinderTopM > intakeM)
    findings.push(
      found(
        'pump.cylinderBelowIntake',
        'pump.cylinderTop',
        { cylinderTopM, intakeM },
        { fromM: intakeM, toM: cylinderTopM },
      ),
    );
  if (bodyMm !== undefined && lowestM !== undefined)
    findings.push(...checkWidth(bodyMm, lowestM, strings, label));
  return findings;
}

/** The users' pump as written, with what contradicts the string or the hole. */
export function resolvePump(
  pump: Pump | undefined,
  strings: readonly StringModel[],
  holeM: DepthM | undefined,
  label: Label,
): Resolved<PumpModel | undefined> {
  if (!pump) return { value: undefined, findings: [] };
  const { intake, cylinderTop, bodyDiameter, riserDiameter } = pump;
  const value = {
    ...known({
      intakeM: intake,
      cylinderTopM: cylinderTop,
      bodyMm: bodyDiameter,
      riserMm: riserDiameter,
    }),
    path: 'pump',
  };
  return { value, findings: checkPump(value, strings, holeM, label) };
}
