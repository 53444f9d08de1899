import { portuguese as details } from '../../../../core/drawing/parts/details/words/pt.ts';
import type { ChoiceWords } from '../catalogue.ts';

export const choices: ChoiceWords = {
  yesNo: { yes: 'sim', no: 'não' },
  surroundings: details.kinds,
  slope: details.slopes,
  boundary: { sharp: 'nítido', gradual: 'gradual', uncertain: 'incerto' },
  grainScheme: { iso14688: 'ISO 14688', wentworth: 'Wentworth' },
  datum: { ground: 'solo', casingTop: 'topo do tubo' },
  levelState: { static: 'em repouso', pumping: 'em bombagem', recovering: 'em recuperação' },
  development: {
    surging: 'pistonagem',
    bailing: 'limpeza com caçamba',
    airLift: 'ar comprimido (air-lift)',
    jetting: 'jatos de água',
    overpumping: 'sobrebombagem',
    backwashing: 'lavagem em contracorrente',
    other: 'outro',
  },
  test: { step: 'por escalões', constantRate: 'a caudal constante', recovery: 'recuperação' },
  where: { field: 'campo', laboratory: 'laboratório' },
};
