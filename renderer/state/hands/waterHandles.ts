import { shownLevels } from '../../../core/drawing/parts/section/waterLevels.ts';
import { roundDepth } from '../../../core/model/range.ts';
import type { LevelModel, WellModel } from '../../../core/model/wellModel.ts';
import type { WellRecord } from '../../../core/record/schema.ts';
import { depthInto, type Handle } from './handle.ts';
import { aboveGroundM, inHoleM, thinnestM } from './limits.ts';

/** A level writes its reading, from the datum that the tape was held to. */
function levelHandle(model: WellModel, { depthM, readM, state, path }: LevelModel): Handle {
  const readMoreM = roundDepth(readM - depthM);
  const reading = `${path}.reading`;
  return {
    id: reading,
    edge: { kind: 'level', ...(state && { state }), readMoreM },
    lane: 'inside',
    depthM,
    leastM: -aboveGroundM,
    mostM: inHoleM(model, depthM),
    roundFromM: roundDepth(-readMoreM),
    row: path,
    writes: [
      {
        path: reading,
        typedAs: reading,
        role: 'own',
        value: (newM) => roundDepth(newM + readMoreM),
      },
    ],
  };
}

/** The levels that the section shows, and one that is held although another is drawn now. */
export function levelHandles(model: WellModel, held: string | undefined): Handle[] {
  const shown = shownLevels(model.levels);
  return model.levels
    .filter((level) => shown.includes(level) || `${level.path}.reading` === held)
    .map((level) => levelHandle(model, level));
}

/** Strikes and the levels that they rose to. */
export function strikeHandles(model: WellModel): Handle[] {
  return model.strikes.flatMap(({ depthM, riseM, path }, at) => {
    const common = { roundFromM: 0, row: path };
    const number = at + 1;
    const strike: Handle = {
      ...common,
      id: `${path}.depth`,
      edge: { kind: 'strike', number },
      lane: 'strikes',
      depthM,
      leastM: Math.min(0, depthM),
      mostM: inHoleM(model, depthM),
      writes: [depthInto(`${path}.depth`)],
    };
    if (riseM === undefined) return [strike];
    const rise: Handle = {
      ...common,
      id: `${path}.rise`,
      edge: { kind: 'rise', number },
      lane: 'rises',
      depthM: riseM,
      leastM: -aboveGroundM,
      mostM: Math.max(riseM, depthM),
      writes: [depthInto(`${path}.rise`)],
    };
    return [strike, rise];
  });
}

/** The pump is one stiff body: its cylinder goes along with the intake. */
export function pumpHandles({ pump }: WellRecord, model: WellModel): Handle[] {
  const { intake, cylinderTop } = pump ?? {};
  if (intake === undefined) return [];
  const bodyM = cylinderTop === undefined ? undefined : roundDepth(intake - cylinderTop);
  const along = { ...depthInto('pump.cylinderTop', 'joined') };
  const common = { lane: 'inside', roundFromM: 0 } as const;
  const intakeHandle: Handle = {
    ...common,
    id: 'pump.intake',
    edge: { kind: 'intake' },
    depthM: intake,
    leastM: Math.min(0, intake),
    mostM: inHoleM(model, intake),
    row: 'pump',
    writes: [
      depthInto('pump.intake'),
      ...(bodyM === undefined
        ? []
        : [{ ...along, value: (depthM: number) => roundDepth(depthM - bodyM) }]),
    ],
  };
  if (cylinderTop === undefined || cylinderTop >= intake) return [intakeHandle];
  const cylinder: Handle = {
    ...common,
    id: 'pump.cylinderTop',
    edge: { kind: 'cylinder' },
    depthM: cylinderTop,
    leastM: Math.min(0, cylinderTop),
    mostM: roundDepth(intake - thinnestM),
    row: 'pump',
    writes: [depthInto('pump.cylinderTop')],
  };
  return [intakeHandle, cylinder];
}
