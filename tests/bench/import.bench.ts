import { proposeMapping } from '../../core/exchange/proposal/propose.ts';
import { readJson } from '../../core/exchange/json/readJson.ts';
import { readRows } from '../../core/exchange/tables/rows.ts';
import { readSources } from '../../core/exchange/tables/readTables.ts';
import { textSource } from '../../core/exchange/tables/source.ts';
import type { Trial } from './trial.ts';

const wells = 200;
const ground = ['Topsoil', 'Sandy clay', 'Silty clay with gravel', 'Weathered granite', 'Granite'];
const rows = Array.from({ length: wells }, (_, well) =>
  ground.map((words, at) => `W${well},${at * 8},${at * 8 + 8},${words}`),
).flat();
const text = `Bore,From (m),To (m),Lithology\n${rows.join('\n')}\n`;
const source = textSource('log.csv', text);

function fromTable() {
  return readSources([source], proposeMapping([source])!);
}

const lines = fromTable().records.map((record) => JSON.stringify(record));
const file = { name: 'wells.json', bytes: new TextEncoder().encode(lines.join('\n')) };

export const trial: Trial = {
  title: 'Two hundred wells out of a table of a thousand rows',
  says: 'What matching columns, understanding descriptions and checking every field cost over cutting the text into cells; and the same wells from records.',
  rivals: [
    { name: 'cut into cells only', run: () => readRows(text, ',') },
    { name: 'from the table', run: fromTable },
    { name: 'from records, one a line', run: () => readJson(file) },
  ],
};
