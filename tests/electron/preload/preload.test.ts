import { expect, it, vi } from 'vitest';
import type { PageHost } from '../../../core/contract/host.ts';

const electron = vi.hoisted(() => ({ exposed: new Map<string, unknown>() }));
const ipc = vi.hoisted(() => ({ invoke: vi.fn(), on: vi.fn(), off: vi.fn() }));

// Stands in for Electron: proves what our preload gives away, not what Electron keeps in.
vi.mock('electron', () => ({
  contextBridge: {
    exposeInMainWorld: (name: string, value: unknown) => electron.exposed.set(name, value),
  },
  ipcRenderer: ipc,
}));

await import('../../../electron/preload/preload.ts');
const host = electron.exposed.get('borefolioHost') as PageHost;

it('gives the page two functions and nothing else', () => {
  expect([...electron.exposed.keys()]).toEqual(['borefolioHost']);
  expect(Object.keys(host).sort()).toEqual(['onEvent', 'send']);
});

it('sends calls on the one channel', () => {
  void host.send('wells.open', { id: 'a' });
  expect(ipc.invoke).toHaveBeenCalledExactlyOnceWith('borefolio:call', 'wells.open', { id: 'a' });
});

it('hands events on without Electron’s own event, until told to stop', () => {
  const listener = vi.fn();
  const stop = host.onEvent(listener);
  const [channel, hear] = ipc.on.mock.calls[0]!;
  hear({ sender: 'inner' }, { name: 'well.changed' });
  expect(listener).toHaveBeenCalledExactlyOnceWith({ name: 'well.changed' });
  stop();
  expect(ipc.off).toHaveBeenCalledExactlyOnceWith(channel, hear);
});
