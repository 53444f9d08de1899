import { readdirSync, readFileSync } from 'node:fs';
import { readRecord, type ReadRecord } from '../../core/record/read.ts';
import type { WellRecord } from '../../core/record/schema.ts';

const folder = new URL('../../demo-data/', import.meta.url);

export const fileNames: readonly string[] = readdirSync(folder)
  .filter((name) => name.endsWith('.json'))
  .sort();

export function readWell(name: string): ReadRecord {
  const reading = readRecord(JSON.parse(readFileSync(new URL(name, folder), 'utf8')));
  if (reading.kind !== 'ok') throw new Error(`${name} is not a record`);
  return reading;
}

export function well(name: string): WellRecord {
  return readWell(name).record;
}

export function readme(): string {
  return readFileSync(new URL('README.md', folder), 'utf8');
}
