import { describe, expect, it } from 'vitest';
import { sayFinding } from '../../../../../core/practice/catalogue.ts';
import type { PumpResults } from '../../../../../core/practice/rules/results.ts';
import type { RuleCode } from '../../../../../core/practice/rules/ruleCodes.ts';
import { completed, doesNotApply, dry, laidOut, met, type Chapters } from '../service/judge.ts';
import { judgeHanded, nothingFound } from './handed.ts';

interface Case {
  readonly id: RuleCode;
  readonly broken: PumpResults;
  readonly held: PumpResults;
  readonly lacking: PumpResults;
  readonly said: string;
}

const level = { what: 'dryLevel', path: 'layingOut.drySeasonLevel' } as const;
const wall = { what: 'pipeWall', path: 'strings[0].components[1].wall' } as const;
const users = { what: 'users', path: 'site.users' } as const;

const cases: readonly Case[] = [
  {
    id: 'suits.lift',
    broken: { lift: { against: { liftM: 18.5, mostM: 15 }, missing: [] } },
    held: { lift: { missing: [] } },
    lacking: { lift: { missing: [level] } },
    said: 'The water is to be lifted 18.50 m or more; a pump of this kind lifts 15.00 m at most.',
  },
  {
    id: 'suits.casing',
    broken: { casing: { against: { insideMm: 67.8, leastMm: 100 }, missing: [] } },
    held: { casing: { missing: [] } },
    lacking: { casing: { missing: [wall] } },
    said: 'The well is 67.8 mm wide inside where the pump passes; a pump of this kind takes 100 mm at least.',
  },
  {
    id: 'suits.flow',
    broken: { flow: { against: { hours: 31.5 }, missing: [] } },
    held: { flow: { missing: [] } },
    lacking: { flow: { missing: [users] } },
    said: 'For what the users need, a pump of this kind would have to run 31.5 h a day.',
  },
];

describe.each(cases)('$id', ({ id, broken, held, lacking, said }) => {
  const judge = (chapters: Chapters, pump?: PumpResults) =>
    judgeHanded(id, chapters, { ...nothingFound, ...(pump ? { pump } : {}) });

  it('says what rules the kind out', () => {
    const { findings, missing } = judge(completed, broken);
    expect(findings.map((one) => [one.severity, one.path])).toEqual([['warning', 'pump.kind']]);
    expect(findings.map((one) => sayFinding(one).sentence)).toEqual([said]);
    expect(missing).toEqual([]);
    expect(judge(laidOut, broken).findings).toHaveLength(1);
  });

  it('is met where nothing does, and misses what would tell', () => {
    expect(judge(completed, held)).toEqual(met);
    expect(judge(completed, lacking).missing).toHaveLength(1);
  });

  it('does not apply to a kind that was not looked at, or to a dry hole', () => {
    expect(judge(completed)).toEqual(doesNotApply);
    expect(judge(completed, {})).toEqual(doesNotApply);
    expect(judge(dry, broken)).toEqual(doesNotApply);
    expect(judgeHanded(id, completed)).toEqual(doesNotApply);
  });
});
