import { describe, expect, it } from 'vitest';
import { deepFreeze } from '../../../core/record/freeze.ts';
import { settingFields } from '../../../renderer/editors/chapters/setting.ts';
import { depthField } from '../../../renderer/editors/fields/number.ts';
import { enter, shown, typedWithin, type Desk } from '../../../renderer/state/desk.ts';

const to = depthField('to', 'To', { required: true });
const reached = depthField('depthReached', 'Depth reached');
const desk: Desk = deepFreeze({
  record: {
    schemaVersion: 1,
    log: [{ from: 0, to: 2 }],
    bore: { depthReached: 30 },
    strings: [{ components: [], set: { by: 'bottom', depth: 28 } }],
  },
  typed: {},
});

describe('typing into a field', () => {
  it('writes what can be read into the record', () => {
    expect(enter(desk, 'log[0]', to, '3,5').record.log?.[0]?.to).toBe(3.5);
  });

  it('keeps what cannot be read as it was typed, and leaves the record alone', () => {
    const next = enter(desk, 'log[0]', to, '3x');
    expect(next.record).toBe(desk.record);
    expect(shown(next, 'log[0]', to)).toBe('3x');
  });

  it('forgets the unreadable text once a good one is typed', () => {
    const next = enter(enter(desk, 'log[0]', to, '3x'), 'log[0]', to, '3');
    expect(next.typed).toEqual({});
    expect(shown(next, 'log[0]', to)).toBe('3');
  });

  it('takes a field that was emptied out of the record', () => {
    const next = enter(desk, 'bore', reached, ' ');
    expect(next.record.bore).toEqual({});
  });

  it('does not empty a field that a row must have', () => {
    const next = enter(desk, 'log[0]', to, '');
    expect(next.record).toBe(desk.record);
    expect(shown(next, 'log[0]', to)).toBe('');
  });

  it('makes no empty chapter when an empty field is left empty', () => {
    expect(enter(desk, 'pump', depthField('intake', 'Intake'), '').record).toBe(desk.record);
  });
});

describe('a string set by its foot or by its top', () => {
  const [bottom, stickUp] = settingFields();
  const base = 'strings[0]';

  it('shows only the one that was measured', () => {
    expect(shown(desk, base, bottom!)).toBe('28');
    expect(shown(desk, base, stickUp!)).toBe('');
  });

  it('changes over when the other is written', () => {
    const next = enter(desk, base, stickUp!, '0.45');
    expect(next.record.strings?.[0]?.set).toEqual({ by: 'stickUp', height: 0.45 });
    expect(shown(next, base, bottom!)).toBe('');
  });

  it('is kept when a bad text in the other field is wiped away again', () => {
    const next = enter(enter(desk, base, stickUp!, 'x'), base, stickUp!, '');
    expect(next.record.strings?.[0]?.set).toEqual({ by: 'bottom', depth: 28 });
  });
});

describe('what is typed within a row', () => {
  const typed = { 'log[1].to': '4 fathoms', 'log[11].to': '9', 'bore.rig': '' };

  it('is told apart from what is typed in a row whose number begins alike', () => {
    expect(typedWithin({ ...desk, typed }, 'log[1]')).toBe('[["log[1].to","4 fathoms"]]');
    expect(typedWithin({ ...desk, typed }, 'log[2]')).toBe('');
  });

  it('changes with each letter in the row, and with none in another', () => {
    const before = typedWithin({ ...desk, typed }, 'log[1]');
    const elsewhere = { ...typed, 'log[11].to': '95' };
    expect(typedWithin({ ...desk, typed: elsewhere }, 'log[1]')).toBe(before);
    const here = { ...typed, 'log[1].to': '4 fathom' };
    expect(typedWithin({ ...desk, typed: here }, 'log[1]')).not.toBe(before);
  });
});
