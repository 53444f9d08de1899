import { contextBridge, ipcRenderer, type IpcRendererEvent } from 'electron';
import type { Answer, CallName } from '../../core/contract/calls.ts';
import type { HostEvent } from '../../core/contract/events.ts';
import { bridgeName, callChannel, eventChannel, type PageHost } from '../../core/contract/host.ts';

/** All that a page is given; the main side judges each call again. */
const host: PageHost = {
  send: <N extends CallName>(name: N, args: unknown) =>
    ipcRenderer.invoke(callChannel, name, args) as Promise<Answer<N>>,
  onEvent(listener) {
    const hear = (_event: IpcRendererEvent, told: HostEvent) => listener(told);
    ipcRenderer.on(eventChannel, hear);
    return () => void ipcRenderer.off(eventChannel, hear);
  },
};

contextBridge.exposeInMainWorld(bridgeName, host);
