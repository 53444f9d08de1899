import { z } from 'zod';
import { drillingMethods } from '../record/bore.ts';
import { pumpKinds } from '../record/headworks.ts';
import { wellStates } from '../record/identity.ts';
import { orders, worstFindings } from '../record/wellFilter.ts';
import { wellId, type ArgumentsOf } from './areas.ts';
import { mostRows, type ListOrder, type WellFilter } from './listShape.ts';

const texts = z.array(z.string().max(200)).max(1000).readonly();
const year = z.number().int().min(0).max(9999);

const amount = z.number().min(0).max(100_000);

/** Any of the values, or the empty text for wells where none was written. */
function anyOf<T extends string>(values: readonly T[]) {
  return z
    .array(z.enum([...values, '']))
    .max(values.length + 1)
    .readonly();
}

export const wellFilter: z.ZodType<WellFilter> = z.strictObject({
  search: z.string().max(200).exactOptional(),
  regions: texts.exactOptional(),
  districts: texts.exactOptional(),
  states: anyOf(wellStates).exactOptional(),
  yearFrom: year.exactOptional(),
  yearTo: year.exactOptional(),
  methods: anyOf(drillingMethods).exactOptional(),
  pumps: anyOf(pumpKinds).exactOptional(),
  clients: texts.exactOptional(),
  contractors: texts.exactOptional(),
  depthFrom: amount.exactOptional(),
  depthTo: amount.exactOptional(),
  yieldFrom: amount.exactOptional(),
  yieldTo: amount.exactOptional(),
  findings: z.array(z.enum(worstFindings)).max(3).readonly().exactOptional(),
});

const order: z.ZodType<ListOrder> = z.strictObject({
  by: z.enum(orders),
  down: z.boolean().exactOptional(),
});

export const listArguments = {
  'list.find': z.strictObject({
    filter: wellFilter,
    order: order.exactOptional(),
    from: z.number().int().min(0).exactOptional(),
    limit: z.number().int().min(1).max(mostRows).exactOptional(),
  }),
  'list.rank': z.strictObject({ filter: wellFilter, order: order.exactOptional(), id: wellId }),
  'list.named': z.strictObject({ ids: z.array(wellId).max(mostRows).readonly() }),
  'list.map': z.strictObject({ filter: wellFilter }),
  'list.choices': z.strictObject({}),
  'list.goThrough': z.strictObject({}),
} satisfies ArgumentsOf<'list'>;
