import { describe, expect, it } from 'vitest';
import { resolveWell } from '../../../../core/model/resolveWell.ts';
import { recutForScreen } from '../../../../core/model/screen.ts';
import { deepFreeze } from '../../../../core/record/freeze.ts';
import type { WellRecord } from '../../../../core/record/schema.ts';
import { putScreen } from '../../../../renderer/state/hands/putScreen.ts';

const record: WellRecord = deepFreeze({
  schemaVersion: 1,
  strings: [
    {
      components: [
        { kind: 'sump', length: 1 },
        { kind: 'plain', length: 3, count: 3 },
        { kind: 'plain', length: 2 },
      ],
      set: { by: 'bottom', depth: 12 },
    },
  ],
});

function put(typed: Record<string, string>) {
  const made = recutForScreen(record.strings![0]!, resolveWell(record).strings[0]!, 9, 10);
  if (!made.ok) throw new Error(made.error.why);
  return putScreen({ record, typed }, 0, made.value);
}

describe('a screen put into a tally', () => {
  it('leaves the string where it stands and as long as it was', () => {
    const { record: after } = put({});
    expect(after.strings![0]!.set).toEqual({ by: 'bottom', depth: 12 });
    expect(resolveWell(after).strings[0]!.tallyM).toBe(12);
    expect(after.strings![0]!.components.map(({ kind }) => kind)).toEqual([
      'sump',
      'plain',
      'screen',
      'plain',
      'plain',
      'plain',
    ]);
  });

  it('carries what was typed and not read yet to where its line went', () => {
    const { typed } = put({
      'strings[0].components[0].wall': '5x',
      'strings[0].components[2].wall': '6x',
      'strings[0].components[3].kind': 'plain',
      'log[0].to': '3x',
    });
    expect(typed).toEqual({
      'strings[0].components[0].wall': '5x',
      'strings[0].components[5].wall': '6x',
      'strings[0].components[6].kind': 'plain',
      'log[0].to': '3x',
    });
  });
});
