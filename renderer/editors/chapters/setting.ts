import type { Setting } from '../../../core/record/strings.ts';
import { fieldWords as f } from '../../parts/words.ts';
import type { Reading } from '../../state/field.ts';
import type { EntryField } from '../fields/entryField.ts';
import { depthField, writeNumber } from '../fields/number.ts';

function wrapped(reading: Reading, wrap: (value: number) => Setting): Reading {
  if (!reading.ok || reading.value === undefined) return reading;
  return { ok: true, value: wrap(reading.value as number) };
}

const bottom = (): EntryField => ({
  ...depthField('set.depth', f.setBottom, { at: 'set' }),
  read: (text) => wrapped(depthField('', '').read(text), (depth) => ({ by: 'bottom', depth })),
  write: (value) => {
    const set = value as Setting;
    return set.by === 'bottom' ? writeNumber(set.depth) : '';
  },
});

const stickUp = (): EntryField => ({
  ...depthField('set.height', f.setStickUp, { at: 'set' }),
  read: (text) => wrapped(depthField('', '').read(text), (height) => ({ by: 'stickUp', height })),
  write: (value) => {
    const set = value as Setting;
    return set.by === 'stickUp' ? writeNumber(set.height) : '';
  },
});

/** A string is set by its foot or by its top; writing the one takes the other away. */
export const settingFields = (): readonly EntryField[] => [bottom(), stickUp()];
