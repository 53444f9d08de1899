import type { PlotWords } from './plots.ts';

export const plotsEnglish: PlotWords = {
  spread: 'Plots: depths and yields',
  success: 'Plots: what drilling found',
  quality: 'Plots: water quality',
  depths: 'Depths drilled',
  safeYields: 'Safe rates of the tests',
  otherYields: 'Other rates: of the last test, or of the pump in use',
  known: 'Known of {n} of {of} wells.',
  median: 'Line of dashes and dots: the median, {value}.',
  byYear: 'By year',
  byGeology: 'By ground',
  noLog: 'no log',
  outcomes: { water: 'completed well', dry: 'dry hole', open: 'neither, or not recorded' },
  share: '{water} of {decided} with water ({share} %)',
  openCount: '{open} open',
  successSays:
    'Ground: the material of the greater part of each log. Holes that are only laid out are left out. The share counts completed wells among completed wells and dry holes. Few holes tell little, and holes were not sited by chance: these shares foretell nothing of the next one.',
  qualitySays:
    'A dot for the last result of each well in which the parameter was looked for; a ring where it lay below the detection limit, at that limit. Full lines: values that rest on health; dashed lines: all others. Results beyond the axis stand at its end.',
  set: '{name}: samples of {n} of {of} wells',
  results: 'results: {n}',
  above: 'above {value}: {n} of {of}',
  under: 'under {value}: {n} of {of}',
  untold: 'not told: {n}',
};
