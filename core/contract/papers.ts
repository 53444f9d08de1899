import { z } from 'zod';
import { languages } from '../base/language.ts';
import { orientations, paperNames } from '../drawing/paper.ts';
import { switchedColumns } from '../drawing/parts/columnNames.ts';
import { wellId, type ArgumentsOf } from './areas.ts';

/** Most wells of one print file. */
export const mostInBatch = 60;

export const papersArguments = {
  'papers.asBuilt': z.strictObject({
    id: wellId,
    paper: z.enum(paperNames),
    orientation: z.enum(orientations).exactOptional(),
    columns: z.array(z.enum(switchedColumns)).exactOptional(),
    language: z.enum(languages).exactOptional(),
    attachRecord: z.boolean().exactOptional(),
  }),
  'papers.layingOut': z.strictObject({
    id: wellId,
    language: z.enum(languages).exactOptional(),
    attachRecord: z.boolean().exactOptional(),
  }),
  'papers.batch': z.strictObject({
    ids: z.array(wellId).min(1).max(mostInBatch),
    paper: z.enum(['A4', 'A3']),
    language: z.enum(languages).exactOptional(),
  }),
  'papers.checkPage': z.strictObject({
    paper: z.enum(['A4', 'A3']),
    language: z.enum(languages).exactOptional(),
  }),
  'papers.committee': z.strictObject({
    id: wellId,
    languages: z.array(z.enum(languages)).min(1).max(2),
    paper: z.enum(['A4', 'A3']).exactOptional(),
    attachRecord: z.boolean().exactOptional(),
  }),
} satisfies ArgumentsOf<'papers'>;
