import { readFileSync, readdirSync } from 'node:fs';
import path from 'node:path';
import { agsTable, jsonTable } from './tablesOf.ts';

const here = import.meta.dirname;
const read = (...names: string[]) => readFileSync(path.join(here, ...names), 'utf8');

/** Path under this folder to text. */
export type DerivedTables = Readonly<Record<string, string>>;

const agsGroups = ['LOCA', 'GEOL', 'HDIA', 'PIPE', 'BKFL', 'WSTG'];

/** One folder for each AGS 4 file, in it one table for each group that the file has. */
export function agsTables(): DerivedTables {
  const files = readdirSync(path.join(here, 'ags4')).filter((name) => name.endsWith('.ags'));
  const tables = files.flatMap((file) =>
    agsGroups.map((group) => {
      const name = `ags4/${path.basename(file, '.ags')}/${group.toLowerCase()}.csv`;
      return [name, agsTable(read('ags4', file), group)] as const;
    }),
  );
  return Object.fromEntries(
    tables.filter((entry): entry is readonly [string, string] => entry[1] !== undefined),
  );
}

const responses = 'waterconnect-responses.json';
const completion = 'COMPLETION_NO=70892';
const requests = {
  drilling: `GetDrillingSummary?${completion}`,
  casing: `GetCasingSummary?${completion}`,
  zones: `GetProductionZoneSummary?${completion}`,
};

/** The three tables of drillhole 155787 as it was completed in 1996, and the completion itself. */
export function southAustralianTables(): DerivedTables {
  const answers = JSON.parse(read('south-australia', responses)) as Record<
    string,
    Record<string, string | number>[]
  >;
  const wells = answers['GetConstructionInformation?DHNO=155787']!.filter(
    (one) => one['COMPLETION_NO'] === 70892,
  ).map((one) => ({ DRILLHOLE_NO: 155787, ...one }));
  const tables = Object.entries(requests).map(
    ([name, request]) => [`south-australia/${name}.csv`, jsonTable(answers[request]!)] as const,
  );
  return { 'south-australia/wells.csv': jsonTable(wells), ...Object.fromEntries(tables) };
}
