// @vitest-environment jsdom
import { all, clear, field, focused, leave, one, openFolder } from '../mounted.ts';
import { press, said, settled, show, texts, type } from '../mounted.ts';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import EntryForm from '../../../renderer/editors/EntryForm.svelte';
import { choiceField, flagField } from '../../../renderer/editors/fields/choice.ts';
import { dayField } from '../../../renderer/editors/fields/moment.ts';
import { amountField } from '../../../renderer/editors/fields/number.ts';
import { longField, textField } from '../../../renderer/editors/fields/text.ts';
import type { Folder } from '../../../renderer/state/folder.svelte.ts';

const words = { mudRotary: 'mud rotary', auger: 'auger' };
const fields = [
  textField('rig', 'Rig'),
  choiceField('method', 'Method', words),
  choiceField('fluid', 'Fluid', { water: 'water', mud: 'mud' }, {}, { mud: 'x' }),
  amountField('fluidLost', 'Fluid lost', 'L'),
  flagField('kept', 'Kept'),
  longField('remark', 'Remark'),
  dayField('startedOn', 'Begun on'),
];
let folder: Folder;
const bore = () => folder.desk.record.bore as Readonly<Record<string, unknown>> | undefined;

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
    await type('bore.startedOn', '39.3.2025');
    expect(texts('.said')).toEqual([]);
    await leave();
    const at = field('bore.startedOn').getAttribute('aria-describedby');
    expect(said(one(`[id="${at}"]`))).toMatch(/^“39.3.2025” is not a day\./);
    expect(field('bore.startedOn').getAttribute('aria-invalid')).toBe('true');
    expect(bore()).toEqual({ method: 'auger', fluidLost: 1200 });
  });

  it('leaves Enter at its last field to lead further', async () => {
    field('bore.startedOn').focus();
    expect(await press('Enter')).toBe(true);
    expect(focused()).toBe('bore.startedOn');
  });

  it('takes a measure in another unit, and tells on hover how it was typed', async () => {
    await type('bore.fluidLost', '1.2 m³');
    await leave();
    expect(bore()?.['fluidLost']).toBe(1200);
    expect(field('bore.fluidLost').value).toBe('1200');
    expect(field('bore.fluidLost').title).toBe('Typed as 1.2 m³');
    await type('bore.fluidLost', '900');
    await leave();
    expect(field('bore.fluidLost').title).toBe('');
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
    for (const name of ['method', 'rig', 'remark'])
      expect(field(`bore.${name}`).readOnly).toBe(true);
    field('bore.method').focus();
    await press('ArrowDown');
    expect(all('[role=option]')).toEqual([]);
  });
});

describe('a field', () => {
  it('of words keeps a word that is not in the list, as the record has it', async () => {
    await lay({ method: 'percussion' });
    expect(field('bore.method').value).toBe('percussion');
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
