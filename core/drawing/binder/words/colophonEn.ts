import type { ColophonWords } from './colophon.ts';

export const colophonEnglish: ColophonWords = {
  made: 'Made',
  madeSays: 'Made on {day} with Borefolio {version}.',
  madeBy: 'By {name}.',
  hash: 'SHA-256 over the revisions that went in: {hash}',
  noHash: 'No hash of the archive was taken.',
  wells: 'Wells',
  filter: 'Asked for: {filter}.',
  allWells: 'Asked for: all wells of the archive.',
  counts: 'Wells in this binder: {n}. Wells whose papers could not be made: {failed}.',
  revisions:
    'Each well is shown as its newest revision stood when the binder was made. What was typed later is not in it.',
  practices: 'Practices that wells were judged by',
  named: '{name}, version {version}: {wells}',
  guidelines: 'Guideline values that samples were compared with',
  noSamples: 'No well of this binder has a water sample on record.',
  how: 'How it was made',
  howSays: [
    'Every page is drawn from the records alone. The same records give the same pages.',
    'Map: equirectangular about the middle of each sheet, WGS 84; north is up. Its scale is right at the middle.',
    'Sections: distances are geodesics on WGS 84 from well to well, added up; the line may bend at each well.',
    'Medians are the value in the middle; of an even count, the mean of both in the middle.',
    'Geology of a well: the material of the greater part of its log. At screens: the material along the greater part of the screens.',
  ],
  sources: 'Sources of figures',
  sourcesSays: [
    'WGS 84: NGA.STND.0036_1.0.0_WGS84.',
    'Lengths of degrees: Snyder 1987, Map Projections, USGS Professional Paper 1395.',
    'Grid: Universal Transverse Mercator, by Krüger 1912.',
    'Geodesics: Vincenty 1975, Survey Review 23 (176).',
    'Guideline values, limits and factors: the sources stand on the papers of each well.',
  ],
  failed: 'Wells whose papers could not be made',
};
