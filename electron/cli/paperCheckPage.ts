import { ok } from '../../core/base/result.ts';
import { readFonts } from '../files/fonts.ts';
import { makeCheckPage } from '../service/checkPage.ts';
import { checkPageFileName } from '../service/paperNames.ts';
import { misused, textOption, type Command } from './command.ts';
import { readPaper } from './readPaper.ts';
import { readSheetLanguage } from './sheetLanguage.ts';
import { readTarget, writeSheet } from './writeSheet.ts';

/** `paper check-page`: the page that tells whether a printer keeps the scale. */
export const paperCheckPage: Command = {
  name: 'paper check-page',
  takes: '[--paper A4|A3] [--language en|fr|pt] [--dpi N] -o OUT.pdf|svg|dxf|png|FOLDER/',
  says: 'Writes a page to print once: its two lines of 100 mm tell whether the printer keeps the scale',
  options: {
    paper: { type: 'string' },
    language: { type: 'string' },
    dpi: { type: 'string' },
    output: { type: 'string', short: 'o' },
  },
  async run(given, world) {
    if (given.words.length > 0) return misused('paper check-page takes no file.');
    const paper = readPaper(given);
    if (!paper.ok) return paper;
    const language = readSheetLanguage(given);
    if (!language.ok) return language;
    const target = readTarget(textOption(given, 'output'), world, textOption(given, 'dpi'));
    if (!target.ok) return target;
    const wanted = { paper: paper.value, language: language.value };
    const sheet = makeCheckPage({ ...wanted, fonts: readFonts(), madeAt: world.now() });
    const name = checkPageFileName(wanted.paper, wanted.language);
    const written = await writeSheet(sheet, target.value, name, world);
    return written.ok ? ok(0) : written;
  },
};
