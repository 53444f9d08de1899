import { describe, expect, it } from 'vitest';
import { languages } from '../../../../../core/base/language.ts';
import { valueAt } from '../../../../../core/base/recordPath.ts';
import { sayFinding } from '../../../../../core/practice/catalogue.ts';
import { handoverItems } from '../../../../../core/practice/rules/service/words.ts';
import { readRecord } from '../../../../../core/record/read.ts';
import type { WellRecord } from '../../../../../core/record/schema.ts';
import completeWell from '../../../../../demo-data/hand-drilled-32m.json' with { type: 'json' };
import dryHole from '../../../../../demo-data/dry-hole-26m.json' with { type: 'json' };
import {
  completed,
  doesNotApply,
  dry,
  found,
  generalFigure,
  judge,
  laidOut,
  met,
  missed,
  sentences,
} from './judge.ts';

function held(document: unknown): WellRecord {
  const reading = readRecord(document);
  if (reading.kind !== 'ok') throw new Error('A demo well cannot be read.');
  return reading.record;
}

const items = (chapters: Parameters<typeof judge>[1]) =>
  judge('handover.incomplete', chapters).findings.map(({ values }) => values['item']);

describe('handover.incomplete', () => {
  it('says nothing of a well whose record is whole, nor of a dry hole that was closed', () => {
    expect(judge('handover.incomplete', held(completeWell))).toEqual(met);
    expect(judge('handover.incomplete', held(dryHole))).toEqual(met);
  });

  it('says each item that a completed well lacks', () => {
    const reasons = ['reason', 'sealing'];
    expect(items(completed).sort()).toEqual(
      handoverItems.filter((item) => !reasons.includes(item) && item !== 'slotWidth').sort(),
    );
  });

  it('says one item where one was left out, and leads to its place', () => {
    const without = { ...held(completeWell), pump: undefined };
    expect(found('handover.incomplete', without)).toEqual(['note pump']);
    expect(sentences('handover.incomplete', without)).toEqual([
      'The record lacks the pump with the depth of its intake.',
    ]);
    const whole = held(completeWell);
    const unnumbered = { ...whole, identity: { ...whole.identity, number: ' ' } };
    expect(found('handover.incomplete', unnumbered)).toEqual(['note identity.number']);
  });

  it('asks for the width of slots only where there is a screen', () => {
    const string = (kind: 'screen' | 'plain') => ({ components: [{ kind, length: 3 }] });
    expect(items({ ...completed, strings: [string('screen')] })).toContain('slotWidth');
    expect(items({ ...completed, strings: [string('plain')] })).not.toContain('slotWidth');
  });

  it('asks of a hole that was given up why, and how it was closed', () => {
    const bare = items(dry);
    expect(bare).toEqual(expect.arrayContaining(['wellNumber', 'position', 'reason', 'sealing']));
    expect(bare).not.toContain('pumpAndDepth');
    // Dry or abandoned hole: reason, how sealed; asked by Oregon OAR 690-205-0210 and others.
    const closed = held(dryHole);
    const untold = { ...closed, notes: undefined, bore: { ...closed.bore, remark: '' } };
    expect(items(untold)).toEqual(['reason']);
    expect(items({ ...held(dryHole), annulus: [] })).toEqual(['sealing']);
  });

  it('does not ask a well that is on its way, and cannot tell where the state is not known', () => {
    expect(judge('handover.incomplete', laidOut)).toEqual(doesNotApply);
    expect(missed('handover.incomplete', {})).toEqual(['state identity.state']);
  });

  it('has the words of each item in each language', () => {
    for (const chapters of [completed, dry])
      for (const finding of judge('handover.incomplete', chapters).findings)
        for (const language of languages) {
          const { title, sentence } = sayFinding(finding, language);
          expect(title.length).toBeLessThan(90);
          expect(sentence).not.toMatch(/[{}]|undefined|[a-z][A-Z]/);
        }
  });

  it('leads to fields that a whole record has', () => {
    const whole = held(completeWell);
    const closed = held(dryHole);
    for (const { path } of judge('handover.incomplete', completed).findings)
      if (path !== 'samples') expect(valueAt(whole, path), path).toBeDefined();
    for (const { path } of judge('handover.incomplete', dry).findings)
      expect(valueAt(closed, path), path).toBeDefined();
  });
});

describe('report.late', () => {
  const signed = (on: string | undefined) => ({
    ...completed,
    bore: { finishedOn: '2025-11-13' },
    pump: { installedOn: '2025-12-04' },
    marks: [
      { role: 'client' as const, on: '2026-02-20' },
      { role: 'supervisor' as const, on },
    ],
  });

  it('is met on the last day, counted from the last work on the well', () => {
    // Washington WAC 173-160-141: within 30 days of completion.
    expect(generalFigure('reportDays')).toBe(30);
    expect(judge('report.late', signed('2026-01-03'))).toEqual(met);
    expect(found('report.late', signed('2026-01-04'))).toEqual(['note marks[1].on']);
    expect(sentences('report.late', signed('2026-01-04'))).toEqual([
      'The supervisor signed on 2026-01-04, 31 d after the last work on 2025-12-04; reports are due within 30 d.',
    ]);
  });

  it('holds for dry holes as well', () => {
    const late = { ...dry, bore: { finishedOn: '2025-12-02' } };
    const marks = [{ role: 'supervisor' as const, on: '2026-01-02' }];
    expect(found('report.late', { ...late, marks })).toEqual(['note marks[0].on']);
  });

  it('cannot tell without the days, and says nothing before anybody signed', () => {
    expect(missed('report.late', signed(undefined))).toEqual(['dates marks[1].on']);
    const undated = { ...signed('2026-01-03'), bore: {}, pump: {} };
    expect(missed('report.late', undated)).toEqual(['dates bore.finishedOn']);
    expect(judge('report.late', completed)).toEqual(doesNotApply);
    expect(judge('report.late', { ...signed('2027-01-03'), ...laidOut })).toEqual(doesNotApply);
  });
});
