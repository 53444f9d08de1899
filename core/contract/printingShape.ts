/** A printer of this computer. */
export interface PrinterRow {
  readonly name: string;
  /** The one that is taken where none is chosen. */
  readonly usual: boolean;
}

/** How this host prints. Where it does not, the page has its browser show the PDF. */
export interface PrintWays {
  readonly printers: readonly PrinterRow[];
  /** The system's program for PDFs can be asked to show one. */
  readonly viewer: boolean;
}

export interface PrintingCalls {
  'printing.ways': { takes: Record<string, never>; gives: PrintWays };
  /**
   * Prints a PDF, base64, at its true size on the printer named; without a name the system's
   * program for PDFs shows it. Refused as `noPrinting` by a host that does neither, as
   * `notAPdf`, `noSuchPrinter`, `printerRefused` or `noViewer`.
   */
  'printing.print': {
    takes: { fileName: string; pdf: string; printer?: string };
    gives: { printer?: string };
  };
}
