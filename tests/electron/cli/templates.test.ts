import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { openArchive } from '../../../electron/archive/open.ts';
import { countingWorld, valueOf } from '../archive/sample.ts';
import { ownFolder, type } from './typed.ts';

const project = path.resolve(import.meta.dirname, '../../..');
const example = path.join(project, 'docs/template.example.json');
const record = path.join(project, 'demo-data/laid-out-45m.json');
const papers = ['as-built', 'laying-out', 'committee'];

/** The first page, of a sheet of one or of several. */
function firstPage(folder: string): string {
  const name = ['x.svg', 'x-1.svg'].find((one) => existsSync(path.join(folder, one)))!;
  return readFileSync(path.join(folder, name)).toString();
}

describe.each(papers)('borefolio paper %s', (paper) => {
  const made = async (folder: string, file: string, ...more: string[]) => {
    const { code } = await type(folder, ['paper', paper, file, ...more, '-o', 'x.svg']);
    expect(code).toBeLessThan(2);
    return firstPage(folder);
  };

  it('is headed by the template that is named', async () => {
    const folder = ownFolder();
    expect(await made(folder, record, '--template', example)).toContain(
      'Service des puits villageois',
    );
    expect(await made(folder, record)).not.toContain('Service des puits');
  });

  it('is headed by the archive’s own, unless another one or none is wished for', async () => {
    const folder = ownFolder();
    await type(folder, ['demo-archive', 'demo.borefolio']);
    const archive = valueOf(openArchive(path.join(folder, 'demo.borefolio'), countingWorld()));
    valueOf(archive.templates.put('ours', JSON.stringify({ name: ['Bureau des eaux'] })));
    archive.close();
    const one = ['--well', 'KV-26-015'];
    expect(await made(folder, 'demo.borefolio', ...one)).toContain('Bureau des eaux');
    const other = await made(folder, 'demo.borefolio', ...one, '--template', example);
    expect(other).toContain('Service des puits villageois');
    expect(other).not.toContain('Bureau des eaux');
    const bare = await made(folder, 'demo.borefolio', ...one, '--no-template');
    expect(bare).not.toContain('Bureau des eaux');
  });

  it('is not made where a template is named and forbidden, or cannot be read', async () => {
    const folder = ownFolder();
    const asked = (...more: string[]) =>
      type(folder, ['paper', paper, record, ...more, '-o', 'x.svg']);
    const both = await asked('--template', example, '--no-template');
    expect([both.code, both.err.join()]).toEqual([2, expect.stringContaining('--no-template')]);
    writeFileSync(path.join(folder, 'bad.json'), '{"name":[]}');
    const bad = await asked('--template', 'bad.json');
    expect(bad.err.join()).toContain('name: write at least one line of the name');
  });
});
