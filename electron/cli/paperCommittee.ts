import type { Language } from '../../core/base/language.ts';
import { ok, type Result } from '../../core/base/result.ts';
import type { PhotoImages } from '../../core/drawing/parts/photos.ts';
import { readFonts } from '../files/fonts.ts';
import { committeeFileName } from '../service/paperNames.ts';
import { makeCommittee, type CommitteeSheetOptions, type Sheet } from '../service/sheet.ts';
import {
  misused,
  textOption,
  type Command,
  type ExitCode,
  type Given,
  type World,
} from './command.ts';
import { onlyWord } from './readInput.ts';
import { printWells, revisionOf, type Printing } from './printWells.ts';
import { readSheetLanguages } from './sheetLanguage.ts';
import { readTemplateOption, templateOptions, templateTakes } from './templateOption.ts';
import { wellsToPrint, type WellsToPrint, type WellToPrint } from './wellsToPrint.ts';
import { readTarget, writeSheet, type Target } from './writeSheet.ts';

interface Wanted extends WellsToPrint {
  readonly languages: readonly Language[];
  readonly paper: 'A4' | 'A3';
  readonly attachRecord: boolean;
  readonly target: Target;
}

/** A4, or A3 for two languages side by side. */
function readPaper(given: Given, languages: number): Result<'A4' | 'A3'> {
  const wanted = (textOption(given, 'paper') ?? 'A4').toUpperCase();
  if (wanted === 'A4' || (wanted === 'A3' && languages === 2)) return ok(wanted);
  return misused('--paper is A4, or A3 for two languages side by side: --language fr,en.');
}

function readWanted(given: Given, world: World): Result<Wanted> {
  const file = onlyWord(given.words, 'paper committee');
  if (!file.ok) return file;
  const spoken = readSheetLanguages(given);
  if (!spoken.ok) return spoken;
  const paper = readPaper(given, spoken.value.length);
  if (!paper.ok) return paper;
  const target = readTarget(textOption(given, 'output'), world, textOption(given, 'dpi'));
  if (!target.ok) return target;
  const headed = readTemplateOption(given, world);
  if (!headed.ok) return headed;
  const number = textOption(given, 'well');
  const all = target.value.kind === 'folder';
  const choice = { all, headed: headed.value, ...(number !== undefined && { number }) };
  const wells = wellsToPrint(file.value, choice, world);
  if (!wells.ok) return wells;
  const attachRecord = given.options['attach-record'] === true;
  const said = { languages: spoken.value, paper: paper.value, attachRecord };
  return ok({ ...said, target: target.value, ...wells.value });
}

/** One well with the pictures of its marks, where they are at hand. */
function sheetOfWell(well: WellToPrint, common: CommitteeSheetOptions): Result<Sheet> {
  const pictures: Result<PhotoImages> = well.pictures?.() ?? ok({});
  if (!pictures.ok) return pictures;
  const shown = { ...revisionOf(well), images: pictures.value };
  return ok(makeCommittee(well.record, { ...common, ...shown }));
}

function printAll(wanted: Wanted, world: World): Promise<Result<ExitCode>> {
  const { languages, paper, attachRecord, target, wells, own, ownGuidelines } = wanted;
  const made = { languages, paper, attachRecord, fonts: readFonts(), madeAt: world.now() };
  const common = { ...made, own, ownGuidelines, ...wanted.headed };
  const printing: Printing = {
    nameOf: ({ record, revision = 1 }) => committeeFileName(record, revision, languages),
    draw: (well) => sheetOfWell(well, common),
    put: (sheet, name) => writeSheet(sheet, target, name, world),
  };
  return printWells(wells, printing, world);
}

/** `paper committee`: the sheets for water users committees, of one well or of an archive’s. */
export const paperCommittee: Command = {
  name: 'paper committee',
  takes: `RECORD.json|ARCHIVE [--well NUMBER] [--language en|fr|pt or two as fr,en] [--paper A4|A3] ${templateTakes} [--attach-record] [--dpi N] -o OUT.pdf|svg|dxf|png|FOLDER/`,
  says: 'Writes the sheet for the water users committee, a page a language or two side by side on A3',
  options: {
    well: { type: 'string' },
    language: { type: 'string' },
    paper: { type: 'string' },
    ...templateOptions,
    'attach-record': { type: 'boolean' },
    dpi: { type: 'string' },
    output: { type: 'string', short: 'o' },
  },
  async run(given, world) {
    const wanted = readWanted(given, world);
    if (!wanted.ok) return wanted;
    try {
      return await printAll(wanted.value, world);
    } finally {
      wanted.value.close();
    }
  },
};
