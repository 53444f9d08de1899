import { readFonts } from '../../../electron/files/fonts.ts';
import { passingIdentities } from '../../../electron/service/identityStore.ts';
import { passingSettings } from '../../../electron/service/settingsFile.ts';
import { createService, type Service } from '../../../electron/service/service.ts';
import type { Archive } from '../../../electron/archive/archive.ts';
import type { WellRecord } from '../../../core/record/schema.ts';
import { moveTo } from '../../moves.ts';
import { openFresh } from '../archive/sample.ts';

const fonts = readFonts();

/** A service on a new archive, with a clock that stands still and ids that count up. */
export function freshService(archive: Archive = openFresh()): Service {
  let ids = 0;
  return createService({
    archive,
    fonts,
    settings: passingSettings(),
    identities: passingIdentities(),
    clock: () => '2025-03-01T10:00:00+01:00',
    newId: () => `00000000-0000-4000-8000-${String(++ids).padStart(12, '0')}`,
  });
}

/** Types over a whole record, upon the newest edit. */
export async function retype(service: Service, id: string, record: WellRecord) {
  const now = await service.call('wells.desk', { id });
  if (!now.ok) return now;
  const { desk, edit } = now.value;
  const moves = [moveTo(desk, { ...desk, record })];
  return service.call('wells.edit', { id, upon: edit, moves });
}

/** Types over a whole record and makes a revision of it. */
export async function revise(service: Service, id: string, record: WellRecord) {
  const typed = await retype(service, id, record);
  return typed.ok ? service.call('wells.save', { id, upon: typed.value.edit }) : typed;
}
