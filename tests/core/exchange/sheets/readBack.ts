import type { Result } from '../../../../core/base/result.ts';
import { readMapping, readSources } from '../../../../core/exchange/index.ts';
import type { Incoming } from '../../../../core/exchange/incoming.ts';
import type { MadeFile } from '../../../../core/exchange/outgoing.ts';
import { decode } from '../../../../core/exchange/tables/decode.ts';
import { sourcesOfFile } from '../../../../core/exchange/tables/source.ts';

/** Tables by the mapping that was written beside them. */
export async function readBack(files: readonly MadeFile[]): Promise<Result<Incoming>> {
  const isMapping = ({ name }: MadeFile) => name.endsWith('-mapping.json');
  const mapping = readMapping(JSON.parse(decode(files.find(isMapping)!.bytes).text));
  if (!mapping.ok) return mapping;
  const tables = files.filter((file) => !isMapping(file));
  const sources = await Promise.all(tables.map(sourcesOfFile));
  const refused = sources.find((one) => !one.ok);
  if (refused && !refused.ok) return refused;
  const read = readSources(
    sources.flatMap((one) => (one.ok ? one.value : [])),
    mapping.value,
  );
  const wells = read.records.map((record) => ({ record, file: tables[0]!.name, line: 1 }));
  return { ok: true, value: { wells, troubles: read.troubles } };
}
