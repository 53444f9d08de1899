import type { Refusal, Result } from '../../core/base/result.ts';
import type { PageHost } from '../../core/contract/host.ts';
import type { DrawingFormat } from '../../core/contract/papersShape.ts';
import type { PrintWays } from '../../core/contract/printingShape.ts';
import { sayRefusal } from '../parts/refusals.ts';
import { say } from '../parts/words.ts';
import { exportDrawing, exportPaper, partedCode, type WantedPaper } from '../state/exportPaper.ts';
import type { Folder } from '../state/folder.svelte.ts';
import { download } from './download.ts';
import { showMade } from './showMade.ts';

type Said = (sentence: string) => string;

/** What is made of the sheet in sight, one thing at a time, and what came of the last. */
export class PaperWork {
  busy = $state(false);
  said = $state('');
  ways = $state.raw<PrintWays>({ printers: [], viewer: false });

  readonly #host: PageHost;
  readonly #folder: Folder;

  constructor(host: PageHost, folder: Folder) {
    this.#host = host;
    this.#folder = folder;
  }

  /** Asks which printers there are. */
  async readWays(): Promise<void> {
    const answer = await this.#host.send('printing.ways', {});
    if (answer.ok) this.ways = answer.value;
  }

  pdf(wanted: WantedPaper): Promise<void> {
    return this.#work(say.sheet.exporting, say.sheet.exportFailed, async () => {
      const made = await exportPaper(this.#host, this.#folder, wanted);
      if (!made.ok) return made;
      const { fileName, pdf, unrevised } = made.value;
      download(fileName, pdf, 'application/pdf');
      return { ok: true, value: say.sheet.exported(fileName) + this.#older(unrevised) };
    });
  }

  drawing(wanted: WantedPaper, page: number, format: DrawingFormat): Promise<void> {
    return this.#work(say.sheet.makingFile, say.sheet.fileFailed, async () => {
      const made = await exportDrawing(this.#host, this.#folder, wanted, { page, format });
      if (!made.ok) return made;
      const { fileName, data, mediaType, unrevised } = made.value;
      download(fileName, data, mediaType);
      return { ok: true, value: say.sheet.exported(fileName) + this.#older(unrevised) };
    });
  }

  checkPage({ paper, language }: WantedPaper): Promise<void> {
    return this.#work(say.sheet.exporting, say.sheet.exportFailed, async () => {
      const size = paper === 'A3' ? 'A3' : 'A4';
      const made = await this.#host.send('papers.checkPage', { paper: size, language });
      if (!made.ok) return made;
      const { fileName, pdf } = made.value;
      download(fileName, pdf, 'application/pdf');
      return { ok: true, value: `${say.sheet.exported(fileName)} ${say.sheet.atActualSize}` };
    });
  }

  /** Prints where the host can; else the browser shows the PDF, or takes it as a download. */
  print(wanted: WantedPaper, printer?: string): Promise<void> {
    return this.#work(say.sheet.exporting, say.sheet.printFailed, async () => {
      const made = await exportPaper(this.#host, this.#folder, wanted);
      if (!made.ok) return made;
      const { fileName, pdf, unrevised } = made.value;
      const older = this.#older(unrevised);
      if (printer === undefined && !this.ways.viewer) {
        const given = await this.#given(fileName, pdf);
        return { ok: true, value: `${given} ${say.sheet.atActualSize}${older}` };
      }
      const job = { fileName, pdf, ...(printer !== undefined && { printer }) };
      const printed = await this.#host.send('printing.print', job);
      if (!printed.ok) return printed;
      const sent = printer === undefined ? say.sheet.atActualSize : say.sheet.sentTo(printer);
      return { ok: true, value: sent + older };
    });
  }

  /** Has the browser show a PDF, or take it where it shows none; gives what was done. */
  async #given(fileName: string, pdf: string): Promise<string> {
    if (await showMade(pdf)) return say.sheet.shownInTab(fileName);
    download(fileName, pdf, 'application/pdf');
    return say.sheet.exported(fileName);
  }

  #older(unrevised: boolean): string {
    return unrevised ? ` ${say.saving.paperIsOlder(this.#folder.saving.revision)}` : '';
  }

  async #work(making: string, failed: Said, deed: () => Promise<Result<string>>): Promise<void> {
    if (this.busy) return;
    [this.busy, this.said] = [true, making];
    try {
      const came = await deed();
      this.said = came.ok ? came.value : failed(this.#why(came.error));
    } finally {
      this.busy = false;
    }
  }

  #why(refusal: Refusal): string {
    return refusal.code === partedCode ? say.saving.parted : sayRefusal(refusal);
  }
}
