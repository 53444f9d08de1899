import { describe, expect, it } from 'vitest';
import { reason } from '../../../core/exchange/reasons/reason.ts';
import { fieldsOf, type TableKind } from '../../../core/exchange/tables/fields.ts';
import { readMapping } from '../../../core/exchange/tables/mapping.ts';
import { told } from '../../../core/exchange/tables/trouble.ts';
import type { OpenedImport } from '../../../core/contract/importsShape.ts';
import {
  mappingOf,
  matchesOf,
  unitOf,
  useOf,
  usesByKind,
  withUnit,
  withUse,
  type Match,
} from '../../../renderer/exchange/matching.ts';
import { troubleList } from '../../../renderer/exchange/saveText.ts';
import { choiceName, useName } from '../../../renderer/exchange/useNames.ts';
import { withWord, wordOf } from '../../../renderer/exchange/wordMatching.ts';

const detected = { headingLine: 2, decimal: ',', dateOrder: 'dmy', dateOrderOpen: true } as const;
const opened: OpenedImport = {
  tables: [{ file: 'a.xlsx', sheet: 'Log', detected, rows: [] }],
  remembered: [],
  records: [],
  refused: [],
};

const start = (): Match => matchesOf(opened, undefined)[0]!;
const using = (uses: Readonly<Record<string, string>>) =>
  Object.entries(uses).reduce((match, [column, use]) => withUse(match, column, use), start());

describe('the matching of a table', () => {
  it('becomes a mapping that is understood, as it was found out and chosen', () => {
    const match = using({ No: 'well', Top: 'log.from', Foot: 'log.to', Said: 'log.material' });
    const mapping = readMapping(mappingOf([withUnit(match, 'Top', 'ft')]));
    expect(mapping).toMatchObject({
      ok: true,
      value: {
        tables: [
          {
            ...{ kind: 'log', file: 'a.xlsx', sheet: 'Log', well: 'No' },
            ...{ headingLine: 2, decimal: ',', dateOrder: 'dmy' },
            fields: {
              from: [{ column: 'Top', unit: 'ft' }],
              to: [{ column: 'Foot', unit: 'm' }],
              material: [{ column: 'Said', understand: true }],
              qualifiers: [{ column: 'Said', understand: true }],
              words: [{ column: 'Said' }],
            },
          },
        ],
      },
    });
  });

  it('shows what each column is taken for, and comes back from its mapping as it was', () => {
    const match = using({ No: 'well', Level: 'levels.reading.casingTop', Day: 'levels.at' });
    expect(['No', 'Level', 'Day', 'Other'].map((column) => useOf(match, column))).toEqual([
      'well',
      'levels.reading.casingTop',
      'levels.at',
      '',
    ]);
    expect([unitOf(match, 'Level'), unitOf(match, 'Day')]).toEqual(['m', undefined]);
    expect(matchesOf(opened, mappingOf([match]))).toEqual([match]);
  });

  it('lets a column go with all that it was taken for, and its kind with the last one', () => {
    const match = using({ No: 'well', Level: 'levels.reading' });
    expect(withUse(match, 'Level', '').kinds).toEqual([]);
    expect(withUse(match, 'No', 'wells.identity.name')).toMatchObject({
      well: '',
      kinds: [{ kind: 'levels' }, { kind: 'wells' }],
    });
    expect(mappingOf([start()])).toBeUndefined();
  });

  it('may take several kinds from one table, of which a row says some', () => {
    const match = using({ No: 'well', Place: 'wells.site.village', Level: 'levels.reading' });
    expect(mappingOf([match])!.tables.map(({ kind, sparse }) => [kind, sparse])).toEqual([
      ['wells', undefined],
      ['levels', true],
    ]);
  });

  it('has a name for each use of a column', () => {
    const uses = usesByKind.flatMap((one) => one.uses);
    expect(uses.length).toBeGreaterThan(Object.keys(fieldsOf.wells).length);
    // A name that is the field's own key would stand in English in every language.
    expect(uses.filter((use) => useName(use) === use.split('.').at(-1))).toEqual([]);
  });
});

describe('the list of what does not come', () => {
  it('holds no cell that a spreadsheet would run', () => {
    const refusal = { code: 'untold', sentence: 'Say "no".' };
    const says = told(reason('fileRefused', { says: { refusal } }));
    const trouble = { file: 'a.csv', line: 2, column: '=1+1', ...says, kept: false };
    expect(troubleList([trouble], 'fr')).toBe('\uFEFF"a.csv","2","\'=1+1","Say ""no""."\r\n');
  });
});

describe('words of a column', () => {
  const unknown = {
    ...({ file: 'a.xlsx', sheet: 'Log', kind: 'wells' } as const),
    ...{ field: 'bore.method', column: 'Rig' },
    ...{ choices: ['cableTool'], needed: false, words: [{ text: 'Spudder', rows: 2 }] },
  } as const;
  const chosen = [withUse(start(), 'Rig', 'wells.bore.method')];

  it('are kept in the mapping, and taken out again', () => {
    const named = withWord(chosen, unknown, { text: 'Spudder', word: 'cableTool' });
    expect(wordOf(named, unknown, 'Spudder')).toBe('cableTool');
    expect(mappingOf(named)!.tables[0]!.fields['bore.method']).toEqual([
      { column: 'Rig', words: { Spudder: 'cableTool' } },
    ]);
    const silent = withWord(named, unknown, { text: 'Spudder', word: null });
    expect(wordOf(silent, unknown, 'Spudder')).toBeNull();
    const open = withWord(silent, unknown, { text: 'Spudder', word: undefined });
    expect(wordOf(open, unknown, 'Spudder')).toBeUndefined();
  });

  it('are chosen from words that have a name of the interface', () => {
    for (const [kind, fields] of Object.entries(fieldsOf))
      for (const [name, { type, words = [] }] of Object.entries(fields))
        if (type === 'word')
          for (const word of words) {
            const said = choiceName(kind as TableKind, name, word);
            expect(said, `${kind} ${name} ${word}`).not.toMatch(/^[a-z]+[A-Z]/);
          }
  });
});

it('a mapping that says which words are empty keeps them', () => {
  const mapping = readMapping({
    absent: ['?'],
    tables: [
      {
        kind: 'wells',
        file: 'a.xlsx',
        sheet: 'Log',
        well: 'W',
        fields: { notes: { column: 'N' } },
      },
    ],
  });
  const matches = matchesOf(opened, mapping.ok ? mapping.value : undefined);
  expect(mappingOf(matches)!.tables[0]!.absent).toEqual(['?']);
});
