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
import { contactShort } from './contactShort.ts';
import { bacteriaUndeveloped } from './bacteriaUndeveloped.ts';
import { bacteriaUndisinfected } from './bacteriaUndisinfected.ts';
import { bacteriaSoon } from './bacteriaSoon.ts';
import { bacteriaChlorine } from './bacteriaChlorine.ts';
import { handoverIncomplete } from './handoverIncomplete.ts';
import { reportLate } from './reportLate.ts';

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
