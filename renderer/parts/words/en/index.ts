import { archive } from './archive.ts';
import { binders } from './binders.ts';
import { codes } from './codes.ts';
import { copies } from './copies.ts';
import { entry } from './entry.ts';
import { exporting } from './exporting.ts';
import { findings } from './findings.ts';
import { folder } from './folder.ts';
import { guidelines } from './guidelines.ts';
import { hands } from './hands.ts';
import { imports } from './imports.ts';
import { issues } from './issues.ts';
import { layingOut } from './layingOut.ts';
import { look } from './look.ts';
import { photos } from './photos.ts';
import { practices } from './practices.ts';
import { pumpChoice } from './pumpChoice.ts';
import { disinfection, quality } from './quality.ts';
import { reading } from './reading.ts';
import { saving } from './saving.ts';
import { revisions } from './revisions.ts';
import { sheet } from './sheet.ts';
import { siting } from './siting.ts';
import { table } from './table.ts';
import { templates } from './templates.ts';
import { water } from './water.ts';

/** Every text of the interface in British English. Texts of the sheets stand with the sheets. */
export const english = {
  /** As pages and `Intl` take it. */
  tag: 'en-GB',
  /** Its own name for itself. */
  itself: 'English',
  program: 'Borefolio',
  archive,
  binders,
  copies,
  exporting,
  folder,
  saving,
  findings,
  table,
  entry,
  hands,
  codes,
  imports,
  issues,
  layingOut,
  look,
  photos,
  practices,
  guidelines,
  disinfection,
  pumpChoice,
  quality,
  siting,
  reading,
  revisions,
  sheet,
  templates,
  water,
  /** Places of a file, as its keys name them, and how many more there are. */
  inFile: (places: string, more: number) =>
    `In the file: ${places}${more > 0 ? ` and ${more} more` : ''}.`,
  defect: (words: string) =>
    `Something went wrong in the program (${words}). What was shown as saved is safe. Load the page again.`,
};
