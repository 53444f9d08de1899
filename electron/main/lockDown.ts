import type { Session, WebContents } from 'electron';
import { isPage } from './pageAddress.ts';

interface Stoppable {
  preventDefault(): void;
  readonly url?: string;
}

/** Keeps a page at home: no other address, no new window, no page within the page. */
export function keepHome(contents: WebContents): void {
  const refuseOthers = (event: Stoppable, url = event.url ?? '') => {
    if (!isPage(url)) event.preventDefault();
  };
  contents.setWindowOpenHandler(() => ({ action: 'deny' }));
  contents.on('will-navigate', refuseOthers);
  contents.on('will-redirect', refuseOthers);
  contents.on('will-attach-webview', (event) => event.preventDefault());
}

/** What a page may fetch: its own files, and what it made itself. */
function isLocal(address: string): boolean {
  return isPage(address) || /^(blob|data|devtools):/.test(address);
}

/** Refuses every permission and device, and every request that would leave the machine. */
export function keepShut(session: Session): void {
  session.setPermissionRequestHandler((_contents, _permission, answer) => answer(false));
  session.setPermissionCheckHandler(() => false);
  session.setDevicePermissionHandler(() => false);
  session.webRequest.onBeforeRequest(({ url }, answer) => answer({ cancel: !isLocal(url) }));
}
