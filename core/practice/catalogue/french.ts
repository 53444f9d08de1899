import { frenchCasing } from './frenchCasing.ts';
import { frenchCover } from './frenchCover.ts';
import { frenchService } from './frenchService.ts';
import { frenchServiceWords } from './frenchServiceWords.ts';
import { frenchFigures } from './frenchFigures.ts';
import { frenchMissing } from './frenchMissing.ts';
import { frenchAnnulus } from './frenchAnnulus.ts';
import { frenchGround } from './frenchGround.ts';
import { frenchStrings } from './frenchStrings.ts';
import { frenchParameters } from './frenchParameters.ts';
import { frenchWater } from './frenchWater.ts';
import { frenchWaterRules } from './frenchWaterRules.ts';
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
    ...frenchWaterRules,
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
  parameters: frenchParameters,
  missing: frenchMissing,
  figures: frenchFigures,
  sources: {
    record: 'Les chiffres du dossier, comparés entre eux.',
    common: 'Usage courant du métier.',
    guidelines:
      'Les valeurs guides pour l’eau de boisson auxquelles les échantillons sont comparés.',
    pumpKinds: 'Les limites de ce type de pompe ; leurs sources figurent au choix de la pompe.',
    fromMemory: 'de mémoire, non vérifié',
  },
};
