// @vitest-environment jsdom
import { openFolder, settled } from '../mounted.ts';
import { readFileSync } from 'node:fs';
import path from 'node:path';
import { expect, it } from 'vitest';
import { drawAsBuilt } from '../../../core/drawing/papers/asBuilt.ts';
import { practiceOf } from '../../../core/practice/choosePractice.ts';
import { judgedWell } from '../../../core/judging/judgedWell.ts';
import { resolveWell } from '../../../core/model/resolveWell.ts';
import { fonts } from '../../../renderer/sheet/fonts.ts';
import { LiveDrawing } from '../../../renderer/sheet/liveDrawing.svelte.ts';
import type { WellRecord } from '../../../core/record/schema.ts';
import { setAt } from '../../../renderer/state/edit.ts';
import type { Folder } from '../../../renderer/state/folder.svelte.ts';
import { rooted } from './rooted.svelte.ts';

const madeAt = '2026-01-15T08:00:00Z';
const top = path.resolve(import.meta.dirname, '../../..');
const well = (name: string) =>
  JSON.parse(readFileSync(path.join(top, 'demo-data', name), 'utf8')) as WellRecord;
const copies = { imagesFor: () => ({}) };

/** What a hand types, letter by letter, in cells of the log. */
const typed: readonly (readonly [string, unknown])[] = [
  ['log[5].to', 4],
  ['log[5].to', 4.1],
  ['log[5].colour', 'w'],
  ['log[5].colour', 'wh'],
  ['log[40].material', 'granite'],
  ['log[40].remarks', 'a seam of white quartz as thick as an arm, and wet '.repeat(6)],
  ['log[5].to', undefined],
  ['annulus[1].to', 30],
];

const fromNothing = ({ desk: { record }, saving: { shownRevision } }: Folder) =>
  drawAsBuilt(record, resolveWell(record), {
    judgement: judgedWell(record, resolveWell(record), practiceOf(record)),
    paper: 'A4',
    language: 'en',
    fonts,
    madeAt,
    paperId: '0'.repeat(32),
    images: {},
    ...(shownRevision !== undefined && { revision: shownRevision }),
  });

it('what is shown while somebody types is what would be drawn from nothing', async () => {
  const folder = openFolder(well('sixty-intervals-58m.json'));
  const { made: live, end } = rooted(() => new LiveDrawing(folder, madeAt, copies));
  await settled();
  await expect.poll(() => live.drawing, { timeout: 5000 }).toBeDefined();
  for (const [path, value] of typed) {
    folder.edit((desk) => ({ ...desk, record: setAt(desk.record, path, value) }));
    const wanted = JSON.stringify(fromNothing(folder));
    await settled();
    await expect.poll(() => JSON.stringify(live.drawing) === wanted, { timeout: 5000 }).toBe(true);
  }
  end();
});

it('a sheet that nobody changes is not drawn again', async () => {
  const folder = openFolder(well('shallow-direct-action-9m.json'));
  const { made: live, end } = rooted(() => new LiveDrawing(folder, madeAt, copies));
  await settled();
  await expect.poll(() => live.drawing, { timeout: 5000 }).toBeDefined();
  const first = live.drawing;
  await new Promise((resolve) => setTimeout(resolve, 200));
  expect(live.drawing).toBe(first);
  end();
});

it('shows the laying-out sheet where that is chosen, and the as-built one again', async () => {
  const folder = openFolder(well('laid-out-45m.json'));
  const { made: live, end } = rooted(() => new LiveDrawing(folder, madeAt, copies));
  const subject = () => live.drawing?.subject;
  await expect.poll(subject).toBe('Laying-out of the completion');
  live.paper = 'layingOut';
  await expect.poll(subject).toBe('Laying-out sheet');
  expect(live.drawing?.pages).toHaveLength(1);
  live.paper = 'A3';
  await expect.poll(subject).toBe('Laying-out of the completion');
  end();
});
