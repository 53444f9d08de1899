import { describe, expect, it } from 'vitest';
import { reason } from '../../../core/exchange/reasons/reason.ts';
import { fieldsOf } from '../../../core/exchange/tables/fields.ts';
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
import { useName } from '../../../renderer/exchange/useNames.ts';

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
