import type { InterfaceWords } from '../catalogue.ts';
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

/** Every text of the interface in French. */
export const french: InterfaceWords = {
  tag: 'fr-FR',
  itself: 'Français',
  program: 'Borefolio',
  archive,
  binders,
  copies,
  exporting,
  codes,
  entry,
  findings,
  folder,
  hands,
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
  saving,
  sheet,
  templates,
  water,
  table,
  inFile: (places, more) =>
    `À corriger dans le fichier : ${places}${more > 0 ? ` et ${more} autres endroits` : ''}.`,
  defect: (words) =>
    `Une panne du programme est survenue (${words}). Ce qui était montré comme étant sur le disque est en sûreté. Rechargez la page.`,
};
