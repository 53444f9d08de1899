/** How chlorine is handled, in the order of work: before, while and after dosing. */
export const cautionCodes = [
  'localRules',
  'protectEyesAndHands',
  'openAir',
  'productIntoWater',
  'neverMix',
  'keepOffWell',
  'storeCoolDry',
  'strengthFalls',
  'clearWaterFirst',
  'closeToUsers',
  'dischargeAway',
  'sampleWithoutChlorine',
] as const;
export type CautionCode = (typeof cautionCodes)[number];
