import type { Language } from '../../core/base/language.ts';
import { ok, type Result } from '../../core/base/result.ts';
import { readFonts } from '../files/fonts.ts';
import { layingOutFileName } from '../service/paperNames.ts';
import { makeLayingOut } from '../service/sheet.ts';
import { textOption, type Command, type ExitCode, type Given, type World } from './command.ts';
import { onlyWord } from './readInput.ts';
import { printWells, revisionOf, type Printing } from './printWells.ts';
import { readSheetLanguage } from './sheetLanguage.ts';
import { readTemplateOption, templateOptions, templateTakes } from './templateOption.ts';
import { wellsToPrint, type WellsToPrint } from './wellsToPrint.ts';
import { readTarget, writeSheet, type Target } from './writeSheet.ts';

interface Wanted extends WellsToPrint {
  readonly language: Language;
  readonly target: Target;
  readonly attachRecord: boolean;
}

function readWanted(given: Given, world: World): Result<Wanted> {
  const file = onlyWord(given.words, 'paper laying-out');
  if (!file.ok) return file;
  const language = readSheetLanguage(given);
  if (!language.ok) return language;
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
  return ok({ language: language.value, target: target.value, attachRecord, ...wells.value });
}

function printAll(wanted: Wanted, world: World): Promise<Result<ExitCode>> {
  const { language, target, attachRecord, wells, own, headed } = wanted;
  const common = {
    language,
    attachRecord,
    fonts: readFonts(),
    madeAt: world.now(),
    own,
    ...headed,
  };
  const printing: Printing = {
    nameOf: ({ record, revision = 1 }) => layingOutFileName(record, revision, language),
    draw: (well) => ok(makeLayingOut(well.record, { ...common, ...revisionOf(well) })),
    put: (sheet, name) => writeSheet(sheet, target, name, world),
  };
  return printWells(wells, printing, world);
}

/** `paper laying-out`: the laying-out sheets of one well or of an archive’s. */
export const paperLayingOut: Command = {
  name: 'paper laying-out',
  takes: `RECORD.json|ARCHIVE [--well NUMBER] [--language en|fr|pt] ${templateTakes} [--attach-record] [--dpi N] -o OUT.pdf|svg|dxf|png|FOLDER/`,
  says: 'Writes the laying-out sheet for the crew at the hole, on A4',
  options: {
    well: { type: 'string' },
    language: { type: 'string' },
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
