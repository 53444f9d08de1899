// @vitest-environment jsdom
import { afterEach, describe, expect, it, vi } from 'vitest';
import '../mounted.ts';
import type { PracticeFile } from '../../../core/practice/practice.ts';
import { guidelinesOf } from '../../../core/water/guidelines/chooseGuidelines.ts';
import type { GuidelineFile } from '../../../core/water/guidelines/guidelineSet.ts';
import { Judging } from '../../../renderer/state/judging.svelte.ts';
import { resolveWell } from '../../../core/model/resolveWell.ts';
import type { WellRecord } from '../../../core/record/schema.ts';
import { rooted } from '../sheet/rooted.svelte.ts';
import { stateOf } from './stateOf.svelte.ts';

const words = { en: 'Ours', fr: 'Ours', pt: 'Ours' };
const ours: PracticeFile = {
  id: 'ours',
  version: '1',
  name: words,
  scope: words,
  basedOn: 'handDrilled',
  sources: {},
  figures: {},
};

function judging(record: WellRecord, own: readonly PracticeFile[] = []) {
  const state = stateOf({ record, own, guidelines: guidelinesOf(undefined) });
  const resolved = () => ({
    record: state.now.record,
    model: resolveWell(state.now.record),
    guidelines: state.now.guidelines,
  });
  const { made } = rooted(() => new Judging(resolved, () => state.now.own));
  return { made, set: (next: Partial<typeof state.now>) => state.set(next) };
}

afterEach(() => {
  vi.restoreAllMocks();
  vi.useRealTimers();
});

const bored = (method: 'handAuger' | 'downTheHoleHammer'): WellRecord => ({
  schemaVersion: 1,
  bore: { method },
});

describe('the practice of an open well', () => {
  it('is the general one for its way of drilling until the record names one that is there', () => {
    const { made, set } = judging(bored('handAuger'));
    expect(made.practice.id).toBe('handDrilled');
    set({ record: bored('downTheHoleHammer') });
    expect(made.practice.id).toBe('machineRock');
    set({ record: { ...bored('downTheHoleHammer'), identity: { practice: 'ours' } } });
    expect(made.practice.id).toBe('machineRock');
    set({ own: [ours] });
    expect(made.practice.id).toBe('ours');
    expect(made.judgement.practice.id).toBe('ours');
  });
});

describe('judging', () => {
  it('goes by the guideline values that the samples are compared with', () => {
    const sampled: WellRecord = {
      schemaVersion: 1,
      quality: [
        { takenAt: '2026-01-10', results: [{ parameter: 'fluoride', value: 1.2, unit: 'mg/l' }] },
      ],
    };
    const { made, set } = judging(sampled);
    const isAbove = () =>
      made.judgement.findings.some(({ code }) => code === 'quality.aboveHealth');
    expect(isAbove()).toBe(false);
    // 1.0 mg/l is the desirable limit of IS 10500, 1992 (read in a summary).
    const strict: GuidelineFile = {
      id: 'strict',
      version: '1',
      name: words,
      basedOn: 'who2022',
      sources: { ours: { title: words, mark: 'read' } },
      parameters: {
        fluoride: {
          values: { health: { bound: 'most', value: 1, basis: 'health', source: 'ours' } },
        },
      },
    };
    set({ guidelines: guidelinesOf('strict', [strict]) });
    expect(isAbove()).toBe(true);
  });

  it('follows in the same breath while it is quick', () => {
    const { made, set } = judging(bored('handAuger'));
    const before = made.judgement;
    set({ record: bored('downTheHoleHammer') });
    expect(made.judgement).not.toBe(before);
  });

  it('waits for the pause after letters once it was slow three times', () => {
    vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout'] });
    let clock = 0;
    vi.spyOn(performance, 'now').mockImplementation(() => (clock += 5));
    const { made, set } = judging(bored('handAuger'));
    for (let time = 0; time < 3; time += 1) {
      set({ record: { ...bored('handAuger'), notes: String(time) } });
      void made.judgement;
    }
    const before = made.judgement;
    set({ record: bored('downTheHoleHammer') });
    expect(made.judgement).toBe(before);
    vi.advanceTimersByTime(40);
    expect(made.judgement.practice.id).toBe('machineRock');
  });
});
