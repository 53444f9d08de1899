/** How a result was read: what was taken for granted, and what was converted. */
export const conversionCodes = [
  'unit',
  'form',
  'formUnwritten',
  'limitUnwritten',
  'fnuAsNtu',
  'mpnAsCount',
  'ppmAsMgL',
] as const;
export type ConversionCode = (typeof conversionCodes)[number];
