import { practiceOf } from '../../../../../core/practice/choosePractice.ts';
import { coverRules } from '../../../../../core/practice/rules/cover/index.ts';
import type { RuleCode } from '../../../../../core/practice/rules/ruleCodes.ts';
import type { Verdict } from '../../../../../core/practice/rules/rule.ts';
import type { AnnulusFill, FillKind } from '../../../../../core/record/annulus.ts';
import type { LogInterval } from '../../../../../core/record/log.ts';
import type { WellRecord } from '../../../../../core/record/schema.ts';
import type { CasingString, Component } from '../../../../../core/record/strings.ts';
import { resolveWell } from '../../../../../core/model/resolveWell.ts';
import { record } from '../../../model/well.ts';

export type Chapters = Omit<WellRecord, 'schemaVersion'>;

export function fill(
  from: number,
  to: number,
  kind: FillKind,
  more: Partial<AnnulusFill> = {},
): AnnulusFill {
  return { from, to, fill: kind, ...more };
}

export function ground(
  from: number,
  to: number,
  material: LogInterval['material'],
  more: Partial<LogInterval> = {},
): LogInterval {
  return { from, to, ...(material === undefined ? {} : { material }), ...more };
}

export const pipe: Component = { kind: 'plain', outside: 110, wall: 4.2 };
export const slotted: Component = { ...pipe, kind: 'screen' };

/** A string set at 28 m whose pieces are given from the top down, each to the depth of its foot. */
export function stringOf(...pieces: readonly (readonly [Component, toM: number])[]): CasingString {
  const components = pieces.map(([piece, toM], at) => {
    const fromM = pieces[at - 1]?.[1] ?? -0.5;
    return { ...piece, length: Math.round((toM - fromM) * 1000) / 1000 };
  });
  return {
    components: components.toReversed(),
    set: { by: 'bottom', depth: pieces.at(-1)![1] },
  };
}

/** A well that meets every rule of the cover: one sand, one screen from 20 to 26 m. */
export const covered: Chapters = {
  identity: { state: 'completed' },
  bore: { sections: [{ from: 0, to: 28, diameter: 210 }] },
  log: [ground(0, 15, 'clay'), ground(15, 27, 'sand', { moisture: 'waterBearing' })],
  strings: [stringOf([pipe, 20], [slotted, 26], [{ ...pipe, kind: 'sump' }, 28])],
  annulus: [
    fill(0, 3, 'cementGrout', { sanitary: true, litres: 80 }),
    fill(3, 16, 'backfill'),
    fill(16, 18, 'claySeal', { litres: 52 }),
    fill(18, 28, 'gravelPack', { litres: 255 }),
  ],
  levels: [{ reading: 8, datum: 'ground', state: 'static' }],
};

/** What one rule says of the covered well with chapters changed. */
export function verdictOf(id: RuleCode, chapters: Chapters = {}): Verdict {
  const well = record({ ...covered, ...chapters });
  const rule = coverRules.find((one) => one.id === id);
  if (!rule) throw new Error(`No rule ${id}.`);
  return rule.judge({ record: well, model: resolveWell(well), practice: practiceOf(well) });
}

/** The covered well with its fills from some depth on replaced. */
export function filled(...annulus: AnnulusFill[]): Chapters {
  return { annulus };
}

export const met: Verdict = { applies: true, findings: [], missing: [] };
export const passedBy: Verdict = { applies: false, findings: [], missing: [] };
