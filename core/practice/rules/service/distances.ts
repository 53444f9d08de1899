import type { Finding, Severity } from '../../../base/finding.ts';
import type { Surrounding } from '../../../record/site.ts';
import type { FigureId } from '../../figures.ts';
import { figureOf, judged, notApplicable, unjudged, type Rule } from '../rule.ts';
import { broken } from '../ruleCodes.ts';
import { stageOf } from '../stage.ts';
import type { SlopeWord } from './words.ts';

interface Apart {
  readonly id: `near.${
    | 'latrine'
    | 'septicTank'
    | 'soakaway'
    | 'livestock'
    | 'graveyard'
    | 'wasteDump'
    | 'fuel'
    | 'openWater'
    | 'building'}`;
  readonly kind: Surrounding['kind'];
  readonly least: FigureId;
  /** Nearer than this is grave. */
  readonly grave?: FigureId;
}

/**
 * As a supervisor grades it: uphill, level or nobody wrote counts in full. What lies downhill
 * drains away from the well as a rule, though a well that is pumped draws from all sides: a step
 * less.
 */
function severityOf({ slope }: Surrounding, isGrave: boolean): Severity {
  if (slope === 'downhill') return isGrave ? 'warning' : 'note';
  return isGrave ? 'error' : 'warning';
}

function slopeWord({ slope }: Surrounding): SlopeWord {
  return slope ?? 'slopeUnknown';
}

/** What could foul the well stands at least so far from it as the practice asks for. */
function farEnough({ id, kind, least, grave }: Apart): Rule {
  return {
    id,
    figures: grave ? [least, grave] : [least],
    judge(well) {
      if (stageOf(well.record) === 'closed') return notApplicable;
      const surroundings = well.record.site?.surroundings ?? [];
      if (surroundings.length === 0)
        return unjudged({ what: 'surroundings', path: 'site.surroundings' });
      const limit = figureOf(well, least);
      const graveLimit = grave === undefined ? 0 : figureOf(well, grave);
      const there = surroundings
        .map((one, row) => ({ one, path: `site.surroundings[${row}].distance` }))
        .filter(({ one }) => one.kind === kind);
      if (there.length === 0) return notApplicable;
      const findings = there.flatMap(({ one, path }): Finding[] => {
        const { distance } = one;
        if (distance === undefined || distance >= limit) return [];
        const severity = severityOf(one, distance < graveLimit);
        return [broken(id, severity, path, { distance, limit, slope: slopeWord(one) })];
      });
      const unmeasured = there.filter(({ one }) => one.distance === undefined);
      return judged(
        findings,
        unmeasured.map(({ path }) => ({ what: 'distance', path })),
      );
    },
  };
}

export const distanceRules: readonly Rule[] = [
  farEnough({ id: 'near.latrine', kind: 'latrine', least: 'latrineM', grave: 'latrineGraveM' }),
  farEnough({ id: 'near.septicTank', kind: 'septicTank', least: 'septicTankM' }),
  farEnough({ id: 'near.soakaway', kind: 'soakaway', least: 'soakawayM' }),
  farEnough({ id: 'near.livestock', kind: 'livestock', least: 'livestockM' }),
  farEnough({ id: 'near.graveyard', kind: 'graveyard', least: 'graveyardM' }),
  farEnough({ id: 'near.wasteDump', kind: 'wasteDump', least: 'wasteDumpM' }),
  farEnough({ id: 'near.fuel', kind: 'fuelOrChemicals', least: 'fuelM' }),
  farEnough({ id: 'near.openWater', kind: 'openWater', least: 'openWaterM' }),
  farEnough({ id: 'near.building', kind: 'building', least: 'buildingM' }),
];
