// @vitest-environment jsdom
import { button, clear, click, settled, show, texts } from '../mounted.ts';
import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import ArchivePage from '../../../renderer/archive/ArchivePage.svelte';
import { fakeArchive, rowOf, type Answers, type FakeArchive } from './fakeArchive.ts';

const handed = vi.hoisted(() => vi.fn());
vi.mock('../../../renderer/sheet/download.ts', () => ({ download: handed }));

const deed = 'Sheets of these wells in one PDF';
const made = { fileName: '2 wells as-built A4.pdf', pdf: 'JVBERi0=', unrevised: 0 };
let archive: FakeArchive;

async function open(wells: number, answers: Answers) {
  const rows = Array.from({ length: wells }, (_, at) => rowOf(`T-${at + 1}`));
  archive = await fakeArchive(rows, answers);
  show(ArchivePage, { place: archive.place });
  await archive.place.list();
  await settled();
}

beforeEach(() => handed.mockClear());
afterEach(clear);

it('puts the sheets of the listed wells into one PDF, in the order of the list', async () => {
  await open(2, { 'papers.batch': made });
  await click(button(deed));
  await settled();
  expect(archive.callsOf('papers.batch')).toEqual([
    { ids: ['T-1', 'T-2'], paper: 'A4', language: 'en' },
  ]);
  expect(handed).toHaveBeenCalledWith(made.fileName, made.pdf, 'application/pdf');
  expect(texts('.done span')).toEqual([`${made.fileName} was made.`]);
});

it('says which sheets are older than what was typed', async () => {
  await open(2, { 'papers.batch': { ...made, unrevised: 1 } });
  await click(button(deed));
  await settled();
  expect(texts('.done span')[0]).toContain('One well has newer entries');
});

it('asks for a narrower list where one PDF cannot take it all', async () => {
  await open(61, { 'papers.batch': made });
  await click(button(deed));
  await settled();
  expect(archive.callsOf('papers.batch')).toEqual([]);
  expect(texts('[role=alert]')[0]).toBe(
    'The list shows 61 wells; one PDF takes 60 at most. Narrow the list by search or filters.',
  );
});

it('says why no PDF was made', async () => {
  await open(2, { 'papers.batch': new Error('Too many pages.') });
  await click(button(deed));
  await settled();
  expect(texts('[role=alert]')).toEqual(['Too many pages.']);
  expect(handed).not.toHaveBeenCalled();
  expect(texts('.done span')).toEqual([]);
});

it('is not offered where the list is empty', async () => {
  await open(0, {});
  expect(button(deed).disabled).toBe(true);
});
