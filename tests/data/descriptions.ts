import { readFileSync, readdirSync } from 'node:fs';
import path from 'node:path';
import { readRows } from '../../core/exchange/tables/rows.ts';

/** A description as published, and the code beside it in the same row; empty where it has none. */
export interface PublishedDescription {
  readonly words: string;
  readonly code: string;
}

const here = import.meta.dirname;

function descriptionsIn(file: string, words: string, code?: string): PublishedDescription[] {
  const { heading, rows } = readRows(readFileSync(path.join(here, file), 'utf8'), ',');
  const cell = (cells: readonly string[], name: string) => cells[heading.indexOf(name)] ?? '';
  return rows
    .map(({ cells }) => ({ words: cell(cells, words), code: code ? cell(cells, code) : '' }))
    .filter((one) => one.words.trim() !== '');
}

/** All descriptions of ground in the published tables. */
export function publishedDescriptions(): PublishedDescription[] {
  const ags = readdirSync(path.join(here, 'ags4'), { withFileTypes: true })
    .filter((entry) => entry.isDirectory())
    .map(({ name }) => name)
    .sort();
  return [
    ...descriptionsIn('ngis-lithology/ngis-lithology-a.csv', 'Description', 'MajorLithCode'),
    ...ags.flatMap((name) => descriptionsIn(`ags4/${name}/geol.csv`, 'GEOL_DESC')),
    ...descriptionsIn('gwml2-usgs/log.csv', 'major_lithology'),
    ...descriptionsIn('dov-flanders/lagen.csv', 'beschrijving'),
  ];
}
