import { cpSync, existsSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { commands } from '../../../electron/cli/commands.ts';
import { commonOptions } from '../../../electron/cli/command.ts';
import { builtPage } from '../../../electron/cli/places.ts';
import { ownFolder, putRecord, type } from './typed.ts';

const mapping = {
  tables: [
    {
      ...{ kind: 'log', file: 'log.csv', well: 'Well' },
      fields: { from: { column: 'From', unit: 'm' }, to: { column: 'To', unit: 'm' } },
    },
  ],
};

/** What the commands work on, made once; each test gets a copy. */
let made = '';

beforeAll(async () => {
  made = mkdtempSync(path.join(tmpdir(), 'borefolio-cli-'));
  putRecord(made, { identity: { number: 'KA-1' }, bore: { depthReached: 12 } });
  writeFileSync(path.join(made, 'log.csv'), 'Well,From (m),To (m),Lithology\nW1,0,3,Sand\n');
  writeFileSync(path.join(made, 'rows.csv'), 'Well,From,To\nW1,0,3\n');
  writeFileSync(path.join(made, 'mapping.json'), JSON.stringify(mapping).replace('log.', 'rows.'));
  writeFileSync(path.join(made, 'secret.txt'), 'a long enough passphrase\n');
  await type(made, ['demo-archive', 'a.borefolio']);
  await type(made, ['demo-archive', 'b.borefolio']);
  await type(made, ['paper', 'check-page', '-o', 'page.pdf']);
  const passphrase = ['--passphrase-file', 'secret.txt'];
  await type(made, ['identity', 'make', '--name', 'Ada', ...passphrase, '-o', 'ada.seal']);
  if (existsSync(path.join(builtPage, 'index.html'))) return;
  mkdirSync(builtPage, { recursive: true });
  writeFileSync(path.join(builtPage, 'index.html'), '<!doctype html><title>Page</title>');
});
afterAll(() => rmSync(made, { recursive: true, force: true }));

/** Types a command in a copy of the folder; nobody asks it to stop, but what serves. */
function typeAnew(args: readonly string[]) {
  const folder = ownFolder();
  cpSync(made, folder, { recursive: true });
  const never = () => new Promise<void>(() => undefined);
  return type(folder, args, args[0] === 'serve' ? {} : { asksToStop: never });
}

/** How each command is typed after its name; one that has none fails below. */
const typed: Readonly<Record<string, string>> = {
  check: 'record.json',
  find: 'a.borefolio',
  model: 'record.json',
  quantities: 'record.json',
  'lay-out': 'record.json',
  'paper as-built': 'record.json -o sheet.pdf',
  'paper laying-out': 'record.json -o laying.pdf',
  'paper committee': 'record.json -o committee.svg',
  'paper check-page': '-o other.pdf',
  binder: 'a.borefolio --search KV-25-011 --papers committee --workers 1 -o binder.pdf',
  'identity make': '--name Bo --passphrase-file secret.txt -o bo.seal',
  sign: 'page.pdf --identity ada.seal --role witness --passphrase-file secret.txt -o signed.pdf',
  verify: 'a.borefolio',
  backup: 'a.borefolio',
  rescue: 'a.borefolio -o rescued.borefolio',
  merge: 'a.borefolio b.borefolio',
  serve: 'a.borefolio',
  'demo-archive': 'c.borefolio',
  import: 'a.borefolio log.csv',
  'import-tables': 'mapping.json rows.csv -o records',
  export: 'a.borefolio -f csv -o out',
};

/** Commands that are for what they list: they stay silent about nothing. */
const giving = ['find', 'model'];

const isJson = (text: string) => {
  try {
    JSON.parse(text);
    return true;
  } catch {
    return false;
  }
};

describe.each(commands.map((command) => [command.name, command] as const))(
  '%s',
  (name, command) => {
    const args = [...name.split(' '), ...(typed[name] ?? '').split(' ')];

    it('defines no option that every command has, and tells each of its own', () => {
      for (const option of Object.keys(commonOptions))
        expect(command.options).not.toHaveProperty(option);
      for (const [option, { short }] of Object.entries(command.options))
        expect(command.takes).toMatch(new RegExp(`--${option}\\b${short ? `|-${short} ` : ''}`));
    });

    it('says nothing of the work with --quiet, and gives the same code', async () => {
      const said = await typeAnew(args);
      const silent = await typeAnew([...args, '--quiet']);
      expect(said.out.length).toBeGreaterThan(0);
      expect(silent.out).toEqual(giving.includes(name) ? said.out : []);
      expect(silent.code).toBe(said.code);
      expect(said.code).not.toBe(2);
    });

    it('writes nothing but JSON with --json, be it quiet or not', async () => {
      for (const more of [['--json'], ['--json', '--quiet']]) {
        const { out } = await typeAnew([...args, ...more]);
        expect(out.length).toBeGreaterThan(0);
        expect(isJson(out.join('\n')) || out.every(isJson), out.join('\n')).toBe(true);
      }
    });
  },
);
