// @vitest-environment jsdom
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { all, button, clear, click, one, press, said, settled, show, texts } from '../mounted.ts';
import type { PageHost } from '../../../core/contract/host.ts';
import { admitPractice } from '../../../core/practice/admitPractice.ts';
import { figures } from '../../../core/practice/figures.ts';
import { readPractice } from '../../../core/practice/readPractice.ts';
import type { PracticeFile } from '../../../core/practice/practice.ts';
import PracticesPage from '../../../renderer/practices/PracticesPage.svelte';
import { Guidelines } from '../../../renderer/state/guidelines.svelte.ts';
import { Practices } from '../../../renderer/state/practices.svelte.ts';

// The test's window knows no modal dialogs.
HTMLDialogElement.prototype.showModal = function () {
  this.open = true;
};
HTMLDialogElement.prototype.close = function () {
  this.open = false;
  this.dispatchEvent(new Event('close'));
};

const ours = {
  id: 'ours',
  version: '1',
  name: 'Ours',
  scope: 'Our wells',
  basedOn: 'handDrilled',
  sources: { annex: { title: 'Annex 3', mark: 'read' } },
  figures: { latrineM: { value: 50, source: 'annex' } },
};

let kept: Map<string, PracticeFile>;
let practices: Practices;
let closed: number;

/** Answers as the service does, from what is kept here. */
const host = {
  async send(name: string, args: { practice?: unknown; id?: string }) {
    if (name === 'guidelines.list') return { ok: true, value: { sets: [], unread: [] } };
    if (name === 'practices.remove') kept.delete(args.id!);
    if (name === 'practices.put') {
      const read = readPractice(args.practice);
      const admitted = read.ok ? admitPractice(read.value, [...kept.values()]) : read;
      if (!read.ok || !admitted.ok) return admitted;
      kept.set(read.value.id, read.value);
      return { ok: true, value: { file: read.value, changedAt: '' } };
    }
    const list = [...kept.values()].map((file) => ({ file, changedAt: '' }));
    return { ok: true, value: { practices: list, unread: [] } };
  },
} as unknown as PageHost;

async function open(readOnly = false, first?: string) {
  await practices.read();
  const newId = () => 'new-1';
  const guidelines = new Guidelines(host);
  const onclosed = () => (closed += 1);
  show(PracticesPage, { practices, guidelines, readOnly, first, newId, onclosed });
  await settled();
}

beforeEach(() => {
  kept = new Map();
  closed = 0;
  practices = new Practices(host);
});
afterEach(clear);

async function write(selector: string, text: string) {
  one(selector).value = text;
  for (const kind of ['input', 'change'])
    one(selector).dispatchEvent(new Event(kind, { bubbles: true }));
  await settled();
}

const status = () => said(one('footer [role=status]'));

describe('the page of practices', () => {
  it('shows every figure of a practice with unit, source and who set it', async () => {
    await open(false, 'machineRock');
    const rows = all('tbody tr').filter((row) => row.children.length === 5);
    expect(rows).toHaveLength(Object.keys(figures).length);
    const cells = (name: string) =>
      [...rows.find((row) => said(row).startsWith(name))!.children].map((cell) => said(cell));
    expect(cells('sanitary seal reaches down to')).toEqual([
      'sanitary seal reaches down to, at least',
      '6',
      'm',
      'Well codes of several states, surface seal of about 6 m (from memory)',
      'General: machine-drilled wells in rock',
    ]);
    expect(cells('distance from a latrine').at(-1)).toBe(
      'General: small-diameter hand-drilled wells',
    );
    expect(all('[data-figure]')).toEqual([]);
  });

  it('makes a practice of the user based on the one that is shown', async () => {
    await open(false, 'machineRock');
    await click(button('New, based on this one'));
    await write('[data-about=name]', 'Our programme');
    await write('[data-figure=latrineM]', '50');
    expect(texts('td .said')).toEqual(['Say where this figure comes from.']);
    await click(button('Save'));
    expect(status()).toContain('lacks a number or a source');
    await write('[data-source=latrineM]', 'Annex 3');
    await click(button('Save'));
    expect(status()).toContain('“Our programme” is kept in the archive.');
    const held = admitPractice(kept.get('new-1')!, []);
    expect(held).toMatchObject({
      ok: true,
      value: {
        basedOn: ['machineRock', 'handDrilled'],
        name: { en: 'Our programme', fr: 'Our programme' },
        figures: { latrineM: { value: 50, source: { title: { en: 'Annex 3' }, mark: 'read' } } },
      },
    });
  });

  it('takes a figure back, switches rules off, and sets prices', async () => {
    kept.set('ours', (readPractice(ours) as { value: PracticeFile }).value);
    await open(false, 'ours');
    expect(one('[data-figure=latrineM]').value).toBe('50');
    await click(button('Take back'));
    expect(one('[data-figure=latrineM]').value).toBe('30');
    const rule = one('[data-rule]');
    await click(rule);
    await write('[data-price=cementSack]', '5200');
    await write('[data-currency]', 'XOF');
    await click(button('Save'));
    expect(kept.get('ours')).toMatchObject({
      sources: {},
      figures: {},
      without: [rule.dataset['rule']],
      currency: 'XOF',
      prices: { cementSack: { each: 5200, per: 'sack of cement' } },
    });
  });

  it('is not left while something in it is neither saved nor given up', async () => {
    kept.set('ours', (readPractice(ours) as { value: PracticeFile }).value);
    await open(false, 'ours');
    await write('[data-figure=latrineM]', 'far');
    expect(one('[data-figure=latrineM]').getAttribute('aria-invalid')).toBe('true');
    await click(button('Close'));
    expect([closed, status()]).toEqual([0, 'Save or discard the changes to this practice first.']);
    await click(button('Discard changes'));
    expect(one('[data-figure=latrineM]').value).toBe('50');
    await click(button('Close'));
    expect(closed).toBe(1);
  });

  it('asks before it deletes one', async () => {
    kept.set('ours', (readPractice(ours) as { value: PracticeFile }).value);
    await open(false, 'ours');
    await click(button('Delete'));
    expect(status()).toContain('Delete “Ours”?');
    await click(button('Keep it'));
    await click(button('Delete'));
    await click(button('Delete it'));
    expect([kept.size, status()]).toEqual([0, '“Ours” was deleted.']);
  });

  it('takes one from a file, and asks before it replaces one', async () => {
    await open();
    const give = async (practice: object) => {
      const files = [{ text: async () => JSON.stringify(practice) }];
      Object.defineProperty(one('[type=file]'), 'files', { value: files, configurable: true });
      one('[type=file]').dispatchEvent(new Event('change', { bubbles: true }));
      await settled();
    };
    await give({ ...ours, figures: { latrin: {} } });
    expect(said(one('footer [role=alert]'))).toContain('figures.latrin: there is no such figure');
    await give(ours);
    await expect.poll(status).toBe('“Ours” was taken from the file.');
    await give({ ...ours, version: '2' });
    await expect.poll(status).toContain('is here already');
    await click(button('Replace it'));
    await expect.poll(() => kept.get('ours')?.version).toBe('2');
  });

  it('keeps its keys from the page below, and saves with Ctrl+S', async () => {
    kept.set('ours', (readPractice(ours) as { value: PracticeFile }).value);
    await open(false, 'ours');
    const below: string[] = [];
    const hear = ({ key }: KeyboardEvent) => below.push(key);
    window.addEventListener('keydown', hear);
    await write('[data-about=version]', '2');
    one('[data-about=version]').focus();
    await press('z', { ctrlKey: true });
    await press('s', { ctrlKey: true });
    await settled();
    window.removeEventListener('keydown', hear);
    expect([below, kept.get('ours')?.version]).toEqual([[], '2']);
  });

  it('changes nothing in an archive that can only be read', async () => {
    kept.set('ours', (readPractice(ours) as { value: PracticeFile }).value);
    await open(true, 'ours');
    expect(all('[data-figure]')).toEqual([]);
    expect(button('New, based on this one').disabled).toBe(true);
    expect(button('Delete').disabled).toBe(true);
  });
});
