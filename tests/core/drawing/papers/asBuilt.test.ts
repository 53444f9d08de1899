import { describe, expect, it } from 'vitest';
import { well } from '../../../demo-data/wells.ts';
import { drawAsBuilt, planAsBuilt } from '../../../../core/drawing/papers/asBuilt.ts';
import { resolveWell } from '../../../../core/model/resolveWell.ts';
import { drawSheet, fonts } from '../../../sheets/drawn.ts';
import { emptyRecord } from '../../../sheets/examples/emptyRecord.ts';

describe('the as-built sheet', () => {
  const { drawing } = drawSheet(well('hand-drilled-32m.json'), 'A4');

  it('has the pages of its paper', () => {
    for (const { width, height } of drawing.pages) expect([width, height]).toEqual([210, 297]);
    const [page] = drawSheet(well('hand-drilled-32m.json'), 'A3').drawing.pages;
    expect([page!.width, page!.height]).toEqual([420, 297]);
  });

  it('says what it is, of which well and by whom, to readers of the file', () => {
    expect(drawing).toMatchObject({
      title: 'KV-25-011 – Ɓirassolé, place du marché',
      subject: 'As-built completion diagram',
      author: 'Yamélia Ɓossarin',
      language: 'en',
      madeAt: '2026-01-31T12:00:00+00:00',
    });
  });

  it('is a sheet of one page for a record in which nothing is written', () => {
    const empty = drawSheet(emptyRecord(), 'A4').drawing;
    expect(empty.pages).toHaveLength(1);
    expect(empty.title).toBe('');
  });

  it('keeps its pages and scale where they are handed back', () => {
    const record = well('hand-drilled-32m.json');
    const options = { paper: 'A4', fonts: fonts.metrics } as const;
    const plan = planAsBuilt(record, resolveWell(record), options);
    const deeper = { ...record, bore: { ...record.bore, depthReached: 300 } };
    const made = { madeAt: '2026-01-31T12:00:00Z', paperId: '0'.repeat(32) };
    const draw = (kept: object) =>
      drawAsBuilt(deeper, resolveWell(deeper), { ...options, ...made, ...kept });
    const axes = ({ pages }: ReturnType<typeof draw>) => pages.flatMap((page) => page.axes ?? []);
    expect(axes(draw({ plan }))).toEqual(axes(drawing));
    expect(axes(draw({}))).not.toEqual(axes(drawing));
  });
});
