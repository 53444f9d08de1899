import type { WellRecord } from '../../core/record/schema.ts';
import { fileNames, well } from '../demo-data/wells.ts';
import { realWells } from '../real/realWells.ts';
import { examples } from './examples/index.ts';

export type NamedWell = readonly [name: string, record: WellRecord];

export const demoWells: readonly NamedWell[] = fileNames.map((name) => [name, well(name)]);

export const publishedWells: readonly NamedWell[] = realWells().map(({ name, record }) => [
  name,
  record,
]);

export const exampleWells: readonly NamedWell[] = Object.entries(examples).map(
  ([name, example]) => [name, example()],
);
