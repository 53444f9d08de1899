import { describe, expect, it } from 'vitest';
import type { HostEvent } from '../../../core/contract/events.ts';
import type { PageHost } from '../../../core/contract/host.ts';
import { depthField } from '../../../renderer/editors/fields/number.ts';
import { enter } from '../../../renderer/state/desk.ts';
import { exportPaper } from '../../../renderer/state/exportPaper.ts';
import { moveTo } from '../../moves.ts';
import { Place } from '../../../renderer/state/place.svelte.ts';

const record = { schemaVersion: 1 as const, bore: { depthReached: 30 } };
const changedAt = '2025-03-09T07:05:00Z';
const working = { base: { record, typed: {} }, moves: [], edit: 0, unrevised: false, changedAt };
const stored = { id: 'w', revision: 1, changedAt, record, document: record, troubles: [], working };
const good: Record<string, unknown> = {
  'archive.state': { name: 'A', wells: 1, readOnly: false },
  'list.find': { rows: [], total: 0, uncounted: 0 },
  'list.map': { wells: [], withoutPosition: 0, leftOut: 0 },
  'list.choices': { regions: [], districts: [], states: [] },
  'backdrops.list': [],
  'bin.list': [],
  'wells.open': stored,
  'wells.edit': { edit: 1, unrevised: true, changedAt, troubles: [] },
  'wells.save': { revision: 2, changedAt: '2025-03-09T07:06:00Z', troubles: [] },
  'wells.leave': null,
  'papers.asBuilt': { fileName: 'w.pdf', pdf: '', findings: [], unrevised: false },
  'papers.layingOut': { fileName: 'l.pdf', pdf: '', findings: [], unrevised: false },
  'papers.committee': { fileName: 'c.pdf', pdf: '', findings: [], unrevised: false },
};

/** A host that answers as told, and remembers what it was asked. */
function placeWith(answers: Record<string, unknown> = {}) {
  const asked: string[] = [];
  const given: Record<string, object> = {};
  let tell: (event: HostEvent) => void = () => undefined;
  const host = {
    async send(name: string, args: object) {
      asked.push(name);
      given[name] = args;
      const value = { ...good, ...answers }[name];
      return value instanceof Error
        ? { ok: false, error: { code: 'diskFull', sentence: value.message } }
        : { ok: true, value: await value };
    },
    onEvent(listener: typeof tell) {
      tell = listener;
      return () => undefined;
    },
  };
  const place = new Place(host as unknown as PageHost);
  return { place, asked, given, tell: (event: HostEvent) => tell(event) };
}

const reached = depthField('depthReached', 'Depth reached');
const type = (place: Place, text: string) =>
  place.folder!.edit((desk) => enter(desk, 'bore', reached, text));

describe('leaving a well folder', () => {
  it('makes a revision of what was typed, and lets the next opening start from there', async () => {
    const { place, asked } = placeWith();
    await place.open('w');
    type(place, '31');
    expect(await place.leave()).toBe(true);
    expect(asked.slice(1, 4)).toEqual(['wells.edit', 'wells.save', 'wells.leave']);
    expect(place.folder).toBeUndefined();
  });

  it('gives the revision the reason that was typed, once', async () => {
    const { place, given } = placeWith();
    await place.open('w');
    const { saving } = place.folder!;
    type(place, '31');
    saving.reason = ' Sounded again ';
    await saving.revise();
    expect(given['wells.save']).toEqual({ id: 'w', upon: 1, reason: 'Sounded again' });
    expect(saving.reason).toBe('');
  });

  it('keeps the reason while no revision was made', async () => {
    const { place } = placeWith({ 'wells.save': new Error('The disk is full.') });
    await place.open('w');
    const { saving } = place.folder!;
    type(place, '31');
    saving.reason = 'Sounded again';
    await saving.revise();
    expect(saving.reason).toBe('Sounded again');
    saving.stop();
  });

  it('asks for nothing where nothing was ever typed', async () => {
    const { place, asked } = placeWith();
    await place.open('w');
    expect(await place.leave()).toBe(true);
    expect(asked.filter((name) => name.startsWith('wells.e'))).toEqual([]);
    expect(asked).not.toContain('wells.save');
    expect(asked).not.toContain('wells.leave');
  });

  it.each(['wells.edit', 'wells.save'])(
    'is not done while %s is refused, unless it is insisted on',
    async (name) => {
      const { place } = placeWith({ [name]: new Error('The disk is full.') });
      await place.open('w');
      type(place, '31');
      expect(await place.leave()).toBe(false);
      expect(place.folder?.saving.state).toMatchObject({ sentence: 'The disk is full.' });
      expect(await place.leave(true)).toBe(true);
    },
  );
});

describe('opening a well folder', () => {
  it('lays down what was typed since it was opened last, with undo back to there', async () => {
    const typed = { record, typed: { 'bore.depthReached': '3o' } };
    const moves = [moveTo(working.base, typed)];
    const { place } = placeWith({ 'wells.open': { ...stored, working: { ...working, moves } } });
    await place.open('w');
    expect(place.folder?.desk).toEqual(typed);
    place.folder?.undo();
    expect(place.folder?.desk).toEqual(working.base);
    expect(place.folder?.canUndo).toBe(false);
  });

  it('takes in what another window types, as a step, and leaves the text under the hand', async () => {
    const theirs = { record: { ...record, notes: 'theirs' }, typed: {} };
    const state = { edit: 1, revision: 1, unrevised: true, changedAt };
    const { place, tell } = placeWith({ 'wells.desk': { ...state, desk: theirs } });
    await place.open('w');
    const { turn } = place.folder!;
    tell({ name: 'well.changed', data: { id: 'w', ...state } });
    await expect.poll(() => place.folder?.desk).toEqual(theirs);
    expect(place.folder?.turn).toBe(turn);
    place.folder?.undo();
    expect(place.folder?.desk).toEqual(working.base);
  });

  it('puts the text under the hand anew where that changed, as when its row moved', async () => {
    const theirs = { record: { ...record, log: [{ from: 0, to: 2 }] }, typed: {} };
    const state = { edit: 1, revision: 1, unrevised: true, changedAt };
    const { place, tell } = placeWith({ 'wells.desk': { ...state, desk: theirs } });
    await place.open('w');
    const { turn } = place.folder!;
    place.folder!.writing = 'log[0].to';
    tell({ name: 'well.changed', data: { id: 'w', ...state } });
    await expect.poll(() => place.folder?.desk).toEqual(theirs);
    expect(place.folder?.turn).toBe(turn + 1);
  });
});

describe('the menu of the desktop program', () => {
  it('takes back and repeats a step of the open well', async () => {
    const { place, tell } = placeWith();
    await place.open('w');
    type(place, '31');
    tell({ name: 'page.undo', data: {} });
    expect(place.folder?.desk.record).toEqual(record);
    tell({ name: 'page.redo', data: {} });
    expect(place.folder?.desk.record.bore?.depthReached).toBe(31);
  });

  it('does nothing at the list, where no well is open', () => {
    const { place, tell } = placeWith();
    tell({ name: 'page.undo', data: {} });
    expect(place.folder).toBeUndefined();
  });
});

describe('a folder of an archive that can only be read', () => {
  it('changes nothing', async () => {
    const { place, asked } = placeWith({
      'archive.state': { name: 'A', wells: 1, readOnly: true },
    });
    await place.readArchive();
    await place.open('w');
    type(place, '31');
    expect(place.folder?.desk.record).toEqual(record);
    await place.leave();
    expect(asked).not.toContain('wells.edit');
  });
});

describe('exporting the sheet', () => {
  it('makes a revision first, since papers show revisions', async () => {
    const { place, asked } = placeWith();
    await place.open('w');
    type(place, '31');
    expect(
      (await exportPaper(place.host, place.folder!, { paper: 'A4', language: 'en', shape: {} })).ok,
    ).toBe(true);
    expect(asked.slice(-3)).toEqual(['wells.edit', 'wells.save', 'papers.asBuilt']);
  });

  it('makes the laying-out sheet where that is chosen', async () => {
    const { place, asked } = placeWith();
    await place.open('w');
    await exportPaper(place.host, place.folder!, { paper: 'layingOut', language: 'pt', shape: {} });
    expect(asked).toContain('papers.layingOut');
    expect(asked).not.toContain('papers.asBuilt');
  });

  it('makes the sheet for the committee in one language or in two', async () => {
    const { place, asked } = placeWith();
    await place.open('w');
    const wanted = { paper: 'committee', language: 'pt', shape: {} } as const;
    await exportPaper(place.host, place.folder!, wanted);
    await exportPaper(place.host, place.folder!, { ...wanted, second: 'fr' });
    expect(asked.filter((name) => name === 'papers.committee')).toHaveLength(2);
  });

  it('is refused with the reason when that is not saved', async () => {
    const { place, asked } = placeWith({ 'wells.save': new Error('The disk is full.') });
    await place.open('w');
    type(place, '31');
    const answer = await exportPaper(place.host, place.folder!, {
      paper: 'A4',
      language: 'en',
      shape: {},
    });
    expect(answer).toMatchObject({ ok: false, error: { sentence: 'The disk is full.' } });
    expect(asked).not.toContain('papers.asBuilt');
  });
});

describe('the guideline values of the user', () => {
  const words = { en: 'Ours', fr: 'Ours', pt: 'Ours' };
  const file = { id: 'ours', version: '1', name: words, basedOn: 'who2022' };
  const named = { ...record, identity: { guidelines: 'ours' } };

  it('hold for the open well as soon as another window brought them in', async () => {
    const sets: object[] = [];
    const { place, tell } = placeWith({
      'guidelines.list': { sets, unread: [] },
      'wells.open': {
        ...stored,
        record: named,
        working: { ...working, base: { record: named, typed: {} } },
      },
    });
    await place.open('w');
    expect(place.folder!.guidelines.id).toBe('who2022');
    sets.push({ file: { ...file, sources: {}, parameters: {} }, changedAt });
    tell({ name: 'guidelines.changed', data: {} });
    await expect.poll(() => place.folder!.guidelines.id).toBe('ours');
    expect(place.folder!.ownGuidelines.map(({ id }) => id)).toEqual(['ours']);
  });

  it('that are refused say why', async () => {
    const { place } = placeWith({ 'guidelines.put': new Error('The disk is full.') });
    expect(await place.guidelines.put(file)).toBe(false);
    expect(place.guidelines.refusal?.sentence).toBe('The disk is full.');
  });
});

describe('the practices of the user', () => {
  const words = { en: 'Ours', fr: 'Ours', pt: 'Ours' };
  const file = { id: 'ours', version: '1', name: words, scope: words, basedOn: 'machineRock' };
  const kept = { file: { ...file, sources: {}, figures: {} }, changedAt };
  const named = { ...record, identity: { practice: 'ours' } };

  it('judge the open well as soon as another window made one', async () => {
    const practices: object[] = [];
    const base = { record: named, typed: {} };
    const { place, tell } = placeWith({
      'practices.list': { practices, unread: [] },
      'wells.open': { ...stored, record: named, working: { ...working, base } },
    });
    await place.open('w');
    expect(place.folder!.practice.id).toBe('handDrilled');
    practices.push(kept);
    tell({ name: 'practices.changed', data: {} });
    await expect.poll(() => place.folder!.practice.id).toBe('ours');
  });

  it('that are refused say why, and stay as they were', async () => {
    const { place } = placeWith({ 'practices.put': new Error('The disk is full.') });
    expect(await place.practices.put(kept.file)).toBeUndefined();
    expect(place.practices.refusal?.sentence).toBe('The disk is full.');
  });
});
