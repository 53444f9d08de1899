import { describe, expect, it } from 'vitest';
import { well } from '../../../../demo-data/wells.ts';
import { fillSteps, letterOf } from '../../../../../core/drawing/papers/layingOut/fillSteps.ts';
import { resolveWell } from '../../../../../core/model/resolveWell.ts';
import { practiceOf } from '../../../../../core/practice/choosePractice.ts';
import { reckonQuantities } from '../../../../../core/quantities/reckonQuantities.ts';
import type { WellRecord } from '../../../../../core/record/schema.ts';

function stepsOf(record: WellRecord) {
  const [model, practice] = [resolveWell(record), practiceOf(record)];
  return fillSteps(record, model, practice, reckonQuantities(record, model, practice));
}

describe('the fills of a well that is laid out', () => {
  const steps = stepsOf(well('laid-out-45m.json'));

  it('go in from the bottom up, each with its letter', () => {
    expect(steps.map(({ letter, zone }) => `${letter} ${zone.fill}`)).toEqual([
      'A naturalCollapse',
      'B gravelPack',
      'C claySeal',
      'D backfill',
      'E cementGrout',
    ]);
  });

  it('are sounded from the ground and, 0.40 m deeper, from the top of the casing', () => {
    expect(steps.map(({ topM, fromCasingTopM }) => [topM, fromCasingTopM])).toEqual([
      [45.6, undefined],
      [32.2, 32.6],
      [30.2, 30.6],
      [3, 3.4],
      [0, 0.4],
    ]);
  });

  // By hand: 12.8 m round 125 mm and 0.6 m of open hole, 200 mm wide, are 245.0 + 18.8 litres;
  // with a fifth more at 1.6 kg/l 506.6 kg, so 11 sacks of 50 kg. Clay: 2 m, 38.3 litres, a tenth
  // more at 1.1 kg/l is 46.3 kg: 2 sacks of 25 kg. Factors are those of the general practice.
  it('take the sacks that the practice’s factors make of their litres', () => {
    expect(steps.map(({ litres, sacks, sackKg }) => [Math.round(litres!), sacks, sackKg])).toEqual([
      [13, undefined, undefined],
      [264, 11, 50],
      [38, 2, 25],
      [521, undefined, undefined],
      [57, 2, 50],
    ]);
  });

  it('take sacks of the mass that the record writes', () => {
    const record = well('laid-out-45m.json');
    const annulus = record.annulus!.map((fill) => ({ ...fill, sackMass: 20 }));
    const gravel = stepsOf({ ...record, annulus })[1];
    expect(gravel).toMatchObject({ sackKg: 20, sacks: 26 });
  });
});

it('fills round the string that is set first go in before those round the next', () => {
  const rounds = stepsOf(well('telescoped-in-granite.json')).map(({ zone }) => zone.around);
  expect(rounds).toEqual([undefined, 0, 1, 1, 1, 1]);
});

it('a fill above a casing that was cut off goes in last', () => {
  const tops = stepsOf(well('collapsed-hole-38m.json')).map(({ topM }) => topM);
  expect(tops).toEqual([21.7, 13.6, 9.4, 1, 0]);
});

it('letters go on after Z', () => {
  expect([0, 25, 26, 51, 52].map(letterOf)).toEqual(['A', 'Z', 'AA', 'AZ', 'BA']);
});
