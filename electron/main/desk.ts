import { randomUUID } from 'node:crypto';
import { BrowserWindow, dialog } from 'electron';
import { eventChannel } from '../../core/contract/host.ts';
import { bindingDesk } from '../binder/bindingDesk.ts';
import { openService, type OpenService } from '../service/openService.ts';
import type { Service } from '../service/service.ts';
import type { IdentityStore } from '../service/identityStore.ts';
import type { SettingsStore } from '../service/settingsFile.ts';
import { desktopPrinting } from './printing.ts';
import type { DesktopWords } from './words.ts';

/** The one archive that the program has open, for all its windows. */
export interface Desk {
  service(): Service | undefined;
  /** Opens an archive in place of the present one; says why where it cannot, and keeps that. */
  open(file: string): Promise<boolean>;
  close(): Promise<void>;
}

/** What a desk is handed. */
export interface DeskWorld {
  readonly settings: SettingsStore;
  readonly identities: IdentityStore;
  readonly words: () => DesktopWords;
  /** Is called when a person chose other settings. */
  readonly onSettings: () => void;
}

function showBackupTrouble(message: string): void {
  void dialog.showMessageBox({ type: 'warning', message });
}

/** Passes the service's events on to every window. */
function tellWindows(service: Service, { onSettings }: DeskWorld): void {
  service.onEvent((event) => {
    if (event.name === 'settings.changed') onSettings();
    for (const { webContents } of BrowserWindow.getAllWindows())
      webContents.send(eventChannel, event);
  });
}

/** A desk with nothing open yet. */
export function newDesk(world: DeskWorld): Desk {
  let open: OpenService | undefined;
  const close = async () => {
    const closing = open;
    open = undefined;
    await closing?.close();
  };
  return {
    service: () => open?.service,
    async open(file) {
      const next = openService(file, {
        clock: () => new Date().toISOString(),
        newId: randomUUID,
        settings: world.settings,
        identities: world.identities,
        printing: desktopPrinting,
        binding: bindingDesk(),
        onBackupTrouble: showBackupTrouble,
      });
      if (!next.ok) {
        dialog.showErrorBox(world.words().notOpened, next.error.sentence);
        return false;
      }
      await close();
      open = next.value;
      tellWindows(open.service, world);
      for (const window of BrowserWindow.getAllWindows()) window.reload();
      return true;
    },
    close,
  };
}
