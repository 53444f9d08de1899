import { beforeEach, describe, expect, it, vi } from 'vitest';
import { callChannel } from '../../../core/contract/host.ts';
import { answerCalls } from '../../../electron/main/calls.ts';
import type { Service } from '../../../electron/service/service.ts';

const electron = vi.hoisted(() => ({
  handlers: new Map<string, (...args: unknown[]) => unknown>(),
}));
vi.mock('electron', async () => {
  const standIn = (await import('./standIn.ts')).electronStandIn();
  electron.handlers = standIn.handlers as typeof electron.handlers;
  return standIn;
});

const call = vi.fn(async () => ({ ok: true, value: [] }));
const service = { call, onEvent: vi.fn() } as unknown as Service;
const page = { url: 'borefolio://page/', parent: null };

async function send(name: unknown, args: unknown, senderFrame: object | null = page) {
  return electron.handlers.get(callChannel)!({ senderFrame }, name, args);
}

beforeEach(() => {
  call.mockClear();
  answerCalls(() => service, vi.fn());
});

describe('a call from the page, through a stand-in for Electron', () => {
  it('is answered by the service', async () => {
    expect(await send('wells.list', { search: 'ka' })).toEqual({ ok: true, value: [] });
    expect(call).toHaveBeenCalledExactlyOnceWith('wells.list', { search: 'ka' });
  });

  it('is judged before the service hears of it', async () => {
    expect(await send('wells.burn', {})).toMatchObject({ error: { code: 'unknownCall' } });
    expect(await send('wells.open', { id: 1 })).toMatchObject({ error: { code: 'badArguments' } });
    expect(await send({}, undefined)).toMatchObject({ error: { code: 'unknownCall' } });
    expect(call).not.toHaveBeenCalled();
  });

  it('holds nothing that JSON does not', async () => {
    const args = { record: { schemaVersion: 1, at: new Date(0), none: undefined } };
    await send('wells.create', args);
    expect(call).toHaveBeenCalledExactlyOnceWith('wells.create', {
      record: { schemaVersion: 1, at: '1970-01-01T00:00:00.000Z' },
    });
  });

  it('is refused from any other page, from a frame within ours, and from one that is gone', async () => {
    for (const frame of [
      { url: 'https://borefolio.example/', parent: null },
      { url: 'borefolio://other/', parent: null },
      { url: 'borefolio://page/', parent: page },
      null,
    ])
      expect(await send('wells.list', {}, frame)).toMatchObject({ error: { code: 'notThePage' } });
    expect(call).not.toHaveBeenCalled();
  });

  it('is refused while no archive is open', async () => {
    answerCalls(() => undefined, vi.fn());
    expect(await send('wells.list', {})).toMatchObject({ error: { code: 'noArchive' } });
  });
});
