import { z } from 'zod';
import { languages } from '../base/language.ts';
import { paperNames } from '../drawing/paper.ts';
import { wellId, type ArgumentsOf } from './areas.ts';
import { sectionBounds, volumeBounds, type BinderPaper, type BinderWish } from './binderShape.ts';
import { wellFilter } from './list.ts';

const language = z.enum(languages);
const text = z.string().max(500);
const depthAt = z.strictObject({ wellId, depthM: z.number().min(0).max(10_000) });

const paper: z.ZodType<BinderPaper> = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('asBuilt'), language }),
  z.strictObject({ kind: z.literal('layingOut'), language }),
  z.strictObject({
    kind: z.literal('committee'),
    languages: z.array(language).min(1).max(2).readonly(),
  }),
]);

const section = z.strictObject({
  title: text.exactOptional(),
  wellIds: z.array(wellId).min(sectionBounds.leastWells).max(sectionBounds.mostWells).readonly(),
  joins: z
    .array(z.strictObject({ from: depthAt, to: depthAt }))
    .max(200)
    .readonly()
    .exactOptional(),
});

export const binderWish: z.ZodType<BinderWish> = z.strictObject({
  title: text,
  madeBy: text,
  language,
  wells: z.strictObject({
    filter: wellFilter.exactOptional(),
    ids: z.array(wellId).max(100_000).readonly().exactOptional(),
  }),
  papers: z
    .array(paper)
    .min(1)
    .max(3)
    .refine((all) => new Set(all.map(({ kind }) => kind)).size === all.length, 'a paper is twice')
    .readonly(),
  paper: z.enum(paperNames),
  duplex: z.boolean(),
  sections: z.array(section).max(sectionBounds.most).readonly(),
  backdrop: z.boolean(),
  mostPages: z.number().int().min(volumeBounds.least).max(volumeBounds.most),
  attachments: z.boolean().exactOptional(),
  withIssued: z.boolean().exactOptional(),
});

const name = z.string().trim().min(1).max(120);

export const bindersArguments = {
  'binders.list': z.strictObject({}),
  'binders.put': z.strictObject({ name, wish: binderWish }),
  'binders.remove': z.strictObject({ name }),
  'binders.start': z.strictObject({ name }),
  'binders.stop': z.strictObject({}),
  'binders.state': z.strictObject({}),
  'binders.file': z.strictObject({ fileName: z.string().min(1).max(300) }),
} satisfies ArgumentsOf<'binders'>;
