import { paintSvg } from '../../core/paint/svg/write.ts';
import { readFonts } from '../../electron/files/fonts.ts';
import { makeAsBuilt } from '../../electron/service/sheet.ts';
import { readDocument } from '../../electron/service/stored.ts';
import { demoText } from './demoRecord.ts';
import type { Trial } from './trial.ts';

const read = readDocument(JSON.parse(demoText));
if (!read.ok) throw new Error(read.error.sentence);
const { record } = read.value;
const fonts = readFonts();
const lay = () => makeAsBuilt(record, { paper: 'A4', fonts, madeAt: '2026-01-15T08:00:00Z' });

export const trial: Trial = {
  title: 'As-built sheet of a well with sixty intervals, A4',
  says: 'What a file of each kind costs over laying the sheet out, which the screen needs too. Each figure holds the laying out, and in it the analysis of the well’s pumping tests. Fonts lie whole in each SVG file, and in the PDF cut down to the letters used.',
  rivals: [
    { name: 'laid out only', run: lay },
    {
      name: 'as SVG text, fonts apart',
      run: () => {
        const { drawing } = lay();
        return drawing.pages.map((_, at) => paintSvg(drawing, at));
      },
    },
    {
      name: 'as SVG files, fonts within',
      run: () => {
        const sheet = lay();
        return sheet.drawing.pages.map((_, at) => sheet.svg(at + 1));
      },
    },
    { name: 'as PDF', run: () => lay().pdf() },
  ],
};
