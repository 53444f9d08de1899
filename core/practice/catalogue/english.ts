import { englishCasing } from './englishCasing.ts';
import { englishCover } from './englishCover.ts';
import { englishService } from './englishService.ts';
import { englishServiceWords } from './englishServiceWords.ts';
import { englishFigures } from './englishFigures.ts';
import { englishMissing } from './englishMissing.ts';
import { englishAnnulus } from './englishAnnulus.ts';
import { englishGround } from './englishGround.ts';
import { englishStrings } from './englishStrings.ts';
import { englishWater } from './englishWater.ts';
import type { CatalogueTexts } from './texts.ts';

/** The catalogue in English. */
export const english: CatalogueTexts = {
  findings: {
    ...englishGround,
    ...englishStrings,
    ...englishAnnulus,
    ...englishWater,
    ...englishCover,
    ...englishCasing,
    ...englishService,
  },
  words: {
    gravelPack: 'gravel pack',
    formationStabiliser: 'formation stabiliser',
    claySeal: 'clay seal',
    bentonite: 'bentonite',
    cementGrout: 'cement grout',
    concrete: 'concrete',
    backfill: 'backfill',
    naturalCollapse: 'natural collapse',
    open: 'open annulus',
    cap: 'cap',
    sump: 'sump',
    screen: 'screen',
    plain: 'plain pipe',
    reducer: 'reducer',
    ...englishServiceWords,
  },
  missing: englishMissing,
  figures: englishFigures,
  sources: {
    record: 'The record’s own figures, compared with each other.',
    common: 'Common practice of the trade.',
    fromMemory: 'from memory, not looked up',
  },
};
