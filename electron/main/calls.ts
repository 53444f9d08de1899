import { ipcMain, type IpcMainInvokeEvent } from 'electron';
import { callChannel } from '../../core/contract/host.ts';
import { answerCall } from '../service/answer.ts';
import type { Service } from '../service/service.ts';
import { isPage } from './pageAddress.ts';

const stranger = {
  ok: false,
  error: {
    code: 'notThePage',
    sentence: 'Only Borefolio’s own page may call. Use the window that Borefolio opened.',
  },
} as const;

const noArchive = {
  ok: false,
  error: { code: 'noArchive', sentence: 'No archive is open. Open one from the File menu.' },
} as const;

/** Our page itself, not a frame within it. */
function isFromPage({ senderFrame }: IpcMainInvokeEvent): boolean {
  return senderFrame !== null && senderFrame.parent === null && isPage(senderFrame.url);
}

/** What JSON keeps of a value: the archive holds nothing else, and the other host takes none. */
function asJson(value: unknown): unknown {
  return JSON.parse(JSON.stringify(value ?? null));
}

/** Answers the page's calls from whichever service is open; each call is judged on this side. */
export function answerCalls(
  service: () => Service | undefined,
  report: (name: string, thrown: unknown) => void,
): void {
  ipcMain.handle(callChannel, (event, name: unknown, args: unknown) => {
    if (!isFromPage(event)) return stranger;
    const open = service();
    return open ? answerCall(open, String(name), asJson(args), report) : noArchive;
  });
}
