/** What runs beside the program while a binder is made: it is told its work, does it and ends. */
import { parentPort, workerData } from 'node:worker_threads';
import { openArchive } from '../archive/open.ts';
import { readFonts } from '../files/fonts.ts';
import { replaceFile } from '../files/replaceFile.ts';
import type {
  NextVolume,
  NextWell,
  PaintedAnswer,
  Work,
  WorkerData,
  WorkerSetup,
} from './messages.ts';

const port = parentPort!;
const { setup, work } = workerData as WorkerData;

function archiveOf({ archiveFile, madeAt }: WorkerSetup) {
  const opened = openArchive(archiveFile, { now: () => madeAt, mustExist: true });
  if (!opened.ok) throw new Error(opened.error.sentence);
  return opened.value;
}

/** Lays one well after the other, as they are sent, until nothing is sent any more. */
async function lay(): Promise<void> {
  const { failedWell, layWell } = await import('./layWell.ts');
  const { workFolder } = await import('./workFolder.ts');
  const { paperBasis } = await import('../service/paperFiles.ts');
  const made = { archive: archiveOf(setup), fonts: readFonts(), clock: () => setup.madeAt };
  const parts = { ...made, basis: paperBasis(made) };
  const folder = workFolder(setup.folder);
  port.on('message', (next: NextWell | null) => {
    if (!next) {
      parts.archive.close();
      port.close();
      return;
    }
    const { well, crashed } = next;
    const made =
      crashed === undefined ? layWell(parts, well, setup.wish) : failedWell(well, crashed);
    folder.putLaid(well.key, made.laid, made.papers);
    port.postMessage(well.id);
  });
  port.postMessage(null);
}

async function plan(planning: Extract<Work, { kind: 'plan' }>): Promise<void> {
  const { planBinder } = await import('./planBinder.ts');
  const archive = archiveOf(setup);
  const kept = setup.wish.backdrop ? archive.backdrops.list() : undefined;
  const backdrop = kept?.ok ? kept.value.flatMap(({ shapes }) => shapes) : [];
  const { issuedPapers } = await import('./issuedPapers.ts');
  const issued = issuedPapers(archive, planning.wells);
  archive.close();
  port.postMessage(planBinder(setup, planning, { fonts: readFonts().metrics, backdrop, issued }));
}

async function copyIssued({ wells, folder }: Extract<Work, { kind: 'copyIssued' }>): Promise<void> {
  const { copyIssued: copy } = await import('./copyIssued.ts');
  const archive = archiveOf(setup);
  const copied = await copy(archive, wells, folder);
  archive.close();
  port.postMessage(copied);
}

/** Pages between two words on how far it is. */
const told = 10;

/** Paints one volume after the other, as they are sent, until nothing is sent any more. */
async function paint(): Promise<void> {
  const { paintVolume } = await import('./paintVolume.ts');
  const { workFolder } = await import('./workFolder.ts');
  const parts = { setup, planned: workFolder(setup.folder).plan(), fonts: readFonts() };
  const tell = (answer: PaintedAnswer | null) => port.postMessage(answer);
  const paintOne = async ({ volume, file }: NextVolume) => {
    let pages = 0;
    const pdf = paintVolume(parts, volume, (painted) => {
      pages = painted;
      if (painted % told === 0) tell({ pages });
    });
    await replaceFile(file, pdf);
    tell({ pages, bytes: pdf.length });
  };
  port.on('message', (next: NextVolume | null) => {
    if (next) void paintOne(next);
    else port.close();
  });
  tell(null);
}

switch (work.kind) {
  case 'lay':
    await lay();
    break;
  case 'plan':
    await plan(work);
    break;
  case 'copyIssued':
    await copyIssued(work);
    break;
  case 'paint':
    await paint();
    break;
}
