import { z } from 'zod';
import { languages } from '../base/language.ts';
import { orientations, paperNames } from '../drawing/paper.ts';
import { switchedColumns } from '../drawing/parts/columnNames.ts';
import { wellId, type ArgumentsOf } from './areas.ts';
import { dpiBounds, mostInBatch } from './papersShape.ts';

const paper = z.enum(['A4', 'A3']);
const language = z.enum(languages).exactOptional();
const attachRecord = z.boolean().exactOptional();

const asBuilt = z.strictObject({
  id: wellId,
  paper: z.enum(paperNames),
  orientation: z.enum(orientations).exactOptional(),
  columns: z.array(z.enum(switchedColumns)).exactOptional(),
  brokenAxis: z.boolean().exactOptional(),
  language,
  attachRecord,
});
const layingOut = z.strictObject({ id: wellId, language, attachRecord });
const committee = z.strictObject({
  id: wellId,
  languages: z.array(z.enum(languages)).min(1).max(2),
  paper: paper.exactOptional(),
  attachRecord,
});

/** Which paper is meant. */
export const paperWish = z.discriminatedUnion('kind', [
  asBuilt.omit({ id: true }).extend({ kind: z.literal('asBuilt') }),
  layingOut.omit({ id: true }).extend({ kind: z.literal('layingOut') }),
  committee.omit({ id: true }).extend({ kind: z.literal('committee') }),
]);

export const papersArguments = {
  'papers.asBuilt': asBuilt,
  'papers.newest': z.strictObject({ id: wellId, language: z.enum(languages) }),
  'papers.layingOut': layingOut,
  'papers.batch': z.strictObject({
    ids: z.array(wellId).min(1).max(mostInBatch),
    paper,
    language,
  }),
  'papers.checkPage': z.strictObject({ paper, language }),
  'papers.committee': committee,
  'papers.drawingFile': z.strictObject({
    id: wellId,
    paper: paperWish,
    page: z.number().int().min(1),
    format: z.enum(['svg', 'png', 'dxf']),
    dpi: z.number().int().min(dpiBounds.least).max(dpiBounds.most).exactOptional(),
  }),
} satisfies ArgumentsOf<'papers'>;
