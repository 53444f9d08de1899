import path from 'node:path';
import type { Language } from '../../core/base/language.ts';
import type { WellRecord } from '../../core/record/schema.ts';
import { readFonts } from '../../electron/files/fonts.ts';
import {
  makeAsBuilt,
  makeCommittee,
  makeLayingOut,
  type Sheet,
} from '../../electron/service/sheet.ts';
import { demoWells, publishedWells, type NamedWell } from '../sheets/wells.ts';

/** Where the pictures are kept, for those who review a change. */
export const folder = path.resolve(import.meta.dirname, '../../docs/papers');

/** Fine enough to see what moved, coarse enough to be kept: dots an inch. */
const dpi = 50;

const common = { fonts: readFonts(), madeAt: '2026-01-31T12:00:00+00:00' } as const;

const asBuilt = (record: WellRecord) => makeAsBuilt(record, { ...common, paper: 'A4' });
const layingOut = (record: WellRecord) => makeLayingOut(record, common);
const committee = (record: WellRecord, ...spoken: Language[]) =>
  makeCommittee(record, { ...common, paper: 'A4', languages: spoken });

interface NamedSheet {
  readonly name: string;
  readonly sheet: Sheet;
}

function ofDemo([fileName, record]: NamedWell): NamedSheet[] {
  const { name } = path.parse(fileName);
  return [
    { name: `${name}-as-built`, sheet: asBuilt(record) },
    { name: `${name}-laying-out`, sheet: layingOut(record) },
    { name: `${name}-committee`, sheet: committee(record, 'en', 'fr') },
    { name: `${name}-committee-pt`, sheet: committee(record, 'pt') },
  ];
}

/** Ten published wells of which it is known what stands in the hole. */
const built = publishedWells.filter(([, { strings = [] }]) => strings.length > 0).slice(0, 10);

const ofPublished = ([name, record]: NamedWell): NamedSheet => ({
  name: `${name.replace(/[^A-Za-z0-9-]+/g, '-')}-as-built`,
  sheet: asBuilt(record),
});

export interface ShownPage {
  readonly file: string;
  readonly png: () => Promise<Uint8Array>;
}

/** Every page that is kept as a picture. */
export function shownPages(): ShownPage[] {
  const sheets = [...demoWells.flatMap(ofDemo), ...built.map(ofPublished)];
  return sheets.flatMap(({ name, sheet }) =>
    sheet.drawing.pages.map((_, at) => ({
      file: `${name}-${at + 1}.png`,
      png: () => sheet.png(at + 1, dpi),
    })),
  );
}
