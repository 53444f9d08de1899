import { describe, expect, it } from 'vitest';
import { loopbackHost } from '../../../renderer/host/loopback.ts';

describe('a call to the loopback server', () => {
  it('is a POST of the arguments as JSON to the call’s name, and gives the answer', async () => {
    const asked: [unknown, RequestInit | undefined][] = [];
    const answer = { ok: true, value: [] };
    const host = loopbackHost(async (address, init) => {
      asked.push([address, init]);
      return Response.json(answer);
    });
    expect(await host.send('wells.list', { search: 'x' })).toEqual(answer);
    expect(asked[0]?.[0]).toBe('/call/wells.list');
    expect(asked[0]?.[1]).toMatchObject({ method: 'POST', body: '{"search":"x"}' });
  });

  it('throws when nobody answers or the answer is no JSON', async () => {
    const gone = loopbackHost(() => Promise.reject(new TypeError('failed')));
    const odd = loopbackHost(async () => new Response('<html>'));
    for (const host of [gone, odd]) await expect(host.send('archive.state', {})).rejects.toThrow();
  });
});
