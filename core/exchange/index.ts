export { readMapping, tableMapping, type TableMapping } from './tables/mapping.ts';
export { readSources, readTables, type TableFile, type TablesRead } from './tables/readTables.ts';
export type { TableTrouble } from './tables/trouble.ts';
