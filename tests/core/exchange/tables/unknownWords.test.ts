import { expect, test } from 'vitest';
import { readMapping } from '../../../../core/exchange/tables/mapping.ts';
import { readSources } from '../../../../core/exchange/tables/readTables.ts';
import { textSource } from '../../../../core/exchange/tables/source.ts';
import { unknownWords } from '../../../../core/exchange/tables/unknownWords.ts';

const text =
  'No,Method,State\nA,Spudder,drilled\nB,Spudder,Live\nC,Auger,\nD,cableTool,NA\nE,Spudder,Sec\n';
const tables = [textSource('a.csv', text)];

function mappingWith(method: object, state: object = {}) {
  const fields = {
    'bore.method': { column: 'Method', ...method },
    'identity.state': { column: 'State', ...state },
  };
  const table = { kind: 'wells', file: 'a.csv', well: 'No', absent: ['NA'], fields };
  const mapping = readMapping({ tables: [table] });
  if (!mapping.ok) throw new Error(mapping.error.sentence);
  return mapping.value;
}

test('words that neither the mapping nor the record knows are told, the commonest first', () => {
  const unknown = unknownWords(tables, mappingWith({}, { words: { sec: 'dry' } }));
  expect(unknown).toMatchObject([
    {
      ...{ file: 'a.csv', kind: 'wells', field: 'identity.state', column: 'State', needed: false },
      words: [{ text: 'Live', rows: 1 }],
    },
    {
      ...{ field: 'bore.method', fallback: 'other' },
      words: [
        { text: 'Spudder', rows: 3 },
        { text: 'Auger', rows: 1 },
      ],
    },
  ]);
  expect(unknown[1]!.choices).toContain('cableTool');
});

test('a word that was chosen for is known, also where it says nothing', () => {
  const words = { Spudder: 'cableTool', Auger: null };
  const mapping = mappingWith({ words }, { words: { live: 'completed', Sec: null } });
  expect(unknownWords(tables, mapping)).toEqual([]);
  const { records, troubles } = readSources(tables, mapping);
  expect(troubles).toEqual([]);
  expect(records.map(({ bore }) => bore?.method)).toEqual([
    ...['cableTool', 'cableTool', undefined, 'cableTool', 'cableTool'],
  ]);
  expect(records.map(({ identity }) => identity?.state)).toEqual([
    ...['drilled', 'completed', undefined, undefined, undefined],
  ]);
});
