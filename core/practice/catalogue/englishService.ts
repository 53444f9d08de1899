import type { serviceCodes } from '../rules/service/codes.ts';
import type { FindingText } from './texts.ts';

/** The site, the work and the handover. */
export const englishService: Readonly<Record<keyof typeof serviceCodes, FindingText>> = {
  'dates.order': {
    title: 'Dates out of order',
    sentence: '{later} ({laterOn}) stands before {earlier} ({earlierOn}).',
    why: 'A well is agreed, drilled and finished in that order, and only a finished hole is developed, tested and signed for; one of the two dates is wrong.',
    todo: 'Compare both dates with the field log and correct the one that is wrong.',
  },
  'samples.sparse': {
    title: 'Metres without a sample',
    sentence:
      '{bareM} m of the hole have no sample, the first of them from {fromM} m to {toM} m; one is asked for each {eachM} m.',
    why: 'A layer that nobody laid out may be missed, and screen and seals are set by the samples.',
    todo: 'Write the samples that were taken; where none came up, say so in the log, and set no screen or seal there by guess.',
  },
  'pad.thin': {
    title: 'Concrete pad too thin',
    sentence: 'The concrete pad is {built} m thick; at least {least} m is asked for.',
    why: 'A thin pad cracks, and spilled water runs down along the casing.',
    todo: 'Measure the thickness at an edge; where it is so, look for cracks and have the pad recast or thickened.',
  },
  'pad.small': {
    title: 'Concrete pad small',
    sentence: 'The shorter side of the concrete pad is {built} m; at least {least} m is advised.',
    why: 'Water spilled by the users falls beside a small pad and softens the ground round the casing.',
    todo: 'Measure both sides; where it is so, widen the pad or pave round it with a fall away from the well.',
  },
  'drain.short': {
    title: 'Drain short',
    sentence: 'The drain is {built} m long; at least {least} m is common.',
    why: 'A short drain leaves a pool beside the well, where animals drink and mosquitoes breed.',
    todo: 'Lead the water on to a soakaway or a garden, lower than the pad.',
  },
  'drain.flat': {
    title: 'Drain too flat',
    sentence: 'The drain falls by {built} %; at least {least} % is asked for.',
    why: 'Water stands in a flat drain, which fills with silt and overflows onto the pad.',
    todo: 'Check the fall with a level or by pouring water; have the drain relaid where water stands.',
  },
  'near.latrine': {
    title: 'Latrine near the well',
    sentence:
      'A latrine lies {distance} m from the well, {slope}; at least {limit} m is asked for.',
    why: 'Germs from a pit travel with the groundwater towards a well that is pumped.',
    todo: 'Measure again. Look up the local rules: the strictest that applies holds. Have it moved or closed, or site the well elsewhere; a distance that is kept proves nothing about the water.',
  },
  'near.septicTank': {
    title: 'Septic tank near the well',
    sentence:
      'A septic tank lies {distance} m from the well, {slope}; at least {limit} m is asked for.',
    why: 'Tanks leak at their joints, and what leaks reaches the groundwater unfiltered.',
    todo: 'Measure again. Look up the local rules: the strictest that applies holds. Have it moved or closed, or site the well elsewhere; a distance that is kept proves nothing about the water.',
  },
  'near.soakaway': {
    title: 'Soakaway near the well',
    sentence:
      'A soakaway lies {distance} m from the well, {slope}; at least {limit} m is asked for.',
    why: 'It is made to let waste water into the ground, where the well may draw it in.',
    todo: 'Measure again. Look up the local rules: the strictest that applies holds. Have it moved or closed, or site the well elsewhere; a distance that is kept proves nothing about the water.',
  },
  'near.livestock': {
    title: 'Livestock near the well',
    sentence:
      'Livestock is kept {distance} m from the well, {slope}; at least {limit} m is asked for.',
    why: 'Dung and urine bring germs and nitrate into shallow groundwater, and animals foul the pad.',
    todo: 'Measure again. Look up the local rules: the strictest that applies holds. Have it moved or closed, or site the well elsewhere; a distance that is kept proves nothing about the water.',
  },
  'near.graveyard': {
    title: 'Graveyard near the well',
    sentence:
      'A graveyard lies {distance} m from the well, {slope}; at least {limit} m is asked for.',
    why: 'What decays in graves seeps down with the rain for many years.',
    todo: 'Measure again. Look up the local rules: the strictest that applies holds. Site the well elsewhere, uphill of it; a distance that is kept proves nothing about the water.',
  },
  'near.wasteDump': {
    title: 'Waste dump near the well',
    sentence:
      'A waste dump lies {distance} m from the well, {slope}; at least {limit} m is asked for.',
    why: 'Rain washes salts, metals and germs out of waste, and nobody knows all that was thrown there.',
    todo: 'Measure again. Look up the local rules: the strictest that applies holds. Have it moved or closed, or site the well elsewhere; a distance that is kept proves nothing about the water.',
  },
  'near.fuel': {
    title: 'Fuel or chemicals near the well',
    sentence:
      'A store of fuel or chemicals lies {distance} m from the well, {slope}; at least {limit} m is asked for.',
    why: 'A little fuel or pesticide spoils much water, and the ground does not filter it out.',
    todo: 'Measure again. Look up the local rules: the strictest that applies holds. Have it moved or closed, or site the well elsewhere; a distance that is kept proves nothing about the water.',
  },
  'near.openWater': {
    title: 'Open water near the well',
    sentence:
      'Open water lies {distance} m from the well, {slope}; at least {limit} m is asked for.',
    why: 'A stream or pond may flood the well, and a well beside it draws surface water in.',
    todo: 'Measure again at high water. Look up the local rules: the strictest that applies holds. Raise pad and casing above the highest flood, or site the well elsewhere.',
  },
  'near.building': {
    title: 'Building near the well',
    sentence:
      'A building lies {distance} m from the well, {slope}; at least {limit} m is asked for.',
    why: 'Its roof and waste water run towards the well, and no rig gets to the well any more.',
    todo: 'Measure again. Look up the local rules: the strictest that applies holds. Lead roof and waste water away from the well, and keep a way open for a rig.',
  },
  'pit.nearWater': {
    title: 'Base of a pit near the water',
    sentence:
      'The base of a pit, {baseM} m deep, is less than {limitM} m above the highest rest level read, {restM} m, if its ground is as high as the well’s.',
    why: 'Germs die off in dry ground over the water; where the pit stands in or just over it, they go with the water.',
    todo: 'Measure how much higher or lower the ground of the pit is; have the pit shallower, raised or moved, as the strictest local rule that applies asks.',
  },
  'intake.shallow': {
    title: 'Pump intake near or above the water level',
    sentence:
      'The pump’s intake, at {intakeM} m, is less than {underM} m under the lowest water level known, {levelM} m.',
    why: 'A pump that draws air gives less, wears out and may burn.',
    todo: 'Hang the pump deeper if screen and bottom allow it, or pump at a lower rate; where the level was read at a higher rate than the pump’s, reckon it for that rate.',
  },
  'intake.inScreen': {
    title: 'Pump intake within a screen',
    sentence:
      'The pump’s intake, at {intakeM} m, hangs within the screen from {screenTopM} m to {screenBottomM} m.',
    why: 'Water rushes through the slots beside the intake, brings sand with it and wears both.',
    todo: 'Hang the pump in plain pipe, above the screen where the water level allows it; where that cannot be, keep the rate low and watch for sand.',
  },
  'intake.low': {
    title: 'Pump intake near the bottom',
    sentence:
      'The pump’s intake, at {intakeM} m, is less than {aboveM} m above the bottom of the well, {footM} m.',
    why: 'Sand and silt gather at the bottom, and the pump would draw them in or stand in them.',
    todo: 'Raise the pump if the water level allows it; sound the bottom, and have it cleaned out where it has silted up.',
  },
  'development.short': {
    title: 'Development short',
    sentence: 'The well was developed for {hours} h in all; at least {leastH} h is asked for.',
    why: 'Fines and mud that stay in the pack and the wall hold water back, and come out as sand later.',
    todo: 'Develop on, gently at first, until the water stays clear and the level steady; sound the pack and top it up where it settled.',
  },
  'development.turbid': {
    title: 'Water turbid at the end of development',
    sentence: 'Development ended with a turbidity of {value} NTU; at most {most} NTU is wanted.',
    why: 'Turbid water wears the pump, shields germs from chlorine, and users turn away from it.',
    todo: 'Develop on until the water stays clear; where it does not, look for mud left in the pack, or a screen against clay.',
  },
  'development.sandy': {
    title: 'Sand at the end of development',
    sentence: 'Development ended with {value} mg/l of sand; at most {most} mg/l is wanted.',
    why: 'Sand wears pump and screen, fills the sump, and leaves hollows in the ground behind.',
    todo: 'Develop on, gently; where sand does not come down, check slot and pack against the ground, and whether the pack has a bridge.',
  },
  'contact.short': {
    title: 'Chlorine pumped off soon',
    sentence: 'The chlorine stood in the well for {hours} h; at least {leastH} h is asked for.',
    why: 'Chlorine needs time to reach the pack and to kill what lives on pipe and wall.',
    todo: 'Disinfect again and let the chlorine stand its time, with the well closed to users; pump it off away from fields and streams.',
  },
  'bacteria.undeveloped': {
    title: 'Sampled for bacteria before development ended',
    sentence:
      'The last water sample for bacteria was taken on {takenOn}; development went on until {endedOn}.',
    why: 'Development brings up what drilling left in the ground, and changes what the water holds.',
    todo: 'Sample again now that development has ended; what the result allows is for the health authority to say.',
  },
  'bacteria.undisinfected': {
    title: 'Not sampled for bacteria since disinfection',
    sentence:
      'The last water sample for bacteria was taken on {takenOn}, before the well was disinfected.',
    why: 'Only a sample taken after the disinfection shows whether it reached what drilling and pump brought in.',
    todo: 'Sample again once the chlorine is pumped off and gone; what the result allows is for the health authority to say.',
  },
  'bacteria.soon': {
    title: 'Sampled for bacteria too soon',
    sentence:
      'Water was sampled for bacteria on {takenOn}; the chlorine was pumped off on {pumpedOffOn}, and at least {waitDays} d should lie between.',
    why: 'Chlorine left in pack and pipes hides bacteria, which come back after a few days.',
    todo: 'Sample again when the chlorine has been gone for that long; what the result allows is for the health authority to say.',
  },
  'bacteria.chlorine': {
    title: 'Chlorine in a sample for bacteria',
    sentence:
      'Free chlorine was {chlorineMgL} mg/l when water was sampled for bacteria; it should be gone, at most {mostMgL} mg/l.',
    why: 'Chlorine goes on killing in the bottle, so that the laboratory finds less than the well holds.',
    todo: 'Pump until the chlorine is gone and sample again; what the result allows is for the health authority to say.',
  },
  'handover.incomplete': {
    title: 'Lacking for handover: {item}',
    sentence: 'The record lacks {item}.',
    why: 'Who repairs, licenses or follows the well in ten years has this record alone.',
    todo: 'Write it now, while people still know; where nobody does, say so in the notes.',
  },
  'report.late': {
    title: 'Report signed late',
    sentence:
      'The supervisor signed on {signedOn}, {days} d after the last work on {endedOn}; reports are due within {dueDays} d.',
    why: 'Registers take reports within a term, of dry holes as well, and memory fades.',
    todo: 'File the report with the water authority now; its own term is the one that counts.',
  },
};
