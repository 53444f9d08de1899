import { writeFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it, vi } from 'vitest';
import { servePage } from '../../../electron/main/pageProtocol.ts';
import { freshFolder } from '../archive/sample.ts';

const electron = vi.hoisted(() => ({
  handlers: new Map<string, (...args: unknown[]) => unknown>(),
}));
vi.mock('electron', async () => {
  const standIn = (await import('./standIn.ts')).electronStandIn();
  electron.handlers = standIn.handlers as typeof electron.handlers;
  return standIn;
});

async function get(url: string, method = 'GET'): Promise<Response> {
  return (await electron.handlers.get('borefolio')!({ url, method })) as Response;
}

describe('the page’s own scheme, through a stand-in for Electron', () => {
  const folder = freshFolder();
  writeFileSync(path.join(folder, 'index.html'), '<title>page</title>');
  servePage(folder);

  it('serves the page with the policy', async () => {
    const response = await get('borefolio://page/');
    expect(await response.text()).toBe('<title>page</title>');
    expect(response.headers.get('Content-Security-Policy')).toContain("default-src 'none'");
  });

  it('serves nothing else', async () => {
    expect((await get('borefolio://page/none.js')).status).toBe(404);
    expect((await get('borefolio://page/%2e%2e%2findex.html')).status).toBe(404);
    expect((await get('borefolio://other/index.html')).status).toBe(404);
    expect((await get('borefolio://page/', 'POST')).status).toBe(404);
  });
});
