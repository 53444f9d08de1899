import { afterEach, describe, expect, it, vi } from 'vitest';
import { bridgeName, type PageHost } from '../../../core/contract/host.ts';
import { answering, pageHost, unreachable } from '../../../renderer/host/pageHost.ts';

const silent = () => vi.spyOn(console, 'warn').mockImplementation(() => undefined);
const hostThat = (send: () => Promise<unknown>) =>
  ({ send, onEvent: () => () => undefined }) as unknown as PageHost;

afterEach(() => {
  vi.restoreAllMocks();
  delete (globalThis as Record<string, unknown>)[bridgeName];
});

describe('the host of a page', () => {
  it('is the desktop’s bridge where there is one', async () => {
    const answer = { ok: true, value: [] };
    (globalThis as Record<string, unknown>)[bridgeName] = hostThat(async () => answer);
    expect(await pageHost().send('wells.list', {})).toBe(answer);
  });

  it('gives a refusal where a call throws, so that nothing waits for ever', async () => {
    silent();
    const host = answering(hostThat(() => Promise.reject(new Error('gone'))));
    const answer = await host.send('archive.state', {});
    expect(answer.ok ? '' : answer.error.code).toBe(unreachable);
  });
});
