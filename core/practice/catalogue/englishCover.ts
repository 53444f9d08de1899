import type { coverCodes } from '../rules/cover/codes.ts';
import type { FindingText } from './texts.ts';

/** What stands between wall and casing. */
export const englishCover: Readonly<Record<keyof typeof coverCodes, FindingText>> = {
  'pack.bare': {
    title: 'Screen without pack',
    sentence: 'Along the screen from {fromM} m to {toM} m no pack is recorded but: {fill}.',
    why: 'Loose ground without pack runs through the slots and wears pump and screen; clay or grout at the slots shuts them.',
    todo: 'Set or top up the pack before anything is poured on it. In a finished well, watch for sand and for a weak yield, and develop again.',
  },
  'pack.low': {
    title: 'Pack ends too low',
    sentence:
      'The pack goes on {aboveM} m above the screen, whose top is at {screenM} m; {wantedM} m are wanted, and less than {graveM} m is too little to settle.',
    why: 'Pack settles while the well is developed and used; what slides down must not leave slots bare or bring the seal down to them.',
    todo: 'Sound the top of the pack after surging and top it up before the seal is set.',
  },
  'clay.thin': {
    title: 'Too little clay on the pack',
    sentence:
      'On the pack, whose top is at {packM} m, stand {lengthM} m of clay or grout; {wantedM} m are wanted, and less than {graveM} m closes nothing.',
    why: 'The pack is an open way down to the screen: water from higher layers and from the ground runs in where nothing tight lies on it.',
    todo: 'Set clay balls, bentonite or grout on the sounded top of the pack, let clay swell, and sound again.',
  },
  'seal.none': {
    title: 'No sanitary seal',
    sentence:
      'In the upper {wantedM} m neither clay nor grout stands next to the wall of the hole, but: {fill}.',
    why: 'Foul water from the surface runs down along the casing to the screen.',
    todo: 'Clear the upper annulus and fill it with clay or cement grout from its foot upwards; until then do not hand the well over.',
  },
  'seal.short': {
    title: 'Sanitary seal too short',
    sentence:
      'The sanitary seal stands from {fromM} m to {toM} m; it is to begin no deeper than {startM} m and to reach {wantedM} m.',
    why: 'Loose topsoil, roots and burrows lead foul water past a seal that is short.',
    todo: 'Add clay or grout where it is wanting, or correct the depths.',
  },
  'open.above': {
    title: 'Annulus left open',
    sentence: 'The annulus stands open from {fromM} m to {toM} m, above where water goes in.',
    why: 'An open annulus leads water from one layer down into another, and in loose ground it falls in.',
    todo: 'Fill it, with clay or grout where layers are to be parted.',
  },
  'aquifers.joined': {
    title: 'Two aquifers joined by the annulus',
    sentence:
      'The ground from {fromM} m to {toM} m holds back water over {thicknessM} m ({limitM} m or more count), but something open runs through it from one aquifer into the other: {fill}.',
    why: 'Foul, salty or rusty water of one aquifer gets into the other, and one drains into the other for good.',
    todo: 'Close the annulus with clay or grout in the ground that parts them, if it is still open; else ask the authority and compare the two waters.',
  },
  'aquifers.screened': {
    title: 'Two aquifers joined by the casing',
    sentence:
      'String {string} takes water above and below the ground from {fromM} m to {toM} m, which holds back water over {thicknessM} m ({limitM} m or more count).',
    why: 'Inside the casing water goes from one aquifer into the other whenever the pump rests; the worse of the two decides.',
    todo: 'Compare levels and quality of the two. Where they differ, or where the code forbids it, use one and close off the other.',
  },
  'gap.narrow': {
    title: 'Narrow annulus',
    sentence:
      'Between a hole of {holeMm} mm and a pipe of {pipeMm} mm the pack has {gapMm} mm of room; {wantedMm} mm are wanted, and less than {graveMm} mm is hard to pour.',
    why: 'In a narrow annulus gravel bridges at couplings and where the casing leans, and the pack is thin on one side.',
    todo: 'Keep the pipe central, pour slowly with water and sound often. Before the casing is set, a wider hole or a narrower pipe is better.',
  },
  'poured.little': {
    title: 'Less poured than computed',
    sentence:
      '{fill} from {fromM} m to {toM} m: {poured} litres were poured where {computed} were computed, {percent} %; at least {limitPercent} % were to be expected.',
    why: 'A fill that reaches its height with too little likely hangs on a bridge with a hollow under it, or the hole has fallen in.',
    todo: 'Sound again, surge or rod gently until the top stays, and top up; count what goes in.',
  },
  'poured.much': {
    title: 'More poured than computed',
    sentence:
      '{fill} from {fromM} m to {toM} m: {poured} litres were poured where {computed} were computed, {percent} %; at most {limitPercent} % were to be expected.',
    why: 'The hole is likely washed out there, or the fill goes astray into fissures or past its place.',
    todo: 'Compare with what drilling told of caving and loss, sound the top again after a while, and correct the diameter if it is known better.',
  },
};
