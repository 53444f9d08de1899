import { ok, refused, type Result } from '../../core/base/result.ts';
import {
  shownLetters,
  shownRows,
  shownWells,
  type ImportChoices,
  type ImportPlan,
  type ImportStage,
  type OpenedImport,
  type OpenedTable,
  type ShownRow,
} from '../../core/contract/importsShape.ts';
import { fitMapping } from '../../core/exchange/proposal/fitMapping.ts';
import { propose, proposeMapping } from '../../core/exchange/proposal/propose.ts';
import { readMapping, type TableMapping } from '../../core/exchange/index.ts';
import type { TableSource } from '../../core/exchange/tables/source.ts';
import { unknownWords } from '../../core/exchange/tables/unknownWords.ts';
import type { Layout } from '../../core/exchange/tables/source.ts';
import type { Archive } from '../archive/archive.ts';
import { reads, writes, type Handlers, type ServiceParts } from './handlers.ts';
import { comingOf, openFiles, type OpenedFiles } from './importing/openFiles.ts';
import { bringPlanned, countPlans, planAll, type PlannedWell } from './importing/planned.ts';

const noImport = () => refused('noImport', 'No files are open to be imported. Choose them again.');

function firstRows(source: TableSource, layout: Layout): ShownRow[] {
  return source
    .rows(layout)
    .rows.slice(0, shownRows)
    .map(({ line, cells }) => ({ line, cells: cells.map((cell) => cell.slice(0, shownLetters)) }));
}

function tableOf(source: TableSource): OpenedTable {
  const { detected } = propose(source);
  const { name, sheet } = source;
  return {
    file: name,
    ...(sheet === undefined ? {} : { sheet }),
    detected,
    rows: firstRows(source, detected),
  };
}

/** A kept mapping that this version does not understand is passed over. */
function keptMappings({ mappings }: Archive) {
  const kept = mappings.list();
  if (!kept.ok) return kept;
  return ok(
    kept.value.flatMap(({ name, json }) => {
      const read = readMapping(JSON.parse(json));
      return read.ok ? [{ name, mapping: read.value }] : [];
    }),
  );
}

function openedOf(archive: Archive, opened: OpenedFiles): Result<OpenedImport> {
  const kept = keptMappings(archive);
  if (!kept.ok) return kept;
  const { tables, records, refused: left } = opened;
  const mapping = proposeMapping(tables);
  return ok({
    tables: tables.map(tableOf),
    ...(mapping ? { mapping } : {}),
    remembered: kept.value.flatMap(({ name, mapping: one }) => {
      const fitted = tables.length > 0 ? fitMapping(one, tables) : undefined;
      return fitted ? [{ name, mapping: fitted }] : [];
    }),
    records: records.map(({ file, format, incoming }) => ({
      ...{ file, format },
      wells: incoming.wells.length,
    })),
    refused: left,
  });
}

function understood(mapping: unknown): Result<TableMapping | undefined> {
  if (mapping === undefined) return ok(undefined);
  const read = readMapping(mapping);
  return read.ok ? read : refused('badMapping', read.error.sentence);
}

/** Those first that need a choice. */
const weight = { alike: 0, changed: 1, new: 2, same: 3 } as const;

function planOf(
  planned: readonly PlannedWell[],
  { troubles, words }: Pick<ImportPlan, 'troubles' | 'words'>,
): ImportPlan {
  const lines = planned.map(({ kind, well: { record, file, line } }, at) => ({
    ...{ at, kind, file, line },
    number: record.identity?.number ?? '',
    name: record.identity?.name ?? '',
    village: record.site?.village ?? '',
  }));
  const first = lines.toSorted((a, b) => weight[a.kind] - weight[b.kind] || a.at - b.at);
  return { counts: countPlans(planned), wells: first.slice(0, shownWells), troubles, words };
}

function leftOf(planned: readonly PlannedWell[], { known, single = {} }: ImportChoices): number {
  return planned.filter(
    ({ kind }, at) => (kind === 'changed' || kind === 'alike') && (single[at] ?? known) === 'leave',
  ).length;
}

/** Calls about files that bring wells in. */
export function importsHandlers({ archive, newId, tell }: ServiceParts): Handlers<'imports'> {
  let opened: OpenedFiles | undefined;
  let stop = new AbortController();

  const teller = (stage: ImportStage, total: number) => (done: number) =>
    tell({ name: 'import.progress', data: { stage, done, total } });

  async function planned(given: unknown) {
    if (!opened) return noImport();
    const { tables } = opened;
    const mapping = understood(given);
    if (!mapping.ok) return mapping;
    stop = new AbortController();
    const { wells, troubles } = comingOf(opened, mapping.value);
    const onProgress = teller('looking', wells.length);
    const plans = await planAll(archive, wells, { onProgress, signal: stop.signal });
    if (!plans.ok) return plans;
    const words = mapping.value ? unknownWords(tables, mapping.value) : [];
    return ok({ plans: plans.value, troubles, words });
  }

  return {
    'imports.open': reads(async ({ files }) => {
      opened = await openFiles(
        files.map(({ name, data }) => ({ name, bytes: Buffer.from(data, 'base64') })),
      );
      return openedOf(archive, opened);
    }),
    'imports.rows': reads(({ table, ...layout }) => {
      const source = opened?.tables[table];
      return source ? ok({ rows: firstRows(source, layout) }) : noImport();
    }),
    'imports.look': reads(async ({ mapping }) => {
      const plan = await planned(mapping);
      return plan.ok ? ok(planOf(plan.value.plans, plan.value)) : plan;
    }),
    'imports.bring': writes(async ({ mapping, choices, author = '', reason = '' }) => {
      const plan = await planned(mapping);
      if (!plan.ok) return plan;
      const { plans } = plan.value;
      const brought = await bringPlanned(
        archive,
        plans,
        (_, at) => choices.single?.[at] ?? choices.known,
        {
          ...{ newId, author, reason, signal: stop.signal },
          onProgress: teller('bringing', plans.length),
        },
      );
      if (!brought.ok) return brought;
      tell({ name: 'list.changed', data: {} });
      const { created, revised } = brought.value;
      return ok({ created, revised, left: leftOf(plans, choices) });
    }),
    'imports.stop': reads(() => {
      stop.abort();
      return ok(null);
    }),
    'imports.close': reads(() => {
      opened = undefined;
      return ok(null);
    }),
    'imports.mappings': reads(() => keptMappings(archive)),
    'imports.keepMapping': writes(({ name, mapping }) => {
      const read = understood(mapping);
      if (!read.ok) return read;
      const kept = archive.mappings.put(name, JSON.stringify(read.value));
      return kept.ok ? ok(null) : kept;
    }),
    'imports.dropMapping': writes(({ name }) => {
      const gone = archive.mappings.remove(name);
      return gone.ok ? ok(null) : gone;
    }),
  };
}
