import { portugueseCasing } from './portugueseCasing.ts';
import { portugueseCover } from './portugueseCover.ts';
import { portugueseService } from './portugueseService.ts';
import { portugueseServiceWords } from './portugueseServiceWords.ts';
import { portugueseFigures } from './portugueseFigures.ts';
import { portugueseMissing } from './portugueseMissing.ts';
import { portugueseAnnulus } from './portugueseAnnulus.ts';
import { portugueseGround } from './portugueseGround.ts';
import { portugueseStrings } from './portugueseStrings.ts';
import { portugueseParameters } from './portugueseParameters.ts';
import { portugueseWater } from './portugueseWater.ts';
import { portugueseWaterRules } from './portugueseWaterRules.ts';
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
    ...portugueseWaterRules,
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
  parameters: portugueseParameters,
  missing: portugueseMissing,
  figures: portugueseFigures,
  sources: {
    record: 'Os números do registo, comparados entre si.',
    common: 'Prática corrente do ofício.',
    guidelines: 'Os valores-guia para a água de consumo com que as amostras se comparam.',
    pumpKinds: 'Os limites deste tipo de bomba; as suas fontes estão na escolha da bomba.',
    fromMemory: 'de memória, não verificado',
  },
};
