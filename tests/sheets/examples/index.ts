import type { WellRecord } from '../../../core/record/schema.ts';
import { artesian } from './artesian.ts';
import { dugAndDrilled } from './dugAndDrilled.ts';
import { emptyRecord } from './emptyRecord.ts';
import { fortyFills } from './fortyFills.ts';
import { hundredPipes } from './hundredPipes.ts';
import { longDescription } from './longDescription.ts';
import { longNames } from './longNames.ts';
import { longPlain } from './longPlain.ts';
import { noDiameters } from './noDiameters.ts';
import { risingStrikes } from './risingStrikes.ts';
import { strangeLetters } from './strangeLetters.ts';
import { twoHundredMetres } from './twoHundredMetres.ts';
import { wordyLog } from './wordyLog.ts';

/** Awkward wells of our own making, each with a sentence in its file on what it shows. */
export const examples: Readonly<Record<string, () => WellRecord>> = {
  artesian,
  dugAndDrilled,
  emptyRecord,
  fortyFills,
  hundredPipes,
  longDescription,
  longNames,
  longPlain,
  noDiameters,
  risingStrikes,
  strangeLetters,
  twoHundredMetres,
  wordyLog,
};
