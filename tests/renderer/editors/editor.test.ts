// @vitest-environment jsdom
import { all, button, clear, click, field, focused, one, openFolder } from '../mounted.ts';
import { press, settled, show, texts } from '../mounted.ts';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { chapterIds } from '../../../renderer/editors/chapter.ts';
import Editor from '../../../renderer/editors/Editor.svelte';
import Findings from '../../../renderer/editors/Findings.svelte';
import type { Folder } from '../../../renderer/state/folder.svelte.ts';

let folder: Folder;
const open = () => one('[role=tab][aria-selected=true]').id;
const tab = (id: string) => one<HTMLElement>(`#tab-${id}`);

beforeEach(() => {
  folder = openFolder({
    log: [
      { from: 0, to: 2, material: 'topsoil' },
      { from: 1.5, to: 5, material: 'clay' },
    ],
    strings: [{ name: 'A', components: [{ kind: 'plain', length: 3 }] }] as never,
  });
  show(Editor, { folder });
  show(Findings, { folder });
});
afterEach(async () => {
  await clear();
  folder.saving.stop();
});

describe('the chapters on the desk', () => {
  it('open with the ground, and each by its tab', async () => {
    expect(open()).toBe('tab-ground');
    for (const id of chapterIds) {
      await click(tab(id));
      expect(open()).toBe(`tab-${id}`);
      expect(all('#chapter [data-field]').length).toBeGreaterThan(0);
    }
  });

  it('are turned by arrows, round from the last to the first; one tab can be tabbed to', async () => {
    tab('handover').focus();
    await click(tab('handover'));
    await press('ArrowRight');
    expect(open()).toBe('tab-well');
    expect(document.activeElement?.id).toBe('tab-well');
    await press('ArrowLeft');
    expect(open()).toBe('tab-handover');
    expect(all('[role=tab]').filter(({ tabIndex }) => tabIndex === 0)).toEqual([tab('handover')]);
  });

  it('label what they show', async () => {
    await click(tab('site'));
    expect(one('[role=tabpanel]').getAttribute('aria-labelledby')).toBe('tab-site');
    expect(tab('site').getAttribute('aria-controls')).toBe(one('[role=tabpanel]').id);
  });

  it('are opened by what is chosen elsewhere', async () => {
    folder.selected = 'strings[0].components[0]';
    await settled();
    expect(open()).toBe('tab-completion');
    folder.selected = 'unknown[0]';
    await settled();
    expect(open()).toBe('tab-completion');
  });

  it('hold nothing chosen when they were turned by hand', async () => {
    folder.selected = 'log[0]';
    await click(tab('pump'));
    expect(folder.selected).toBeUndefined();
    expect(open()).toBe('tab-pump');
  });
});

describe('a field that is asked for', () => {
  it('takes the typing hand, in whatever chapter it stands', async () => {
    folder.goTo('site.village');
    await settled();
    expect([open(), focused()]).toEqual(['tab-site', 'site.village']);
  });

  it('is laid open where it stands in the rest of a row', async () => {
    folder.goTo('log[1].remarks');
    await settled();
    expect(focused()).toBe('log[1].remarks');
    expect(button('▾ More of row 2').getAttribute('aria-expanded')).toBe('true');
  });

  it('is the first of its row where the row is asked for', async () => {
    folder.goTo('log[1]');
    await settled();
    expect(focused()).toBe('log[1].from');
  });

  it('is the nearest round it where it has no field of its own', async () => {
    folder.goTo('log[1].nothing.of.it');
    await settled();
    expect(focused()).toBe('log[1].from');
  });
});

describe('the list of findings', () => {
  it('leads to the field of the one that was chosen', async () => {
    await click(tab('pump'));
    const paths = folder.findings.map(({ path }) => path);
    expect(paths).not.toEqual([]);
    await click(one<HTMLElement>('.finding'));
    await settled();
    expect(paths).toContain(folder.selected);
    expect(open()).not.toBe('tab-pump');
    expect(focused()).toContain(folder.selected!.split('.')[0]);
  });

  it('has the gravest first, and counts them', () => {
    const order = ['Wrong', 'Look again', 'Note'];
    const ranks = texts('.finding .severity').map((word) => order.indexOf(word));
    expect(ranks).toEqual(ranks.toSorted());
    const counts = [0, 1, 2].map((rank) => ranks.filter((other) => other === rank).length);
    expect(texts('.findings summary span')).toEqual([
      `${counts[0]} wrong, ${counts[1]} to look at, ${counts[2]} to know`,
    ]);
  });

  it('says what to do beside what is wrong', () => {
    const lacking = all('.finding').filter((each) => !each.querySelector('.todo')?.textContent);
    expect(lacking).toEqual([]);
  });

  it('grows shorter as soon as the entry is put right', async () => {
    const before = all('.finding').length;
    field('log[1].from').value = '2';
    field('log[1].from').dispatchEvent(new Event('input', { bubbles: true }));
    await settled();
    expect(all('.finding').length).toBeLessThan(before);
  });
});

describe('a long list of findings', () => {
  it('says why each matters, besides what to do', () => {
    expect(texts('.why p').length).toBe(folder.findings.length);
    expect(texts('.why p').filter((why) => why === '')).toEqual([]);
  });

  it('is narrowed down by how grave they are, and says how many are hidden', async () => {
    await clear();
    folder = openFolder({
      log: [0, 1, 2, 3, 4, 5].map((at) => ({ from: at * 2, to: at * 2 - 1 })),
    });
    show(Findings, { folder });
    const filter = (word: string) =>
      all('.filters button').find((one) => one.textContent.includes(word))!;
    const before = all('.finding').length;
    const errors = all('.finding .error').length;
    expect(errors).toBeGreaterThan(0);
    await click(filter('Wrong'));
    expect(filter('Wrong').getAttribute('aria-pressed')).toBe('false');
    expect(all('.finding')).toHaveLength(before - errors);
    expect(texts('.filters [role=status]')).toEqual([
      errors === 1 ? 'One more is hidden.' : `${errors} more are hidden.`,
    ]);
    await click(filter('Wrong'));
    expect(all('.finding')).toHaveLength(before);
  });

  it('is not narrowed down while it is short', async () => {
    await clear();
    folder = openFolder({ log: [{ from: 0, to: 2, material: 'clay' }] });
    show(Findings, { folder });
    expect(all('.filters')).toEqual([]);
  });
});

describe('the way through the chapters by keyboard', () => {
  const digit = (at: number) => press(String(at), { altKey: true, code: `Digit${at}` });

  it('leads from the last field of a form to the next block, and back', async () => {
    await click(tab('site'));
    field('site.agreedOn').focus();
    await press('Enter');
    expect(focused()).toBe('site.households');
    await press('Enter', { shiftKey: true });
    expect(focused()).toBe('site.country');
  });

  it('leads out of a table from a next row with nothing typed in it', async () => {
    field('log[2].to').focus();
    await press('Enter');
    expect(focused()).toBe('strikes[0].depth');
  });

  it('leads from the last block to the next chapter', async () => {
    field('bore.sections[0].to').focus();
    await press('Enter');
    expect([open(), focused()]).toEqual(['tab-completion', 'strings[0].name']);
    await press('Enter', { shiftKey: true });
    expect(open()).toBe('tab-ground');
  });

  it('leads on from anywhere in a block at once', async () => {
    field('log[0].from').focus();
    await press('ArrowDown', { ctrlKey: true });
    expect(focused()).toBe('strikes[0].depth');
    await press('ArrowUp', { ctrlKey: true });
    expect(focused()).toBe('log[0].from');
  });

  it('leads from the rest of a row to the next row', async () => {
    await click(tab('completion'));
    field('annulus[0].to').focus();
    await press('Enter', { ctrlKey: true });
    field('annulus[0].remark').focus();
    await press('Enter');
    expect(focused()).toBe('annulus[0].to');
  });

  it('opens a chapter by its number, the next and the one before', async () => {
    await digit(6);
    expect([open(), focused()]).toEqual(['tab-pump', 'pump.kind']);
    await press('PageDown', { altKey: true });
    expect([open(), focused()]).toEqual(['tab-handover', 'marks[0].role']);
    await press('PageDown', { altKey: true });
    expect(open()).toBe('tab-handover');
    await press('PageUp', { altKey: true });
    expect(open()).toBe('tab-pump');
    await digit(9);
    expect(open()).toBe('tab-pump');
  });

  it('stops at the button that makes the first of a kind, and only there', async () => {
    await click(tab('water'));
    field('development[0].method').focus();
    await press('Enter');
    expect(document.activeElement?.textContent.trim()).toBe('Add a step test');
  });
});

describe('a stack of strings', () => {
  beforeEach(() => click(tab('completion')));

  it('gets another at its end, and the hand is in its first field', async () => {
    await click(button('Add a string'));
    await settled();
    expect(folder.desk.record.strings).toHaveLength(2);
    expect(focused()).toBe('strings[1].name');
  });

  it('loses the one that is deleted, with what was in it, until that is undone', async () => {
    await click(button('Delete String 1'));
    expect(folder.desk.record.strings ?? []).toEqual([]);
    folder.undo();
    await settled();
    expect(field('strings[0].name').value).toBe('A');
    expect(field('strings[0].components[0].length').value).toBe('3');
  });
});
