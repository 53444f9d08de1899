import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { longPlain } from '../../sheets/examples/longPlain.ts';
import { ownFolder, putRecord, type } from './typed.ts';

const demo = path.resolve(import.meta.dirname, '../../../demo-data/shallow-direct-action-9m.json');

describe('drawing files from the command line', () => {
  it('are DXF by their ending, a file a page', async () => {
    const folder = ownFolder();
    await type(folder, ['paper', 'as-built', demo, '-o', 'sheet.dxf']);
    const files = readdirSync(folder);
    expect(files).toContain('sheet-1.dxf');
    for (const file of files)
      expect(readFileSync(path.join(folder, file), 'latin1')).toContain('\nAC1015\n');
  });

  it('have their axis whole where that is asked for', async () => {
    const folder = ownFolder();
    const args = ['paper', 'as-built', putRecord(folder, longPlain()), '--paper', 'A3'];
    await type(folder, [...args, '-o', 'broken.svg']);
    await type(folder, [...args, '--whole-axis', '-o', 'whole.svg']);
    const broken = (name: string) =>
      readdirSync(folder)
        .filter((file) => file.startsWith(name) && file.endsWith('.svg'))
        .map((file) => readFileSync(path.join(folder, file), 'utf8').includes('depthBreak"'));
    expect(broken('broken')).toContain(true);
    expect(broken('whole')).toEqual([false, false]);
  });

  it('are pixels of the fineness asked for, and say it', async () => {
    const folder = ownFolder();
    await type(folder, ['paper', 'check-page', '--dpi', '50', '-o', 'page.png']);
    const png = readFileSync(path.join(folder, 'page.png'));
    // ISO/IEC 15948: the width stands 16 bytes in; an A4 is 210 mm wide.
    expect(png.readUInt32BE(16)).toBe(Math.round((210 / 25.4) * 50));
    expect(png.readUInt32BE(png.indexOf('pHYs') + 4)).toBe(Math.round(50 / 0.0254));
  });

  it('show letters and hatches: a page of words is not white', async () => {
    const folder = ownFolder();
    await type(folder, ['paper', 'check-page', '--dpi', '36', '-o', 'page.png']);
    const png = readFileSync(path.join(folder, 'page.png'));
    expect(png.length).toBeGreaterThan(3000);
  });
});
