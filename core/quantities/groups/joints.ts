import { valueAt, type RecordPath } from '../../base/recordPath.ts';
import { looseCap } from '../../model/tally.ts';
import type { StringModel } from '../../model/wellModel.ts';
import type { Component } from '../../record/strings.ts';
import type { WellRecord } from '../../record/schema.ts';
import { counted, fromFigure, fromModel } from '../inputs.ts';
import { isGlued } from '../pipeMaterial.ts';
import type { Missing } from '../quantity.ts';
import { reckon, told, type Reckoned } from '../reckon.ts';
import type { ReckonedWell } from '../reckonedWell.ts';
import { sources } from '../sources.ts';

/** A joint, by the piece whose words tell how it is made. */
interface Joint {
  readonly path: RecordPath;
  readonly glued: boolean | undefined;
}

function componentAt(record: WellRecord, path: RecordPath): Component | undefined {
  return valueAt(record, path) as Component | undefined;
}

/** A joint is told by its upper piece; where that is silent, by the one below. */
function jointOf(record: WellRecord, upperPath: RecordPath, lowerPath: RecordPath): Joint {
  const pieces = [componentAt(record, upperPath), componentAt(record, lowerPath)];
  const made = pieces
    .map((piece) => isGlued(piece?.joint, piece?.material))
    .find((glued) => glued !== undefined);
  return { path: `${upperPath}.joint`, glued: made };
}

/** The joints of a string from the top down, that of a cap without length among them. */
function jointsOf(record: WellRecord, string: StringModel): Joint[] {
  const cap = looseCap(string);
  const paths = [...string.pieces.map(({ path }) => path), ...(cap === undefined ? [] : [cap])];
  return paths.slice(1).map((lower, at) => jointOf(record, paths[at]!, lower));
}

/** Joints of all strings, and the glue for those that are glued. */
export function reckonJoints(well: ReckonedWell, lengths: readonly Missing[]): Reckoned {
  const { record, model, practice } = well;
  if (lengths.length > 0) return { quantities: [], missing: [] };
  const byString = model.strings.map((string) => jointsOf(record, string));
  const all = byString.flat();
  const joints = reckon('joints', all.length, {
    formula: 'n = Σ nᵢ',
    inputs: byString.map((one, at) => fromModel(counted('n', at + 1), one.length, '1')),
    source: sources.geometry,
  });
  const untold = all.filter(({ glued }) => glued === undefined);
  const count = all.filter(({ glued }) => glued).length;
  const grams = fromFigure('g', 'glueGramsPerJoint', practice);
  const glue =
    untold.length === 0 && count > 0
      ? reckon('glueG', count * grams.value, {
          formula: 'm = n · g',
          inputs: [fromModel('n', count, '1'), grams],
          source: sources.common,
        })
      : undefined;
  return {
    quantities: told([joints, glue]),
    missing: untold.map(({ path }) => ({ what: 'joint', path })),
  };
}
