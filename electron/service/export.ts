import path from 'node:path';
import { zipSync } from 'fflate';
import { ok, refused, type Result } from '../../core/base/result.ts';
import { mostExported } from '../../core/contract/exportShape.ts';
import { bytesOf } from '../../core/exchange/encode.ts';
import type { MadeFile } from '../../core/exchange/outgoing.ts';
import { exportWells, type Exported, type ExportWish, type PutPart } from './exportWells.ts';
import { reads, type Handlers, type ServiceParts } from './handlers.ts';
import type { Archive } from '../archive/archive.ts';

/** Parts in memory, for the files of one call. */
function partsInMemory() {
  const parts = new Map<string, (string | Uint8Array)[]>();
  const put: PutPart = ({ part, content }) => {
    const contents = parts.get(part) ?? [];
    contents.push(content);
    parts.set(part, contents);
  };
  const fileOf = (name: string, order: readonly string[]): MadeFile => ({
    name,
    bytes: bytesOf(order.flatMap((part) => parts.get(part) ?? [])),
  });
  return { put, fileOf };
}

/** One file as it is; several in a ZIP. */
function packed(files: readonly MadeFile[], name: string): MadeFile {
  const [only] = files;
  if (only && files.length === 1) return only;
  const entries = files.map(({ name: entry, bytes }) => [entry, bytes] as const);
  return { name: `${name}.zip`, bytes: zipSync(Object.fromEntries(entries)) };
}

async function made(
  archive: Archive,
  wish: ExportWish,
): Promise<Result<Exported & { file: MadeFile }>> {
  const { put, fileOf } = partsInMemory();
  const exported = await exportWells(archive, wish, put);
  if (!exported.ok) return exported;
  const files = exported.value.files.map(({ name, parts }) => fileOf(name, parts));
  return ok({ ...exported.value, file: packed(files, wish.name) });
}

/** Calls that write wells in other formats. */
export function exportHandlers({ archive, clock }: ServiceParts): Handlers<'export'> {
  return {
    'export.make': reads(async ({ filter, into, bom }) => {
      const total = archive.lists.count(filter);
      if (!total.ok) return total;
      if (total.value > mostExported)
        return refused(
          'tooManyExported',
          `${total.value} wells are too many to go out at once; choose at most ${mostExported} ` +
            'by the filters, or write them with the command line.',
        );
      const name = path.parse(archive.file).name;
      const wish = { filter, into, name, madeAt: clock(), ...(bom === undefined ? {} : { bom }) };
      const written = await made(archive, wish);
      if (!written.ok) return written;
      const { file, wells, unrevised, losses } = written.value;
      const bytes = Buffer.from(file.bytes).toString('base64');
      return ok({ fileName: file.name, bytes, wells, unrevised, losses });
    }),
  };
}
