import { readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { modelFindings } from '../../core/model/findings.ts';
import { resolveWell } from '../../core/model/resolveWell.ts';
import { checkConsistency } from '../../core/record/consistency.ts';
import counted from './findings.json' with { type: 'json' };
import { realWells } from './realWells.ts';

interface Count {
  readonly findings: number;
  readonly wells: number;
}

const wells = realWells();

function countFindings(): Record<string, Count> {
  const said = wells.flatMap(({ name, record }) =>
    resolveWell(record).findings.map(({ code }) => ({ code, name })),
  );
  const codes = Object.keys(modelFindings).filter((code) => said.some((one) => one.code === code));
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

  it('is no error but where a source contradicts itself', () => {
    const erring = wells.filter(({ record }) =>
      resolveWell(record).findings.some(({ severity }) => severity === 'error'),
    );
    expect(erring.map(({ name }) => name)).toEqual(['gwml2-bom nsw.10042141']);
  });

  it('is beside the findings what two holes say of their days', () => {
    const said = wells.flatMap(({ name, record }) =>
      checkConsistency(record).map(({ sentence }) => `${name} ${sentence}`),
    );
    // 2370644.ags gives LOCA_STAR 2020-03-09 for WS02 and 2020-03-07 for BH01, and strikes before.
    expect(said).toEqual([
      'ags4/2370644 WS02 strikes[0].at: 2020-03-08 is before bore.startedOn 2020-03-09',
      ...[0, 1, 2].map(
        (at) =>
          `ags4/2370644 BH01 strikes[${at}].at: 2020-03-06 is before bore.startedOn 2020-03-07`,
      ),
    ]);
  });
});
