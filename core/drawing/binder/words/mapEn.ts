import type { MapWords } from './map.ts';

export const mapEnglish: MapWords = {
  overview: 'Location map: overview of the sheets',
  sheet: 'Location map: sheet {n} of {of}',
  without: 'Wells without a position',
  datum: 'WGS 84, degrees at the upper and left edge.',
  grid: 'Crosses: UTM zone {zone}, every {step} km, at the lower and right edge.',
  backdrop: 'Dashes and dots: outlines of the backdrop; plain lines: its other lines.',
  unnamed: '{n} signs stand too close for a number.',
  elsewhere: 'Signs that have their number on another sheet: {n}.',
  led: 'A thin line ties a number to its sign.',
};
