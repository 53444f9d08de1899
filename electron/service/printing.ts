import { ok, refused } from '../../core/base/result.ts';
import { fileKind } from '../../core/base/picture/fileKind.ts';
import { reads, type Handlers, type ServiceParts } from './handlers.ts';
import type { Printing, PrintJob } from './printJob.ts';

const noPrinting = () =>
  refused(
    'noPrinting',
    'This window does not print by itself. Open the PDF in the browser and print it at actual size.',
  );

const notAPdf = () => refused('notAPdf', 'Only a PDF is printed. Make the paper anew.');

const noSuchPrinter = (name: string) =>
  refused('noSuchPrinter', `This computer has no printer ${name}. Choose another one.`);

async function printOn(printing: Printing, job: PrintJob, name: string) {
  const known = (await printing.printers()).some((one) => one.name === name);
  if (!known) return noSuchPrinter(name);
  const printed = await printing.print(job, name);
  return printed.ok ? ok({ printer: name }) : printed;
}

/** Calls about printers. What is printed is always a PDF, never the page: so the scale holds. */
export function printingHandlers({ printing }: ServiceParts): Handlers<'printing'> {
  return {
    'printing.ways': reads(async () =>
      printing
        ? ok({ printers: await printing.printers(), viewer: true })
        : ok({ printers: [], viewer: false }),
    ),
    'printing.print': reads(async ({ fileName, pdf, printer }) => {
      if (!printing) return noPrinting();
      const job = { fileName, pdf: Buffer.from(pdf, 'base64') };
      if (fileKind(job.pdf) !== 'application/pdf') return notAPdf();
      if (printer !== undefined) return printOn(printing, job, printer);
      const shown = await printing.show(job);
      return shown.ok ? ok({}) : shown;
    }),
  };
}
