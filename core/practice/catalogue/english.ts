import { englishCasing } from './englishCasing.ts';
import { englishCover } from './englishCover.ts';
import { englishService } from './englishService.ts';
import { englishServiceWords } from './englishServiceWords.ts';
import { englishFigures } from './englishFigures.ts';
import { englishMissing } from './englishMissing.ts';
import { englishAnnulus } from './englishAnnulus.ts';
import { englishGround } from './englishGround.ts';
import { englishStrings } from './englishStrings.ts';
import { englishParameters } from './englishParameters.ts';
import { englishWater } from './englishWater.ts';
import { englishWaterRules } from './englishWaterRules.ts';
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
    ...englishWaterRules,
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
  parameters: englishParameters,
  missing: englishMissing,
  figures: englishFigures,
  sources: {
    record: 'The record’s own figures, compared with each other.',
    common: 'Common practice of the trade.',
    guidelines: 'The guideline values for drinking water that samples are compared with.',
    pumpKinds: 'The limits of this kind of pump; their sources stand in the choice of pump.',
    fromMemory: 'from memory, not looked up',
  },
};
