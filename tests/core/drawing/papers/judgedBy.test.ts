import { describe, expect, it } from 'vitest';
import type { Finding } from '../../../../core/base/finding.ts';
import { languages, type Language } from '../../../../core/base/language.ts';
import type { Item } from '../../../../core/drawing/items.ts';
import { drawAsBuilt } from '../../../../core/drawing/papers/asBuilt.ts';
import { resolveWell } from '../../../../core/model/resolveWell.ts';
import { practiceOf } from '../../../../core/practice/choosePractice.ts';
import { catalogueOf } from '../../../../core/practice/catalogue.ts';
import type { WellRecord } from '../../../../core/record/schema.ts';
import { fonts } from '../../../sheets/drawn.ts';

const textsOf = (items: readonly Item[]): string[] =>
  items.flatMap((item) =>
    item.kind === 'text' ? [item.text] : 'items' in item ? textsOf(item.items) : [],
  );

const sound: WellRecord = {
  schemaVersion: 1,
  bore: { sections: [{ from: 0, to: 20, diameter: 200 }], depthReached: 20 },
};

/** Any finding that the catalogue knows serves; rules make theirs alike. */
const finding: Finding = {
  code: 'bore.noDiameter',
  severity: 'warning',
  path: 'bore',
  values: {},
  fromM: 3,
  toM: 4,
};

function said(record: WellRecord, findings: readonly Finding[], language: Language = 'en') {
  const { pages } = drawAsBuilt(record, resolveWell(record), {
    paper: 'A4',
    language,
    fonts: fonts.metrics,
    madeAt: '2026-01-31T12:00:00Z',
    paperId: '0'.repeat(32),
    judgement: { practice: practiceOf(record), findings },
  });
  return pages.map(({ items }) => textsOf(items));
}

describe('a sheet of a well that was judged', () => {
  it.each(languages)('names the practice and its version once in %s', (language) => {
    const { name, version } = practiceOf(sound);
    for (const findings of [[], [finding]]) {
      const lines = said(sound, findings, language).flat();
      const naming = lines.filter((line) => line.endsWith(`${name[language]} ${version}`));
      expect(naming).toHaveLength(1);
    }
  });

  it('prints what rules found beside what the model found, but no notes', () => {
    const { sentence } = catalogueOf('en').findings['bore.noDiameter'];
    const start = `• ${sentence.split('{')[0]!.slice(0, 12)}`;
    const count = (findings: readonly Finding[]) =>
      said(sound, findings)
        .flat()
        .filter((line) => line.startsWith(start)).length;
    expect(count([finding]) - count([])).toBe(1);
    expect(count([{ ...finding, severity: 'note' }]) - count([])).toBe(0);
  });
});
