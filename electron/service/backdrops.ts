import path from 'node:path';
import { ok, refused } from '../../core/base/result.ts';
import { readBackdrop } from '../../core/exchange/backdrop/readBackdrop.ts';
import { reads, writes, type Handlers, type ServiceParts } from './handlers.ts';

/** Calls about what lies under the wells of a map. */
export function backdropsHandlers({ archive, newId, tell }: ServiceParts): Handlers<'backdrops'> {
  const { backdrops } = archive;
  return {
    'backdrops.list': reads(() => backdrops.list()),
    'backdrops.add': writes(({ fileName, text }) => {
      const read = readBackdrop(text);
      if (!read.ok) return refused(read.error.code, `${fileName}: ${read.error.sentence}`);
      const { shapes, pointsLeftOut } = read.value;
      const backdrop = backdrops.add({ id: newId(), name: path.parse(fileName).name, shapes });
      if (!backdrop.ok) return backdrop;
      tell({ name: 'list.changed', data: {} });
      return ok({ backdrop: backdrop.value, pointsLeftOut });
    }),
    'backdrops.remove': writes(({ id }) => {
      const left = backdrops.remove(id);
      if (!left.ok) return left;
      tell({ name: 'list.changed', data: {} });
      return ok({ left: left.value });
    }),
  };
}
