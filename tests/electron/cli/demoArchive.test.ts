import { readdirSync, statSync } from 'node:fs';
import path from 'node:path';
import { expect, it } from 'vitest';
import { ownFolder, type } from './typed.ts';

it('borefolio demo-archive makes an archive of the invented wells, and never over another file', async () => {
  const folder = ownFolder();
  const first = await type(folder, ['demo-archive', 'demo.borefolio']);
  const demo = path.resolve(import.meta.dirname, '../../../demo-data');
  const wells = readdirSync(demo).filter((name) => name.endsWith('.json')).length;
  expect(first).toMatchObject({ code: 0, out: [`demo.borefolio holds ${wells} demo wells.`] });
  const size = statSync(path.join(folder, 'demo.borefolio')).size;
  const again = await type(folder, ['demo-archive', 'demo.borefolio']);
  expect(again.code).toBe(2);
  expect(again.err[0]).toContain('demo.borefolio is there already');
  expect(statSync(path.join(folder, 'demo.borefolio')).size).toBe(size);
});
