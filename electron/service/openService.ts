import { ok, type Result } from '../../core/base/result.ts';
import { backUpDaily } from '../archive/backup.ts';
import type { Archive } from '../archive/archive.ts';
import { openArchive } from '../archive/open.ts';
import { readFonts } from '../files/fonts.ts';
import type { Binding } from './binding.ts';
import { passingIdentities, type IdentityStore } from './identityStore.ts';
import type { Printing } from './printJob.ts';
import { passingSettings, type SettingsStore } from './settingsFile.ts';
import { createService, type Service } from './service.ts';

/** What a host hands to the service. */
export interface HostWorld {
  /** Now, ISO 8601. */
  readonly clock: () => string;
  /** A UUID that no well has. */
  readonly newId: () => string;
  /** A person's choices; absent where they are not kept. */
  readonly settings?: SettingsStore;
  /** Certificates that sign; absent where they are not kept. */
  readonly identities?: IdentityStore;
  /** Absent where the host reaches no printer. */
  readonly printing?: Printing;
  /** Absent where the host makes no binders. */
  readonly binding?: Binding;
  /** True where a missing archive is a mistake and not the wish for a new one. */
  readonly mustExist?: boolean;
  /** Does something again and again, until what it gives back is called. */
  readonly every?: (milliseconds: number, run: () => void) => () => void;
  /** Is told why today's backup could not be made. */
  readonly onBackupTrouble?: (sentence: string) => void;
  /** Is told how many wells of an older archive are brought up to date, of all. */
  readonly onBringing?: (done: number, of: number) => void;
}

/** A service with the archive that it works on. */
export interface OpenService {
  readonly service: Service;
  readonly archive: Archive;
  /** Waits for the backup that is being made, then lets go of the file. */
  close(): Promise<void>;
}

async function backUp(archive: Archive, world: HostWorld): Promise<void> {
  if (archive.readOnly !== undefined) return;
  const say = world.onBackupTrouble ?? (() => undefined);
  try {
    const made = await backUpDaily(archive, world.clock);
    if (!made.ok) say(made.error.sentence);
  } catch (error) {
    // Work goes on without a backup: a full disk must not keep anyone from reading the archive.
    say(`Today’s backup could not be made: ${error instanceof Error ? error.message : error}`);
  }
}

/** Milliseconds between two looks for what another program wrote to the archive. */
const betweenLooks = 1000;

function everySo(milliseconds: number, run: () => void): () => void {
  const timer = setInterval(run, milliseconds).unref();
  return () => clearInterval(timer);
}

/** Opens an archive and the service on it; today's backup is made while work goes on. */
export function openService(file: string, world: HostWorld): Result<OpenService> {
  const { clock, newId, mustExist = false, every = everySo } = world;
  const { settings = passingSettings(), identities = passingIdentities() } = world;
  const printing = world.printing && { printing: world.printing };
  const binding = world.binding && { binding: world.binding };
  const opened = openArchive(file, {
    ...{ now: clock, mustExist },
    ...(world.onBringing && { onBringing: world.onBringing }),
  });
  if (!opened.ok) return opened;
  const archive = opened.value;
  const service = createService({
    ...{ archive, fonts: readFonts(), settings, identities, clock, newId },
    ...printing,
    ...binding,
  });
  const backup = backUp(archive, world);
  const stopLooking = every(betweenLooks, service.look);
  const close = async () => {
    stopLooking();
    await world.binding?.stop();
    await backup;
    archive.close();
  };
  return ok({ service, archive, close });
}
