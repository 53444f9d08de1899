import type { Rule } from '../rule.ts';
import { centralisers } from './centralisers.ts';
import { collapseEmptied } from './collapseEmptied.ts';
import { collapseGrouted } from './collapseGrouted.ts';
import { dryLevel } from './dryLevel.ts';
import { entranceVelocity } from './entranceVelocity.ts';
import { footOpen } from './footOpen.ts';
import { openArea } from './openArea.ts';
import { packToGround } from './packToGround.ts';
import { pumpingLevel } from './pumpingLevel.ts';
import { pumpRoom } from './pumpRoom.ts';
import { slotToGround } from './slotToGround.ts';
import { slotToPack } from './slotToPack.ts';
import { stickUp } from './stickUp.ts';
import { sumpLength } from './sumpLength.ts';
import { tightGround } from './tightGround.ts';

export const casingRules: readonly Rule[] = [
  sumpLength,
  footOpen,
  tightGround,
  dryLevel,
  pumpingLevel,
  packToGround,
  slotToPack,
  slotToGround,
  openArea,
  entranceVelocity,
  collapseEmptied,
  collapseGrouted,
  pumpRoom,
  centralisers,
  stickUp,
];
