import { describe, expect, it } from 'vitest';
import { modelFindings, type ModelFindingCode } from '../../../core/model/findings.ts';
import { valueAt } from '../../../core/base/recordPath.ts';
import { wellRecord } from '../../../core/record/schema.ts';
import { everyFinding } from './everyFinding.ts';
import { record, resolve, said } from './well.ts';

const codes = Object.keys(modelFindings) as ModelFindingCode[];

describe('every finding of the model', () => {
  it.each(codes)('%s is called up by a record, with its severity and values', (code) => {
    const [severity, ...names] = modelFindings[code];
    const findings = said(resolve(everyFinding[code]), code);
    expect(findings.length).toBeGreaterThan(0);
    for (const finding of findings) {
      expect(finding.severity).toBe(severity);
      expect(Object.keys(finding.values).sort()).toEqual([...names].sort());
    }
  });

  it('points at a place that is in the record, or at a field or chapter that is missing there', () => {
    for (const code of codes)
      for (const { path } of said(resolve(everyFinding[code]), code)) {
        const parent = path.replace(/(^|\.)[^.[]+$|\[\d+\]$/, '');
        const found = valueAt(record(everyFinding[code]), parent) !== undefined;
        expect(found || parent in wellRecord.shape, `${code} ${path}`).toBe(true);
      }
  });

  it('comes of a record that the schema takes, since those are what people can write', () => {
    for (const code of codes) {
      const read = wellRecord.safeParse(record(everyFinding[code]));
      expect(read.error?.issues ?? [], code).toEqual([]);
    }
  });
});
