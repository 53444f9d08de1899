import { resolveWell } from '../../../../../core/model/resolveWell.ts';
import { practiceOf } from '../../../../../core/practice/choosePractice.ts';
import type { Rule, Verdict } from '../../../../../core/practice/rules/rule.ts';
import type { WellState } from '../../../../../core/record/identity.ts';
import type { WellRecord } from '../../../../../core/record/schema.ts';
import type { Component } from '../../../../../core/record/strings.ts';
import { record } from '../../../model/well.ts';

export type Chapters = Omit<WellRecord, 'schemaVersion'>;

const pvc = { material: 'uPVC', outside: 110, wall: 4.2 } as const;

export const cap: Component = { kind: 'cap' };
/** 28.5 m to 30 m in the good well. */
export const sump: Component = { kind: 'sump', ...pvc, length: 1.5, centralisers: [1] };
/** 22.5 m to 28.5 m in the good well. */
export const screen: Component = {
  kind: 'screen',
  ...pvc,
  length: 6,
  slotWidth: 0.5,
  slotSpacing: 6,
  slotRows: 3,
  centralisers: [0.5, 5],
};
/** 0.4 m above ground to 22.5 m in the good well. */
export const plain: Component = { kind: 'plain', ...pvc, length: 22.9, centralisers: [1, 6] };

/** A string of these pieces, bottom-up, whose foot stands at 30 m. */
export function casing(...components: Component[]): Chapters {
  return { strings: [{ components, set: { by: 'bottom', depth: 30 } }] };
}

export const sand = {
  material: 'sand',
  grain: 'medium',
  grainScheme: 'iso14688',
  moisture: 'waterBearing',
} as const;

/** d10 0.133, d30 0.25, d60 0.5 mm. */
export const sieve = [
  { size: 0.125, finer: 8 },
  { size: 0.25, finer: 30 },
  { size: 0.5, finer: 60 },
  { size: 1, finer: 90 },
];

/** A well that every rule on casing finds good. */
export const good: Chapters = {
  identity: { id: 'good', state: 'completed' },
  bore: {
    method: 'rotaryJetting',
    sections: [{ from: 0, to: 30, diameter: 165 }],
    depthReached: 30,
  },
  log: [
    { from: 0, to: 12, material: 'clay', moisture: 'moist' },
    { from: 12, to: 30, ...sand, sieve },
  ],
  layingOut: { rate: 1, drySeasonLevel: 9, drawdown: 2 },
  ...casing(cap, sump, screen, plain),
  annulus: [
    { from: 0, to: 3, fill: 'cementGrout', sanitary: true, waterCement: 0.5 },
    { from: 3, to: 18, fill: 'backfill' },
    { from: 18, to: 20, fill: 'claySeal' },
    { from: 20, to: 30, fill: 'gravelPack', grainMin: 1, grainMax: 1.5 },
  ],
  levels: [
    { reading: 8, datum: 'ground', state: 'static' },
    { reading: 10, datum: 'ground', state: 'pumping', rate: 1 },
  ],
  pump: { kind: 'deepwellLever', intake: 20, bodyDiameter: 76 },
};

/** What a rule says of the good well with some chapters changed. */
export function say({ judge }: Rule, changed: Chapters = {}): Verdict {
  const well = record({ ...good, ...changed });
  return judge({ record: well, model: resolveWell(well), practice: practiceOf(well) });
}

export const met: Verdict = { applies: true, findings: [], missing: [] };
export const passedBy: Verdict = { applies: false, findings: [], missing: [] };

/** What a rule misses, as `what path`. */
export function misses(rule: Rule, changed: Chapters): string[] {
  const { applies, findings, missing } = say(rule, changed);
  if (!applies || findings.length > 0) return ['judged'];
  return missing.map(({ what, path }) => `${what} ${path}`);
}

/** A well of a state; nothing is asked of one that gives no water. */
export function inState(state: WellState): Chapters {
  return { identity: { id: 'good', state } };
}

export const withoutState: Chapters = { identity: { id: 'good' } };

export const closedStates: readonly WellState[] = ['dry', 'abandonedAndSealed', 'decommissioned'];
