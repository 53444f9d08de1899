import { describe, expect, it } from 'vitest';
import { factsOf } from '../../../../../core/drawing/papers/committee/facts.ts';
import { pictureFrame } from '../../../../../core/drawing/papers/committee/picture/frame.ts';
import { drawPicture } from '../../../../../core/drawing/papers/committee/picture/picture.ts';
import { headOf } from '../../../../../core/drawing/papers/committee/picture/pump.ts';
import { resolveWell } from '../../../../../core/model/resolveWell.ts';
import type { WellRecord } from '../../../../../core/record/schema.ts';
import { well } from '../../../../demo-data/wells.ts';
import { pathsIn, wordsIn, within } from '../../trial.ts';
import { kitIn } from './kit.ts';

const box = { x: 20, y: 30, width: 78, height: 90 };

function picture(record: WellRecord) {
  const model = resolveWell(record);
  const facts = factsOf(record, model);
  return {
    frame: pictureFrame(model, facts, box),
    item: drawPicture(kitIn(), record, model, facts, box),
  };
}

const named = (record: WellRecord) =>
  new Set(within(picture(record).item).flatMap((one) => (one.kind === 'group' ? [one.name] : [])));

describe('the picture of a well', () => {
  const record = well('hand-drilled-32m.json');
  const { frame, item } = picture(record);

  it('is true in its depths', () => {
    const perM = frame.yAt(20) - frame.yAt(10);
    expect(frame.yAt(21.5) - frame.ground).toBeCloseTo(2.15 * perM, 6);
    expect(frame.yAt(0)).toBe(frame.ground);
    expect(frame.yAt(-3)).toBe(frame.ground);
    expect(frame.yAt(1000)).toBe(frame.foot);
  });

  it('says water, pump, gravel and bottom from the top down', () => {
    const words = wordsIn(item);
    expect(words.filter((one) => /^[a-z]+$/.test(one))).toEqual([
      'water',
      'pump',
      'gravel',
      'bottom',
    ]);
    expect(words).toEqual(expect.arrayContaining(['9.9 m', '21.5 m', '32 m']));
  });

  it('shows pad, drain and fence where the record tells of them, and not else', () => {
    const bare: WellRecord = { ...record };
    delete (bare as { headworks?: unknown }).headworks;
    expect(pathsIn(item).length).toBeGreaterThan(pathsIn(picture(bare).item).length + 10);
  });

  it('of a hole that was given up shows no pump and no water', () => {
    const names = named(well('dry-hole-26m.json'));
    expect(names.has('closed')).toBe(true);
    expect(names.has('pump')).toBe(false);
    expect(wordsIn(picture(well('dry-hole-26m.json')).item)).not.toContain('water');
  });

  it('shows the pump of its kind, and a capped pipe where none is known', () => {
    expect(headOf('ropeAndWasher')).toBe('wheelHead');
    expect(headOf('extraDeepLever')).toBe(headOf('deepwellLever'));
    expect(headOf('solarSubmersible')).toBe(headOf('electricSubmersible'));
    expect(headOf(undefined)).toBe('plainHead');
  });
});
