import type { Result } from '../../core/base/result.ts';
import type { PrinterRow } from '../../core/contract/printingShape.ts';

/** A PDF to be printed. */
export interface PrintJob {
  /** What the printer's list and the viewer's title call it. */
  readonly fileName: string;
  readonly pdf: Uint8Array;
}

/** A host that reaches the system's printers. */
export interface Printing {
  printers(): Promise<readonly PrinterRow[]>;
  /** Prints at true size, without asking. */
  print(job: PrintJob, printer: string): Promise<Result<null>>;
  /** Shows the PDF in the system's program for PDFs, which prints it. */
  show(job: PrintJob): Promise<Result<null>>;
}
