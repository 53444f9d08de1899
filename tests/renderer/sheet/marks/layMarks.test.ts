import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Finding } from '../../../../core/base/finding.ts';
import type { PageAxis } from '../../../../core/drawing/items.ts';
import { layMarks } from '../../../../renderer/sheet/marks/layMarks.ts';

const axis: PageAxis = {
  box: { x: 20, y: 20, width: 180, height: 200 },
  fromM: 10,
  toM: 40,
  stretches: [{ fromM: 10, toM: 40, top: 25 }],
  mmPerM: 5,
  spans: {
    water: { x: 29, width: 9 },
    ground: { x: 38, width: 14 },
    section: { x: 138, width: 37 },
  },
};

const finding = (fromM?: number, toM?: number): Finding => ({
  code: 'log.gap',
  severity: 'warning',
  path: 'log',
  values: {},
  ...(fromM !== undefined && { fromM }),
  ...(toM !== undefined && { toM }),
});

describe('the marks of findings', () => {
  it('stand beside the stretch that they speak of, with a bracket along it', () => {
    const [mark] = layMarks(axis, [finding(12, 16)], 6);
    expect(mark!.bracket).toMatchObject({ top: 35, foot: 55 });
    expect(mark!.y).toBe(45);
    expect(mark!.x + mark!.size / 2).toBeLessThan(mark!.bracket.x);
    expect(mark!.bracket.x).toBeLessThan(axis.box.x);
  });

  it('speak of one depth where a finding does', () => {
    const [mark] = layMarks(axis, [finding(12)], 6);
    expect(mark!.bracket.foot).toBe(mark!.bracket.top);
  });

  it('leave out what has no depth and what the page does not show', () => {
    expect(layMarks(axis, [finding(), finding(2, 9), finding(41), finding(40.5, 60)], 6)).toEqual(
      [],
    );
  });

  it('are cut where a stretch goes on beyond the page', () => {
    const [mark] = layMarks(axis, [finding(2, 60)], 6);
    expect(mark!.bracket).toMatchObject({ top: 25, foot: 175 });
  });

  it('take a stretch that was told from its foot to its top as it lies', () => {
    const [mark] = layMarks(axis, [finding(16, 12)], 6);
    expect(mark!.bracket).toMatchObject({ top: 35, foot: 55 });
  });

  it('never hide each other, never leave the height of the view, and stay in the margin', () => {
    const depth = fc.double({ min: 5, max: 45, noNaN: true });
    const findings = fc.array(
      fc.tuple(depth, fc.option(depth, { nil: undefined })).map(([from, to]) => finding(from, to)),
      { maxLength: 60 },
    );
    fc.assert(
      fc.property(findings, fc.double({ min: 1, max: 9, noNaN: true }), (given, sizeMm) => {
        const marks = layMarks(axis, given, sizeMm);
        for (const [at, { x, y, size }] of marks.entries()) {
          const above = marks[at - 1];
          if (above) expect(y - size / 2).toBeGreaterThanOrEqual(above.y + above.size / 2 - 1e-6);
          expect(y - size / 2).toBeGreaterThanOrEqual(axis.box.y - 1e-6);
          expect(y + size / 2).toBeLessThanOrEqual(axis.box.y + axis.box.height + 1e-6);
          expect(x - size / 2).toBeGreaterThan(0);
        }
      }),
    );
  });

  it('lay brackets of overlapping stretches side by side', () => {
    const marks = layMarks(axis, [finding(12, 20), finding(14, 30)], 6);
    expect(new Set(marks.map(({ bracket }) => bracket.x)).size).toBe(2);
  });
});
