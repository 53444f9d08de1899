import type { Rule } from '../rule.ts';
import { bacteriaChlorine } from './bacteriaChlorine.ts';
import { bacteriaSoon } from './bacteriaSoon.ts';
import { bacteriaUndeveloped } from './bacteriaUndeveloped.ts';
import { bacteriaUndisinfected } from './bacteriaUndisinfected.ts';
import { contactShort } from './contactShort.ts';
import { datesOrder } from './datesOrder.ts';
import { developmentSandy, developmentTurbid } from './developmentEnd.ts';
import { developmentShort } from './developmentShort.ts';
import { distanceRules } from './distances.ts';
import { handoverIncomplete } from './handoverIncomplete.ts';
import { headworksRules } from './headworks.ts';
import { intakeInScreen } from './intakeInScreen.ts';
import { intakeLow } from './intakeLow.ts';
import { intakeShallow } from './intakeShallow.ts';
import { pitNearWater } from './pitNearWater.ts';
import { reportLate } from './reportLate.ts';
import { samplesSparse } from './samplesSparse.ts';

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
  contactShort,
  bacteriaUndeveloped,
  bacteriaUndisinfected,
  bacteriaSoon,
  bacteriaChlorine,
  handoverIncomplete,
  reportLate,
];
