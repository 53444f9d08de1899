import { frenchCasing } from './frenchCasing.ts';
import { frenchCover } from './frenchCover.ts';
import { frenchService } from './frenchService.ts';
import { frenchServiceWords } from './frenchServiceWords.ts';
import { frenchFigures } from './frenchFigures.ts';
import { frenchMissing } from './frenchMissing.ts';
import { frenchAnnulus } from './frenchAnnulus.ts';
import { frenchGround } from './frenchGround.ts';
import { frenchStrings } from './frenchStrings.ts';
import { frenchWater } from './frenchWater.ts';
import type { CatalogueTexts } from './texts.ts';

/** The catalogue in French. */
export const french: CatalogueTexts = {
  findings: {
    ...frenchGround,
    ...frenchStrings,
    ...frenchAnnulus,
    ...frenchWater,
    ...frenchCover,
    ...frenchCasing,
    ...frenchService,
  },
  words: {
    gravelPack: 'massif de gravier',
    formationStabiliser: 'gravier de soutien',
    claySeal: 'bouchon d’argile',
    bentonite: 'bentonite',
    cementGrout: 'cimentation',
    concrete: 'béton',
    backfill: 'remblai',
    naturalCollapse: 'éboulement naturel',
    open: 'annulaire libre',
    cap: 'bouchon de fond',
    sump: 'tube à sédiments',
    screen: 'crépine',
    plain: 'tube plein',
    reducer: 'réduction',
    ...frenchServiceWords,
  },
  missing: frenchMissing,
  figures: frenchFigures,
  sources: {
    record: 'Les chiffres du dossier, comparés entre eux.',
    common: 'Usage courant du métier.',
    fromMemory: 'de mémoire, non vérifié',
  },
};
