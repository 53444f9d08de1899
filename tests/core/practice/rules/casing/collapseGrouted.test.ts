import { describe, expect, it } from 'vitest';
import { collapseGrouted } from '../../../../../core/practice/rules/casing/collapseGrouted.ts';
import {
  cap,
  casing,
  closedStates,
  inState,
  met,
  misses,
  passedBy,
  plain,
  say,
  screen,
  sump,
  type Chapters,
} from './wells.ts';

import { collapseKPa, waterKPaPerM } from '../../../../../core/practice/strength/collapse.ts';

/** Grout from the ground to a depth round pipe of some wall, in a plan. */
const grouted = (toM: number, wall: number, changed: Chapters = {}): Chapters => ({
  ...inState('laidOut'),
  ...casing(cap, sump, screen, { ...plain, wall }),
  annulus: [{ from: 0, to: toM, fill: 'cementGrout', waterCement: 0.5 }],
  ...changed,
});

/** At 42 °C: 27 °C in the ground and 15 more from the cement, 0.8 % less for each over 21 °C. */
const holdsKPa = (wall: number) =>
  collapseKPa(110 / wall, { modulusMPa: 2758, poisson: 0.38 }) * (1 - 21 * 0.008);

describe('the rule of collapse while grouted', () => {
  // Worked: 20 m of grout at 1.835 t/m³ with water inside press 163.8 kPa.
  it('finds pipe that holds less than asked for against its grout', () => {
    expect(say(collapseGrouted, grouted(20, 3.6)).findings).toMatchObject([
      {
        code: 'collapse.grouted',
        severity: 'warning',
        path: 'strings[0].components[3]',
        values: {
          string: 1,
          outsideMm: 110,
          wallMm: 3.6,
          load: 164,
          holds: Math.round(holdsKPa(3.6)),
          warm: 42,
          wanted: 1.5,
        },
      },
    ]);
  });

  it('is an error in a plan where it would collapse, a note of a well that stands', () => {
    expect(say(collapseGrouted, grouted(20, 3.2)).findings).toMatchObject([{ severity: 'error' }]);
    expect(say(collapseGrouted, grouted(20, 3.2, inState('completed'))).findings).toMatchObject([
      { severity: 'note' },
    ]);
  });

  it('is met just at the factor', () => {
    const heavierKgL = 1.5 / (1 / 3.15 + 0.5) - 1;
    const heightM = holdsKPa(3.6) / 1.5 / heavierKgL / waterKPaPerM;
    expect(say(collapseGrouted, grouted(heightM - 0.001, 3.6))).toEqual(met);
    expect(say(collapseGrouted, grouted(heightM + 0.001, 3.6)).findings).toHaveLength(1);
  });

  it('takes fills of grout that touch as one column, and thin grout as lighter', () => {
    const two: Chapters = {
      annulus: [
        { from: 0, to: 10, fill: 'cementGrout', waterCement: 0.5 },
        { from: 10, to: 20, fill: 'cementGrout', waterCement: 0.5 },
      ],
    };
    expect(say(collapseGrouted, grouted(20, 3.6, two)).findings).toMatchObject([
      { values: { load: 164 } },
    ]);
    const thin: Chapters = {
      annulus: [{ from: 0, to: 20, fill: 'cementGrout', waterCement: 0.6 }],
    };
    expect(say(collapseGrouted, grouted(20, 3.6, thin)).findings).toMatchObject([
      { values: { load: 146 } },
    ]);
  });

  it('takes the practice’s water to cement where nobody wrote it', () => {
    const unsaid: Chapters = { annulus: [{ from: 0, to: 20, fill: 'cementGrout' }] };
    expect(say(collapseGrouted, grouted(20, 3.6, unsaid)).findings).toMatchObject([
      { values: { load: 164 } },
    ]);
  });

  it('cannot tell without material or wall', () => {
    const bare = { kind: 'plain', length: 22.9, outside: 110 } as const;
    const of = (changed: object) =>
      grouted(20, 4.2, casing(cap, sump, screen, { ...bare, ...changed }));
    expect(misses(collapseGrouted, of({ wall: 4.2 }))).toEqual([
      'pipeMaterial strings[0].components[3].material',
    ]);
    expect(misses(collapseGrouted, of({ material: 'uPVC' }))).toEqual([
      'pipeWall strings[0].components[3].wall',
    ]);
  });

  it('passes by casing without grout, steel and a well that gives no water', () => {
    expect(say(collapseGrouted, { annulus: [] })).toEqual(passedBy);
    const steel = casing(cap, sump, screen, { ...plain, material: 'steel' });
    expect(say(collapseGrouted, grouted(20, 4.2, steel))).toEqual(passedBy);
    for (const state of closedStates)
      expect(say(collapseGrouted, grouted(20, 2.7, inState(state)))).toEqual(passedBy);
  });
});
