import type { Language } from '../../core/base/language.ts';
import { ok, type Result } from '../../core/base/result.ts';
import { readFonts, type ShippedFonts } from '../files/fonts.ts';
import { switchedColumns } from '../../core/drawing/parts/columnNames.ts';
import { shownPhotos, type PhotoImages } from '../../core/drawing/parts/photos.ts';
import type { RevisionNote } from '../../core/drawing/parts/revisionNote.ts';
import { paperFileName } from '../service/paperNames.ts';
import { joinSheets } from '../service/joinedSheet.ts';
import { makeAsBuilt, type Sheet, type SheetOptions } from '../service/sheet.ts';
import {
  misused,
  textOption,
  type Command,
  type ExitCode,
  type Given,
  type World,
} from './command.ts';
import { onlyWord } from './readInput.ts';
import { readPaper } from './readPaper.ts';
import { printWells, revisionOf, type Printing } from './printWells.ts';
import { readSheetLanguage } from './sheetLanguage.ts';
import { readSheetShape, type SheetShape } from './sheetShape.ts';
import { readTemplateOption, templateOptions, templateTakes } from './templateOption.ts';
import { wellsToPrint, type WellsToPrint, type WellToPrint } from './wellsToPrint.ts';
import { readTarget, writeSheet, type Target } from './writeSheet.ts';

type Paper = SheetOptions['paper'];

interface Wanted extends WellsToPrint {
  readonly paper: Paper;
  readonly shape: SheetShape;
  readonly language: Language;
  readonly target: Target;
  readonly attachRecord: boolean;
  /** All wells in one PDF. */
  readonly inOne: boolean;
}

function readWanted(given: Given, world: World): Result<Wanted> {
  const file = onlyWord(given.words, 'paper as-built');
  if (!file.ok) return file;
  const paper = readPaper(given);
  if (!paper.ok) return paper;
  const shape = readSheetShape(given);
  if (!shape.ok) return shape;
  const language = readSheetLanguage(given);
  if (!language.ok) return language;
  const target = readTarget(textOption(given, 'output'), world, textOption(given, 'dpi'));
  if (!target.ok) return target;
  const headed = readTemplateOption(given, world);
  if (!headed.ok) return headed;
  const number = textOption(given, 'well');
  const inOne = given.options['all'] === true && target.value.kind !== 'folder';
  if (inOne && target.value.kind !== 'pdf') return misused('--all makes one PDF: -o OUT.pdf.');
  const attachRecord = given.options['attach-record'] === true;
  if (inOne && attachRecord)
    return misused(
      'A record is attached to the PDF of one well: leave out --all, or --attach-record.',
    );
  const choice = {
    all: inOne || target.value.kind === 'folder',
    ...(number === undefined ? {} : { number }),
    headed: headed.value,
  };
  const wells = wellsToPrint(file.value, choice, world);
  if (!wells.ok) return wells;
  return ok({
    paper: paper.value,
    shape: shape.value,
    language: language.value,
    target: target.value,
    attachRecord,
    inOne,
    ...wells.value,
  });
}

function sheetName({ record, revision }: WellToPrint, { paper, shape, language }: Wanted): string {
  return paperFileName(record, paper, revision ?? 1, language, shape.orientation);
}

/** The pictures of a well; tells how many of its photos stand on the sheet without theirs. */
function picturesOf({ record, calledBy, pictures }: WellToPrint, world: World) {
  const found: Result<PhotoImages> = pictures?.() ?? ok({});
  if (!found.ok) return found;
  const missing = shownPhotos(record.photos, found.value).filter(({ image }) => !image).length;
  const those =
    missing === 1
      ? 'one photo is not at hand and stands'
      : `${missing} photos are not at hand and stand`;
  if (missing > 0)
    world.complain(
      `${calledBy}: ${those} on the sheet as an empty frame. Print the well from the archive that holds its photos.`,
    );
  return found;
}

/** All sheets in one print file, in the order of the archive's list. */
async function writeJoined(
  sheets: readonly Sheet[],
  made: { readonly fonts: ShippedFonts; readonly madeAt: string },
  target: Target,
  world: World,
): Promise<Result<void>> {
  const joined = joinSheets(sheets, made);
  return joined.ok ? writeSheet(joined.value, target, '', world) : joined;
}

/** One well with its pictures and its history. */
function sheetOfWell(well: WellToPrint, common: SheetOptions, world: World): Result<Sheet> {
  const pictures = picturesOf(well, world);
  if (!pictures.ok) return pictures;
  const told: Result<readonly RevisionNote[]> = well.revisions?.(common.language ?? 'en') ?? ok([]);
  if (!told.ok) return told;
  const shown = { images: pictures.value, revisions: told.value };
  return ok(makeAsBuilt(well.record, { ...common, ...revisionOf(well), ...shown }));
}

async function printAll(wanted: Wanted, world: World): Promise<Result<ExitCode>> {
  const { paper, shape, language, target, attachRecord, wells, own } = wanted;
  const made = { paper, ...shape, language, attachRecord, fonts: readFonts(), madeAt: world.now() };
  const { ownGuidelines, headed } = wanted;
  const common = { ...made, own, ownGuidelines, ...headed };
  const sheets: Sheet[] = [];
  const printing: Printing = {
    nameOf: (well) => sheetName(well, wanted),
    draw: (well) => sheetOfWell(well, common, world),
    put: wanted.inOne
      ? async (sheet) => ok(void sheets.push(sheet))
      : (sheet, name) => writeSheet(sheet, target, name, world),
  };
  const printed = await printWells(wells, printing, world);
  if (!printed.ok || !wanted.inOne) return printed;
  const joined = await writeJoined(sheets, made, target, world);
  return joined.ok ? printed : joined;
}

/** `paper as-built`: the as-built sheets of one well or of an archive’s. */
export const paperAsBuilt: Command = {
  name: 'paper as-built',
  takes: `RECORD.json|ARCHIVE [--well NUMBER|--all] [--paper A4|A3] [--orientation portrait|landscape] [--columns LIST] [--whole-axis] [--language en|fr|pt] ${templateTakes} [--attach-record] [--dpi N] -o OUT.pdf|svg|dxf|png|FOLDER/`,
  says: `Writes the as-built sheet; several pages of a drawing file become OUT-1 and so on; --all puts the sheets of all wells into one PDF to print; LIST is some of ${switchedColumns.join(',')}, or none; --whole-axis leaves no depths out`,
  options: {
    well: { type: 'string' },
    paper: { type: 'string' },
    orientation: { type: 'string' },
    columns: { type: 'string' },
    'whole-axis': { type: 'boolean' },
    language: { type: 'string' },
    ...templateOptions,
    'attach-record': { type: 'boolean' },
    all: { type: 'boolean' },
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
