import type { LayingOutWords } from './words.ts';

/** British English. */
export const english: LayingOutWords = {
  kinds: {
    safest: 'Safest',
    mostProductive: 'Most productive',
    fewestCuts: 'Fewest cuts',
  },
  why: {
    safest:
      'Of the screens that are long enough it begins the deepest, at {topM} m, {underDryM} m under the lowest rest level; {goodM} m of it stand in ground that conducts well. A cut is made only where it gains half a metre.',
    mostProductive:
      'It has the most screen in ground that conducts well and under the water while pumping: {goodM} m, from {topM} to {footM} m.',
    fewestCuts:
      'It asks for the fewest cuts ({cuts}); {goodM} m of its screen stand in ground that conducts well, from {topM} to {footM} m.',
    onlyOne:
      'It is the best in every way that these pipes allow: {goodM} m of screen in ground that conducts well, from {topM} to {footM} m.',
  },
  obstacles: {
    noConductingGround:
      'The log names no ground that conducts water. Look again at the samples and strikes, or drill on.',
    groundAboveDryLevel:
      'The ground that conducts lies above the lowest rest level, {levelM} m. Drill deeper, or check that level.',
    groundAbovePumpingLevel:
      'Too little ground that conducts lies under the water while pumping, {levelM} m. Drill deeper, or plan a lower rate.',
    tooMuchTightGround:
      'Any screen would stand in tight ground over more than {percent} % of its length. Bring shorter screens, or cut one.',
    aquiferTooThin:
      'No screen is short enough for the ground that conducts and may be screened. Drill on, or bring shorter screens.',
    annulusTooNarrow:
      'The pipes leave less than {gapMm} mm to the wall of the hole. Ream the hole, or bring narrower pipes.',
    holeTooShallowForSump:
      'Below the screen there is no room for a sump of {sumpM} m: the hole is open to {holeM} m. Clean it out or drill deeper.',
    noRoomForPackAndSeals:
      'Above the screen there is no room for {packM} m of pack, {clayM} m of clay and the sanitary seal to {sealM} m. Drill deeper, or screen lower ground.',
    noRoomForPartingSeal:
      'The ground between two aquifers has no room for the pack above the slots, {packM} m, and {clayM} m of clay. Screen the upper aquifer alone, or drill deeper into the lower one.',
    screensTooFew:
      'The screens on site are too few or do not fit: they come to {screenM} m. Bring more, or other lengths.',
    plainPipesTooFew:
      'The plain pipes on site are too few or do not fit: they come to {plainM} m. Bring more, or other lengths.',
    entranceTooFast:
      'Water would enter faster than {velocityMs} m/s. Bring more screen or one with more open area, or plan a lower rate.',
  },
  missing: {
    log: 'log',
    boreDepth: 'depth of the hole',
    boreDiameter: 'diameter of the hole',
    restLevel: 'rest water level',
    plainPipes: 'plain pipes on site, with their length',
    screenPipes: 'screens on site, with their length',
    pipeLength: 'length of the pipe',
    pipeDiameter: 'outside diameter of the pipe',
    insertion: 'how far the pipe goes into the bell',
    designRate: 'rate that the well is to give',
    drawdown: 'drawdown to be expected',
    openArea: 'open area of the screen',
  },
  pieces: { cap: 'bottom cap', sump: 'sump', screen: 'screen', plain: 'plain pipe' },
  parts: {
    casingTop: 'top of the casing',
    casingFoot: 'foot of the casing',
    screen: 'screen',
    fill: 'fill',
  },
  edges: { top: 'top', foot: 'foot' },
};
