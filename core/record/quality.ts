import { z } from 'zod';
import { amount, chapter, moment, oneOf, percent, text } from './fields.ts';

const result = chapter({
  parameter: z.string().describe('What was measured.'),
  value: z.number().describe('The figure, or the detection limit where it was below.').optional(),
  unit: text('Unit of the figure.'),
  as: text('Form, as in NO3 or N.'),
  below: z.boolean().describe('Below the detection limit that stands as value.').optional(),
  method: text('Method.'),
  where: oneOf(['field', 'laboratory'], 'Where it was measured.').optional(),
});

const sample = chapter({
  takenAt: moment('When the sample was taken.'),
  takenBy: text('Who took it.'),
  place: text('Where on the well.'),
  laboratory: text('Who analysed it.'),
  receivedAt: moment('When the laboratory had it.'),
  results: z.array(result).describe('What was found.').optional(),
  remark: text('Anything else.'),
});

/** Water samples with their results. */
export const quality = z.array(sample).describe('Water samples with their results.');

const dose = chapter({
  at: moment('When.'),
  product: text('Chlorine product.'),
  strength: percent('Available chlorine, per cent.').optional(),
  dose: amount('Dose, milligrams a litre.').optional(),
  productMass: amount('Product used, grams.').optional(),
  contactHours: amount('Contact time, hours.').optional(),
  pumpedOffAt: moment('When it was pumped off.'),
  residual: amount('Free chlorine afterwards, milligrams a litre.').optional(),
  remark: text('Anything else.'),
});

/** Disinfections. */
export const disinfection = z.array(dose).describe('Disinfections.');

export type WaterSample = z.infer<typeof sample>;
