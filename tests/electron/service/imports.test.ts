import { beforeEach, describe, expect, it } from 'vitest';
import type { Archive } from '../../../electron/archive/archive.ts';
import type { CallName, Gives, Takes } from '../../../core/contract/calls.ts';
import {
  shownWells,
  type OpenedImport,
  type TableMapping,
} from '../../../core/contract/importsShape.ts';
import type { Service } from '../../../electron/service/service.ts';
import { openFresh, valueOf } from '../archive/sample.ts';
import { freshService } from './sample.ts';

let archive: Archive;
let service: Service;

const ask = <N extends CallName>(name: N, args: Takes<N>) => service.call(name, args);

async function given<N extends CallName>(name: N, args: Takes<N>): Promise<Gives<N>> {
  return valueOf(await ask(name, args)) as Gives<N>;
}

const file = (text: string | Uint8Array, name = 'log.csv') => ({
  name,
  data: Buffer.from(text as string).toString('base64'),
});

const log = 'Bore;De (m);A (m);Lithologie\nW1;0;1,5;Argile\nW1;1,5;4;Gravier\nW2;0;3;Sable\n';
const open = (...files: { name: string; data: string }[]): Promise<OpenedImport> =>
  given('imports.open', { files: files.length > 0 ? files : [file(log)] });

const leave = { choices: { known: 'leave' } } as const;

beforeEach(() => {
  archive = openFresh();
  service = freshService(archive);
});

describe('an import', () => {
  it('shows tables with what was found out of them, and the matching of their columns', async () => {
    const opened = await open();
    expect(opened.tables).toMatchObject([
      {
        file: 'log.csv',
        detected: { delimiter: ';', decimal: ',', encoding: 'utf-8', headingLine: 1 },
        rows: [{ line: 1, cells: ['Bore', 'De (m)', 'A (m)', 'Lithologie'] }, {}, {}, {}],
      },
    ]);
    expect(opened.mapping!.tables).toMatchObject([{ kind: 'log', well: 'Bore' }]);
    const { rows } = await given('imports.rows', { table: 0, delimiter: ',' });
    expect(rows[1]!.cells).toEqual(['W1;0;1', '5;Argile']);
  });

  it('names the words of closed lists that the matching does not know', async () => {
    await open(file('Bore,Method,Village\nW1,Spudder,Dala\nW2,cableTool,Dala\n'));
    const mapping = {
      tables: [
        {
          ...{ kind: 'wells', file: 'log.csv', well: 'Bore' },
          fields: { 'bore.method': [{ column: 'Method' }] },
        },
      ],
    } as TableMapping;
    const { words } = await given('imports.look', { mapping });
    expect(words).toMatchObject([
      { column: 'Method', fallback: 'other', words: [{ text: 'Spudder', rows: 1 }] },
    ]);
  });

  it('is looked at without changing anything, and brought in as it was looked at', async () => {
    const { mapping } = await open();
    const plan = await given('imports.look', { mapping: mapping! });
    expect(plan).toMatchObject({
      counts: { new: 2, same: 0, changed: 0, alike: 0 },
      wells: [
        { at: 0, kind: 'new', number: 'W1', file: 'log.csv', line: 2 },
        { at: 1, kind: 'new', number: 'W2', line: 4 },
      ],
      troubles: [],
    });
    expect(valueOf(archive.count())).toBe(0);
    const told: unknown[] = [];
    service.onEvent(({ name, data }) => told.push([name, data]));
    const brought = await given('imports.bring', { mapping: mapping!, ...leave, reason: 'Lot 3' });
    expect(brought).toEqual({ created: 2, revised: 0, left: 0 });
    expect(told).toContainEqual(['import.progress', { stage: 'bringing', done: 2, total: 2 }]);
    expect(told).toContainEqual(['list.changed', {}]);
    expect((await given('imports.look', { mapping: mapping! })).counts.same).toBe(2);
  });

  it('asks about wells that are there, and does with each what was chosen', async () => {
    const { mapping } = await open();
    await given('imports.bring', { mapping: mapping!, ...leave });
    await open(file(log.replace('Gravier', 'Blocs').replace('Sable', 'Limon')));
    const plan = await given('imports.look', { mapping: mapping! });
    expect(plan.wells.map(({ at, kind }) => [at, kind])).toEqual([
      [0, 'alike'],
      [1, 'alike'],
    ]);
    const choices = { known: 'leave', single: { 0: 'revise' } } as const;
    expect(await given('imports.bring', { mapping: mapping!, choices })).toEqual({
      created: 0,
      revised: 1,
      left: 1,
    });
    const revisions = valueOf(archive.list()).map(({ number, revision }) => [number, revision]);
    expect(revisions).toEqual([
      ['W1', 2],
      ['W2', 1],
    ]);
  });

  it('needs no matching for records, and tells a file that cannot be opened', async () => {
    const own = file('{"schemaVersion":1,"identity":{"number":"J1"}}', 'own.json');
    const bad = file(Uint8Array.from([0x50, 0x4b, 3, 4, 0]), 'bad.xlsx');
    const opened = await open(own, bad);
    expect(opened).toMatchObject({
      tables: [],
      records: [{ file: 'own.json', format: 'json', wells: 1 }],
      refused: [{ file: 'bad.xlsx', error: { code: 'notWorkbook' } }],
    });
    expect(opened.mapping).toBeUndefined();
    const plan = await given('imports.look', {});
    expect([plan.counts.new, plan.troubles.length]).toEqual([1, 1]);
    expect(await given('imports.bring', leave)).toMatchObject({ created: 1 });
  });

  it('can be stopped while it goes on, and leaves nothing behind', async () => {
    const rows = Array.from({ length: 400 }, (_, at) => `W${at},0,2,Clay`);
    const { mapping } = await open(file(`Bore,From,To,Lithology\n${rows.join('\n')}\n`));
    for (const stage of ['looking', 'bringing']) {
      const done: number[] = [];
      const deaf = service.onEvent(({ name, data }) => {
        if (name !== 'import.progress' || data.stage !== stage) return;
        done.push(data.done);
        void ask('imports.stop', {});
      });
      const answer = await ask('imports.bring', { mapping: mapping!, ...leave });
      deaf();
      expect(answer).toMatchObject({ ok: false, error: { code: 'stopped' } });
      expect(done.length).toBeGreaterThan(0);
      expect(Math.max(...done)).toBeLessThan(400);
      expect(valueOf(archive.count())).toBe(0);
    }
  });

  it('shows some hundreds of many wells, and counts all', async () => {
    const rows = Array.from({ length: shownWells + 5 }, (_, at) => `W${at},Kolo`);
    const { mapping } = await open(file(`Bore,Village\n${rows.join('\n')}\n`));
    const plan = await given('imports.look', { mapping: mapping! });
    expect([plan.wells.length, plan.counts.new]).toEqual([shownWells, shownWells + 5]);
  });

  it('is refused with a sentence where nothing is open or the matching is not whole', async () => {
    expect(await ask('imports.look', {})).toMatchObject({ error: { code: 'noImport' } });
    await open();
    await given('imports.close', {});
    expect(await ask('imports.rows', { table: 0 })).toMatchObject({ error: { code: 'noImport' } });
    await open();
    const half = { tables: [{ kind: 'log', file: 'log.csv', well: 'Bore', fields: {} }] };
    const answer = await ask('imports.look', { mapping: half as unknown as TableMapping });
    expect(answer).toMatchObject({ error: { code: 'badMapping' } });
    expect(await ask('imports.rows', { table: 7 })).toMatchObject({ error: { code: 'noImport' } });
  });
});

describe('a matching that was kept', () => {
  it('is offered again for other files of its form, and for no others', async () => {
    const { mapping } = await open();
    await given('imports.keepMapping', { name: 'Lot 3', mapping: mapping! });
    const again = await open(file(log, 'other.csv'));
    expect(again.remembered).toMatchObject([
      { name: 'Lot 3', mapping: { tables: [{ file: 'other.csv', kind: 'log' }] } },
    ]);
    expect((await open(file('Bore,Village\nW1,Kolo\n'))).remembered).toEqual([]);
    expect(await given('imports.mappings', {})).toMatchObject([{ name: 'Lot 3' }]);
    await given('imports.dropMapping', { name: 'Lot 3' });
    expect(await given('imports.mappings', {})).toEqual([]);
  });
});
