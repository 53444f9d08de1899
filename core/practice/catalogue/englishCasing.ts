import type { casingCodes } from '../rules/casing/codes.ts';
import type { FindingText } from './texts.ts';

/** Pipes and screens. */
export const englishCasing: Readonly<Record<keyof typeof casingCodes, FindingText>> = {
  'sump.length': {
    title: 'Sump of unusual length',
    sentence:
      'String {string}: {sumpM} m of plain pipe stand under the lowest screen; {leastM} m to {mostM} m is asked for.',
    why: 'Sand that comes in settles there: in a short sump it soon covers the screen, a long one only costs pipe and hole.',
    todo: 'Check the tally; before setting, put a pipe of that length under the screen.',
  },
  'foot.open': {
    title: 'Foot of the casing not closed',
    sentence: 'String {string}: the tally has no cap at its lower end, at {fromM} m.',
    why: 'Through an open foot sand and clay rise into the casing and past the screen.',
    todo: 'Write the cap if there is one; else close the foot before the string goes in.',
  },
  'screened.ground': {
    title: 'Screen in ground that gives no water',
    sentence:
      'String {string}: of the screen from {fromM} m to {toM} m, {tightM} m of {screenM} m stand in ground that hardly lets water through.',
    why: 'Such slots give no water, and clay and silt pass through them.',
    todo: 'Check log and tally; before setting, put plain pipe there and the screen in sand, gravel or fractured rock.',
  },
  'screened.dry': {
    title: 'Screen above the lowest rest level',
    sentence:
      'String {string}: the screen from {fromM} m to {toM} m should begin no higher than {limitM} m; at rest the water stands as deep as {levelM} m.',
    why: 'The part above the water gives none; air comes in there, and iron and slime clog the slots.',
    todo: 'Check levels and tally; before setting, put the screen deeper.',
  },
  'screened.pumping': {
    title: 'Screen above the pumping level',
    sentence:
      'String {string}: the screen from {fromM} m to {toM} m should begin no higher than {limitM} m; while the well is pumped, the water stands at {levelM} m.',
    why: 'Water then falls into the casing through the upper slots with air, which clogs them and harms the pump.',
    todo: 'Pump less, or before setting put the screen deeper.',
  },
  'grain.pack': {
    title: 'Pack grain does not suit the ground',
    sentence:
      'String {string}, {fromM} m to {toM} m: the pack, about {pack} mm, is {ratio} times as coarse as the finest ground there, {ground} mm; {least} to {most} times is asked for (both: the size that 70 % is retained on).',
    why: 'Too coarse a pack lets sand through for ever; too fine a one holds water back.',
    todo: 'Check the grain of pack and ground; before pouring, sieve a pack that suits the finest ground screened. Where it is poured already, develop gently and watch the sand.',
  },
  'slot.pack': {
    title: 'Slots too wide for the pack',
    sentence:
      'String {string}: slots of {slot} mm stand in a pack of {finest} mm to {coarsest} mm; to keep {keeps} % of it back they may be {limit} mm wide.',
    why: 'The pack runs into the well through slots that are too wide, and the ground after it.',
    todo: 'Check slots and pack; before pouring, take a coarser pack, or before setting a narrower slot.',
  },
  'slot.ground': {
    title: 'Slots too wide for ground without a pack',
    sentence:
      'String {string}: slots of {slot} mm stand in the bare ground from {fromM} m to {toM} m; to keep {keeps} % of it back they may be {limit} mm wide.',
    why: 'Without a pack the ground must make its own from what the slots keep back; else the well gives sand.',
    todo: 'Check slots and log; before setting, take a narrower slot, or pour a gravel pack.',
  },
  'screened.openArea': {
    title: 'Screen with little open area',
    sentence:
      'String {string}: the screen from {fromM} m to {toM} m is open over {percent} % of its surface; at least {least} % is asked for.',
    why: 'Through few slots the pack cannot be surged clean, and the well draws down more than the ground asks for.',
    todo: 'Check width, spacing and rows of the slots; before setting, cut more slots or take another screen.',
  },
  'screened.velocity': {
    title: 'Water enters the screen too fast',
    sentence:
      '{rate} m³/h through {screenM} m of screen under the pumping level make {speed} cm/s in the slots that stay open; {most} cm/s is the limit.',
    why: 'Fast water carries sand along, wears the slots and makes them scale over.',
    todo: 'Pump less; before setting, put in more screen or one with more open area.',
  },
  'collapse.emptied': {
    title: 'Casing may collapse when emptied',
    sentence:
      'String {string}: with water outside at {restM} m and the inside emptied to {emptiedM} m, {load} kPa press on pipe of {outsideMm} mm with a wall of {wallMm} mm, which holds {holds} kPa in warm ground: {factor} times the load, where {wanted} times is asked for.',
    why: 'Plastic pipe that is pressed in cannot be rounded again, and the pump may stick. Slots weaken a screen further; how far the formula does not tell.',
    todo: 'Never lower the water inside below {safeM} m while developing or pumping; before setting, take pipe with a thicker wall.',
  },
  'collapse.grouted': {
    title: 'Casing may collapse under fluid grout',
    sentence:
      'String {string}, {fromM} m to {toM} m: even full of water, {load} kPa of fluid grout press on pipe of {outsideMm} mm with a wall of {wallMm} mm, which holds {holds} kPa at {warm} °C, warm from the cement: {factor} times the load, where {wanted} times is asked for.',
    why: 'Grout is heavier than the water inside, and its heat softens plastic; pressed in, the pipe does not round again.',
    todo: 'Keep the casing full of water and grout in lower lifts, each set before the next; or take a thicker wall. Where it is grouted, let a plug of the pump’s size down.',
  },
  'room.pump': {
    title: 'Little room round the pump',
    sentence:
      'The pump is {bodyMm} mm wide, the casing {insideMm} mm inside where the pump passes: {roomMm} mm of room, where {leastMm} mm is asked for.',
    why: 'A pump with little room sticks at a joint or a bend, and sand wedges it when it is drawn.',
    todo: 'Let a plug of the pump’s size down to its depth before it goes in, or take a slimmer pump.',
  },
  'centraliser.spacing': {
    title: 'Casing not centred in the pack',
    sentence:
      'String {string}: no centraliser from {fromM} m to {toM} m, over {gapM} m; {mostM} m is the most here.',
    why: 'Casing that leans on the wall has no gravel on that side, and sand comes in there.',
    todo: 'Write the centralisers that are there; before setting, put one at either end of the screen and between.',
  },
  'stickUp.height': {
    title: 'Casing ends at an unusual height',
    sentence:
      'The top of the casing stands {heightM} m above ground; {leastM} m to {mostM} m is asked for.',
    why: 'Through a low top, surface water runs into the well; on a high one the pump’s stand does not fit.',
    todo: 'Measure it again. Lengthen a low casing before the pad is cast; cut a high one to the pump’s stand.',
  },
};
