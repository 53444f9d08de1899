import { readPath, type RecordPath } from '../../../core/base/recordPath.ts';
import type { Block, ChapterId } from '../chapter.ts';
import type { Choices } from '../fields/choice.ts';
import { completionBlocks } from './completion.ts';
import { groundBlocks } from './ground.ts';
import { handoverBlocks } from './handover.ts';
import { wellBlocks } from './identity.ts';
import { pumpBlocks } from './pump.ts';
import { siteBlocks } from './site.ts';
import { waterBlocks } from './water.ts';

/**
 * What each chapter of the well folder holds, in its order; made anew in the language in use, with
 * the practices and sets of guideline values that there are to choose from.
 */
export const chapters: Readonly<
  Record<ChapterId, (practices?: Choices, guidelines?: Choices) => readonly Block[]>
> = {
  well: wellBlocks,
  site: siteBlocks,
  ground: groundBlocks,
  completion: completionBlocks,
  water: waterBlocks,
  pump: pumpBlocks,
  handover: handoverBlocks,
};

const chapterOf: Readonly<Record<string, ChapterId>> = {
  identity: 'well',
  notes: 'well',
  site: 'site',
  bore: 'ground',
  samples: 'ground',
  log: 'ground',
  strikes: 'ground',
  layingOut: 'completion',
  strings: 'completion',
  annulus: 'completion',
  headworks: 'completion',
  levels: 'water',
  development: 'water',
  tests: 'water',
  quality: 'water',
  disinfection: 'water',
  pump: 'pump',
  'site.litresPerPersonDay': 'pump',
  'site.repair': 'pump',
  'site.mains': 'pump',
  'site.sunHours': 'pump',
  photos: 'handover',
  marks: 'handover',
};

/** The chapter in which a path can be edited; undefined where none can. */
export function chapterFor(path: RecordPath): ChapterId | undefined {
  const steps = readPath(path);
  return chapterOf[steps.slice(0, 2).join('.')] ?? chapterOf[String(steps[0] ?? '')];
}
