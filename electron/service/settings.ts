import { ok } from '../../core/base/result.ts';
import { reads, writes, type Handlers, type ServiceParts } from './handlers.ts';

/** Calls about what a person chose for this computer; it belongs to no archive. */
export function settingsHandlers({ settings, tell }: ServiceParts): Handlers<'settings'> {
  return {
    'settings.read': reads(() => ok(settings.read())),
    'settings.write': writes(async (chosen) => {
      const next = { ...settings.read(), ...chosen };
      await settings.write(next);
      tell({ name: 'settings.changed', data: next });
      return ok(next);
    }),
  };
}
