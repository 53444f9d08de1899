import { describe, expect, it } from 'vitest';
import type { WellRow } from '../../../core/contract/calls.ts';
import type { PageHost } from '../../../core/contract/host.ts';
import { depthField } from '../../../renderer/editors/fields/number.ts';
import { enter } from '../../../renderer/state/desk.ts';
import { exportAsBuilt } from '../../../renderer/state/exportPaper.ts';
import { Place } from '../../../renderer/state/place.svelte.ts';

const record = { schemaVersion: 1 as const, bore: { depthReached: 30 } };
const stored = { id: 'w', revision: 1, changedAt: '2025-03-09T07:05:00Z', record };
const good: Record<string, unknown> = {
  'archive.state': { name: 'A', wells: 1, readOnly: false },
  'wells.list': [],
  'wells.open': stored,
  'wells.save': { revision: 2, changedAt: '2025-03-09T07:06:00Z', troubles: [] },
  'papers.asBuilt': { fileName: 'w.pdf', pdf: '', findings: [] },
};

/** A host that answers as told, and remembers what it was asked. */
function placeWith(answers: Record<string, unknown> = {}) {
  const asked: string[] = [];
  const host = {
    async send(name: string) {
      asked.push(name);
      const value = { ...good, ...answers }[name];
      return value instanceof Error
        ? { ok: false, error: { code: 'diskFull', sentence: value.message } }
        : { ok: true, value: await value };
    },
    onEvent: () => () => undefined,
  };
  return { place: new Place(host as unknown as PageHost), asked };
}

const reached = depthField('depthReached', 'Depth reached');
const type = (place: Place, text: string) =>
  place.folder!.edit((desk) => enter(desk, 'bore', reached, text));

describe('leaving a well folder', () => {
  it('saves what is not saved yet', async () => {
    const { place, asked } = placeWith();
    await place.open('w');
    type(place, '31');
    expect(await place.leave()).toBe(true);
    expect(asked).toContain('wells.save');
    expect(place.folder).toBeUndefined();
  });

  it('is not done while saving is refused, unless it is insisted on', async () => {
    const { place } = placeWith({ 'wells.save': new Error('The disk is full.') });
    await place.open('w');
    type(place, '31');
    expect(await place.leave()).toBe(false);
    expect(place.folder?.saving.state).toMatchObject({ sentence: 'The disk is full.' });
    expect(await place.leave(true)).toBe(true);
  });

  it('keeps what could not be read for when it is opened again', async () => {
    const { place } = placeWith();
    await place.open('w');
    type(place, '3o');
    await place.leave();
    await place.open('w');
    expect(place.folder?.desk.typed).toEqual({ 'bore.depthReached': '3o' });
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
    expect(asked).not.toContain('wells.save');
  });
});

describe('the archive’s list', () => {
  it('shows the answer to the last search, whichever comes last', async () => {
    const row = (id: string) => [{ id }] as unknown as WellRow[];
    const answers: ((rows: WellRow[]) => void)[] = [];
    const first = new Promise<WellRow[]>((answer) => void answers.push(answer));
    const { place } = placeWith({ 'wells.list': first });
    const asked = place.list();
    const later = placeWith({ 'wells.list': row('b') });
    Object.assign(place.host, { send: later.place.host.send });
    await place.list();
    answers[0]?.(row('a'));
    await asked;
    expect(place.rows).toEqual([{ id: 'b' }]);
  });
});

describe('exporting the sheet', () => {
  it('saves first, since papers are made from the archive', async () => {
    const { place, asked } = placeWith();
    await place.open('w');
    type(place, '31');
    expect((await exportAsBuilt(place.host, place.folder!, 'A4')).ok).toBe(true);
    expect(asked.slice(-2)).toEqual(['wells.save', 'papers.asBuilt']);
  });

  it('is refused with the reason when that is not saved', async () => {
    const { place, asked } = placeWith({ 'wells.save': new Error('The disk is full.') });
    await place.open('w');
    type(place, '31');
    const answer = await exportAsBuilt(place.host, place.folder!, 'A4');
    expect(answer).toMatchObject({ ok: false, error: { sentence: 'The disk is full.' } });
    expect(asked).not.toContain('papers.asBuilt');
  });
});
