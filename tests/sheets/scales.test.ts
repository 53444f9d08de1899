import { expect, it } from 'vitest';
import {
  orientations,
  paperNames,
  paperOf,
  type Orientation,
  type PaperName,
} from '../../core/drawing/paper.ts';
import { drawAsBuilt, planAsBuilt } from '../../core/drawing/papers/asBuilt.ts';
import { resolveWell } from '../../core/model/resolveWell.ts';
import { paintPdf } from '../../core/paint/pdf/paintPdf.ts';
import type { WellRecord } from '../../core/record/schema.ts';
import { extentOf, type ReadPage } from '../reading/page.ts';
import { readPdf } from '../reading/pdf.ts';
import { offScale, statedScale, ticksOn } from '../reading/ruler.ts';
import { fonts } from './drawn.ts';

/** A cased hole whose depth fills most of a page at a scale; its edges lie at uneven depths. */
function wellFor(scale: number): WellRecord {
  const depthM = Math.round(scale * 11) / 100;
  const at = (share: number) => Math.round(depthM * share * 100) / 100;
  const foot = at(0.97);
  return {
    schemaVersion: 1,
    bore: { sections: [{ from: 0, to: depthM, diameter: 200 }], depthReached: depthM },
    log: [
      { from: 0, to: at(0.23), material: 'laterite' },
      { from: at(0.23), to: at(0.61), material: 'clay' },
      { from: at(0.61), to: depthM, material: 'sand' },
    ],
    strings: [
      {
        components: [{ kind: 'plain', outside: 125, wall: 4.8, length: foot }],
        set: { by: 'bottom', depth: foot },
      },
    ],
    annulus: [{ from: 0, to: depthM, fill: 'gravelPack' }],
  };
}

interface Sheet {
  readonly paper: PaperName;
  readonly orientation: Orientation;
}

/** The first page of a well's sheet at a scale that is asked for, as pdfjs reads it. */
async function pageAt(record: WellRecord, scale: number, sheet: Sheet): Promise<ReadPage> {
  const model = resolveWell(record);
  const basis = { ...sheet, fonts: fonts.metrics, brokenAxis: false };
  const best = planAsBuilt(record, model, basis);
  const views = best.views.slice(0, 1).map((view) => ({
    ...view,
    axis: { ...view.axis, toM: model.bore.depthM!, scale },
    last: true,
  }));
  const drawing = drawAsBuilt(record, model, {
    ...basis,
    plan: { ...best, scale, views },
    madeAt: '2026-01-31T12:00:00+00:00',
    paperId: '0123456789abcdef0123456789abcdef',
  });
  return (await readPdf(paintPdf(drawing, fonts.files)))[0]!;
}

/** Heights of level lines from one side of the column of the log to the other. */
function contactsOn({ paths }: ReadPage, width = 14): number[] {
  return paths
    .map(extentOf)
    .filter(([left, top, right, foot]) => top === foot && Math.abs(right - left - width) < 0.01)
    .map(([, top]) => top);
}

/** Distances of upright lines of the wall's pen that begin and end at the same heights. */
function wallsApart({ paths }: ReadPage): number[] {
  const upright = paths
    .filter(({ stroke }) => Math.abs(stroke - 0.5) < 0.01)
    .map(extentOf)
    .filter(([left, top, right, foot]) => left === right && foot - top > 20);
  return upright.flatMap(([x, top]) =>
    upright.filter((one) => one[1] === top && one[0] > x).map((one) => one[0] - x),
  );
}

function statedWidths({ texts }: ReadPage): number {
  const says = texts.map(({ text }) => /^diameters 1:(\d+)$/.exec(text)?.[1]);
  return Number(says.find((one) => one !== undefined));
}

const scales = [20, 50, 100, 200, 500];
const cases = scales.flatMap((scale) =>
  paperNames.flatMap((paper) =>
    orientations.map((orientation) => [scale, paper, orientation] as const),
  ),
);

// The independent reader is pdfjs; 0.05 mm is less than half the narrowest line of a sheet.
it.each(cases)(
  'at 1:%d on %s %s ruler, layers and diameters measure true in the PDF',
  async (scale, paper, orientation) => {
    const record = wellFor(scale);
    const page = await pageAt(record, scale, { paper, orientation });
    expect(page.width).toBeCloseTo(paperOf(paper, orientation).width, 1);
    expect(statedScale(page)).toBe(scale);
    const ticks = ticksOn(page);
    expect(ticks.length).toBeGreaterThan(2);
    expect(offScale(ticks, scale)).toBeLessThan(0.05);
    const zero = ticks.find(({ depthM }) => depthM === 0)!.y;
    const contacts = contactsOn(page);
    for (const { to } of record.log!) {
      const meant = zero + (to! * 1000) / scale;
      expect(Math.min(...contacts.map((y) => Math.abs(y - meant)))).toBeLessThan(0.05);
    }
    const walls = 200 / statedWidths(page);
    expect(wallsApart(page).some((mm) => Math.abs(mm - walls) < 0.05)).toBe(true);
  },
);
