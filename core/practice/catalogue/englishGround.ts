import type { FindingCode, FindingText } from './texts.ts';

type GroundCode = Extract<FindingCode, `bore.${string}` | `log.${string}` | `sample.${string}`>;

/** The hole and the log. */
export const englishGround: Record<GroundCode, FindingText> = {
  'bore.reversed': {
    title: 'Bore section upside down',
    sentence: 'A bore section ends above where it starts; it is taken as {fromM} m to {toM} m.',
    why: 'Depths count downwards, so the foot of a section is the larger figure.',
    todo: 'Swap the two depths, or correct the one that is wrong.',
  },
  'bore.empty': {
    title: 'Bore section without length',
    sentence: 'A bore section starts and ends at {fromM} m; it is left out.',
    why: 'A section without length tells no diameter.',
    todo: 'Write the depth at which the bit was changed, or remove the section.',
  },
  'bore.aboveGround': {
    title: 'Bore section above ground',
    sentence: 'A bore section starts above ground, at {fromM} m; it is cut at ground level.',
    why: 'Depths are measured from ground level, and there is no hole above it.',
    todo: 'Check whether the depths were measured from another mark, such as the rig’s table.',
  },
  'bore.noDiameter': {
    title: 'Bore section without diameter',
    sentence: 'The bore section from {fromM} m to {toM} m has no diameter; it is left out.',
    why: 'Without the diameter no annulus and no volume can be told.',
    todo: 'Write the diameter of the bit that drilled this section.',
  },
  'bore.overlap': {
    title: 'Bore sections overlap',
    sentence:
      'From {fromM} m to {toM} m the hole is recorded with two diameters, {otherMm} mm and {diameterMm} mm; the wider is taken.',
    why: 'A hole that was reamed is as wide as its widest bit, but the depths may also be wrong.',
    todo: 'If the hole was reamed, end the narrower section where the wider one ends.',
  },
  'bore.gap': {
    title: 'Diameter of the hole missing',
    sentence: 'No diameter of the hole is recorded from {fromM} m to {toM} m.',
    why: 'Without the diameter no annulus and no volume can be told here.',
    todo: 'Write the bit that drilled this stretch.',
  },
  'bore.diametersUnknown': {
    title: 'Diameter of the hole not recorded',
    sentence: 'The diameter of the hole is not recorded at any depth down to {toM} m.',
    why: 'Without it the annulus has no volume, and whether the strings fit is not known.',
    todo: 'Write each bit with the depths that it drilled.',
  },
  'bore.depthNotBelowGround': {
    title: 'Depth of the hole impossible',
    sentence: 'The depth reached is recorded as {depthM} m, which is not below ground.',
    why: 'Depths count downwards from ground level.',
    todo: 'Write the depth reached as a positive figure.',
  },
  'bore.depthAssumed': {
    title: 'Depth of the hole not recorded',
    sentence:
      'The depth of the hole is not recorded; {depthM} m is taken, the deepest point of the log or the strings.',
    why: 'The hole may be deeper, and then volumes and the foot of the drawing are wrong.',
    todo: 'Write the depth reached.',
  },
  'bore.sectionBelowDepth': {
    title: 'Bore section below the hole',
    sentence:
      'A bore section goes on from {fromM} m to {toM} m, but the hole reached {depthM} m; it is cut there.',
    why: 'One of the two depths is wrong.',
    todo: 'Correct the section or the depth reached.',
  },
  'bore.foundBelowDepth': {
    title: 'Sounded deeper than drilled',
    sentence: 'The hole was found {foundM} m deep, deeper than the {depthM} m that were drilled.',
    why: 'A hole can fall in before casing, but not grow deeper.',
    todo: 'Check both depths, and from which mark each was measured.',
  },
  'sample.reversed': {
    title: 'Sample upside down',
    sentence: 'A sample ends above where it starts; it is taken as {fromM} m to {toM} m.',
    why: 'Depths count downwards, so the foot of a sample is the larger figure.',
    todo: 'Swap the two depths, or correct the one that is wrong.',
  },
  'sample.belowHole': {
    title: 'Sample from below the hole',
    sentence: 'A sample is said to come from {toM} m, but the hole ends at {depthM} m.',
    why: 'Nothing can come up from where nobody drilled: one of the two depths is wrong.',
    todo: 'Count the bags against the metres drilled, and correct the sample or the depth reached.',
  },
  'log.reversed': {
    title: 'Log interval upside down',
    sentence: 'A log interval ends above where it starts; it is taken as {fromM} m to {toM} m.',
    why: 'Depths count downwards, so the foot of an interval is the larger figure.',
    todo: 'Swap the two depths, or correct the one that is wrong.',
  },
  'log.empty': {
    title: 'Log interval without length',
    sentence: 'A log interval starts and ends at {fromM} m; it is left out.',
    why: 'An interval without length cannot be drawn.',
    todo: 'Write where the material ended, or remove the interval.',
  },
  'log.overlap': {
    title: 'Log intervals overlap',
    sentence: 'From {fromM} m to {toM} m the log holds two materials.',
    why: 'A lens within an interval is drawn; else the upper interval is drawn to its foot, and the other may be the true one.',
    todo: 'Let each interval start where the one above it ends.',
  },
  'log.sameRange': {
    title: 'Several materials over one range',
    sentence:
      'From {fromM} m to {toM} m the log holds {count} intervals; they are taken as one, the first as the principal.',
    why: 'Drillers log two materials that alternate in this way.',
    todo: 'If they lie one over the other, write the depth at which the material changes.',
  },
  'log.gap': {
    title: 'Gap in the log',
    sentence: 'The log says nothing from {fromM} m to {toM} m.',
    why: 'What the screen and the seals stand against cannot be judged there.',
    todo: 'Write what was seen, or an interval without sample where nothing was.',
  },
  'log.short': {
    title: 'Log ends above the foot of the hole',
    sentence: 'The log ends at {fromM} m; the hole goes on to {toM} m.',
    why: 'What the foot of the well stands in is not known.',
    todo: 'Write what was seen below, or correct the depth reached.',
  },
  'log.aboveGround': {
    title: 'Log starts above ground',
    sentence: 'The log starts above ground, at {fromM} m.',
    why: 'Depths are measured from ground level.',
    todo: 'Check whether the depths were measured from another mark, such as the rig’s table.',
  },
  'log.belowHole': {
    title: 'Log deeper than the hole',
    sentence: 'The log goes on to {toM} m, but the hole is {depthM} m deep.',
    why: 'Nothing can have been seen below the hole; one of the two depths is wrong.',
    todo: 'Correct the foot of the interval or the depth of the hole.',
  },
};
