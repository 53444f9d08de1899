import { readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { modelFindings } from '../../core/model/findings.ts';
import { resolveWell } from '../../core/model/resolveWell.ts';
import type { Finding } from '../../core/base/finding.ts';
import { practiceOf } from '../../core/practice/choosePractice.ts';
import { judgedWell } from '../../core/judging/judgedWell.ts';
import { rules } from '../../core/practice/rules/index.ts';
import { ruleCodes } from '../../core/practice/rules/ruleCodes.ts';
import type { WellRecord } from '../../core/record/schema.ts';
import { checkConsistency } from '../../core/record/consistency.ts';
import counted from './findings.json' with { type: 'json' };
import { realWells } from './realWells.ts';

interface Count {
  readonly findings: number;
  readonly wells: number;
}

const wells = realWells();

const judge = (record: WellRecord) => judgedWell(record, resolveWell(record), practiceOf(record));

function findingsOf(record: WellRecord): Finding[] {
  return [...resolveWell(record).findings, ...judge(record).findings];
}

function countFindings(): Record<string, Count> {
  const said = wells.flatMap(({ name, record }) =>
    findingsOf(record).map(({ code }) => ({ code, name })),
  );
  const all = [...Object.keys(modelFindings), ...rules.map(({ id }) => id)];
  const codes = all.filter((code) => said.some((one) => one.code === code));
  return Object.fromEntries(
    codes.map((code) => {
      const names = said.filter((one) => one.code === code).map(({ name }) => name);
      return [code, { findings: names.length, wells: new Set(names).size }];
    }),
  );
}

/** The rows of the page, as `code`, findings and wells. */
function judged(): Record<string, Count> {
  const page = path.resolve(import.meta.dirname, '../../docs/findings-on-real-wells.md');
  const rows = readFileSync(page, 'utf8').matchAll(/^\| `([\w.]+)` \| (\d+) \| (\d+) \| ..+ \|$/gm);
  return Object.fromEntries(
    [...rows].map(([, code, findings, inWells]) => [
      code,
      { findings: Number(findings), wells: Number(inWells) },
    ]),
  );
}

describe('what is found in the 72 real wells', () => {
  it('is as many of each kind as findings.json counts', () => {
    expect(countFindings()).toEqual(counted);
  });

  it('is judged kind by kind in docs/findings-on-real-wells.md, with the same counts', () => {
    expect(judged()).toEqual(counted);
  });

  it('is no error of the record but where a source contradicts itself', () => {
    const erring = wells.filter(({ record }) =>
      resolveWell(record).findings.some(({ severity }) => severity === 'error'),
    );
    expect(erring.map(({ name }) => name)).toEqual(['gwml2-bom nsw.10042141']);
  });

  it('is grave by a rule where days are out of order, or where nobody meant a water well', () => {
    const grave = wells.flatMap(({ name, record }) =>
      findingsOf(record)
        .filter(({ code, severity }) => severity === 'error' && code in ruleCodes)
        .map(({ code }) => `${code} ${name}`),
    );
    // 2370644.ags gives LOCA_STAR 2020-03-09 for WS02 and 2020-03-07 for BH01, and strikes before.
    expect(grave.sort()).toEqual([
      'dates.order ags4/2370644 BH01',
      'dates.order ags4/2370644 WS02',
      'pack.low ags4/a112794-14 BH/CPR01',
      'pack.low ags4/a112794-14 BH/CPR02',
      'screened.ground ags4/2370644 BH01',
    ]);
  });

  it('is nothing beside the findings', () => {
    expect(wells.flatMap(({ record }) => checkConsistency(record))).toEqual([]);
  });

  it('is not what the sources are silent on: rules say there what they lack', () => {
    for (const { name, record } of wells) {
      const { verdicts } = judge(record);
      const lacking = verdicts.filter(({ missing }) => missing.length > 0);
      expect(lacking.length, name).toBeGreaterThan(20);
    }
  });
});
