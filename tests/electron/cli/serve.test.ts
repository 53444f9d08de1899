import { existsSync, mkdirSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { builtPage } from '../../../electron/cli/places.ts';
import { ownFolder, type } from './typed.ts';

/** The commands are tested without a build; any page will do. */
function ensurePage() {
  if (existsSync(path.join(builtPage, 'index.html'))) return;
  mkdirSync(builtPage, { recursive: true });
  writeFileSync(path.join(builtPage, 'index.html'), '<!doctype html><title>Page</title>');
}

describe('borefolio serve', () => {
  it('serves the page until it is asked to stop, and then lets go of all', async () => {
    ensurePage();
    const folder = ownFolder();
    await type(folder, ['demo-archive', 'demo.borefolio']);
    let stop = () => {};
    let address = '';
    const served = type(folder, ['serve', 'demo.borefolio'], {
      print: (line) => (address = /http:\/\/127\.0\.0\.1:\d+\/\?k=\S+/.exec(line)?.[0] ?? ''),
      asksToStop: () => new Promise((resolve) => (stop = resolve)),
    });
    while (address === '') await new Promise((resolve) => setTimeout(resolve, 20));
    const entered = await fetch(address, { redirect: 'manual' });
    expect(entered.status).toBe(303);
    const page = await fetch(new URL('/', address), {
      headers: { cookie: entered.headers.get('set-cookie')!.split(';')[0]! },
    });
    expect(page.status).toBe(200);
    stop();
    expect((await served).code).toBe(0);
    await expect(fetch(address)).rejects.toThrow();
  });

  it('serves invented wells where no archive is named', async () => {
    ensurePage();
    const { code, out } = await type(ownFolder(), ['serve']);
    expect(code).toBe(0);
    expect(out[0]).toBe('Serving invented wells; changes to them are not kept.');
  });

  it('refuses an archive that is not there', async () => {
    ensurePage();
    const { code, err } = await type(ownFolder(), ['serve', 'none.borefolio']);
    expect(code).toBe(2);
    expect(err[0]).toContain('There is no archive none.borefolio');
  });
});
