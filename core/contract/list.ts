import { z } from 'zod';
import { wellStates } from '../record/identity.ts';
import { orders, worstFindings } from '../record/wellFilter.ts';
import { wellId, type ArgumentsOf } from './areas.ts';
import { mostRows, type ListOrder, type WellFilter } from './listShape.ts';

const texts = z.array(z.string().max(200)).max(1000).readonly();
const year = z.number().int().min(0).max(9999);

const filter: z.ZodType<WellFilter> = z.strictObject({
  search: z.string().max(200).exactOptional(),
  regions: texts.exactOptional(),
  districts: texts.exactOptional(),
  states: z
    .array(z.enum([...wellStates, '']))
    .max(wellStates.length + 1)
    .readonly()
    .exactOptional(),
  yearFrom: year.exactOptional(),
  yearTo: year.exactOptional(),
  findings: z.array(z.enum(worstFindings)).max(3).readonly().exactOptional(),
});

const order: z.ZodType<ListOrder> = z.strictObject({
  by: z.enum(orders),
  down: z.boolean().exactOptional(),
});

export const listArguments = {
  'list.find': z.strictObject({
    filter,
    order: order.exactOptional(),
    from: z.number().int().min(0).exactOptional(),
    limit: z.number().int().min(1).max(mostRows).exactOptional(),
  }),
  'list.rank': z.strictObject({ filter, order: order.exactOptional(), id: wellId }),
  'list.map': z.strictObject({ filter }),
  'list.choices': z.strictObject({}),
  'list.goThrough': z.strictObject({}),
} satisfies ArgumentsOf<'list'>;
