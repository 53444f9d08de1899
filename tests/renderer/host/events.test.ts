import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import type { HostEvent } from '../../../core/contract/events.ts';
import { bridgeName, type PageHost } from '../../../core/contract/host.ts';
import { loopbackHost } from '../../../renderer/host/loopback.ts';
import { answering, pageHost, unreachable } from '../../../renderer/host/pageHost.ts';

const changed: HostEvent = {
  name: 'well.changed',
  data: { id: 'w', revision: 2, edit: 3, unrevised: false, changedAt: '2025-03-09T07:05:00Z' },
};

/** A stream of events that says what it is told to. */
class Stream {
  static opened: Stream[] = [];
  onmessage: ((message: { data: string }) => void) | undefined;
  closed = false;
  readonly address: string;
  constructor(address: string) {
    this.address = address;
    Stream.opened.push(this);
  }
  close() {
    this.closed = true;
  }
}

beforeEach(() => {
  Stream.opened = [];
  vi.stubGlobal('EventSource', Stream);
});
afterEach(() => {
  vi.unstubAllGlobals();
  vi.restoreAllMocks();
});

describe('events of the loopback server', () => {
  it('come from its stream as they are', () => {
    const heard: HostEvent[] = [];
    loopbackHost(fetch).onEvent((event) => heard.push(event));
    expect(Stream.opened.map(({ address }) => address)).toEqual(['/events']);
    Stream.opened[0]?.onmessage?.({ data: JSON.stringify(changed) });
    expect(heard).toEqual([changed]);
  });

  it('end when nobody listens any longer', () => {
    const stop = loopbackHost(fetch).onEvent(() => undefined);
    expect(Stream.opened[0]?.closed).toBe(false);
    stop();
    expect(Stream.opened[0]?.closed).toBe(true);
  });

  it('come through to a page whose host answers always', () => {
    const heard: HostEvent[] = [];
    answering(loopbackHost(fetch)).onEvent((event) => heard.push(event));
    Stream.opened[0]?.onmessage?.({ data: JSON.stringify(changed) });
    expect(heard).toEqual([changed]);
  });
});

describe('the host of a page without a bridge', () => {
  it('is the server that the page came from', async () => {
    const answer = { ok: true, value: [] };
    const asked: unknown[] = [];
    vi.stubGlobal('fetch', async (address: unknown) => {
      asked.push(address);
      return Response.json(answer);
    });
    expect(await pageHost().send('wells.list', {})).toEqual(answer);
    expect(asked).toEqual(['/call/wells.list']);
  });

  it('never asks that server where there is a bridge', async () => {
    const asked: unknown[] = [];
    vi.stubGlobal('fetch', async (address: unknown) => asked.push(address));
    const bridge = { send: async () => ({ ok: true, value: [] }), onEvent: () => () => undefined };
    vi.stubGlobal(bridgeName, bridge as unknown as PageHost);
    await pageHost().send('wells.list', {});
    expect(asked).toEqual([]);
  });

  it('tells the user what to do when the server is gone, and the console what happened', async () => {
    const gone = new TypeError('failed');
    vi.stubGlobal('fetch', () => Promise.reject(gone));
    const warn = vi.spyOn(console, 'warn').mockImplementation(() => undefined);
    const answer = await pageHost().send('wells.list', {});
    expect(answer).toMatchObject({ ok: false, error: { code: unreachable } });
    expect(answer.ok ? '' : answer.error.sentence).toContain('start Borefolio again');
    expect(warn).toHaveBeenCalledWith('wells.list', gone);
  });

  it('hands refusals of the service on as they are', async () => {
    const refusal = { ok: false, error: { code: 'noSuchWell', sentence: 'No well.' } };
    vi.stubGlobal('fetch', async () => Response.json(refusal));
    expect(await pageHost().send('wells.open', { id: 'x' })).toEqual(refusal);
  });
});
