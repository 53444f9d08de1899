import { geodesicM } from '../../../base/geo/geodesic.ts';
import type { LonLat } from '../../../base/geo/shapes.ts';
import type { Metres } from '../../../base/units.ts';
import type { SectionChoice } from '../binder.ts';
import type { BinderWell } from '../binderWell.ts';

/** A well of a section, and where it stands along it. */
export interface StandingWell {
  readonly well: BinderWell;
  /** From the first well along the line from well to well. */
  readonly alongM: Metres;
  /** Ground above the datum; that of the nearest known one along the line where `assumed`. */
  readonly groundM: Metres;
  readonly assumed: boolean;
}

export interface SectionLine {
  readonly wells: readonly StandingWell[];
  /** Chosen, but nobody wrote where they are, or no way leads to them. */
  readonly left: readonly BinderWell[];
  /** How many more were chosen that the binder does not hold. */
  readonly absent: number;
  /** No elevation is known: every ground stands at nought. */
  readonly flat: boolean;
  /** Names of the datums of the elevations, each once. */
  readonly datums: readonly string[];
}

const positionOf = ([longitude, latitude]: LonLat) => ({ latitude, longitude });

interface Along {
  readonly well: BinderWell;
  readonly alongM: Metres;
}

function measured(chosen: readonly BinderWell[]): { wells: Along[]; left: BinderWell[] } {
  const wells: Along[] = [];
  const left: BinderWell[] = [];
  let last: LonLat | undefined;
  let alongM = 0;
  for (const well of chosen) {
    const step = well.position && last && geodesicM(positionOf(last), positionOf(well.position));
    if (!well.position || (last && step === undefined)) {
      left.push(well);
      continue;
    }
    alongM += step ?? 0;
    last = well.position;
    wells.push({ well, alongM });
  }
  return { wells, left };
}

function nearestGround(wells: readonly Along[], to: Along): Metres {
  const known = wells.filter(({ well }) => well.elevationM !== undefined);
  const nearest = known.reduce<Along | undefined>((best, one) => {
    const off = (other: Along) => Math.abs(other.alongM - to.alongM);
    return best && off(best) <= off(one) ? best : one;
  }, undefined);
  return nearest?.well.elevationM ?? 0;
}

/** The wells of a choice along their line, in the order in which they were chosen. */
export function sectionLine(choice: SectionChoice, all: readonly BinderWell[]): SectionLine {
  const byId = new Map(all.map((well) => [well.id, well]));
  const chosen = choice.wellIds.flatMap((id) => byId.get(id) ?? []);
  const { wells, left } = measured(chosen);
  const elevated = wells.filter(({ well }) => well.elevationM !== undefined);
  return {
    wells: wells.map((one) => {
      const own = one.well.elevationM;
      return { ...one, groundM: own ?? nearestGround(wells, one), assumed: own === undefined };
    }),
    left,
    absent: choice.wellIds.length - chosen.length,
    flat: elevated.length === 0,
    datums: [...new Set(elevated.map(({ well }) => well.elevationDatum ?? ''))],
  };
}
