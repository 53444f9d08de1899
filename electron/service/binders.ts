import { ok, refused, type Result } from '../../core/base/result.ts';
import { binderWish } from '../../core/contract/binders.ts';
import type { KeptBinder } from '../../core/contract/binderShape.ts';
import type { KeptBinder as StoredBinder } from '../archive/binders.ts';
import type { Binding } from './binding.ts';
import { reads, writes, type Handlers, type ServiceParts } from './handlers.ts';

/** A wish of a newer version that this one does not understand is left out of the list. */
function readKept({ name, json, changedAt }: StoredBinder): KeptBinder[] {
  const read = binderWish.safeParse(JSON.parse(json));
  return read.success ? [{ name, wish: read.data, changedAt }] : [];
}

function noSuchBinder(name: string): Result<never> {
  return refused(
    'noSuchBinder',
    `The archive keeps no binder called ${name}. Choose one of the list, or keep a new one.`,
  );
}

const noBinding = () =>
  refused(
    'noBinding',
    'Binders cannot be made in this window. Open the archive with the program or its command line.',
  );

/** Calls about binders: what they shall hold, and their making. */
export function bindersHandlers({
  archive,
  binding,
  clock,
  tell,
}: ServiceParts): Handlers<'binders'> {
  const { binders } = archive;
  const withBinding = <T>(run: (there: Binding) => T) => (binding ? run(binding) : noBinding());
  return {
    'binders.list': reads(() => {
      const kept = binders.list();
      return kept.ok ? ok(kept.value.flatMap(readKept)) : kept;
    }),
    'binders.put': writes(({ name, wish }) => {
      const kept = binders.put(name.trim(), JSON.stringify(wish));
      return kept.ok ? ok({ name: kept.value.name, wish, changedAt: kept.value.changedAt }) : kept;
    }),
    'binders.remove': writes(({ name }) => {
      const gone = binders.remove(name);
      return gone.ok ? ok(null) : gone;
    }),
    'binders.start': reads(({ name }) =>
      withBinding((there) => {
        const kept = binders.list();
        if (!kept.ok) return kept;
        const [found] = kept.value.filter((one) => one.name === name).flatMap(readKept);
        if (!found) return noSuchBinder(name);
        const onState = (data: ReturnType<Binding['state']>) =>
          tell({ name: 'binder.state', data });
        return there.start({ archive, name, wish: found.wish, madeAt: clock(), onState });
      }),
    ),
    'binders.stop': reads(() => withBinding(async (there) => ok(await there.stop()))),
    'binders.state': reads(() => ok(binding?.state() ?? { state: 'none' })),
    'binders.file': reads(({ fileName }) =>
      withBinding((there) => {
        const file = there.file(fileName);
        if (!file.ok) return file;
        return ok({ fileName, pdf: Buffer.from(file.value).toString('base64') });
      }),
    ),
  };
}
