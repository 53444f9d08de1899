import type { FindingCode, FindingText } from './texts.ts';

type AnnulusCode = Extract<FindingCode, `annulus.${string}`>;

/** What stands between the wall of the hole and the casing. */
export const englishAnnulus: Record<AnnulusCode, FindingText> = {
  'annulus.reversed': {
    title: 'Annulus fill upside down',
    sentence: 'A fill ends above where it starts; it is taken as {fromM} m to {toM} m.',
    why: 'Depths count downwards, so the foot of a fill is the larger figure.',
    todo: 'Swap the two depths, or correct the one that is wrong.',
  },
  'annulus.empty': {
    title: 'Annulus fill without length',
    sentence: 'A fill starts and ends at {fromM} m; it is left out.',
    why: 'A fill without length has no volume.',
    todo: 'Write the depths of its top and foot as sounded.',
  },
  'annulus.aboveGround': {
    title: 'Fill above ground',
    sentence: '{fill}: it starts above ground, at {fromM} m; it is cut at ground level.',
    why: 'The annulus ends at ground level; what stands above belongs to the headworks.',
    todo: 'Write the part above ground as pad or headworks.',
  },
  'annulus.belowHole': {
    title: 'Fill below the hole',
    sentence: '{fill}: it goes on to {toM} m, but the hole is {depthM} m deep; it is cut there.',
    why: 'Nothing can be filled in below the hole; one of the two depths is wrong.',
    todo: 'Correct the foot of the fill or the depth of the hole.',
  },
  'annulus.noSuchString': {
    title: 'Fill around no string',
    sentence:
      '{fill} from {fromM} m to {toM} m: it is recorded around string {string}, which is not there; it is taken to stand next to the wall of the hole.',
    why: 'Which annulus it fills decides its volume.',
    todo: 'Choose the string that it surrounds.',
  },
  'annulus.aboveString': {
    title: 'Fill above the top of its string',
    sentence:
      '{fill} from {fromM} m to {toM} m: it reaches above the top of string {string}, inside another string; that part is left out.',
    why: 'Above the top of a hung string there is no annulus around it.',
    todo: 'Correct the top of the fill, or choose the string that it surrounds.',
  },
  'annulus.insideString': {
    title: 'Hole filled where a string stands',
    sentence:
      '{fill} from {fromM} m to {toM} m: it is recorded as filling the whole hole, but string {string} stands there; it is taken to fill the inside of the string.',
    why: 'Where a string was left in the hole, what is poured stands in it and not around it.',
    todo: 'If the string was pulled, remove it from the record; if the fill stands around it, say so.',
  },
  'annulus.overlap': {
    title: 'Fills overlap',
    sentence: 'From {fromM} m to {toM} m both {other} and {fill} are recorded in one annulus.',
    why: 'The lower fill stood there first and is drawn to its top; the other may be the true one.',
    todo: 'Let each fill end where the next was sounded to begin.',
  },
  'annulus.unrecorded': {
    title: 'Annulus not recorded',
    sentence:
      'Nothing is recorded between string {string} and what stands around it from {fromM} m to {toM} m.',
    why: 'An annulus left open, or filled with nobody knows what, can lead foul water down.',
    todo: 'Write what stands there: fill, natural collapse, or open.',
  },
  'annulus.unrecordedHole': {
    title: 'Hole under the string not recorded',
    sentence: 'Nothing is recorded of the hole outside any string from {fromM} m to {toM} m.',
    why: 'Whether it stands open, has fallen in or was filled is not known.',
    todo: 'Write what stands there: fill, natural collapse, or open.',
  },
};
