import { existsSync, readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';

const top = path.resolve(import.meta.dirname, '../..');
const skipped = ['node_modules', 'dist', 'out', '.git'];

const entries = readdirSync(top, { withFileTypes: true }).filter(
  ({ name }) => !skipped.includes(name),
);
const folders = entries.filter((one) => one.isDirectory()).map(({ name }) => name);
const documents = [
  ...entries.filter((one) => one.isFile()).map(({ name }) => name),
  ...folders.flatMap((folder) =>
    readdirSync(path.join(top, folder), { recursive: true, encoding: 'utf8' }).map((name) =>
      path.join(folder, name),
    ),
  ),
].filter((name) => name.endsWith('.md') && !name.endsWith('NOTICES.md'));

const read = (file: string) => readFileSync(path.join(top, file), 'utf8');

/** Text without blocks of code, whose brackets are no links. */
const prose = (text: string) => text.replace(/^```[\s\S]*?^```/gm, '').replace(/^ {4}.*$/gm, '');

function anchorsOf(text: string): string[] {
  return [...text.matchAll(/^#+ (.+)$/gm)].map(([, heading]) =>
    heading!
      .toLowerCase()
      .replace(/[^\p{L}\p{N} -]/gu, '')
      .replaceAll(' ', '-'),
  );
}

function deadLinks(file: string): string[] {
  const targets = [...prose(read(file)).matchAll(/\]\(([^)\s]+)\)/g)].map(([, target]) => target!);
  return targets.filter((target) => {
    if (/^[a-z]+:/.test(target)) return false;
    const [place, anchor] = target.split('#') as [string, string | undefined];
    const linked = place === '' ? file : path.join(path.dirname(file), place);
    if (!existsSync(path.join(top, linked))) return true;
    return anchor !== undefined && !anchorsOf(read(linked)).includes(anchor);
  });
}

/** Files and folders named in code spans, told from other code by the folder they start with. */
function namedPlaces(file: string): string[] {
  const spans = [...prose(read(file)).matchAll(/`([^`\n]+)`/g)].map(([, span]) => span!);
  return spans.filter((span) => {
    const [first] = span.split('/');
    return /^[\w./-]+$/.test(span) && span.includes('/') && folders.includes(first!);
  });
}

function namedScripts(file: string): string[] {
  return [...read(file).matchAll(/npm run (?:-s )?([\w:]+)/g)].map(([, script]) => script!);
}

describe.each(documents)('%s', (file) => {
  it('has no dead link', () => {
    expect(deadLinks(file)).toEqual([]);
  });

  it('names no file or folder that is gone', () => {
    expect(namedPlaces(file).filter((place) => !existsSync(path.join(top, place)))).toEqual([]);
  });

  it('names no script that is gone', () => {
    const { scripts } = JSON.parse(read('package.json')) as { scripts: Record<string, string> };
    expect(namedScripts(file).filter((script) => !(script in scripts))).toEqual([]);
  });
});

/** Files that comments of the sources send the reader to, by their path from the top. */
function placesInSource(file: string): string[] {
  const named = read(file).matchAll(
    /(?:^|[\s(`'"])((?:core|electron|renderer|assets|tests|demo-data|docs)\/[\w./-]+\.\w+)/g,
  );
  return [...named].map(([, place]) => place!);
}

it('no source sends its reader to a file that is gone', () => {
  const sources = ['core', 'electron', 'renderer'].flatMap((folder) =>
    readdirSync(path.join(top, folder), { recursive: true, encoding: 'utf8' })
      .filter((name) => /\.(ts|mjs|svelte|css)$/.test(name))
      .map((name) => path.join(folder, name)),
  );
  const gone = sources.flatMap((file) =>
    placesInSource(file)
      .filter((place) => !existsSync(path.join(top, place)))
      .map((place) => `${file} names ${place}`),
  );
  expect(gone).toEqual([]);
});

it('finds the documents that it reads', () => {
  expect(documents).toEqual(expect.arrayContaining(['README.md', 'DEVELOPERS.md', 'docs/flow.md']));
});
