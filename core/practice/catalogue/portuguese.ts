import { portugueseCasing } from './portugueseCasing.ts';
import { portugueseCover } from './portugueseCover.ts';
import { portugueseService } from './portugueseService.ts';
import { portugueseServiceWords } from './portugueseServiceWords.ts';
import { portugueseFigures } from './portugueseFigures.ts';
import { portugueseMissing } from './portugueseMissing.ts';
import { portugueseAnnulus } from './portugueseAnnulus.ts';
import { portugueseGround } from './portugueseGround.ts';
import { portugueseStrings } from './portugueseStrings.ts';
import { portugueseWater } from './portugueseWater.ts';
import type { CatalogueTexts } from './texts.ts';

/** The catalogue in Portuguese, in its European spelling. */
export const portuguese: CatalogueTexts = {
  findings: {
    ...portugueseGround,
    ...portugueseStrings,
    ...portugueseAnnulus,
    ...portugueseWater,
    ...portugueseCover,
    ...portugueseCasing,
    ...portugueseService,
  },
  words: {
    gravelPack: 'maciço filtrante',
    formationStabiliser: 'cascalho de suporte',
    claySeal: 'selo de argila',
    bentonite: 'bentonite',
    cementGrout: 'cimentação',
    concrete: 'betão',
    backfill: 'aterro',
    naturalCollapse: 'desabamento natural',
    open: 'anular livre',
    cap: 'tampão de fundo',
    sump: 'tubo de decantação',
    screen: 'tubo-ralo',
    plain: 'tubo liso',
    reducer: 'redução',
    ...portugueseServiceWords,
  },
  missing: portugueseMissing,
  figures: portugueseFigures,
  sources: {
    record: 'Os números do registo, comparados entre si.',
    common: 'Prática corrente do ofício.',
    fromMemory: 'de memória, não verificado',
  },
};
