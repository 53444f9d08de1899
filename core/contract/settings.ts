import { z } from 'zod';
import type { ArgumentsOf } from './areas.ts';
import { settings } from './settingsShape.ts';

export const settingsArguments = {
  'settings.read': z.strictObject({}),
  'settings.write': settings,
} satisfies ArgumentsOf<'settings'>;
