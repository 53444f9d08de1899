// @vitest-environment jsdom
import { all, clear, field, focused, leave, one, openFolder } from '../mounted.ts';
import { press, said, settled, show, texts, type } from '../mounted.ts';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import EntryForm from '../../../renderer/editors/EntryForm.svelte';
import { choiceField, flagField, suggestField } from '../../../renderer/editors/fields/choice.ts';
import { dayField } from '../../../renderer/editors/fields/moment.ts';
import { amountField } from '../../../renderer/editors/fields/number.ts';
import { longField, textField } from '../../../renderer/editors/fields/text.ts';
import type { Folder } from '../../../renderer/state/folder.svelte.ts';

const words = { mudRotary: 'mud rotary', auger: 'auger' };
const fields = [
  textField('rig', 'Rig'),
  choiceField('method', 'Method', words),
  suggestField('fluid', 'Fluid', { water: 'water', mud: 'mud' }),
  amountField('fluidLost', 'Fluid lost', 'L'),
  flagField('kept', 'Kept'),
  longField('remark', 'Remark'),
  dayField('startedOn', 'Begun on'),
];
let folder: Folder;
const bore = () => folder.desk.record.bore as Readonly<Record<string, unknown>> | undefined;
const optionsOf = (path: string) =>
  [...(field(path) as unknown as HTMLSelectElement).options].map(({ value }) => value);

async function lay(record: object, readOnly = false) {
  await clear();
  folder = openFolder({ bore: record as never }, readOnly);
  show(EntryForm, { folder, base: 'bore', fields });
}
beforeEach(() => lay({ method: 'auger', fluidLost: 1200 }));
afterEach(async () => {
  await clear();
  folder.saving.stop();
});

describe('a form', () => {
  it('has a label with its unit for each field', () => {
    expect(texts('label')).toContain('Fluid lost (L)');
    for (const label of all('label') as HTMLLabelElement[])
      expect(label.control?.dataset['field']).toMatch(/^bore\./);
  });

  it('goes on with Enter and back with Shift, but leaves lines to a text of several', async () => {
    field('bore.rig').focus();
    await press('Enter');
    expect(focused()).toBe('bore.method');
    await press('Enter', { shiftKey: true });
    expect(focused()).toBe('bore.rig');
    field('bore.remark').focus();
    expect(await press('Enter')).toBe(true);
    expect(focused()).toBe('bore.remark');
  });

  it('says at the field what cannot be read, once the hand has left it', async () => {
    await type('bore.startedOn', '9.3.2025');
    expect(texts('.said')).toEqual([]);
    await leave();
    const at = field('bore.startedOn').getAttribute('aria-describedby');
    expect(said(one(`[id="${at}"]`))).toMatch(/^“9.3.2025” is not a day\./);
    expect(bore()).toEqual({ method: 'auger', fluidLost: 1200 });
  });

  it('takes a field out of the record when it is emptied', async () => {
    await type('bore.fluidLost', '');
    expect(bore()).toEqual({ method: 'auger' });
  });

  it('makes one step for undo of what was typed in one go', async () => {
    await type('bore.rig', 'A');
    await type('bore.rig', 'A 2');
    folder.undo();
    await settled();
    expect(field('bore.rig').value).toBe('');
    expect(folder.canUndo).toBe(false);
  });

  it('makes another step when the hand came back', async () => {
    await type('bore.rig', 'A');
    await leave();
    await type('bore.rig', 'A 2');
    folder.undo();
    expect(bore()?.['rig']).toBe('A');
  });

  it('lets nothing be chosen or typed where the archive can only be read', async () => {
    await lay({ method: 'auger' }, true);
    expect(field('bore.method').disabled).toBe(true);
    expect(field('bore.rig').readOnly && field('bore.remark').readOnly).toBe(true);
  });
});

describe('a field', () => {
  it('of a short list offers its words and none, and shows the record’s', () => {
    expect(optionsOf('bore.method')).toEqual(['', 'mud rotary', 'auger']);
    expect(field('bore.method').value).toBe('auger');
  });

  it('of a short list keeps a word that is not in it, as the record has it', async () => {
    await lay({ method: 'percussion' });
    expect(field('bore.method').value).toBe('percussion');
    expect(optionsOf('bore.method')).toHaveLength(4);
  });

  it('of a long list completes words as they are typed', () => {
    const list = one(`datalist[id="${field('bore.fluid').getAttribute('list')}"]`);
    expect([...list.querySelectorAll('option')].map(({ value }) => value)).toEqual([
      'water',
      'mud',
    ]);
  });

  it('of numbers asks for the keys of figures, others do not', () => {
    expect(field('bore.fluidLost').inputMode).toBe('decimal');
    expect(field('bore.rig').getAttribute('inputmode')).toBeNull();
  });

  it('of yes and no writes which, and nothing when it is not known again', async () => {
    await type('bore.kept', 'no');
    expect(bore()?.['kept']).toBe(false);
    await type('bore.kept', '');
    expect(bore()).not.toHaveProperty('kept');
  });
});
