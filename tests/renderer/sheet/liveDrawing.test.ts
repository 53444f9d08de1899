// @vitest-environment jsdom
import { openFolder, settled } from '../mounted.ts';
import { readFileSync } from 'node:fs';
import path from 'node:path';
import { expect, it } from 'vitest';
import type { PageHost } from '../../../core/contract/host.ts';
import type { Item } from '../../../core/drawing/items.ts';
import { drawAsBuilt } from '../../../core/drawing/papers/asBuilt.ts';
import { practiceOf } from '../../../core/practice/choosePractice.ts';
import { judgedWell } from '../../../core/judging/judgedWell.ts';
import { resolveWell } from '../../../core/model/resolveWell.ts';
import { fonts } from '../../../renderer/sheet/fonts.ts';
import { LiveDrawing } from '../../../renderer/sheet/liveDrawing.svelte.ts';
import type { WellRecord } from '../../../core/record/schema.ts';
import { setAt } from '../../../renderer/state/edit.ts';
import type { Folder } from '../../../renderer/state/folder.svelte.ts';
import { Templates } from '../../../renderer/state/templates.svelte.ts';
import { rooted } from './rooted.svelte.ts';

const madeAt = '2026-01-15T08:00:00Z';
const top = path.resolve(import.meta.dirname, '../../..');
const well = (name: string) =>
  JSON.parse(readFileSync(path.join(top, 'demo-data', name), 'utf8')) as WellRecord;
const copies = { imagesFor: () => ({}) };
const revisions = [
  { number: 1, on: madeAt, changes: ['First revision'] },
  { number: 2, on: madeAt, changes: ['Notes added: dry'] },
];
const recordHash = '5'.repeat(64);
const bare = { usual: undefined };
const newest = { in: () => ({ revision: 2, recordHash, revisions }) };

/** A folder whose newest revision is the second, and lies there as it was saved. */
function openSecond(): Folder {
  const folder = openFolder(well('shallow-direct-action-9m.json'));
  folder.saving.state = { kind: 'kept', at: madeAt, revised: true };
  folder.saving.revision = 2;
  return folder;
}

function wordsOf({ drawing }: LiveDrawing): string[] {
  const texts: string[] = [];
  const walk = (items: readonly Item[]) => {
    for (const item of items)
      if (item.kind === 'text') texts.push(item.text);
      else if (item.kind === 'group') walk(item.items);
  };
  for (const { items } of drawing?.pages ?? []) walk(items);
  return texts;
}

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
    revisions,
    ...(shownRevision === undefined ? { draft: true } : { revision: shownRevision }),
  });

it('what is shown while somebody types is what would be drawn from nothing', async () => {
  const folder = openFolder(well('sixty-intervals-58m.json'));
  const { made: live, end } = rooted(() => new LiveDrawing(folder, madeAt, copies, newest, bare));
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

it('shows the newest revision as its paper does, and what is typed since as a draft', async () => {
  const folder = openSecond();
  const { made: live, end } = rooted(() => new LiveDrawing(folder, madeAt, copies, newest, bare));
  await expect.poll(() => live.drawing?.recordHash, { timeout: 5000 }).toBe(recordHash);
  const { record } = folder.desk;
  const paper = drawAsBuilt(record, resolveWell(record), {
    judgement: judgedWell(record, resolveWell(record), practiceOf(record)),
    ...{ paper: 'A4', fonts, madeAt, paperId: '0'.repeat(32), images: {} },
    ...{ revision: 2, recordHash, revisions },
  });
  expect(JSON.stringify(live.drawing)).toBe(JSON.stringify(paper));
  expect(wordsOf(live)).not.toContain('Draft: what was typed since is not saved as a revision');
  folder.edit((desk) => ({ ...desk, record: setAt(desk.record, 'notes', 'wet') }));
  await expect.poll(() => live.drawing?.recordHash, { timeout: 5000 }).toBeUndefined();
  expect(live.drawing?.revision).toBeUndefined();
  expect(wordsOf(live)).toContain('completed, draft');
  expect(wordsOf(live)).toContain('Draft: what was typed since is not saved as a revision');
  expect(wordsOf(live)).toContain('Notes added: dry');
  end();
});

it('shows the template that was chosen meanwhile, with its labels, as a paper does', async () => {
  const folder = openSecond();
  const templates = new Templates({} as PageHost);
  const { made: live, end } = rooted(
    () => new LiveDrawing(folder, madeAt, copies, newest, templates),
  );
  await expect.poll(() => live.drawing, { timeout: 5000 }).toBeDefined();
  const bareWords = wordsOf(live);
  const labels = { client: 'Owner of the works' };
  const name = ['Wells of the north'];
  const template = { name, address: [], logos: [], labels, disclaimer: 'Ours' };
  templates.kept = [{ name: 'North', template, usual: true, changedAt: madeAt }];
  await expect.poll(() => wordsOf(live), { timeout: 5000 }).toContain('Wells of the north');
  expect(wordsOf(live)).toEqual(expect.arrayContaining(['Owner of the works', 'Ours']));
  templates.kept = [];
  await expect.poll(() => wordsOf(live), { timeout: 5000 }).toEqual(bareWords);
  end();
});

it('shows a draft while an edge is held', async () => {
  const folder = openSecond();
  const { made: live, end } = rooted(() => new LiveDrawing(folder, madeAt, copies, newest, bare));
  await expect.poll(() => live.drawing?.recordHash, { timeout: 5000 }).toBe(recordHash);
  folder.lift((desk) => ({ ...desk, record: setAt(desk.record, 'log[0].to', 0.7) }));
  await expect.poll(() => live.drawing?.recordHash, { timeout: 5000 }).toBeUndefined();
  folder.lift();
  await expect.poll(() => live.drawing?.recordHash, { timeout: 5000 }).toBe(recordHash);
  end();
});

it('a sheet that nobody changes is not drawn again', async () => {
  const folder = openFolder(well('shallow-direct-action-9m.json'));
  const { made: live, end } = rooted(() => new LiveDrawing(folder, madeAt, copies, newest, bare));
  await settled();
  await expect.poll(() => live.drawing, { timeout: 5000 }).toBeDefined();
  const first = live.drawing;
  await new Promise((resolve) => setTimeout(resolve, 200));
  expect(live.drawing).toBe(first);
  end();
});

it('shows the laying-out sheet where that is chosen, and the as-built one again', async () => {
  const folder = openFolder(well('laid-out-45m.json'));
  const { made: live, end } = rooted(() => new LiveDrawing(folder, madeAt, copies, newest, bare));
  const subject = () => live.drawing?.subject;
  await expect.poll(subject).toBe('Laying-out of the completion');
  live.paper = 'layingOut';
  await expect.poll(subject).toBe('Laying-out sheet');
  expect(live.drawing?.pages).toHaveLength(1);
  live.paper = 'A3';
  await expect.poll(subject).toBe('Laying-out of the completion');
  end();
});
