import type { Refusal } from '../../../core/base/result.ts';
import type { GivenFile, Incoming, IncomingWell } from '../../../core/exchange/incoming.ts';
import { recordReaderFor } from '../../../core/exchange/readers.ts';
import { reason } from '../../../core/exchange/reasons/reason.ts';
import type { TableMapping } from '../../../core/exchange/tables/mapping.ts';
import { readSources } from '../../../core/exchange/tables/readTables.ts';
import { sourcesOfFile, type TableSource } from '../../../core/exchange/tables/source.ts';
import { told, type TableTrouble } from '../../../core/exchange/tables/trouble.ts';

/** Files that were given to be imported, as far as they could be opened. */
export interface OpenedFiles {
  /** Tables, which need a mapping in order to be read. */
  readonly tables: readonly TableSource[];
  /** Files that say by themselves what their fields mean. */
  readonly records: readonly {
    readonly file: string;
    readonly format: string;
    readonly incoming: Incoming;
  }[];
  readonly refused: readonly { readonly file: string; readonly error: Refusal }[];
}

/** A well that comes in. */
export interface ComingWell extends IncomingWell {
  /** The file holds all of the record, in the archive's own form. */
  readonly whole: boolean;
}

export interface Coming {
  readonly wells: readonly ComingWell[];
  readonly troubles: readonly TableTrouble[];
}

/** Opens files of any kind that is known; what is not known is taken for a table. */
export async function openFiles(files: readonly GivenFile[]): Promise<OpenedFiles> {
  const opened = { tables: [], records: [], refused: [] } as {
    -readonly [K in keyof OpenedFiles]: OpenedFiles[K][number][];
  };
  for (const file of files) {
    const reader = recordReaderFor(file);
    if (reader) {
      const read = await reader.read(file);
      if (!read.ok) opened.refused.push({ file: file.name, error: read.error });
      else opened.records.push({ file: file.name, format: reader.format, incoming: read.value });
      continue;
    }
    const sources = await sourcesOfFile(file);
    if (sources.ok) opened.tables.push(...sources.value);
    else opened.refused.push({ file: file.name, error: sources.error });
  }
  return opened;
}

/** One well is named twice by files that do not know of each other. */
function twiceTroubles(wells: readonly ComingWell[]): TableTrouble[] {
  const seen = new Map<string, ComingWell>();
  return wells.flatMap((well) => {
    const number = well.record.identity?.number;
    if (number === undefined) return [];
    const first = seen.get(number);
    if (!first) seen.set(number, well);
    if (!first || first.record.identity?.id !== well.record.identity?.id) return [];
    const { file, line } = well;
    const says = told(reason('comesTwice', { number, file: first.file, line: first.line }));
    return [{ file, line, column: '', ...says, kept: true }];
  });
}

/** All wells of the files, in their order, and what does not come. */
export function comingOf(
  { tables, records, refused }: OpenedFiles,
  mapping?: TableMapping,
): Coming {
  const read = mapping && tables.length > 0 ? readSources(tables, mapping) : undefined;
  const own = records.flatMap(({ format, incoming }) =>
    incoming.wells.map((well) => ({ ...well, whole: format === 'json' })),
  );
  const wells = [...own, ...(read?.wells ?? []).map((well) => ({ ...well, whole: false }))];
  const unread = refused.map(({ file, error }) => ({
    ...{ file, line: 1, column: '', kept: false },
    ...told(reason('fileRefused', { says: { refusal: error } })),
  }));
  return {
    wells,
    troubles: [
      ...unread,
      ...records.flatMap(({ incoming }) => incoming.troubles),
      ...(read?.troubles ?? []),
      ...twiceTroubles(wells),
    ],
  };
}
