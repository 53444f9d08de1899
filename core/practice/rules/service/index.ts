import type { Rule } from '../rule.ts';
import { datesOrder } from './datesOrder.ts';
import { samplesSparse } from './samplesSparse.ts';
import { headworksRules } from './headworks.ts';
import { distanceRules } from './distances.ts';
import { pitNearWater } from './pitNearWater.ts';
import { intakeShallow } from './intakeShallow.ts';
import { intakeInScreen } from './intakeInScreen.ts';
import { intakeLow } from './intakeLow.ts';
import { developmentShort } from './developmentShort.ts';
import { developmentTurbid } from './developmentEnd.ts';
import { developmentSandy } from './developmentEnd.ts';

export const serviceRules: readonly Rule[] = [
  datesOrder,
  samplesSparse,
  ...headworksRules,
  ...distanceRules,
  pitNearWater,
  intakeShallow,
  intakeInScreen,
  intakeLow,
  developmentShort,
  developmentTurbid,
  developmentSandy,
];
