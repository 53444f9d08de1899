import { afterEach, describe, expect, it } from 'vitest';
import { resolveWell } from '../../../../core/model/resolveWell.ts';
import type { WellRecord } from '../../../../core/record/schema.ts';
import { completionBlocks } from '../../../../renderer/editors/chapters/completion.ts';
import { speech } from '../../../../renderer/state/language.svelte.ts';

/** Three pipes of 3 m from half a metre above ground; depths worked out by hand. */
const record: WellRecord = {
  schemaVersion: 1,
  strings: [
    {
      set: { by: 'stickUp', height: 0.5 },
      components: [{ kind: 'plain', count: 3, length: 3, outside: 110 }],
    },
  ],
};
const model = resolveWell(record);

function stands(path: string): string | undefined {
  const strings = completionBlocks().find((block) => block.kind === 'stack');
  return strings!.table.computed?.text(model, path);
}

afterEach(() => {
  speech.language = 'en';
});

describe('where a line of the tally stands', () => {
  it('goes from the top of its highest pipe to the foot of its lowest', () => {
    expect(stands('strings[0].components[0]')).toBe('-0.50 – 8.50');
  });

  it('has the decimal mark of the language in use', () => {
    speech.language = 'fr';
    expect(stands('strings[0].components[0]')).toBe('-0,50 – 8,50');
  });

  it('is empty for a line of which nothing is known', () => {
    expect(stands('strings[0].components[1]')).toBe('');
  });
});
