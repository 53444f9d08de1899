import { ok, type Result } from '../../core/base/result.ts';
import { reads, writes, type Handlers, type ServiceParts } from './handlers.ts';

/** Calls about wells that nobody wants. */
export function binHandlers({ archive, tell }: ServiceParts): Handlers<'bin'> {
  const { bin } = archive;
  const inBin = (done: Result<unknown>): Result<{ wells: number }> => {
    if (!done.ok) return done;
    tell({ name: 'list.changed', data: {} });
    const wells = bin.list();
    return wells.ok ? ok({ wells: wells.value.length }) : wells;
  };
  return {
    'bin.list': reads(() => bin.list()),
    'bin.put': writes(({ id }) => inBin(bin.put(id))),
    'bin.putBack': writes(({ id }) => inBin(bin.putBack(id))),
    'bin.empty': writes(({ ids }) => {
      const gone = bin.empty(ids);
      if (!gone.ok) return gone;
      tell({ name: 'list.changed', data: {} });
      return ok({ wells: gone.value });
    }),
  };
}
