import type { FindingCode, FindingText } from './texts.ts';

type WaterCode = Extract<FindingCode, `level.${string}` | `strike.${string}` | `pump.${string}`>;

/** Levels, strikes and the pump. */
export const englishWater: Record<WaterCode, FindingText> = {
  'level.noStickUp': {
    title: 'Level cannot be reduced to ground',
    sentence:
      'A level was read {readM} m below the casing top, but the height of the casing top is not known; it is left out.',
    why: 'Levels of different marks cannot be set side by side.',
    todo: 'Write the height of the casing top above ground, or the tally with its setting.',
  },
  'level.stickUpAssumed': {
    title: 'Level reduced with an assumed height',
    sentence:
      'A level read {readM} m below the casing top is drawn at {fromM} m below ground; the casing top at {stickUpM} m above ground is assumed.',
    why: 'The level is wrong by as much as the assumed height is.',
    todo: 'Measure the height of the casing top above ground and write it.',
  },
  'level.aboveGround': {
    title: 'Water above ground',
    sentence: 'A water level stands {heightM} m above ground.',
    why: 'True in a flowing well; else the reading or its mark is wrong.',
    todo: 'Check the reading, and whether it was read from the ground or the casing top.',
  },
  'level.belowHole': {
    title: 'Water below the hole',
    sentence: 'A water level of {levelM} m lies below the hole, which is {depthM} m deep.',
    why: 'A tape cannot find water below the hole; one of the two figures is wrong.',
    todo: 'Correct the reading, its mark or the depth of the hole.',
  },
  'strike.aboveGround': {
    title: 'Water strike above ground',
    sentence: 'A water strike is recorded {heightM} m above ground.',
    why: 'Depths count downwards from ground level.',
    todo: 'Write the depth as a positive figure.',
  },
  'strike.belowHole': {
    title: 'Water strike below the hole',
    sentence: 'A water strike at {strikeM} m lies below the hole, which is {depthM} m deep.',
    why: 'Water cannot have been met below the hole; one of the two depths is wrong.',
    todo: 'Correct the depth of the strike or of the hole.',
  },
  'strike.riseBelow': {
    title: 'Water fell after the strike',
    sentence: 'Water met at {strikeM} m is said to have risen to {riseM} m, which is deeper.',
    why: 'The level after a strike lies at or above the strike.',
    todo: 'Write the level as depth below ground, not as height of rise.',
  },
  'pump.aboveGround': {
    title: 'Pump intake above ground',
    sentence: 'The pump’s intake is recorded {heightM} m above ground.',
    why: 'Depths count downwards from ground level.',
    todo: 'Write the depth as a positive figure.',
  },
  'pump.belowHole': {
    title: 'Pump intake below the hole',
    sentence: 'The pump’s intake at {intakeM} m lies below the hole, which is {depthM} m deep.',
    why: 'One of the two depths is wrong.',
    todo: 'Correct the depth of the intake or of the hole.',
  },
  'pump.belowString': {
    title: 'Pump intake below the string',
    sentence:
      'The pump’s intake at {intakeM} m lies below string {string}, which is closed at {bottomM} m.',
    why: 'A pump cannot pass a cap; one of the two depths is wrong.',
    todo: 'Correct the depth of the intake, or the tally and setting of the string.',
  },
  'pump.inOpenHole': {
    title: 'Pump intake under the casing',
    sentence:
      'The pump’s intake at {intakeM} m hangs in the open hole, under the string that ends at {bottomM} m.',
    why: 'Stones from the wall can jam a pump in an open hole.',
    todo: 'Check that this is meant.',
  },
  'pump.inSump': {
    title: 'Pump intake in the sump',
    sentence: 'The pump’s intake at {intakeM} m hangs in the sump.',
    why: 'The sump gathers sand and silt, and the pump would draw them.',
    todo: 'Check the depth of the intake and the tally.',
  },
  'pump.cylinderBelowIntake': {
    title: 'Pump upside down',
    sentence:
      'The top of the pump’s cylinder at {cylinderTopM} m lies below its intake at {intakeM} m.',
    why: 'The intake is at the lower end of the pump.',
    todo: 'Swap the two depths, or correct the one that is wrong.',
  },
  'pump.widerThanCasing': {
    title: 'Pump wider than the casing',
    sentence:
      'The pump is {bodyMm} mm wide; string {string} is {insideMm} mm inside at its narrowest on the way.',
    why: 'It could not have gone in; one of the measures is wrong.',
    todo: 'Correct the pump’s diameter, or the diameters and walls of the string.',
  },
};
